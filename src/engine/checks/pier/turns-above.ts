import type { PostGeometry } from '../../geometry/shelter.ts';
import { capacityOf, jointKey } from '../../project/joint-capacity.ts';
import type { Project } from '../../project/model.ts';

/**
 * How far above its end a post turns that stands between bolted plates: about its bolts, the farthest of several. The analysis
 * has its hinge at the end of the post, a little lower; what the push makes of the difference goes down the plates into the
 * pier. A base that is only rated turns at its end.
 * @returns inches, 0 where nothing is bolted
 * @source OWN: a hinge where the bolts are, farthest one (safe side)
 */
export function turnsAbove(project: Project, post: PostGeometry): number {
  if (post.foot.kind === 'embedded') return 0;
  const capacity = capacityOf(project, 'postFoot', jointKey('postFoot', post.id));
  if (capacity?.kind !== 'fasteners') return 0;
  const reach = capacity.rows.map(({ plate, endIn, count, rows, spacingIn }) =>
    plate ? (endIn ?? 0) + (Math.ceil(count / Math.min(rows, count)) - 1) * (spacingIn ?? 0) : 0,
  );
  return Math.max(0, ...reach);
}
