import type { PostChain } from '../../frame/read-response.ts';
import { sectionsOf } from '../../frame/read-response.ts';
import { leastAt } from '../least-at.ts';
import { isStrength, postResponses, valuesIn, type LineCheckContext } from '../line-context.ts';
import { sectionAt } from '../section.ts';
import { postColumn } from './column.ts';
import { DEEPEST_HOUSING } from './housing.ts';
import { postStations } from './post-stations.ts';
import { crushingStress, pulledSum, pushedSum } from './station-sums.ts';

/**
 * The thinnest round post, station by station, whose crushing, push with bending and pull with bending there would just
 * pass with today's forces, housings and design values held, and that is as thick as the depth of its housings asks for.
 * The post as a column stays the one that stands: its buckling belongs to the whole log, so where that alone is too much
 * no thickness of one station helps.
 * @returns [in] in the order of the chain's sections; Infinity where no log in reach passes, NaN above the seat and where
 *   nothing is asked; null for what is not a round log
 * @source NDS 3.6, 3.9 turned round; own rule: forces and column held
 */
export function leastPostDiameters(context: LineCheckContext, chain: PostChain): readonly number[] | null {
  const values = valuesIn(context, chain.memberId);
  const { stick } = chain.post;
  if (!values || stick?.kind !== 'round') return null;
  const strength = postResponses(context).filter(isStrength);
  const ownStations = postStations(context, chain);
  const pushed = pushedSum(context, chain, ownStations, postColumn(context, chain, ownStations, values), values);
  const pulled = pulledSum(context, chain, values);
  const stations = new Map(ownStations.map((s) => [s.axial, s] as const));
  return sectionsOf(chain, context.frame.layout).map((at) => {
    const station = stations.get(at.axial);
    if (!station || strength.length === 0) return NaN;
    const forDepth = (station.housing?.depthIn ?? 0) / DEEPEST_HOUSING;
    const least = leastAt(stick.flatIn + station.takenIn, strength, (diameterIn) => {
      const s = { ...station, section: sectionAt(stick, diameterIn, station.takenIn) };
      return (r) =>
        Math.max(
          crushingStress(s, r.values) / (values.FcPsi * r.combination.durationFactor),
          r.values[s.axial]! > 0 ? pulled(s, r) : pushed(s, r),
        );
    });
    return Math.max(forDepth, least);
  });
}
