import type { RoundStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { askedSection, type AskedSection } from '../asked-section.ts';
import { sectionAt } from '../section.ts';
import { bothWays, thinnestOf } from './purlin-bending.ts';
import type { PurlinLoading, PurlinResponse } from './purlin-loading.ts';
import { actsOn, purlinShear, purlinStretches } from './purlin-stretches.ts';

/**
 * What the thinnest place of a log purlin is asked: bending and shear. One for all its length, since every gap is judged
 * by it.
 * @source NDS 3.3, 3.4 turned round; own rule: forces held
 */
export function purlinSection(loading: PurlinLoading, stick: RoundStick, values: DesignValues): AskedSection | null {
  const stretches = purlinStretches(loading);
  const momentOf = (r: PurlinResponse): number =>
    Math.max(0, ...stretches.filter((stretch) => actsOn(stretch, r)).map((stretch) => bothWays(stretch, r)));
  return askedSection<PurlinResponse>({
    hasIn: thinnestOf(stick),
    takenIn: stick.flatIn,
    ofSize: [],
    responses: loading.responses.filter((r) => r.combination.purpose === 'strength'),
    termsAt: (diameterIn) => {
      const { modulusIn3, shearAreaIn2 } = sectionAt(stick, diameterIn, 0);
      const over = (stress: number, valuePsi: number, r: PurlinResponse) =>
        stress / (valuePsi * r.combination.durationFactor);
      return [
        { ruleId: 'purlin.bending', ratio: (r) => over(momentOf(r) / modulusIn3, values.FbPsi, r) },
        {
          ruleId: 'purlin.shear',
          ratio: (r) => over(purlinShear(loading, Math.hypot(r.square, r.along), r.on) / shearAreaIn2, values.FvPsi, r),
        },
      ];
    },
  });
}
