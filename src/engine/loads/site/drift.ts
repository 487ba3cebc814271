import { DRIFT, LEAST_DRIFT_FETCH } from '../../../data/loads/snow.ts';
import { clause, remembered } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import type { Feet, Psf } from '../../units.ts';
import { notNegative } from './givens.ts';

/**
 * Height of the drift that wind can carry off a roof.
 * @param givens  ground snow [psf], importance Is, length of the roof along the wind [ft], the least length that counts [ft]
 * @returns hd, zero or above [ft]
 * @throws MisuseError  if ground snow or length is negative or the importance factor is not above zero
 * @limits  where the root of Is stands is not seen: on the first term, or on all; the greater height is taken (own rule)
 * @source ASCE7 Fig. 7.6-1 (7-16); the root of Is from memory
 */
export function driftHeight(
  givens: {
    readonly groundSnowPsf: number;
    readonly is: number;
    readonly fetchFt: number;
    readonly leastFetchFt?: number;
  },
  note?: Note,
): Feet {
  const pg = notNegative('groundSnowPsf', givens.groundSnowPsf);
  const Is = positive('is', givens.is);
  const lu = Math.max(notNegative('fetchFt', givens.fetchFt), givens.leastFetchFt ?? LEAST_DRIFT_FETCH.ft);
  const root = Math.sqrt(Is);
  const { perFetch, morePsf, lessFt } = DRIFT;
  const reach = root * perFetch * Math.cbrt(lu) * (pg + morePsf) ** 0.25;
  const hd = Math.max(0, reach - lessFt * Math.min(1, root));
  note?.({
    symbol: 'hd',
    words: 'Height of the drift that the wind can build',
    formula: `max(0, sqrt(Is) × ${perFetch} × lu^(1/3) × (pg + ${morePsf})^(1/4) - ${lessFt} × min(1, sqrt(Is)))`,
    put: [
      put('Is', Is, '1', 'importance'),
      put('lu', lu, 'ft', 'length of roof that the snow comes from; a shorter one counts as the least length'),
      put('pg', pg, 'psf', 'ground snow'),
    ],
    result: { value: hd, unit: 'ft' },
    clause: remembered('ASCE7', 'Fig. 7.6-1'),
  });
  return hd as Feet;
}

/**
 * Height of the drift where the wind comes over the lower roof against the step.
 * @returns height [ft]
 * @source ASCE7 7.7.1 (7-16)
 */
export function windwardDriftHeight(heightFt: number, note?: Note): Feet {
  const hw = DRIFT.windwardShare * notNegative('heightFt', heightFt);
  note?.({
    symbol: 'hw',
    words: 'Height of the drift where wind comes over the lower roof',
    formula: `${DRIFT.windwardShare} × hd`,
    put: [put('hd', heightFt, 'ft', 'drift height with the length of the lower roof')],
    result: { value: hw, unit: 'ft' },
    clause: clause('ASCE7', '7.7.1'),
  });
  return hw as Feet;
}

/**
 * The higher of the two drifts that wind can build against a step from either side.
 * @returns height [ft]
 * @source ASCE7 7.7.1 (7-16)
 */
export function greaterDrift(leeFt: number, windwardFt: number, note?: Note): Feet {
  const hd = Math.max(notNegative('leeFt', leeFt), notNegative('windwardFt', windwardFt));
  note?.({
    symbol: 'hd',
    words: 'The higher of the two governs',
    formula: 'max(hl, hw)',
    put: [
      put('hl', leeFt, 'ft', 'wind over the higher roof first'),
      put('hw', windwardFt, 'ft', 'wind over the lower roof first'),
    ],
    result: { value: hd, unit: 'ft' },
    clause: clause('ASCE7', '7.7.1'),
  });
  return hd as Feet;
}

