import type { RoundStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { leastAt } from '../least-at.ts';
import { sectionAt } from '../section.ts';
import { bothWays } from './purlin-bending.ts';
import type { PurlinLoading, PurlinResponse } from './purlin-loading.ts';
import { actsOn, purlinShear, purlinStretches } from './purlin-stretches.ts';

/**
 * The thinnest log whose bending and shear as a purlin would just pass with today's loads and design values held: one
 * for all its length, since every gap is judged by the thinnest place.
 * @returns [in]; Infinity where no log in reach passes, NaN where nothing is asked
 * @source NDS 3.3, 3.4 turned round; own rule: loads held
 */
export function leastPurlinDiameter(loading: PurlinLoading, stick: RoundStick, values: DesignValues): number {
  const strength = loading.responses.filter((r) => r.combination.purpose === 'strength');
  if (strength.length === 0) return NaN;
  const stretches = purlinStretches(loading);
  const momentOf = (r: PurlinResponse): number =>
    Math.max(0, ...stretches.filter((stretch) => actsOn(stretch, r)).map((stretch) => bothWays(stretch, r)));
  return leastAt(stick.flatIn, strength, (diameterIn) => {
    const { modulusIn3, shearAreaIn2 } = sectionAt(stick, diameterIn, 0);
    return (r) => {
      const bending = momentOf(r) / modulusIn3 / values.FbPsi;
      const shear = purlinShear(loading, Math.hypot(r.square, r.along), r.on) / shearAreaIn2 / values.FvPsi;
      return Math.max(bending, shear) / r.combination.durationFactor;
    };
  });
}
