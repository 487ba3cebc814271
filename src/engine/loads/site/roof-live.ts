import { ROOF_LIVE } from '../../../data/loads/roof-live.ts';
import { clause } from '../../../data/sources.ts';
import { put, type Note } from '../../note.ts';
import type { Psf } from '../../units.ts';
import { notNegative } from './givens.ts';

/**
 * Reduction of roof live load by the area that a member carries.
 * @param tributaryAreaFt2  horizontal area [ft2], zero or above
 * @returns R1, 1 to 0.6
 * @throws MisuseError  if the area is negative or not finite
 * @source ASCE7 4.8.2 (7-16)
 */
export function areaReduction(tributaryAreaFt2: number, note?: Note): number {
  const At = notNegative('tributaryAreaFt2', tributaryAreaFt2);
  const r1 = At <= ROOF_LIVE.fullToFt2 ? 1 : At >= ROOF_LIVE.leastFromFt2 ? ROOF_LIVE.leastFactor : 1.2 - 0.001 * At;
  note?.({
    symbol: 'R1',
    words: 'A large area is never full of people at once',
    formula: '1 to 200 ft²; 1.2 - 0.001 At; 0.6 from 600 ft²',
    put: [put('At', At, 'ft2', 'horizontal area carried')],
    result: { value: r1, unit: '1' },
    clause: clause('ASCE7', '4.8.2'),
  });
  return r1;
}

/**
 * Reduction of roof live load by slope.
 * @param risePer12  rise per foot [in], zero or above
 * @returns R2, 1 to 0.6
 * @throws MisuseError  if the rise is negative or not finite
 * @source ASCE7 4.8.2 (7-16)
 */
export function slopeReduction(risePer12: number, note?: Note): number {
  const F = notNegative('risePer12', risePer12);
  const r2 = F <= ROOF_LIVE.fullToRise ? 1 : F >= ROOF_LIVE.leastFromRise ? ROOF_LIVE.leastFactor : 1.2 - 0.05 * F;
  note?.({
    symbol: 'R2',
    words: 'A steep roof is hard to load',
    formula: '1 to 4 in 12; 1.2 - 0.05 F; 0.6 from 12 in 12',
    put: [put('F', F, 'in', 'rise per foot')],
    result: { value: r2, unit: '1' },
    clause: clause('ASCE7', '4.8.2'),
  });
  return r2;
}

/**
 * Roof live load before any reduction: 20 psf, or what the county sets when that is more.
 * @param countyPsf  set by the county [psf]; null when nobody has asked
 * @returns Lo [psf] of horizontal area
 * @throws MisuseError  if the county's load is negative or not finite
 * @source ASCE7 4.8.2 (7-16)
 */
export function unreducedRoofLive(countyPsf: number | null, note?: Note): Psf {
  const county = notNegative('countyPsf', countyPsf ?? 0);
  const Lo = Math.max(ROOF_LIVE.unreducedPsf, county);
  note?.({
    symbol: 'Lo',
    words: 'Roof live load before reduction',
    formula: 'max(20 psf, L county)',
    put: [
      put('L county', county, 'psf', countyPsf === null ? 'set by the county (not asked yet)' : 'set by the county'),
    ],
    result: { value: Lo, unit: 'psf' },
    clause: clause('ASCE7', '4.8.2'),
  });
  return Lo as Psf;
}

/**
 * Roof live load on a member, reduced by area and slope, 12 to 20 psf.
 * @param givens  horizontal area carried [ft2], rise per foot [in], county's load [psf] or null
 * @returns Lr [psf] of horizontal area
 * @throws MisuseError  if a given is negative or not finite
 * @source ASCE7 4.8.2 (7-16)
 * @departs own rule, safe side: a county's load above 20 psf is taken as set, without reduction
 */
export function reducedRoofLive(
  givens: { readonly tributaryAreaFt2: number; readonly risePer12: number; readonly countyPsf: number | null },
  note?: Note,
): Psf {
  const Lo = unreducedRoofLive(givens.countyPsf, note);
  if (Lo > ROOF_LIVE.unreducedPsf) {
    note?.({
      symbol: 'Lr',
      words: 'Roof live load as the county sets it, without reduction',
      formula: 'Lo',
      put: [put('Lo', Lo, 'psf', 'roof live load before reduction')],
      result: { value: Lo, unit: 'psf' },
      clause: clause('OWN', 'a county load above 20 psf is not reduced'),
    });
    return Lo;
  }
  const R1 = areaReduction(givens.tributaryAreaFt2, note);
  const R2 = slopeReduction(givens.risePer12, note);
  const Lr = Math.max(Lo * R1 * R2, ROOF_LIVE.leastPsf);
  note?.({
    symbol: 'Lr',
    words: 'Roof live load on this member',
    formula: 'max(Lo R1 R2, 12 psf)',
    put: [
      put('Lo', Lo, 'psf', 'roof live load before reduction'),
      put('R1', R1, '1', 'reduction by area'),
      put('R2', R2, '1', 'reduction by slope'),
    ],
    result: { value: Lr, unit: 'psf' },
    clause: clause('ASCE7', '4.8.2'),
  });
  return Lr as Psf;
}
