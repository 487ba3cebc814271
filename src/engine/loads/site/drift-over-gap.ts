import { DRIFT } from '../../../data/loads/snow.ts';
import { clause, remembered } from '../../../data/sources.ts';
import { put, type Note } from '../../note.ts';
import type { Psf } from '../../units.ts';
import type { DriftShape } from './drift.ts';
import { notNegative } from './givens.ts';

/**
 * Drift that comes over a gap from a higher roof.
 * @param givens  drift height of the higher roof [ft], step [ft], gap [ft]
 * @returns height and width at the near edge of the lower roof [ft]; null where the gap is too wide for any
 * @source ASCE7 7.7.2 (7-16)
 */
export function separatedDrift(
  givens: { readonly driftHeightFt: number; readonly stepFt: number; readonly gapFt: number },
  note?: Note,
): DriftShape | null {
  const hd = notNegative('driftHeightFt', givens.driftHeightFt);
  const h = notNegative('stepFt', givens.stepFt);
  const s = notNegative('gapFt', givens.gapFt);
  const { gapFt, gapPerStep: k } = DRIFT;
  if (s >= gapFt || s >= k * h) return null;
  const heightFt = Math.min(hd, (k * h - s) / k);
  const widthFt = Math.min(k * hd, k * h - s);
  const givenPuts = [
    put('hd', hd, 'ft', 'drift height of the higher roof'),
    put('h', h, 'ft', 'step up to the higher roof'),
    put('s', s, 'ft', 'gap'),
  ];
  note?.({
    symbol: 'hp',
    words: 'Height of the drift beyond the gap',
    formula: `min(hd, (${k} × h - s) / ${k})`,
    put: givenPuts,
    result: { value: heightFt, unit: 'ft' },
    clause: clause('ASCE7', '7.7.2'),
  });
  note?.({
    symbol: 'w',
    words: 'Width of the drift beyond the gap',
    formula: `min(${k} × hd, ${k} × h - s)`,
    put: givenPuts,
    result: { value: widthFt, unit: 'ft' },
    clause: clause('ASCE7', '7.7.2'),
  });
  return { heightFt, widthFt };
}

/**
 * What is left of a windward drift at the edge of our roof where a gap cuts off its higher part.
 * @returns [psf]; 0 where all of it falls into the gap
 * @source ASCE7 7.7.2 (7-16), from memory
 */
export function truncatedPeak(
  { peakPsf, widthFt, gapFt }: { readonly peakPsf: number; readonly widthFt: number; readonly gapFt: number },
  note?: Note,
): Psf {
  const pd = notNegative('peakPsf', peakPsf);
  const w = notNegative('widthFt', widthFt);
  const s = notNegative('gapFt', gapFt);
  const left = s < w ? pd * (1 - s / w) : 0;
  note?.({
    symbol: 'pe',
    words: 'Its weight at our edge, the rest lying in the gap',
    formula: s < w ? 'pd × (1 - s / w)' : '0 where the gap is wider than the drift',
    put: [put('pd', pd, 'psf', 'at the wall'), put('s', s, 'ft', 'gap'), put('w', w, 'ft', 'width of the drift')],
    result: { value: left, unit: 'psf' },
    clause: remembered('ASCE7', '7.7.2'),
  });
  return left as Psf;
}
