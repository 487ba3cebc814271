import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import type { LineCheckContext } from '../line-context.ts';
import { acrossMoment } from '../post/across-wind.ts';

/** What the foot of a post gets across the lines, without sign: a push [lb], and a moment where the foot may not turn [lb in]. */
export interface FootPush {
  readonly pushLb: number;
  readonly momentLbIn: number;
}

const NOTHING: FootPush = { pushLb: 0, momentLbIn: 0 };

/**
 * Push across at the foot of a post in each combination; null while nobody knows what reaches it. Where the existing
 * building or rated walls hold the shelter across, a post hands down no more than half of the wind on itself and on what
 * leans on it, as a simple beam from foot to seat. A frame across hands down what its own analysis says.
 * @source MECHANICS: end push of a simple beam under an even load is 4 times its middle moment over its length
 */
export function acrossPushAtFoot(context: LineCheckContext, chain: PostChain): ((r: LineResponse) => FootPush) | null {
  const inRow = context.across?.onPost(chain.memberId);
  if (inRow) return (r) => inRow.in(r.combination.id)?.foot ?? NOTHING;
  const named = context.project.lateral.across.filter(({ by }) => by !== null);
  const isHeldAbove = named.length > 0 && named.every(({ by }) => by === 'building' || by === 'ratedWalls');
  if (!isHeldAbove) return null;
  const { post } = chain;
  const lengthIn = post.seatZIn - post.footZIn;
  const middleAt = post.footZIn - post.woodFromZIn + lengthIn / 2;
  const moment = acrossMoment(context, chain);
  return (r) => ({ pushLb: (4 * Math.abs(moment(r, middleAt))) / lengthIn, momentLbIn: 0 });
}
