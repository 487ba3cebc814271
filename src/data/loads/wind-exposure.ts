import type { Seen, SourceKey } from '../sources.ts';

export type Exposure = 'B' | 'C' | 'D';

/** Constants of the power law of wind with height; `scaleFt` and the two constants were read in worked sheets. */
export const POWER_LAW = {
  factor: 2.01,
  /** below this height the wind is taken as at this height [ft] */
  leastHeightFt: 15,
  B: { alpha: 7.0, gradientHeightFt: 1200 },
  C: { alpha: 9.5, gradientHeightFt: 900 },
  D: { alpha: 11.5, gradientHeightFt: 700 },
  source: 'ASCE7' satisfies SourceKey,
  seen: 'public copy' satisfies Seen,
} as const;

/**
 * The printed coefficients, two places, only as high as a shelter stands. From memory. For exposure B the table also
 * prints 0.70 below 30 ft for a method of low-rise buildings that this workbench does not use.
 */
export const PRINTED_EXPOSURE = {
  heightsFt: [15, 20, 25, 30],
  B: [0.57, 0.62, 0.66, 0.7],
  C: [0.85, 0.9, 0.94, 0.98],
  D: [1.03, 1.08, 1.12, 1.16],
  source: 'ASCE7' satisfies SourceKey,
  seen: 'memory' satisfies Seen,
} as const;

/** Directionality of buildings, of their components and of open frames: one and the same value. */
export const DIRECTIONALITY = { value: 0.85, source: 'ASCE7', seen: 'public copy' } as const;

/** Gust-effect factor of a rigid structure. */
export const RIGID_GUST = { value: 0.85, source: 'ASCE7', seen: 'public copy' } as const;

/** The least wind at strength level, before the factor 0.6 of the combinations [psf]. */
export const LEAST_WIND = {
  /** either way, normal to the surface, on components */
  componentsPsf: 16,
  /** level, on the projected solid area of an open building */
  openBuildingPsf: 16,
  source: 'ASCE7',
  seen: 'memory',
} as const;
