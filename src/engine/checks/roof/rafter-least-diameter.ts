import type { RoundStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { askedSection, type AskedSection, type Term } from '../asked-section.ts';
import { sectionAt } from '../section.ts';
import { roundEndNotchShear } from '../wood/shear.ts';
import { isStretchedSeat, STRETCHED_SEAT } from './rafter-bending.ts';
import type { RafterResponse } from './rafter-responses.ts';
import { seatCutShare, wholeShearArea } from './rafter-shear.ts';
import type { RafterStation } from './rafter-stations.ts';

/**
 * What the sections of a pole rafter are asked, station by station: bending and shear there, and the thickness that the
 * depth of a seat cut asks for. Where a seat cut away from the ends is stretched no pole passes, however thick.
 * @returns in the order of the stations
 * @source NDS 3.3, 3.4, 4.4.3 turned round; own rule: forces held
 */
export function rafterSections(
  stations: readonly RafterStation[],
  stick: RoundStick,
  values: DesignValues,
  responses: readonly RafterResponse[],
): readonly (AskedSection | null)[] {
  const strength = responses.filter((r) => r.combination.purpose === 'strength');
  return stations.map((station) => {
    const isRefused = !station.isAtEnd && strength.some((r) => isStretchedSeat(station, r));
    return askedSection<RafterResponse>({
      hasIn: station.depthIn,
      takenIn: stick.flatIn + station.cutIn,
      ofSize: [
        { ruleId: 'rafter.shear', leastIn: station.cutIn / seatCutShare(station) },
        { ruleId: 'rafter.bending', leastIn: isRefused ? Infinity : 0 },
      ],
      responses: strength,
      termsAt: (diameterIn) => termsOf(station, stick, values, diameterIn),
    });
  });
}

function termsOf(
  station: RafterStation,
  stick: RoundStick,
  values: DesignValues,
  diameterIn: number,
): readonly Term<RafterResponse>[] {
  const { index, cutIn } = station;
  const { modulusIn3 } = sectionAt(stick, diameterIn, cutIn, station.bored);
  const overCutLb = cutIn > 0 ? roundEndNotchShear(values.FvPsi, diameterIn, cutIn) : Infinity;
  const shearLb = Math.min(wholeShearArea(stick, diameterIn) * values.FvPsi, overCutLb);
  return [
    {
      ruleId: 'rafter.bending',
      ratio: (r) => {
        const twice = isStretchedSeat(station, r) ? STRETCHED_SEAT : 1;
        return (twice * Math.abs(r.moments[index]!)) / modulusIn3 / (values.FbPsi * r.combination.durationFactor);
      },
    },
    {
      ruleId: 'rafter.shear',
      ratio: (r) => {
        const V = Math.max(Math.abs(r.shearsBefore[index]!), Math.abs(r.shearsAfter[index]!));
        return V / (shearLb * r.combination.durationFactor);
      },
    },
  ];
}
