import { clause } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import { windOnGoods } from '../../loads/goods.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid } from '../../loads/solid-wind.ts';
import type { Combination } from '../../loads/combination.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { LineCheckContext } from '../line-context.ts';

/** Factor of wind across the lines in a combination. */
export const acrossFactor = (combination: Combination): number =>
  combination.factors.reduce(
    (f, c) => (c.caseId.startsWith('wind-') && !c.caseId.startsWith('wind-along') ? c.factor : f),
    0,
  );

/** Factor of wind along the lines in a combination. */
export const alongFactor = ({ factors }: Combination): number =>
  factors.find(({ caseId }) => caseId.startsWith('wind-along'))?.factor ?? 0;

/** Share of the line's length that lies nearer to a post than to its neighbours, ends included. */
function shareOfLine({ line, frame }: LineCheckContext, post: PostChain['post']): number {
  const xs = frame.mesh.posts.map((p) => p.post.xIn).sort((a, b) => a - b);
  const i = xs.indexOf(post.xIn);
  const from = i > 0 ? (xs[i - 1]! + post.xIn) / 2 : line.fromXIn;
  const to = i < xs.length - 1 ? (xs[i + 1]! + post.xIn) / 2 : line.toXIn;
  return (to - from) / (line.toXIn - line.fromXIn);
}

/**
 * Moment across the line from wind on the post itself and on goods that lean on it, as a beam between foot and seat; zero
 * in combinations without wind across the lines. Goods press on all of its height (safe side), each post by half the way
 * to its neighbours.
 * @source ASCE7 29.4 (open frame); MECHANICS uniform load on a simple span
 */
export function acrossMoment(
  context: LineCheckContext,
  chain: PostChain,
): (r: LineResponse, atIn: number, note?: Note) => number {
  const { post } = chain;
  const widthIn = widthSeen(post.stick, 'side');
  const psf = windOnSolid(context.site, soliditySeen(context.shelter, 'side'), roundDiameter(post.stick));
  const goodsLb = windOnGoods(context.project, context.shelter, context.site, 'side', context.line.id);
  const w = (psf * widthIn) / 144 + (goodsLb * shareOfLine(context, post)) / (post.seatZIn - post.footZIn);
  if (!(w > 0)) return () => 0;
  const from = post.footZIn - post.woodFromZIn;
  const L = post.seatZIn - post.footZIn;
  const factors = new Map<Combination, number>();
  const factorIn = (combination: Combination): number => {
    const known = factors.get(combination);
    if (known !== undefined) return known;
    const found = acrossFactor(combination);
    factors.set(combination, found);
    return found;
  };
  return (r, atIn, note) => {
    const factor = factorIn(r.combination);
    if (factor === 0) return 0;
    const z = Math.min(Math.max(atIn - from, 0), L);
    const moment = (factor * w * z * (L - z)) / 2;
    note?.({
      symbol: 'My',
      words: 'moment across the line, from wind on the post and on goods that lean on it',
      formula: 'f w z (L - z) / 2',
      put: [
        put('f', factor, '1', 'factor of wind in this combination'),
        put('w', w, 'lb/in', 'wind on the post, goods included'),
        put('z', z, 'in', 'above the foot'),
        put('L', L, 'in', 'foot to seat'),
      ],
      result: quantity(moment, 'lb·in'),
      clause: clause('MECHANICS', 'simple span'),
    });
    return moment;
  };
}
