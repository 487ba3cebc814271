import { BARE_AT_DEG, SLOPE_LINES, SNOW_LIMITS } from '../../../data/loads/snow.ts';
import { clause, remembered } from '../../../data/sources.ts';
import { DataError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import type { Pcf, Psf } from '../../units.ts';
import { notNegative } from './givens.ts';

/**
 * Snow on a flat roof.
 * @param givens  ground snow [psf], exposure factor Ce, thermal factor Ct, importance factor Is
 * @returns pf [psf] of horizontal area
 * @throws MisuseError  if ground snow is negative or a factor is not above zero
 * @source ASCE7 Eq. 7.3-1 (7-16)
 */
export function flatRoofSnow(
  givens: { readonly groundSnowPsf: number; readonly ce: number; readonly ct: number; readonly is: number },
  note?: Note,
): Psf {
  const pg = notNegative('groundSnowPsf', givens.groundSnowPsf);
  const Ce = positive('ce', givens.ce);
  const Ct = positive('ct', givens.ct);
  const Is = positive('is', givens.is);
  const pf = SNOW_LIMITS.flatRoofShare * Ce * Ct * Is * pg;
  note?.({
    symbol: 'pf',
    words: 'Snow on a flat roof here',
    formula: '0.7 Ce Ct Is pg',
    put: [
      put('Ce', Ce, '1', 'exposure to wind'),
      put('Ct', Ct, '1', 'warmth of the roof'),
      put('Is', Is, '1', 'importance'),
      put('pg', pg, 'psf', 'ground snow'),
    ],
    result: { value: pf, unit: 'psf' },
    clause: clause('ASCE7', 'Eq. 7.3-1'),
  });
  return pf as Psf;
}

export interface SlopeGivens {
  readonly slopeDeg: number;
  /** thermal factor of the roof */
  readonly ct: number;
  /** metal, slate, glass or membrane; shingles are not. On a warm roof (Ct at most 1) only when well insulated. */
  readonly slippery: boolean;
  /** nothing keeps the snow from sliding off, and there is room for all of it below the eave */
  readonly unobstructed: boolean;
}

/**
 * Roof slope factor: how much of the flat-roof snow stays on a sloped roof. The straight lines are from memory.
 * @returns Cs, 1 to 0
 * @throws MisuseError  if the slope is negative or Ct is not above zero
 * @limits  a Ct between two printed curves takes the colder one (own rule, safe side)
 * @source ASCE7 Fig. 7.4-1 and commentary C7.4 (7-16)
 */
export function slopeFactor({ slopeDeg, ct, slippery, unobstructed }: SlopeGivens, note?: Note): number {
  const slope = notNegative('slopeDeg', slopeDeg);
  const line = SLOPE_LINES.find((candidate) => positive('ct', ct) <= candidate.upToCt);
  if (!line) throw new DataError('slopeLines', ct, 'a last line without end');
  const sheds = slippery && unobstructed;
  const fullTo = sheds ? line.slipperyFullToDeg : line.otherFullToDeg;
  const falling = 1 - (slope - fullTo) / (BARE_AT_DEG - fullTo);
  const cs = Math.min(1, Math.max(0, falling));
  note?.({
    symbol: 'Cs',
    words: sheds ? 'Share that stays on this slope, slippery and unobstructed' : 'Share that stays on this slope',
    formula: '1 - (θ - θ0) / (70° - θ0), between 0 and 1',
    put: [
      put('θ', slopeDeg, 'deg', 'roof slope'),
      put('θ0', fullTo, 'deg', 'full snow up to this slope'),
      put('Ct', ct, '1', 'warmth of the roof, chooses θ0'),
    ],
    result: { value: cs, unit: '1' },
    clause: remembered('ASCE7', 'Fig. 7.4-1'),
  });
  return cs;
}

/**
 * Balanced snow on a sloped roof.
 * @returns ps [psf] of horizontal area
 * @throws MisuseError  if either given is negative
 * @source ASCE7 Eq. 7.4-1 (7-16)
 */
export function slopedRoofSnow(
  { flatRoofSnowPsf, slopeFactor: cs }: { readonly flatRoofSnowPsf: number; readonly slopeFactor: number },
  note?: Note,
): Psf {
  const ps = notNegative('slopeFactor', cs) * notNegative('flatRoofSnowPsf', flatRoofSnowPsf);
  note?.({
    symbol: 'ps',
    words: 'Balanced snow on this roof, of horizontal area',
    formula: 'Cs pf',
    put: [put('Cs', cs, '1', 'slope factor'), put('pf', flatRoofSnowPsf, 'psf', 'flat-roof snow')],
    result: { value: ps, unit: 'psf' },
    clause: clause('ASCE7', 'Eq. 7.4-1'),
  });
  return ps as Psf;
}

/**
 * Least snow on a low-slope roof: a uniform case of its own, never together with drift, sliding or partial snow.
 * @returns pm [psf] of horizontal area; 0 from 15 degrees on, where it does not apply
 * @throws MisuseError  if slope or ground snow is negative or the importance factor is not above zero
 * @source ASCE7 7.3.4 (7-16)
 */
export function leastLowSlopeSnow(
  givens: { readonly groundSnowPsf: number; readonly is: number; readonly slopeDeg: number },
  note?: Note,
): Psf {
  const pg = notNegative('groundSnowPsf', givens.groundSnowPsf);
  const Is = positive('is', givens.is);
  const isLow = notNegative('slopeDeg', givens.slopeDeg) < SNOW_LIMITS.lowSlopeBelowDeg;
  const pm = isLow ? Is * Math.min(pg, SNOW_LIMITS.lowSlopeGroundPsf) : 0;
  note?.({
    symbol: 'pm',
    words: isLow
      ? 'Least snow on a low slope, a case of its own'
      : 'No least snow at this slope (under 15 degrees only)',
    formula: isLow ? 'Is min(pg, 20 psf)' : '0 from 15 degrees on',
    put: [
      put('Is', Is, '1', 'importance'),
      put('pg', pg, 'psf', 'ground snow'),
      put('θ', givens.slopeDeg, 'deg', 'roof slope'),
    ],
    result: { value: pm, unit: 'psf' },
    clause: clause('ASCE7', '7.3.4'),
  });
  return pm as Psf;
}

/**
 * Density of snow on the roof.
 * @param groundSnowPsf  [psf], zero or above
 * @returns γ [pcf], at most 30
 * @throws MisuseError  if ground snow is negative or not finite
 * @source ASCE7 Eq. 7.7-1 (7-16)
 */
export function snowDensity(groundSnowPsf: number, note?: Note): Pcf {
  const { densityPerPsf, densityBasePcf, greatestDensityPcf } = SNOW_LIMITS;
  const gamma = Math.min(
    densityPerPsf * notNegative('groundSnowPsf', groundSnowPsf) + densityBasePcf,
    greatestDensityPcf,
  );
  note?.({
    symbol: 'γ',
    words: 'Density of the snow',
    formula: 'min(0.13 pg + 14, 30)',
    put: [put('pg', groundSnowPsf, 'psf', 'ground snow')],
    result: { value: gamma, unit: 'pcf' },
    clause: clause('ASCE7', 'Eq. 7.7-1'),
  });
  return gamma as Pcf;
}

/**
 * Rain on snow, added to the balanced case alone, on nearly flat roofs where ground snow is light.
 * @param givens  ground snow [psf], slope [deg], level distance from eave to ridge [ft]
 * @returns surcharge [psf], 5 or 0
 * @throws MisuseError  if ground snow or slope is negative or the width is not above zero
 * @source ASCE7 7.10 (7-16)
 */
export function rainOnSnowSurcharge(
  givens: { readonly groundSnowPsf: number; readonly slopeDeg: number; readonly eaveToRidgeFt: number },
  note?: Note,
): Psf {
  const pg = notNegative('groundSnowPsf', givens.groundSnowPsf);
  const slope = notNegative('slopeDeg', givens.slopeDeg);
  const W = positive('eaveToRidgeFt', givens.eaveToRidgeFt);
  const applies = pg > 0 && pg <= SNOW_LIMITS.rainOnSnowGroundPsf && slope < W / SNOW_LIMITS.rainOnSnowWidthPerDeg;
  const surcharge = applies ? SNOW_LIMITS.rainOnSnowPsf : 0;
  note?.({
    symbol: 'pr',
    words: 'Rain on snow, on the balanced case',
    formula: '5 psf where 0 < pg ≤ 20 psf and θ < W / 50, else 0',
    put: [
      put('pg', pg, 'psf', 'ground snow'),
      put('θ', slope, 'deg', 'roof slope'),
      put('W', W, 'ft', 'eave to ridge, level'),
    ],
    result: { value: surcharge, unit: 'psf' },
    clause: clause('ASCE7', '7.10'),
  });
  return surcharge as Psf;
}
