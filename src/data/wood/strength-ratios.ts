import type { Cited } from './cited.ts';

/** Slope of grain and what it leaves of strength. A slope between two rows takes the steeper row. */
export interface GrainRow {
  /** 1 in this many */
  readonly oneIn: number;
  readonly bending: number;
  readonly compression: number;
}

/** @source D245 Table 1, from memory */
export const GRAIN_RATIOS: Cited & { readonly rows: readonly GrainRow[] } = {
  rows: [
    { oneIn: 6, bending: 0.4, compression: 0.56 },
    { oneIn: 8, bending: 0.53, compression: 0.66 },
    { oneIn: 10, bending: 0.61, compression: 0.74 },
    { oneIn: 12, bending: 0.69, compression: 0.82 },
    { oneIn: 14, bending: 0.74, compression: 0.87 },
    { oneIn: 15, bending: 0.76, compression: 1 },
    { oneIn: 16, bending: 0.8, compression: 1 },
    { oneIn: 18, bending: 0.85, compression: 1 },
    { oneIn: 20, bending: 1, compression: 1 },
  ],
  source: 'D245',
  where: 'Table 1',
  seen: 'memory',
};

/** What is assumed of a log, or of one side of it, that nobody looked at: the 1-in-6 row (own rule). */
export const LOWEST_RATIOS = { bending: 0.4, compression: 0.56 } as const;

/** No looked-at log is taken as better than a graded pole. @source D2899 (2003) grade factors */
export const GREATEST_RATIOS = { bending: 0.75, compression: 0.93 } as const;

/** Checks and splits are in every log: never above this in shear. @source D2899 (2003) grade factors */
export const SHEAR_RATIO = 0.5;

/** From a 5 % clear-wood value to an allowable stress: duration and safety in one. @source D245 Table 8, from memory */
export const DIVISORS = {
  softwood: { bending: 2.1, compression: 1.9, shear: 2.1 },
  hardwood: { bending: 2.3, compression: 2.1, shear: 2.3 },
  source: 'D245',
  where: 'Table 8',
  seen: 'memory',
} as const satisfies Cited & Record<string, unknown>;

/** Across the grain, for the direction of the rings. @source D2899 (2003) */
export const RING_DIVISOR = 1.67;

/** Standard deviations between the mean and the 5 % exclusion limit. @source D2555, from memory */
export const FIVE_PERCENT = 1.645;

/** Tension along the grain as a share of bending. @source D245, from memory */
export const TENSION_SHARE = 0.55;

/** From the 2 in. test piece to a 12 in. square, or a log of the same area (13.5 in.). @source D2899 (2003) */
export const SIZE = { factor: 0.82, squareIn: 12, logIn: 13.5, exponent: 1 / 9 } as const;

/** Crushing across the grain at 0.04 in. from the proportional limit: a straight line through the printed pairs. */
export const CRUSHING_LINE = { at0Psi: 43.1, slope: 1.5876 } as const;

/** Share of the mean stiffness by bending strength ratio. @source D245 Table 6, from memory */
export const STIFFNESS_QUALITY = {
  rows: [
    { fromRatio: 0.55, share: 1 },
    { fromRatio: 0.45, share: 0.9 },
    { fromRatio: 0, share: 0.8 },
  ],
  source: 'D245',
  where: 'quality factor for stiffness',
  seen: 'memory',
} as const satisfies Cited & Record<string, unknown>;

/** Emin = E (1 - 1.645 x 0.25) 1.03 / 1.66. @source NDS Appendix D, from memory; agrees with seven printed pairs */
export const STABILITY_SHARE = 0.3653;
