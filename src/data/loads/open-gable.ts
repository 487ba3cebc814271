import { remembered } from '../sources.ts';

/** Wind along the ridge of an open building with frames across it, low-rise method. All from memory. */
export const OPEN_GABLE = {
  /** both ends together, (GCpf) windward less leeward: between the end strips and on them */
  coefficient: { field: 0.4 + 0.29, endStrip: 0.61 + 0.43 },
  /** KB = 1.8 - 0.01 B, B across the ridge in feet, no less than at 100 ft */
  width: { atNothing: 1.8, perFoot: 0.01, widestFt: 100 },
  /** KS = 0.60 + 0.073 (n - 3) + 1.25 φ^1.8 with n frames, three at least */
  shielding: { three: 0.6, perFrame: 0.073, solid: 1.25, exponent: 1.8, leastFrames: 3 },
  /** exposure factor of the method in exposure B below 30 ft, where the others take less */
  exposureB: 0.7,
  clause: remembered('ASCE7', '28.3.5, Eq. 28.3-3'),
} as const;
