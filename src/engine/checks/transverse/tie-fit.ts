import { breaks, outside, type Verdict } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import type { RowGeometry } from '../../geometry/rows.ts';
import type { TieGeometry } from '../../geometry/shelter.ts';
import { message } from '../../message.ts';
import { plainRow } from '../site-of-check.ts';

/** Tie logs that cannot be built as drawn, or that lie as the method does not reach. */
export function tieFitRows(row: RowGeometry): readonly CheckRow[] {
  const at = (tie: TieGeometry, name: string, verdict: Verdict): CheckRow =>
    plainRow('tie.fit', tie.id, { kind: 'whole', name }, verdict);
  return row.ties.flatMap((tie): CheckRow[] => [
    ...(tie.ends === 'beside' ? [at(tie, 'beside', outside(message('tieBeside', { tie: tie.label })))] : []),
    ...(liesOverAnother(row, tie) ? [at(tie, 'bay', outside(message('tiesInOneBay', { row: row.label })))] : []),
    ...row.posts
      .filter((p) => p.id === tie.fromPostId || p.id === tie.toPostId)
      .filter((p) => tie.axisZIn <= p.footZIn || tie.axisZIn > p.seatZIn)
      .map((p) => {
        const values = {
          tie: tie.label,
          post: p.label,
          levelIn: tie.axisZIn - p.footZIn,
          topIn: p.seatZIn - p.footZIn,
        };
        return at(tie, p.id, breaks(message('tieMissesPost', values)));
      }),
  ]);
}

/** More than their ends past a common post. */
const liesOverAnother = ({ ties, posts }: RowGeometry, tie: TieGeometry): boolean => {
  const spanOf = ({ fromPostId, toPostId }: TieGeometry): readonly number[] =>
    posts.filter((p) => p.id === fromPostId || p.id === toPostId).map((p) => p.yIn);
  const [from, to] = [Math.min(...spanOf(tie)), Math.max(...spanOf(tie))];
  return ties.some((other) => other !== tie && Math.min(...spanOf(other)) < to && Math.max(...spanOf(other)) > from);
};
