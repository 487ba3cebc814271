import { OPEN_GABLE } from '../../../data/loads/open-gable.ts';
import { MisuseError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { notNegative } from './givens.ts';

export interface OpenGableGivens {
  /** at mean roof height, with the exposure factor of this method [psf] */
  readonly velocityPressurePsf: number;
  /** B, across the ridge [ft] */
  readonly widthFt: number;
  /** end of the building as if it were closed [ft2] */
  readonly endAreaFt2: number;
  /** width of an end strip, twice the edge width of the roof [ft] */
  readonly endStripFt: number;
  /** solid over gross area of the end, 0 to 1 */
  readonly solidity: number;
  /** frames across the ridge; fewer than three count as three */
  readonly frames: number;
}

/**
 * Push of the wind along the ridge on an open building with frames across it, strength level, on the whole building.
 * @returns F [lb]
 * @throws MisuseError  if a given is not finite or not above zero, or the solidity is not within 0 to 1
 * @source ASCE7 28.3.5, Eq. 28.3-3 (7-16), all of it from memory
 */
export function openGableAlongRidge(givens: OpenGableGivens, note?: Note): number {
  const { coefficient, width, shielding, clause } = OPEN_GABLE;
  const q = positive('velocityPressurePsf', givens.velocityPressurePsf);
  const B = positive('widthFt', givens.widthFt);
  const area = positive('endAreaFt2', givens.endAreaFt2);
  const strip = Math.min(positive('endStripFt', givens.endStripFt), B);
  const solidity = notNegative('solidity', givens.solidity);
  if (solidity > 1) throw new MisuseError('solidity', solidity, 'at most 1');
  const frames = Math.max(positive('frames', givens.frames), shielding.leastFrames);
  const both = (coefficient.endStrip * strip + coefficient.field * (B - strip)) / B;
  const KB = width.atNothing - width.perFoot * Math.min(B, width.widestFt);
  const KS =
    shielding.three +
    shielding.perFrame * (frames - shielding.leastFrames) +
    shielding.solid * solidity ** shielding.exponent;
  const force = q * both * KB * KS * area;
  note?.({
    symbol: 'GCpf',
    words: 'Windward less leeward end, mean over the width',
    formula: '(1.04 b + 0.69 (B - b)) / B',
    put: [put('b', strip, 'ft', 'end strip'), put('B', B, 'ft', 'width across the ridge')],
    result: { value: both, unit: '1' },
    clause,
  });
  note?.({
    symbol: 'KB',
    words: 'Width of the frames',
    formula: '1.8 - 0.01 min(B, 100 ft)',
    put: [put('B', B, 'ft', 'width across the ridge')],
    result: { value: KB, unit: '1' },
    clause,
  });
  note?.({
    symbol: 'KS',
    words: 'Frames that shield each other',
    formula: '0.60 + 0.073 (n - 3) + 1.25 φ^1.8',
    put: [put('n', frames, '1', 'frames, three at least'), put('φ', solidity, '1', 'solid over gross area of the end')],
    result: { value: KS, unit: '1' },
    clause,
  });
  note?.({
    symbol: 'F',
    words: 'Push along the ridge on the whole building, strength level',
    formula: 'q GCpf KB KS AE',
    put: [
      put('q', q, 'psf', 'velocity pressure'),
      put('GCpf', both, '1', 'both ends'),
      put('KB', KB, '1', 'width'),
      put('KS', KS, '1', 'shielding'),
      put('AE', area, 'ft2', 'end as if it were closed'),
    ],
    result: { value: force, unit: 'lb' },
    clause,
  });
  return force;
}
