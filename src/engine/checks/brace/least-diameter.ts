import type { LineResponse } from '../../frame/line-frame.ts';
import { pushIndex } from '../../frame/read-response.ts';
import type { BraceGeometry } from '../../geometry/shelter.ts';
import { leastAt } from '../least-at.ts';
import { isStrength, valuesIn, type LineCheckContext } from '../line-context.ts';
import { roundArea } from '../wood/round-section.ts';
import { endSections } from './brace-crushing.ts';

/** Two places closer than this are one [in]. */
const SAME_PLACE_IN = 1e-6;

/**
 * The thinnest round brace, station by station, whose push and pull there would just pass with today's forces held: a
 * brace has no bending of its own. At an end the part that its flat or saddle takes up is crushed too. Contacts and
 * buckling are no matter of one station.
 * @param index place of the brace among those of its line
 * @returns [in] in the order of its stations; Infinity where no log in reach passes, NaN where nothing is asked; null for
 *   what is not a round log
 * @source NDS 3.6.3, 3.7.2, 3.8.1 turned round; own rule: forces held
 */
export function leastBraceDiameters(
  context: LineCheckContext,
  brace: BraceGeometry,
  index: number,
): readonly number[] | null {
  const values = valuesIn(context, brace.id);
  const { stick } = brace;
  if (!values || stick?.kind !== 'round') return null;
  const strength = context.frame.responses.filter(isStrength);
  const at = pushIndex(context.frame.layout, index);
  return stick.profile.map(({ atIn }) => {
    if (strength.length === 0) return NaN;
    return leastAt(stick.flatIn, strength, (diameterIn) => {
      const whole = roundArea(diameterIn);
      const ends = endSections(context, brace, diameterIn).filter((end) => Math.abs(end.atIn - atIn) < SAME_PLACE_IN);
      const pressed = Math.min(whole, ...ends.map((end) => end.areaIn2));
      return (r: LineResponse) => {
        const push = r.values[at]!;
        const allowable = push > 0 ? pressed * values.FcPsi : whole * values.FtPsi;
        return Math.abs(push) / (allowable * r.combination.durationFactor);
      };
    });
  });
}
