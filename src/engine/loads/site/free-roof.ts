import {
  ALONG_RIDGE_BANDS,
  FREE_ROOF_RANGE,
  MONOSLOPE_MAIN,
  PITCHED_MAIN,
  type Flow,
  type MainFrameRow,
  type RoofForm,
  type WindCase,
  type WindDirection,
} from '../../../data/loads/free-roof-main.ts';
import { clause, type ClauseRef } from '../../../data/sources.ts';
import { DataError, MisuseError, positive } from '../../errors.ts';
import { message, type Message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import type { Psf } from '../../units.ts';
import { betweenSlopes, straight, type Bracket } from './between-slopes.ts';
import { finite, notNegative } from './givens.ts';

export type MainFrameAnswer =
  | { readonly ok: true; readonly windward: number; readonly leeward: number }
  | { readonly ok: false; readonly reason: Message };

/** Why a slope lies outside the free-roof figures; null within them. */
export function slopeBeyondFigure(slopeDeg: number): Message | null {
  const limitDeg = FREE_ROOF_RANGE.greatestSlopeDeg;
  return notNegative('slopeDeg', slopeDeg) > limitDeg ? message('slopeOverFigure', { slopeDeg, limitDeg }) : null;
}

/**
 * Net pressure coefficients of a free (open) roof for frame lines, posts and piers, wind across the ridge.
 * Normal to the roof, plus is down on the top face. All four of direction and case must be run: which eave the wind
 * meets at 0 was read from the signs (0 lifts a monoslope, so it meets the high eave).
 * @param slopeDeg  roof slope [deg], zero or above
 * @param windDirection  0 or 180, see `WindDirection`
 * @returns coefficients of the windward and leeward half of the slope; above 45 degrees why there are none
 * @throws MisuseError  if the slope is negative or not finite
 * @limits  slope to 45 degrees; straight between rows from 7.5 on, the row of 0 below that (a jump, as printed);
 *   height over length 0.25 to 1 is for the caller to mark
 * @source ASCE7 Fig. 27.3-4 (monoslope) and 27.3-5 (pitched) (7-16)
 * @departs nothing; two disputed cells are recorded in the table
 */
export function mainFrameCoefficients(
  form: RoofForm,
  slopeDeg: number,
  windDirection: WindDirection,
  windCase: WindCase,
  flow: Flow,
  note?: Note,
): MainFrameAnswer {
  const beyond = slopeBeyondFigure(slopeDeg);
  if (beyond) return { ok: false, reason: beyond };
  const { low, high, share } = rowsOf(form, slopeDeg, windCase);
  const [windwardLow, leewardLow] = low.coefficients[windDirection][flow];
  const [windwardHigh, leewardHigh] = high.coefficients[windDirection][flow];
  const windward = straight(windwardLow, windwardHigh, share);
  const leeward = straight(leewardLow, leewardHigh, share);
  if (note) {
    const figure = clause('ASCE7', form === 'monoslope' ? 'Fig. 27.3-4' : 'Fig. 27.3-5');
    const where = `case ${windCase}, wind ${windDirection}, ${flow} flow`;
    const told = { low, high, slopeDeg, figure };
    noteBetween(told, 'CNW', `Windward half, ${where}`, windwardLow, windwardHigh, windward, note);
    noteBetween(told, 'CNL', `Leeward half, ${where}`, leewardLow, leewardHigh, leeward, note);
  }
  return { ok: true, windward, leeward };
}

/** Below 7.5 degrees both forms take the monoslope row of 0: the pitched figure says so and has no row of its own. */
function rowsOf(form: RoofForm, slopeDeg: number, windCase: WindCase): Bracket<MainFrameRow> {
  const isFlat = slopeDeg < FREE_ROOF_RANGE.interpolatedFromDeg;
  const figure = form === 'monoslope' || isFlat ? MONOSLOPE_MAIN : PITCHED_MAIN;
  const rows = figure.filter((row) => row.windCase === windCase);
  return betweenSlopes(rows, isFlat ? 0 : slopeDeg);
}

interface Told {
  readonly low: MainFrameRow;
  readonly high: MainFrameRow;
  readonly slopeDeg: number;
  readonly figure: ClauseRef;
}

function noteBetween(
  told: Told,
  symbol: string,
  words: string,
  low: number,
  high: number,
  value: number,
  note: Note,
): void {
  const { slopeDeg, figure } = told;
  note({
    symbol,
    words,
    formula: told.low === told.high ? 'as printed' : 'C1 + (C2 - C1) (θ - θ1) / (θ2 - θ1)',
    put: [
      put('θ', slopeDeg, 'deg', 'roof slope'),
      put('θ1', told.low.slopeDeg, 'deg', 'printed slope below'),
      put('θ2', told.high.slopeDeg, 'deg', 'printed slope above'),
      put('C1', low, '1', 'printed below'),
      put('C2', high, '1', 'printed above'),
    ],
    result: { value, unit: '1' },
    clause: figure,
  });
}

/**
 * Net coefficient with the wind along the ridge at one distance from the windward edge.
 * @param distanceFt  from the windward edge, level [ft], zero or above
 * @param heightFt  mean roof height [ft]
 * @returns CN, plus is down
 * @throws MisuseError  if a length is negative, not finite, or the height is zero
 * @source ASCE7 Fig. 27.3-7 (7-16)
 */
export function alongRidgeCoefficient(distanceFt: number, heightFt: number, windCase: WindCase, flow: Flow): number {
  const heights = notNegative('distanceFt', distanceFt) / positive('heightFt', heightFt);
  const band = ALONG_RIDGE_BANDS.find((candidate) => heights <= candidate.toHeights);
  if (!band) throw new DataError('alongRidgeBands', heights, 'a last band without end');
  return band.coefficients[flow][windCase];
}

/**
 * Mean of the along-ridge bands over a strip of roof: what a frame line or a rafter there carries.
 * @param fromFt  nearer edge of the strip, from the windward edge of the roof [ft]
 * @param toFt    farther edge [ft], beyond `fromFt`
 * @param heightFt  mean roof height [ft]
 * @returns CN, plus is down
 * @throws MisuseError  if a length is negative or not finite, or the strip has no width
 * @source ASCE7 Fig. 27.3-7 (7-16); the mean is by width
 */
export function alongRidgeMean(
  fromFt: number,
  toFt: number,
  heightFt: number,
  windCase: WindCase,
  flow: Flow,
  note?: Note,
): number {
  const h = positive('heightFt', heightFt);
  if (!(finite('toFt', toFt) > notNegative('fromFt', fromFt))) {
    throw new MisuseError('toFt', toFt, `more than ${fromFt} ft`);
  }
  let sum = 0;
  let bandFromFt = 0;
  for (const band of ALONG_RIDGE_BANDS) {
    const bandToFt = band.toHeights * h;
    const widthFt = Math.min(toFt, bandToFt) - Math.max(fromFt, bandFromFt);
    if (widthFt > 0) sum += widthFt * band.coefficients[flow][windCase];
    bandFromFt = bandToFt;
  }
  const mean = sum / (toFt - fromFt);
  note?.({
    symbol: 'CN',
    words: `Wind along the ridge, case ${windCase}, ${flow} flow, mean over the strip`,
    formula: 'Σ CN,band b_band / (x2 - x1), bands 0 to h, h to 2h, beyond',
    put: [
      put('x1', fromFt, 'ft', 'strip begins, from the windward edge'),
      put('x2', toFt, 'ft', 'strip ends'),
      put('h', heightFt, 'ft', 'mean roof height'),
      ...ALONG_RIDGE_BANDS.map((band, i) => put(`CN${i + 1}`, band.coefficients[flow][windCase], '1', `band ${i + 1}`)),
    ],
    result: { value: mean, unit: '1' },
    clause: clause('ASCE7', 'Fig. 27.3-7'),
  });
  return mean;
}

/**
 * Net design pressure on a free roof for the main frame, strength level, normal to the roof.
 * @param coefficient  CN, plus is down
 * @returns p [psf], plus is down
 * @throws MisuseError  if q or G is not above zero or CN is not finite
 * @source ASCE7 Eq. 27.3-2 (7-16)
 */
export function mainFramePressure(
  { velocityPressurePsf, gustFactor }: { readonly velocityPressurePsf: number; readonly gustFactor: number },
  coefficient: number,
  note?: Note,
): Psf {
  const p =
    positive('velocityPressurePsf', velocityPressurePsf) *
    positive('gustFactor', gustFactor) *
    finite('coefficient', coefficient);
  note?.({
    symbol: 'p',
    words: 'Wind on the roof, main frame, strength level, plus is down',
    formula: 'q G CN',
    put: [
      put('q', velocityPressurePsf, 'psf', 'velocity pressure'),
      put('G', gustFactor, '1', 'gust-effect factor'),
      put('CN', coefficient, '1', 'net coefficient'),
    ],
    result: { value: p, unit: 'psf' },
    clause: clause('ASCE7', 'Eq. 27.3-2'),
  });
  return p as Psf;
}
