import { isWorse } from '../../engine/check.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import { groupBy } from '../sheet/group-by.ts';
import type { PieceNames } from '../sheet/piece-names.ts';

/** The worst row of a rule for members that do the same work, and how many rows it stands for. */
export interface Governing {
  readonly row: CheckRow;
  readonly alike: number;
}

/** Every rule once for every group of alike members, in the order of the load path. What speaks of the site stands for itself. */
export const governingRows = (evaluation: Evaluation, names: PieceNames): readonly Governing[] =>
  groupBy(evaluation.checks, (row) =>
    row.memberId === 'site' ? row.key : `${row.ruleId}|${names.pieceOf(row.memberId).key}`,
  ).map((rows) => ({ row: rows.reduce((a, b) => (isWorse(b, a) ? b : a)), alike: rows.length }));
