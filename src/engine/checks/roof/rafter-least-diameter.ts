import type { RoundStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { leastAt } from '../least-at.ts';
import { sectionAt } from '../section.ts';
import { roundEndNotchShear } from '../wood/shear.ts';
import { isStretchedSeat, STRETCHED_SEAT } from './rafter-bending.ts';
import type { RafterResponse } from './rafter-responses.ts';
import { seatCutShare, wholeShearArea } from './rafter-shear.ts';
import type { RafterStation } from './rafter-stations.ts';

/**
 * The thinnest pole, station by station, whose bending and shear there would just pass with today's forces, seat cuts and
 * design values held, and that is as thick as the depth of a seat cut asks for. Where a seat cut away from the ends is
 * stretched no pole passes, however thick.
 * @returns [in] in the order of the stations; Infinity where no pole in reach passes, NaN where nothing is asked
 * @source NDS 3.3, 3.4, 4.4.3 turned round; own rule: forces held
 */
export function leastRafterDiameters(
  stations: readonly RafterStation[],
  stick: RoundStick,
  values: DesignValues,
  responses: readonly RafterResponse[],
): readonly number[] {
  const strength = responses.filter((r) => r.combination.purpose === 'strength');
  return stations.map((station) => {
    if (strength.length === 0) return NaN;
    if (!station.isAtEnd && strength.some((r) => isStretchedSeat(station, r))) return Infinity;
    return Math.max(station.cutIn / seatCutShare(station), leastOf(station, stick, values, strength));
  });
}

function leastOf(
  station: RafterStation,
  stick: RoundStick,
  values: DesignValues,
  strength: readonly RafterResponse[],
): number {
  const { index, cutIn } = station;
  return leastAt(stick.flatIn + cutIn, strength, (diameterIn) => {
    const { modulusIn3 } = sectionAt(stick, diameterIn, cutIn);
    const overCutLb = cutIn > 0 ? roundEndNotchShear(values.FvPsi, diameterIn, cutIn) : Infinity;
    const shearLb = Math.min(wholeShearArea(stick, diameterIn) * values.FvPsi, overCutLb);
    return (r) => {
      const twice = isStretchedSeat(station, r) ? STRETCHED_SEAT : 1;
      const bending = (twice * Math.abs(r.moments[index]!)) / modulusIn3 / values.FbPsi;
      const shear = Math.max(Math.abs(r.shearsBefore[index]!), Math.abs(r.shearsAfter[index]!)) / shearLb;
      return Math.max(bending, shear) / r.combination.durationFactor;
    };
  });
}
