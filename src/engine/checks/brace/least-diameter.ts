import type { LineResponse } from '../../frame/line-frame.ts';
import { pushIndex } from '../../frame/read-response.ts';
import type { BraceGeometry } from '../../geometry/shelter.ts';
import { askedSection, type AskedSection } from '../asked-section.ts';
import { isStrength, valuesIn, type LineCheckContext } from '../line-context.ts';
import { roundArea } from '../wood/round-section.ts';
import { endSections } from './brace-crushing.ts';

/** Two places closer than this are one [in]. */
const SAME_PLACE_IN = 1e-6;

/**
 * What the sections of a round brace are asked, station by station: push and pull there, since a brace has no bending of
 * its own. At an end the part that its flat or saddle takes up is crushed too. Contacts and buckling are no matter of one
 * station.
 * @param index place of the brace among those of its line
 * @returns in the order of its stations; null for what is not a round log
 * @source NDS 3.6.3, 3.7.2, 3.8.1 turned round; own rule: forces held
 */
export function braceSections(
  context: LineCheckContext,
  brace: BraceGeometry,
  index: number,
): readonly (AskedSection | null)[] | null {
  const values = valuesIn(context, brace.id);
  const { stick } = brace;
  if (!values || stick?.kind !== 'round') return null;
  const responses = context.frame.responses.filter(isStrength);
  const at = pushIndex(context.frame.layout, index);
  return stick.profile.map(({ atIn, diameterIn: hasIn }) =>
    askedSection<LineResponse>({
      hasIn,
      takenIn: stick.flatIn,
      ofSize: [],
      responses,
      termsAt: (diameterIn) => {
        const whole = roundArea(diameterIn);
        const ends = endSections(context, brace, diameterIn).filter((end) => Math.abs(end.atIn - atIn) < SAME_PLACE_IN);
        const pressed = Math.min(whole, ...ends.map((end) => end.areaIn2));
        const over = (push: number, allowableLb: number, r: LineResponse) =>
          Math.max(0, push) / (allowableLb * r.combination.durationFactor);
        return [
          { ruleId: 'brace.crushing', ratio: (r) => over(r.values[at]!, pressed * values.FcPsi, r) },
          { ruleId: 'brace.pull', ratio: (r) => over(-r.values[at]!, whole * values.FtPsi, r) },
        ];
      },
    }),
  );
}
