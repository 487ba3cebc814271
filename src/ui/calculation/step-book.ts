import { SOURCES } from '../../data/source-list.ts';
import type { ClauseRef, SourceKey } from '../../data/sources.ts';
import { SHEET_WORDS } from '../../data/words/sheet.ts';
import type { Put, Step } from '../../engine/note.ts';
import { formulaText } from '../cord/step-words.ts';
import type { Quantity } from '../../engine/units.ts';
import type { UnitSystem } from '../units/system.ts';
import { line, type Cell, type Column, type Line, type Row } from '../paper/blocks.ts';
import { showFigure } from './show-figure.ts';

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

  /** `near` holds what this table has told so far: a number put in is often the result of a line above */
  const numberOf = (step: Step, rows: Row[], near: Map<string, number>): number => {
    const key = JSON.stringify(step);
    const told = numbers.get(key);
    const remember = (number: number): void => {
      near.set(resultKey(step), number);
      near.set(amountKey(step.result), number);
    };
    if (told !== undefined) {
      remember(told);
      return told;
    }
    const from = step.put.map((put) =>
      put.from
        ? put.from.map((each) => numberOf(each, rows, near)).at(-1)
        : putKeys(put).flatMap((each) => near.get(each) ?? [])[0],
    );
    const number = numbers.size + 1;
    numbers.set(key, number);
    remember(number);
    rows.push({
      step: number,
      cells: [
        line(`${number}`),
        whatIs(step, inWords),
        putIn(step, from, system, inWords),
        line(showFigure(step.result, system), 'strong'),
        line(cite(step.clause, `step ${number}`)),
      ],
    });
    return number;
  };

  return {
    cite,
    uses: () => uses,
    tell: (steps) => {
      const rows: Row[] = [];
      const near = new Map<string, number>();
      const pointedTo = new Set<number>();
      for (const [i, step] of steps.entries()) {
        const before = rows.length;
        const number = numberOf(step, rows, near);
        if (rows.length > before || pointedTo.has(number) || isPutIn(step, steps.slice(i + 1))) continue;
        pointedTo.add(number);
        rows.push(again(step, number, system, inWords));
      }
      return rows;
    },
  };
}

const amountKey = ({ value, unit }: Quantity): string => `${value} ${unit}`;
const resultKey = ({ symbol, result }: Step): string => `${symbol} ${amountKey(result)}`;

/**
 * Under which keys the step is found that a number comes from: by symbol and amount; by the amount alone where that cannot
 * be mistaken for another, or where it is what a ratio is made of, which has no symbol of its own. A bare 1 comes from no step.
 */
function putKeys(put: Put): readonly string[] {
  const isOfRatio = (put.symbol === 'demand' || put.symbol === 'capacity') && put.unit !== '1';
  return [`${put.symbol} ${amountKey(put)}`, ...(isOfRatio || isUnmistakable(put.value) ? [amountKey(put)] : [])];
}
/** Many figures: two unlike quantities of one calculation do not share them. */
const isUnmistakable = (value: number): boolean => Number.isFinite(value) && !Number.isInteger(value * 1e4);

/** A later step says where it has this one's result from. */
const isPutIn = (step: Step, later: readonly Step[]): boolean => {
  const keys = [resultKey(step), amountKey(step.result)];
  return later.some(({ put }) => put.some((each) => putKeys(each).some((key) => keys.includes(key))));
};

/** A step that was told before: its result, and where it stands. */
const again = (step: Step, number: number, system: UnitSystem, inWords: (words: string) => string): Row => ({
  cells: [
    line(''),
    [{ text: inWords(step.words) }, { text: step.symbol, tone: 'formula' }],
    line(`as in step ${number}`),
    line(showFigure(step.result, system), 'strong'),
    line(''),
  ],
});

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
  return step.put.map((put, i): Line => {
    const number = from[i];
    const whence = number === undefined ? '' : ` (step ${number})`;
    return { text: `${valueOf(put, step, system)}${inWords(put.words)}${whence}` };
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
