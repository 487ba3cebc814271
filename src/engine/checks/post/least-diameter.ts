import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import { sectionsOf } from '../../frame/read-response.ts';
import { askedSection, type AskedSection } from '../asked-section.ts';
import { isStrength, postResponses, valuesIn, type LineCheckContext } from '../line-context.ts';
import { sectionAt } from '../section.ts';
import { postColumn } from './column.ts';
import { DEEPEST_HOUSING } from './housing.ts';
import { postStations } from './post-stations.ts';
import { crushingStress, pulledSum, pushedSum } from './station-sums.ts';

/**
 * What the sections of a round post are asked, station by station: crushing, push with bending and pull with bending
 * there, and the thickness that the depth of its housings asks for. The post as a column stays the one that stands: its
 * buckling belongs to the whole log, so where that alone is too much no thickness of one station helps.
 * @returns in the order of the chain's sections, null above the seat; null for what is not a round log
 * @source NDS 3.6, 3.9 turned round; own rule: forces and column held
 */
export function postSections(context: LineCheckContext, chain: PostChain): readonly (AskedSection | null)[] | null {
  const values = valuesIn(context, chain.memberId);
  const { stick } = chain.post;
  if (!values || stick?.kind !== 'round') return null;
  const responses = postResponses(context).filter(isStrength);
  const ownStations = postStations(context, chain);
  const pushed = pushedSum(context, chain, ownStations, postColumn(context, chain, ownStations, values), values);
  const pulled = pulledSum(context, chain, values);
  const stations = new Map(ownStations.map((s) => [s.axial, s] as const));
  return sectionsOf(chain, context.frame.layout).map((at) => {
    const station = stations.get(at.axial);
    if (!station) return null;
    const { housing, takenIn, diameterIn: hasIn } = station;
    const isPulled = ({ values: v }: LineResponse): boolean => v[station.axial]! > 0;
    return askedSection<LineResponse>({
      hasIn,
      takenIn: stick.flatIn + takenIn,
      ofSize: housing ? [{ ruleId: 'post.housing', leastIn: housing.depthIn / DEEPEST_HOUSING }] : [],
      responses,
      termsAt: (diameterIn) => {
        const s = { ...station, section: sectionAt(stick, diameterIn, takenIn, station.bored) };
        return [
          {
            ruleId: 'post.crushing',
            ratio: (r) => crushingStress(s, r.values) / (values.FcPsi * r.combination.durationFactor),
          },
          { ruleId: 'post.bending', ratio: (r) => (isPulled(r) ? 0 : pushed(s, r)) },
          { ruleId: 'post.tension', ratio: (r) => (isPulled(r) ? pulled(s, r) : 0) },
        ];
      },
    });
  });
}
