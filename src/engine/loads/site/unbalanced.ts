import { UNBALANCED } from '../../../data/loads/snow.ts';
import { clause } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { notNegative } from './givens.ts';

/**
 * True where wind must be thought to carry snow over a ridge.
 * @source ASCE7 7.6.1 (7-16): not for slopes above 7 on 12 or under 1/2 on 12
 */
export const needsUnbalanced = (risePer12: number): boolean =>
  risePer12 >= UNBALANCED.leastRisePer12 && risePer12 <= UNBALANCED.greatestRisePer12;

/**
 * Snow on the lee side of a narrow gable of simple rafters: the ground snow; the other side is bare.
 * @param givens  ground snow [psf], importance factor, balanced snow here, the county's included [psf]
 * @returns [psf] of horizontal area, not under the balanced snow (own rule)
 * @throws MisuseError  if a snow is negative or the importance factor is not above zero
 * @source ASCE7 7.6.1 (7-16): to 20 ft from eave to ridge
 */
export function narrowLeeSnow(
  givens: { readonly groundSnowPsf: number; readonly is: number; readonly balancedPsf: number },
  note?: Note,
): number {
  const pg = notNegative('groundSnowPsf', givens.groundSnowPsf);
  const Is = positive('is', givens.is);
  const lee = Math.max(Is * pg, notNegative('balancedPsf', givens.balancedPsf));
  note?.({
    symbol: 'pu',
    words: 'Snow on the lee side, the other side bare',
    formula: 'max(Is × pg, S)',
    put: [
      put('Is', Is, '1', 'importance'),
      put('pg', pg, 'psf', 'ground snow'),
      put('S', givens.balancedPsf, 'psf', 'balanced snow'),
    ],
    result: { value: lee, unit: 'psf' },
    clause: clause('ASCE7', '7.6.1'),
  });
  return lee;
}

/**
 * Snow that stays on the side of the wind.
 * @returns [psf] of horizontal area
 * @source ASCE7 7.6.1 (7-16): 0.3 of the balanced snow
 */
export function windwardSnow(balancedPsf: number, note?: Note): number {
  const psf = UNBALANCED.windwardShare * notNegative('balancedPsf', balancedPsf);
  note?.({
    symbol: 'pw',
    words: 'Snow that stays on the side of the wind',
    formula: `${UNBALANCED.windwardShare} × S`,
    put: [put('S', balancedPsf, 'psf', 'balanced snow')],
    result: { value: psf, unit: 'psf' },
    clause: clause('ASCE7', '7.6.1'),
  });
  return psf;
}

/** Even snow beside the ridge on the lee side, on top of the balanced snow. */
export interface RidgeStrip {
  readonly psf: number;
  readonly widthFt: number;
}

/**
 * What wind lays beside the ridge on the lee side.
 * @param givens  drift height [ft], density [pcf], rise per 12 of the lee side
 * @returns weight [psf] and level width from the ridge [ft]
 * @throws MisuseError  if the height is negative, density or rise not above zero
 * @source ASCE7 7.6.1 (7-16): hd γ / √S over 8 √S hd / 3, S the run for a rise of one
 */
export function ridgeStrip(
  givens: { readonly driftHeightFt: number; readonly densityPcf: number; readonly risePer12: number },
  note?: Note,
): RidgeStrip {
  const hd = notNegative('driftHeightFt', givens.driftHeightFt);
  const gamma = positive('densityPcf', givens.densityPcf);
  const S = 12 / positive('risePer12', givens.risePer12);
  const psf = (hd * gamma) / Math.sqrt(S);
  const widthFt = UNBALANCED.widthPerHeight * Math.sqrt(S) * hd;
  const run = put('R', S, '1', 'run for a rise of one');
  const height = put('hd', hd, 'ft', 'drift height');
  note?.({
    symbol: 'pr',
    words: 'Snow beside the ridge on the lee side, on top of the balanced snow',
    formula: 'hd × γ / sqrt(R)',
    put: [height, put('γ', gamma, 'pcf', 'density of the snow'), run],
    result: { value: psf, unit: 'psf' },
    clause: clause('ASCE7', '7.6.1'),
  });
  note?.({
    symbol: 'w',
    words: 'Its level width from the ridge',
    formula: '8 / 3 × hd × sqrt(R)',
    put: [height, run],
    result: { value: widthFt, unit: 'ft' },
    clause: clause('ASCE7', '7.6.1'),
  });
  return { psf, widthFt };
}
