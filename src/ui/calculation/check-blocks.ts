import { CALCULATION_WORDS } from '../../data/words/calculation.ts';
import { fillIn } from '../../data/words/fill-in.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import { combinationInWords } from '../cord/combination.ts';
import { sentenceCase } from '../cord/letter-case.ts';
import { askedAt, figureCells } from '../sheet/check-words.ts';
import type { PieceNames } from '../sheet/piece-names.ts';
import { showQuantity, showRatio } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { line, text, type Block, type Heading, type Table } from '../paper/blocks.ts';
import type { Governing } from './governing.ts';
import { STEP_COLUMNS, type StepBook } from './step-book.ts';
import type { Told } from './tell-steps.ts';

export interface CheckPart {
  readonly evaluation: Evaluation;
  readonly told: Told;
  readonly names: PieceNames;
  readonly system: UnitSystem;
  readonly book: StepBook;
}

/** Checks by the heading under which they stand: the index finds their pages by it. */
const headingOf = ({ key }: CheckRow): string => `check-${key}`;

/** One check after another: what is asked, how it ends, then its steps. */
export const checkBlocks = (governing: readonly Governing[], part: CheckPart): readonly Block[] =>
  governing.flatMap((each) => oneCheck(each, part));

function oneCheck({ row, alike }: Governing, part: CheckPart): readonly Block[] {
  const { told, names, book } = part;
  const label = titleOf(row, part);
  const heading: Heading = { kind: 'heading', id: headingOf(row), level: 5, words: label };
  const steps = told.checks.get(row.key) ?? [];
  const isTold = 'length' in steps;
  const rows = isTold ? book.tell(steps) : [];
  const why = isTold ? CALCULATION_WORDS.noSteps : fillIn(CALCULATION_WORDS.noSuchSteps, { why: names.sayOf(steps) });
  const said = [...verdictOf(row, alike, label, part), ...(rows.length === 0 ? [why] : [])].join(' ');
  return [
    heading,
    text(said, { checkKey: row.key, ...(rows.length > 0 ? { leads: true } : {}) }),
    ...(rows.length > 0 ? [{ kind: 'table', label, columns: STEP_COLUMNS, rows } satisfies Table] : []),
  ];
}

/** `A1: push with buckling, at 4' 6"`; a row of the site is called by what it asks. */
function titleOf(row: CheckRow, { names, system }: Pick<CheckPart, 'names' | 'system'>): string {
  const asked = askedAt(row, names, system);
  return row.memberId === 'site' ? asked : sentenceCase(`${names.nameOf(row.memberId)}: ${asked}`);
}

/** How it ends, in sentences: the verdict first, then what governs, then why it is not a plain pass. */
function verdictOf(
  row: CheckRow,
  alike: number,
  label: string,
  { evaluation, names, system, book }: CheckPart,
): readonly string[] {
  const figures = [
    ...(row.demand ? [`demand ${showQuantity(row.demand, system)}`] : []),
    ...(row.capacity ? [`capacity ${showQuantity(row.capacity, system)}`] : []),
    ...(row.ratio === null ? [] : [`ratio ${showRatio(row.ratio)}`]),
  ];
  const verdict = `${sentenceCase(STATUS_WORDS[row.status])}${figures.length > 0 ? `: ${figures.join(', ')}` : ''}`;
  const governs = combinationInWords(evaluation.loads, row);
  return [
    `${verdict} (${book.cite(row.clause, label)}).`,
    ...(governs === '' ? [] : [`Governed by: ${governs}.`]),
    ...(row.reason ? [names.sayOf(row.reason)] : []),
    ...(alike > 1 ? [`${sentenceCase(fillIn(CALCULATION_WORDS.worstOf, { count: alike }))}.`] : []),
  ];
}

/** Every governing check in one line, with the page where its steps stand. */
export function indexTable(
  governing: readonly Governing[],
  { names, system }: Pick<CheckPart, 'names' | 'system'>,
): Table {
  return {
    kind: 'table',
    label: CALCULATION_WORDS.sections.index,
    columns: [
      { head: 'piece', share: 90 },
      { head: 'check, place', share: 170 },
      { head: 'demand', share: 56, align: 'right' },
      { head: 'capacity', share: 56, align: 'right' },
      { head: 'unit', share: 40 },
      { head: 'ratio', share: 34, align: 'right' },
      { head: 'status', share: 64 },
      { head: 'page', share: 30, align: 'right' },
    ],
    rows: governing.map(({ row }) => {
      const [demand, capacity, unit, ratio, status] = figureCells(row, system);
      return {
        checkKey: row.key,
        cells: [
          line(names.pieceOf(row.memberId).words),
          line(askedAt(row, names, system)),
          line(demand),
          line(capacity),
          line(unit),
          line(ratio, 'strong'),
          line(status, row.status === 'pass' ? undefined : 'strong'),
          [{ text: '', pageOf: headingOf(row) }],
        ],
      };
    }),
  };
}