/**
 * Clear height of a step above the snow that lies on the lower roof.
 * @param givens  step [ft], balanced snow of the lower roof [psf], density of the snow [pcf]
 * @returns hc, zero where the snow fills the step [ft]
 * @throws MisuseError  if step or snow is negative or the density is not above zero
 * @source ASCE7 7.7.1 (7-16)
 */
export function clearHeight(
  givens: { readonly stepFt: number; readonly balancedPsf: number; readonly densityPcf: number },
  note?: Note,
): Feet {
  const h = notNegative('stepFt', givens.stepFt);
  const ps = notNegative('balancedPsf', givens.balancedPsf);
  const gamma = positive('densityPcf', givens.densityPcf);
  const hc = Math.max(0, h - ps / gamma);
  note?.({
    symbol: 'hc',
    words: 'Clear height of the step above the balanced snow',
    formula: 'max(0, h - ps / γ)',
    put: [
      put('h', h, 'ft', 'step up to the higher roof'),
      put('ps', ps, 'psf', 'balanced snow of the lower roof'),
      put('γ', gamma, 'pcf', 'density of the snow'),
    ],
    result: { value: hc, unit: 'ft' },
    clause: clause('ASCE7', '7.7.1'),
  });
  return hc as Feet;
}

/** A triangle of snow: its height at its start and its width [ft]. */
export interface DriftShape {
  readonly heightFt: number;
  readonly widthFt: number;
}

/**
 * Drift against a step: no higher than the step, then wider, but not without end.
 * @returns height and width [ft]
 * @departs own rule: a drift that the standard lets go because the clear height is under a fifth of the snow's depth stays;
 *   leaving it out would make more snow give less load
 * @source ASCE7 7.7.1 (7-16)
 */
export function stepDrift(driftHeightFt: number, clearHeightFt: number, note?: Note): DriftShape {
  const hd = notNegative('driftHeightFt', driftHeightFt);
  const hc = notNegative('clearHeightFt', clearHeightFt);
  const { widthPerHeight, widthPerClearHeight } = DRIFT;
  const isCapped = hd > hc;
  const heightFt = Math.min(hd, hc);
  const wide = isCapped ? (hc === 0 ? 0 : (widthPerHeight * hd ** 2) / hc) : widthPerHeight * hd;
  const widthFt = Math.min(wide, widthPerClearHeight * hc);
  const heights = [put('hd', hd, 'ft', 'drift height'), put('hc', hc, 'ft', 'clear height of the step')];
  note?.({
    symbol: 'hp',
    words: isCapped ? 'Height of the drift: the step fills up' : 'Height of the drift',
    formula: 'min(hd, hc)',
    put: heights,
    result: { value: heightFt, unit: 'ft' },
    clause: clause('ASCE7', '7.7.1'),
  });
  note?.({
    symbol: 'w',
    words: 'Width of the drift',
    formula: isCapped
      ? `min(${widthPerHeight} × hd^2 / hc, ${widthPerClearHeight} × hc)`
      : `min(${widthPerHeight} × hd, ${widthPerClearHeight} × hc)`,
    put: heights,
    result: { value: widthFt, unit: 'ft' },
    clause: clause('ASCE7', '7.7.1'),
  });
  return { heightFt, widthFt };
}

/**
 * Greatest weight of a drift, on top of the balanced snow.
 * @returns pd [psf]
 * @source ASCE7 7.7.1 (7-16)
 */
export function driftPeak(
  { heightFt, densityPcf }: { readonly heightFt: number; readonly densityPcf: number },
  note?: Note,
): Psf {
  const pd = notNegative('heightFt', heightFt) * positive('densityPcf', densityPcf);
  note?.({
    symbol: 'pd',
    words: 'Greatest weight of the drift, on top of the balanced snow',
    formula: 'γ × hp',
    put: [put('γ', densityPcf, 'pcf', 'density of the snow'), put('hp', heightFt, 'ft', 'height of the drift')],
    result: { value: pd, unit: 'psf' },
    clause: clause('ASCE7', '7.7.1'),
  });
  return pd as Psf;
}
