import { SLIDING } from '../../../data/loads/snow.ts';
import { clause } from '../../../data/sources.ts';
import { put, type Note } from '../../note.ts';
import type { Psf } from '../../units.ts';
import { notNegative } from './givens.ts';

/**
 * Weight of snow that slides off a higher roof, even over fifteen feet from its eave, on top of the balanced snow.
 * @param givens  flat-roof snow of the higher roof [psf], its level distance from eave to ridge [ft]
 * @returns [psf]
 * @throws MisuseError  if either is negative
 * @departs no share of it is taken off for snow that stays up or falls clear (safe side)
 * @source ASCE7 7.9 (7-16)
 */
export function slidingSnow(
  givens: { readonly upperFlatSnowPsf: number; readonly eaveToRidgeFt: number },
  note?: Note,
): Psf {
  const pf = notNegative('upperFlatSnowPsf', givens.upperFlatSnowPsf);
  const W = notNegative('eaveToRidgeFt', givens.eaveToRidgeFt);
  const { share, overFt } = SLIDING;
  const psf = (share * pf * W) / overFt;
  note?.({
    symbol: 'pL',
    words: `Snow slid off the higher roof, even over ${overFt} ft from its eave`,
    formula: `${share} × pf × W / ${overFt}`,
    put: [
      put('pf', pf, 'psf', 'flat-roof snow of the higher roof'),
      put('W', W, 'ft', 'level distance from its eave to its ridge'),
    ],
    result: { value: psf, unit: 'psf' },
    clause: clause('ASCE7', '7.9'),
  });
  return psf as Psf;
}

/**
 * True where snow can slide off a roof.
 * @param risePer12  rise per 12 of the higher roof; null, not known, counts as steep enough
 * @source ASCE7 7.9 (7-16): slippery steeper than 1/4 on 12, others steeper than 2 on 12
 */
export function slides(risePer12: number | null, slippery: boolean): boolean {
  return risePer12 === null || risePer12 > (slippery ? SLIDING.slipperyAbovePer12 : SLIDING.otherAbovePer12);
}

/**
 * How far from the near edge of the lower roof the snow of the higher one lands.
 * @returns [ft]; 0 where the gap lets it fall to the ground
 * @source ASCE7 7.9 (7-16): over a gap only where it is under 15 ft and less than the step
 */
export function slidingReach({ gapFt, stepFt }: { readonly gapFt: number; readonly stepFt: number }): number {
  const s = notNegative('gapFt', gapFt);
  if (s > 0 && s >= notNegative('stepFt', stepFt)) return 0;
  return Math.max(0, SLIDING.overFt - s);
}
