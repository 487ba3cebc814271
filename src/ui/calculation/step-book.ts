import { SOURCES } from '../../data/source-list.ts';
import type { ClauseRef, SourceKey } from '../../data/sources.ts';
import { CALCULATION_WORDS } from '../../data/words/calculation.ts';
import { SHEET_WORDS } from '../../data/words/sheet.ts';
import type { Put, Step } from '../../engine/note.ts';
import { formulaText } from '../cord/step-words.ts';
import type { UnitSystem } from '../units/system.ts';
import { line, type Cell, type Column, type Line, type Row } from '../paper/blocks.ts';
import { linkSteps } from './link-steps.ts';
import { isNothing, showFigure } from './show-figure.ts';

/** Columns of every table of steps. */
export const STEP_COLUMNS: readonly Column[] = [
  { head: 'step', share: 24, align: 'right' },
  { head: 'what, formula', share: 158 },
  { head: 'numbers put in', share: 212 },
  { head: 'result', share: 68, align: 'right' },
  { head: 'clause', share: 78 },
];

/** Where a clause was used: a step by its number, or a check by its words. */
export interface Use {
  readonly clause: ClauseRef;
  readonly where: string;
}

/**
 * Numbers the steps of the whole calculation. A step that several checks share is told once; later ones point to its
 * number. What a number comes from stands above it, so that every line can be redone from the lines before it.
 */
export interface StepBook {
  readonly tell: (steps: readonly Step[]) => readonly Row[];
  /** notes a clause that stands beside a check */
  readonly cite: (clause: ClauseRef, where: string) => string;
  /** every clause so far, in the order of the pages */
  readonly uses: () => readonly Use[];
}

export function createStepBook(system: UnitSystem, inWords: (words: string) => string): StepBook {
  const numbers = new Map<string, number>();
  const uses: Use[] = [];
  const cite = (clause: ClauseRef, where: string): string => {
    uses.push({ clause, where });
    return clauseOnPaper(clause);
  };

  return {
    cite,
    uses: () => uses,
    tell: (steps) => {
      const linked = linkSteps(steps, (key) => numbers.has(key));
      const rows: Row[] = [];
      let before: ToldStep[] = [];
      const close = (): void => {
        if (before.length > 0) rows.push(again(before, system, inWords));
        before = [];
      };
      for (const [i, { key, step, isOwn, from }] of linked.entries()) {
        const told = numbers.get(key);
        if (told !== undefined) {
          const isNamed = linked.slice(i + 1).some((later) => later.from.includes(key));
          if (isOwn && !isNamed) before.push({ step, number: told });
          continue;
        }
        close();
        const number = numbers.size + 1;
        numbers.set(key, number);
        const whence = from.map((source) => (source === undefined ? undefined : numbers.get(source)));
        rows.push({
          step: number,
          cells: [
            line(`${number}`),
            whatIs(step, inWords),
            putIn(step, whence, system, inWords),
            line(showFigure(step.result, system), 'strong'),
            line(cite(step.clause, `step ${number}`)),
          ],
        });
      }
      close();
      return rows;
    },
  };
}

interface ToldStep {
  readonly step: Step;
  readonly number: number;
}

/** Steps that were told before: what each came to, and where it stands. Several in a run share a row. */
function again(told: readonly ToldStep[], system: UnitSystem, inWords: (words: string) => string): Row {
  const [only] = told;
  if (only && told.length === 1)
    return {
      cells: [
        line(''),
        [{ text: inWords(only.step.words) }, { text: only.step.symbol, tone: 'formula' }],
        line(`as in step ${only.number}`),
        line(showFigure(only.step.result, system), 'strong'),
        line(''),
      ],
    };
  const results = told.map(
    ({ step, number }) => `${step.symbol} = ${showFigure(step.result, system)} (step ${number})`,
  );
  return { cells: [line(''), line(CALCULATION_WORDS.toldBefore), line(results.join(', ')), line(''), line('')] };
}

/** A force that comes from the frame has no formula of its own: its symbol and its words say it. */
const isTaken = (step: Step): boolean => step.formula === step.symbol;

const whatIs = (step: Step, inWords: (words: string) => string): Cell => [
  { text: inWords(step.words) },
  { text: isTaken(step) ? step.symbol : `${step.symbol} = ${formulaText(step.formula)}`, tone: 'formula' },
];

function putIn(
  step: Step,
  from: readonly (number | undefined)[],
  system: UnitSystem,
  inWords: (words: string) => string,
): Cell {
  return step.put.flatMap((put, i): Line[] => {
    // a part of a sum that comes to nothing: some machines leave a residue where others leave the part out
    if (isFactor(put) && isNothing(put)) return [];
    const number = from[i];
    const whence = number === undefined ? '' : ` (step ${number})`;
    return [{ text: `${valueOf(put, step, system)}${inWords(put.words)}${whence}` }];
  });
}

const valueOf = (put: Put, step: Step, system: UnitSystem): string =>
  isTaken(step) && put.symbol === step.symbol
    ? ''
    : `${put.symbol}${isFactor(put) ? '' : ' ='} ${showFigure(put, system)}, `;

/** `0.6 ×`: a part of a sum, of which the symbol says how often it counts. */
const isFactor = ({ symbol }: Put): boolean => symbol.endsWith('×');

/** `NDS 3.3`, `own rule: no mechanism`, with the mark of a figure that was not compared with the printed edition. */
export function clauseOnPaper({ source, clause, memory }: ClauseRef): string {
  const name = sourceName(source);
  const where = source === 'OWN' || source === 'MECHANICS' ? `${name}: ${clause}` : `${name} ${clause}`;
  return memory === true ? `${where}${SHEET_WORDS.memoryMark}` : where;
}

/** What a source is called beside a step; the list of sources explains each. */
export function sourceName(source: SourceKey): string {
  if (source === 'OWN') return 'own rule';
  if (source === 'MECHANICS') return 'mechanics';
  if (source.startsWith('ASCE7')) return `ASCE ${SOURCES[source].edition}`;
  return source.replaceAll('_', ' ');
}
