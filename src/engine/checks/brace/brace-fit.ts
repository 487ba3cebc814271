import { breaks } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import type { LineMembers } from '../../frame/line-mesh.ts';
import { message } from '../../message.ts';
import { plainRow } from '../site-of-check.ts';

/** Braces of one span that cross, and a brace that runs past the next post, cannot be built: the forces mean nothing. */
export function braceFitRows({ posts, braces }: Pick<LineMembers, 'posts' | 'braces'>): readonly CheckRow[] {
  return posts.slice(1).flatMap((right, i) => {
    const left = posts[i]!;
    const span = right.xIn - left.xIn;
    const between = braces.filter(
      (b) => (b.postId === left.id && b.side === 'plus') || (b.postId === right.id && b.side === 'minus'),
    );
    const runsIn = between.reduce((sum, b) => sum + b.runIn, 0);
    if (runsIn < span) return [];
    const reason = message('bracesCross', { left: left.label, right: right.label, runsIn, spanIn: span });
    return between.map((b) => plainRow('brace.fit', b.id, { kind: 'whole', name: '' }, breaks(reason)));
  });
}
