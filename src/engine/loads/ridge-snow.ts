import { UNBALANCED } from '../../data/loads/snow.ts';
import type { RoofForm } from '../../data/loads/free-roof-main.ts';
import { SIDE_WORDS } from '../../data/words/sides.ts';
import type { PlaneGeometry, Shelter } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import { stepsOf, type Note } from '../note.ts';
import { feetFromInches, INCHES_PER_FOOT } from '../units.ts';
import { driftHeight } from './site/drift.ts';
import { snowDensity } from './site/snow.ts';
import { narrowLeeSnow, needsUnbalanced, ridgeStrip, windwardSnow } from './site/unbalanced.ts';
import { evenBand, type SnowSurplus } from './snow-surplus.ts';
import { NO_UNEVEN_SNOW, type EvenSnow, type UnevenRoofSnow, type UnevenSnow } from './uneven-snow.ts';

/**
 * Snow that wind carries over the ridge of a gable, from either side. Poles taper: they are not of one section throughout,
 * so that a roof on them takes the rule for wide roofs however narrow it is.
 * @source ASCE7 7.6.1, 7.5.1 (7-16): partial snow is not asked of members from ridge to eave at 1/2 on 12 or steeper
 */
export function ridgeSnow(shelter: Shelter, form: RoofForm | null, snow: EvenSnow): UnevenRoofSnow {
  // a roof of another form is outside the method as a whole
  if (form === null) return NO_UNEVEN_SNOW;
  if (form === 'monoslope') return { ...NO_UNEVEN_SNOW, leftOut: [message('unbalancedWithoutRidge')] };
  const [rise] = shelter.planes.map((p) => p.risePer12);
  const { leastRisePer12: least, greatestRisePer12: greatest } = UNBALANCED;
  if (rise === undefined || !needsUnbalanced(rise)) {
    const leftOut = [message('unbalancedBySlope', { rise: rise ?? 0, least, greatest })];
    return { ...NO_UNEVEN_SNOW, isPartialAcross: !(rise !== undefined && rise >= least), leftOut };
  }
  return {
    ...NO_UNEVEN_SNOW,
    isPartialAcross: false,
    leftOut: [message('partialFromRidgeToEave', { least })],
    cases: shelter.planes.map((lee) => (isNarrow(shelter) ? narrowCase(lee, snow) : wideCase(shelter, lee, snow))),
  };
}

function isNarrow({ planes, rafters }: Shelter): boolean {
  const isLow = planes.every((p) => feetFromInches(p.runIn) <= UNBALANCED.narrowToFt);
  return isLow && rafters.every((r) => r.supports.length === 2 && r.stick !== null && r.stick.kind !== 'round');
}

const named = (lee: PlaneGeometry): Pick<UnevenSnow, 'id' | 'words'> => ({
  id: `snow-unbalanced-${lee.id}`,
  words: message('caseSnowUnbalanced', { toward: lee.downY === 1 ? SIDE_WORDS.yPlus : SIDE_WORDS.yMinus }),
});

function narrowCase(lee: PlaneGeometry, snow: EvenSnow): UnevenSnow {
  const leePsf = narrowLeeSnow(snow);
  return {
    ...named(lee),
    evenPsf: (planeId) => (planeId === lee.id ? leePsf : 0),
    surplus: null,
    figure: { name: 'snowUnbalanced', psf: leePsf },
    steps: () => stepsOf((note) => narrowLeeSnow(snow, note)).steps,
  };
}

function wideCase({ planes }: Shelter, lee: PlaneGeometry, snow: EvenSnow): UnevenSnow {
  const windward = planes.find((p) => p.id !== lee.id)!;
  const build = (note?: Note) => {
    const stays = windwardSnow(snow.balancedPsf, note);
    const driftHeightFt = driftHeight(
      { ...snow, fetchFt: feetFromInches(windward.runIn), leastFetchFt: UNBALANCED.leastFetchFt },
      note,
    );
    const densityPcf = snowDensity(snow.groundSnowPsf, note);
    return { stays, strip: ridgeStrip({ densityPcf, driftHeightFt, risePer12: lee.risePer12 }, note) };
  };
  const { stays, strip } = build();
  const surplus: SnowSurplus = {
    axis: 'y',
    toward: lee.downY,
    zeroIn: lee.highYIn,
    bands: evenBand(strip.psf, strip.widthFt * INCHES_PER_FOOT),
  };
  return {
    ...named(lee),
    evenPsf: (planeId) => (planeId === lee.id ? snow.balancedPsf : stays),
    surplus,
    figure: { name: 'snowUnbalanced', psf: strip.psf },
    steps: () => stepsOf(build).steps,
  };
}
