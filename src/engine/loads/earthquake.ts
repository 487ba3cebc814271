import { CATEGORY_E_S1, MOVING_SNOW, TIMBER_FRAME, VERTICAL, type SeismicCategory } from '../../data/loads/seismic.ts';
import { notGiven, outside, type Verdict } from '../check.ts';
import type { Shelter } from '../geometry/shelter.ts';
import { message, type Message } from '../message.ts';
import { put, type Note } from '../note.ts';
import { isNamed } from '../project/is-named.ts';
import type { Project } from '../project/model.ts';
import { feetFromInches } from '../units.ts';
import {
  approximatePeriod,
  greatestS1,
  redundancy,
  seismicCategory,
  seismicImportance,
  seismicResponseCoefficient,
} from './site/seismic.ts';

/** An earthquake as it acts on any share of the shelter's weight. */
export interface Earthquake {
  readonly category: SeismicCategory;
  /** share of the weight that pushes sideways, either way, strength level, redundancy counted */
  readonly pushShare: number;
  /** vertical effect, either way, as a share of the dead load */
  readonly verticalShare: number;
  /** snow that moves with the roof, of level area [psf] */
  readonly movingSnowPsf: number;
}

/**
 * The earthquake that the site asks for: none where nothing is typed in, nor in category A, which asks for no more than
 * the one per cent push. A response modification above that of timber posts counts only with the name of who set it.
 * @param heightFt  highest level of the roof above the ground [ft]
 * @param snowPsf  roof snow, null while it is not known [psf]
 * @source ASCE7 12.8, 12.4.2, 12.7.2 (7-16), Table 12.2-1
 */
export function earthquakeOf(
  { seismic, riskCategory }: Project['site'],
  heightFt: number,
  snowPsf: number | null,
  note?: Note,
): Earthquake | null {
  if (!seismic) return null;
  const s1 = seismic.s1 ?? greatestS1(seismic.sd1, note);
  const category = seismicCategory({ ...seismic, s1 }, note);
  if (category === 'A') return null;
  const r = seismic.r > TIMBER_FRAME.R && !isNamed(seismic.rGivenBy) ? TIMBER_FRAME.R : seismic.r;
  const importance = seismicImportance(riskCategory.value, note);
  const periodS = approximatePeriod(heightFt, note);
  const { sds, sd1 } = seismic;
  const Cs = seismicResponseCoefficient({ sds, sd1, s1, r, importance, periodS }, note);
  const rho = redundancy(category, note);
  return {
    category,
    pushShare: pushShare(Cs, rho, note),
    verticalShare: VERTICAL.perSds * sds,
    movingSnowPsf: movingSnow(snowPsf ?? 0, note),
  };
}

function pushShare(Cs: number, rho: number, note?: Note): number {
  note?.({
    symbol: 'E / W',
    words: 'share of the weight that an earthquake pushes sideways, strength level',
    formula: 'ρ × Cs',
    put: [put('ρ', rho, '1', 'redundancy'), put('Cs', Cs, '1', 'seismic response coefficient')],
    result: { value: rho * Cs, unit: '1' },
    clause: TIMBER_FRAME.clause,
  });
  return rho * Cs;
}

function movingSnow(snowPsf: number, note?: Note): number {
  const moving = snowPsf > MOVING_SNOW.abovePsf ? MOVING_SNOW.share * snowPsf : 0;
  note?.({
    symbol: 'ws',
    words: 'snow that moves with the roof',
    formula: '0.2 ps above 30 psf, else none',
    put: [put('ps', snowPsf, 'psf', 'roof snow')],
    result: { value: moving, unit: 'psf' },
    clause: MOVING_SNOW.clause,
  });
  return moving;
}

/** Highest point of the roof above the lowest ground [ft]. */
export const highestFt = ({ planes, lowestGradeZIn }: Shelter): number =>
  feetFromInches(Math.max(...planes.map((p) => p.highZIn)) - lowestGradeZIn);

interface Doubt {
  readonly name: string;
  readonly verdict: Verdict;
}

/** What keeps the earthquake that is typed in from being judged in full, each with its reason. */
export function earthquakeDoubts({ seismic }: Project['site'], heightFt: number): readonly Doubt[] {
  if (!seismic) return [];
  const doubts: Doubt[] = [];
  const doubt = (name: string, verdict: Verdict) => doubts.push({ name, verdict });
  const bound = greatestS1(seismic.sd1);
  if (seismic.s1 === undefined && bound >= CATEGORY_E_S1)
    doubt('s1', notGiven(message('seismicS1NotGiven', { s1: bound, limit: CATEGORY_E_S1 })));
  else if (seismicCategory({ ...seismic, s1: seismic.s1 ?? bound }) === 'E')
    doubt('category', outside(message('seismicCategoryE', { limit: CATEGORY_E_S1 })));
  if (seismic.r > TIMBER_FRAME.R && !isNamed(seismic.rGivenBy))
    doubt('r', notGiven(message('seismicRNotNamed', { r: seismic.r, used: TIMBER_FRAME.R })));
  if (heightFt > TIMBER_FRAME.tallestFt)
    doubt('height', outside(message('seismicTooTall', { heightFt, limitFt: TIMBER_FRAME.tallestFt })));
  return doubts;
}

/** Why no earthquake is run; null where one is. */
export function whyNoEarthquake(site: Project['site'], earthquake: Earthquake | null): Message | null {
  if (earthquake) return null;
  return message(site.seismic ? 'seismicCategoryA' : 'seismicLeftOut');
}
