import { clause } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { BraceGeometry } from '../../geometry/shelter.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid } from '../../loads/solid-wind.ts';
import { put } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { quantity } from '../../units.ts';
import { holderAt } from '../joints/holder.ts';
import { ratedSite } from '../joints/rated-site.ts';
import type { LineCheckContext } from '../line-context.ts';
import { acrossFactor, alongFactor } from '../post/across-wind.ts';
import type { CheckSite } from '../site-of-check.ts';
import type { End } from './brace-ends.ts';

/**
 * Wind on the side of a brace, across its line, of a brace across along the lines: half of it at each end. A housing or a saddle
 * holds the end sideways by its shape; an end that only lies on a flat needs its joint.
 * @source ASCE7 29.4 (7-16)
 */
export function braceAcrossSites(
  context: LineCheckContext,
  brace: BraceGeometry,
  end: Pick<End, 'which' | 'kind' | 'cut'>,
): readonly CheckSite<LineResponse>[] {
  if (end.cut.kind !== 'flat') return [];
  // a row has its braces turned into its plane: the shelter knows how they stand
  const isAcross = context.shelter.braces.some((b) => b.id === brace.id && b.plane === 'across');
  const factorIn = isAcross ? alongFactor : acrossFactor;
  const solidity = soliditySeen(context.shelter, isAcross ? 'end' : 'side');
  const psf = windOnSolid(context.site, solidity, roundDiameter(brace.stick));
  const areaFt2 = (brace.lengthIn * widthSeen(brace.stick, 'side')) / 144;
  return [
    ratedSite<LineResponse>({
      ruleId: 'brace.tieAcross',
      memberId: brace.id,
      place: { kind: 'end', name: end.which },
      holder: holderAt(context, end.kind, jointKey(end.kind, brace.id)),
      part: 'across',
      force: (r, note) => {
        const factor = factorIn(r.combination);
        const push = (factor * psf * areaFt2) / 2;
        note?.({
          symbol: 'P',
          words: 'wind on the side of the brace, half of it at this end',
          formula: 'f × p × A / 2',
          put: [
            put('f', factor, '1', 'factor of that wind in this combination'),
            put('p', psf, 'psf', 'wind on it, strength level'),
            put('A', areaFt2, 'ft2', 'side of the brace'),
          ],
          result: quantity(push, 'lb'),
          clause: clause('ASCE7', '29.4'),
        });
        return push;
      },
    }),
  ];
}
