import { clause } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid } from '../../loads/solid-wind.ts';
import type { Combination } from '../../loads/combination.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { LineCheckContext } from '../line-context.ts';

/** Factor of wind across the lines in a combination. */
const acrossFactor = (combination: Combination): number =>
  combination.factors.reduce(
    (f, c) => (c.caseId.startsWith('wind-') && !c.caseId.startsWith('wind-along') ? c.factor : f),
    0,
  );

/**
 * Moment across the line from wind on the post itself, as a beam between foot and seat; zero in combinations without
 * wind across the lines.
 * @source ASCE7 29.4 (open frame); MECHANICS uniform load on a simple span
 */
export function acrossMoment(
  context: LineCheckContext,
  chain: PostChain,
): (r: LineResponse, atIn: number, note?: Note) => number {
  const { post } = chain;
  const widthIn = widthSeen(post.stick, 'side');
  const psf = windOnSolid(context.site, soliditySeen(context.shelter, 'side'), roundDiameter(post.stick));
  if (!(psf * widthIn > 0)) return () => 0;
  const w = (psf * widthIn) / 144;
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
      words: 'moment across the line, from wind on the post itself',
      formula: 'f w z (L - z) / 2',
      put: [
        put('f', factor, '1', 'factor of wind in this combination'),
        put('w', w, 'lb/in', 'wind on the post'),
        put('z', z, 'in', 'above the foot'),
        put('L', L, 'in', 'foot to seat'),
      ],
      result: quantity(moment, 'lb·in'),
      clause: clause('MECHANICS', 'simple span'),
    });
    return moment;
  };
}
