import { RULES, type Link } from '../../data/rules.ts';
import { SHEET_WORDS } from '../../data/words/sheet.ts';
import { isWorse } from '../../engine/check.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { UnitSystem } from '../units/system.ts';
import { askedAt, clauseWords, figureCells, governedBy } from './check-words.ts';
import { groupBy } from './group-by.ts';
import { isJointRule } from './joint-rules.ts';
import type { PieceNames } from './piece-names.ts';
import type { PlainTable } from './sheet-table.ts';

/** Rows that might be printed, most wanted first: `must` of them are the worst of their link and piece. */
export interface Ranked {
  readonly rows: readonly CheckRow[];
  readonly must: number;
}

/** Which link is seen first where the page is too short for all of them: what the shelter stands on. */
const FIRST_LINKS: readonly Link[] = ['beam', 'post', 'rafter', 'brace', 'purlin', 'swayAlong', 'swayAcross'];
const rankOf = ({ ruleId }: CheckRow): number => {
  const rank = FIRST_LINKS.indexOf(RULES[ruleId].link);
  return rank < 0 ? FIRST_LINKS.length : rank;
};

/**
 * Only the worst of alike members. What fails comes first, then the worst of every link, so that the load path is seen
 * from roof to ground, then the worst of every piece, then the worst of every rule. Joints, piers and the site have
 * places of their own on the page.
 */
export function rankedChecks(evaluation: Evaluation, names: PieceNames): Ranked {
  const asked = evaluation.checks.filter(({ ruleId }) => {
    const { link } = RULES[ruleId];
    return link !== 'site' && link !== 'pier' && !isJointRule(ruleId);
  });
  const worstOfEach = (keyOf: (row: CheckRow) => string): readonly CheckRow[] =>
    groupBy(asked, keyOf)
      .map((rows) => rows.reduce((a, b) => (isWorse(b, a) ? b : a)))
      .toSorted(bySeverity);
  const byPiece = worstOfEach((row) => `${RULES[row.ruleId].link}|${names.pieceOf(row.memberId).key}`);
  const rows = new Set([
    ...byPiece.filter((row) => row.status === 'fail'),
    ...worstOfEach((row) => RULES[row.ruleId].link).toSorted((a, b) => rankOf(a) - rankOf(b)),
    ...byPiece,
  ]);
  const must = rows.size;
  const byRule = worstOfEach((row) => `${row.ruleId}|${names.pieceOf(row.memberId).key}`);
  return { rows: [...new Set([...rows, ...byRule])], must };
}

const bySeverity = (a: CheckRow, b: CheckRow): number => (isWorse(a, b) ? -1 : isWorse(b, a) ? 1 : 0);

/** The rows that are printed, in the order of the load path. */
export function checkTable(
  evaluation: Evaluation,
  chosen: readonly CheckRow[],
  names: PieceNames,
  system: UnitSystem,
): PlainTable {
  const shown = new Set(chosen);
  return {
    caption: 'Governing checks',
    columns: [
      { head: 'piece', share: 62, lines: 2 },
      { head: 'check, place', share: 132, lines: 2 },
      { head: 'governed by', share: 132, lines: 3 },
      { head: 'demand', align: 'right' },
      { head: 'capacity', align: 'right' },
      { head: 'unit' },
      { head: 'ratio', align: 'right' },
      { head: 'clause', share: 62, lines: 3 },
      { head: 'status', strong: true },
    ],
    rows: evaluation.checks
      .filter((row) => shown.has(row))
      .map((row) => {
        const [demand, capacity, unit, ratio, status] = figureCells(row, system);
        return {
          cells: [
            names.pieceOf(row.memberId).words,
            askedAt(row, names, system),
            governedBy(row, names),
            demand,
            capacity,
            unit,
            ratio,
            clauseWords(row),
            status,
          ],
          checkKey: row.key,
        };
      }),
    further: () => '',
  };
}

/** What stands elsewhere, and what the marks mean. */
export function furtherChecks(evaluation: Evaluation, printed: ReadonlySet<string>): string {
  const left = evaluation.checks.filter((row) => !printed.has(row.key));
  const count = (status: CheckRow['status']): number => left.filter((row) => row.status === status).length;
  const open = [
    ...(count('fail') > 0 ? [`${count('fail')} fail`] : []),
    ...(count('notGiven') > 0 ? [`${count('notGiven')} not given`] : []),
    ...(count('outside') > 0 ? [`${count('outside')} outside the method`] : []),
  ];
  const memory = evaluation.checks.filter((row) => row.clause.memory).length;
  return [
    `${left.length} more checks, the worst of each kind in the calculation${left.length === 0 ? '' : `: ${open.length > 0 ? `${open.join(', ')}, the others pass` : 'all pass'}`}.`,
    ...(evaluation.departures > 0 ? [`${evaluation.departures} pass with a stated departure.`] : []),
    ...(memory > 0
      ? [`${SHEET_WORDS.memoryMark} figure not compared with the printed edition: ${memory} checks.`]
      : []),
  ].join(' ');
}
