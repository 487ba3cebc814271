import type { Seen, SourceKey } from '../sources.ts';

export type RoofForm = 'monoslope' | 'pitched';
/** 0: the wind meets the high eave of a monoslope; 180: the low eave. A pitched roof has the same values for both. */
export type WindDirection = 0 | 180;
export type WindCase = 'A' | 'B';
/** Obstructed: goods, walls or other things under the roof block more than half. */
export type Flow = 'clear' | 'obstructed';

/** Net coefficients of the windward and of the leeward half of the slope, plus is down on the top face. */
export type HalfCoefficients = readonly [windward: number, leeward: number];

export interface MainFrameRow {
  readonly slopeDeg: number;
  readonly windCase: WindCase;
  readonly coefficients: Readonly<Record<WindDirection, Readonly<Record<Flow, HalfCoefficients>>>>;
  readonly source: SourceKey;
  readonly seen: Seen;
  /** where two copies differ: what was taken and why */
  readonly disputed?: string;
}

/** ASCE 7-16 Fig. 27.3-4 as read in two copies of neighbouring editions; the row of 0 degrees serves below 7.5. */
const monoslope = (
  slopeDeg: number,
  windCase: WindCase,
  clear0: HalfCoefficients,
  obstructed0: HalfCoefficients,
  clear180: HalfCoefficients,
  obstructed180: HalfCoefficients,
  disputed?: string,
): MainFrameRow => ({
  slopeDeg,
  windCase,
  coefficients: {
    0: { clear: clear0, obstructed: obstructed0 },
    180: { clear: clear180, obstructed: obstructed180 },
  },
  source: 'ASCE7_22',
  seen: 'public copy',
  ...(disputed === undefined ? {} : { disputed }),
});

export const MONOSLOPE_MAIN: readonly MainFrameRow[] = [
  monoslope(0, 'A', [1.2, 0.3], [-0.5, -1.2], [1.2, 0.3], [-0.5, -1.2]),
  monoslope(0, 'B', [-1.1, -0.1], [-1.1, -0.6], [-1.1, -0.1], [-1.1, -0.6]),
  monoslope(7.5, 'A', [-0.6, -1], [-1, -1.5], [0.9, 1.5], [-0.2, -1.2]),
  monoslope(7.5, 'B', [-1.4, 0], [-1.7, -0.8], [1.6, 0.3], [0.8, -0.3]),
  monoslope(
    15,
    'A',
    [-0.9, -1.3],
    [-1.1, -1.5],
    [1.3, 1.6],
    [0.4, -1.1],
    'second copy prints -0.3 windward, clear, direction 0',
  ),
  monoslope(15, 'B', [-1.9, 0], [-2.1, -0.6], [1.8, 0.6], [1.2, -0.3]),
  monoslope(22.5, 'A', [-1.5, -1.6], [-1.5, -1.7], [1.7, 1.8], [0.5, -1]),
  monoslope(22.5, 'B', [-2.4, -0.3], [-2.3, -0.9], [2.2, 0.7], [1.3, 0]),
  monoslope(30, 'A', [-1.8, -1.8], [-1.5, -1.8], [2.1, 2.1], [0.6, -1]),
  monoslope(
    30,
    'B',
    [-2.5, -0.5],
    [-2.3, -1.1],
    [2.6, 1],
    [1.6, 0.1],
    'second copy, older, prints -0.6 leeward, clear, direction 0',
  ),
  monoslope(37.5, 'A', [-1.8, -1.8], [-1.5, -1.8], [2.1, 2.2], [0.7, -0.9]),
  monoslope(37.5, 'B', [-2.4, -0.6], [-2.2, -1.1], [2.7, 1.1], [1.9, 0.3]),
  monoslope(45, 'A', [-1.6, -1.8], [-1.3, -1.8], [2.2, 2.5], [0.8, -0.9]),
  monoslope(45, 'B', [-2.3, -0.7], [-1.9, -1.2], [2.6, 1.4], [2.1, 0.4]),
];

/** ASCE 7-16 Fig. 27.3-5, three copies alike; it begins at 7.5 degrees, below that the monoslope row of 0 serves. */
const pitched = (
  slopeDeg: number,
  windCase: WindCase,
  clear: HalfCoefficients,
  obstructed: HalfCoefficients,
): MainFrameRow => ({
  slopeDeg,
  windCase,
  coefficients: { 0: { clear, obstructed }, 180: { clear, obstructed } },
  source: 'ASCE7_10',
  seen: 'public copy',
});

export const PITCHED_MAIN: readonly MainFrameRow[] = [
  pitched(7.5, 'A', [1.1, -0.3], [-1.6, -1]),
  pitched(7.5, 'B', [0.2, -1.2], [-0.9, -1.7]),
  pitched(15, 'A', [1.1, -0.4], [-1.2, -1]),
  pitched(15, 'B', [0.1, -1.1], [-0.6, -1.6]),
  pitched(22.5, 'A', [1.1, 0.1], [-1.2, -1.2]),
  pitched(22.5, 'B', [-0.1, -0.8], [-0.8, -1.7]),
  pitched(30, 'A', [1.3, 0.3], [-0.7, -0.7]),
  pitched(30, 'B', [-0.1, -0.9], [-0.2, -1.1]),
  pitched(37.5, 'A', [1.3, 0.6], [-0.6, -0.6]),
  pitched(37.5, 'B', [-0.2, -0.6], [-0.3, -0.9]),
  pitched(45, 'A', [1.1, 0.9], [-0.5, -0.5]),
  pitched(45, 'B', [-0.3, -0.5], [-0.3, -0.7]),
];

export interface AlongRidgeBand {
  /** the band ends this many mean roof heights from the windward edge */
  readonly toHeights: number;
  readonly coefficients: Readonly<Record<Flow, Readonly<Record<WindCase, number>>>>;
  readonly source: SourceKey;
  readonly seen: Seen;
}

/** ASCE 7-16 Fig. 27.3-7: wind along the ridge, the same for both forms of roof; two copies alike. */
const band = (
  toHeights: number,
  clear: Record<WindCase, number>,
  obstructed: Record<WindCase, number>,
): AlongRidgeBand => ({
  toHeights,
  coefficients: { clear, obstructed },
  source: 'ASCE7_22',
  seen: 'public copy',
});

export const ALONG_RIDGE_BANDS: readonly AlongRidgeBand[] = [
  band(1, { A: -0.8, B: 0.8 }, { A: -1.2, B: 0.5 }),
  band(2, { A: -0.6, B: 0.5 }, { A: -0.9, B: 0.5 }),
  band(Infinity, { A: -0.3, B: 0.3 }, { A: -0.6, B: 0.3 }),
];

/** What the free-roof figures were drawn for. */
export const FREE_ROOF_RANGE = {
  greatestSlopeDeg: 45,
  /** below it the row of 0 degrees */
  interpolatedFromDeg: 7.5,
  /** flow is clear while no more than this share of the opening under the roof is blocked */
  clearBlockedAtMost: 0.5,
  leastHeightOverLength: 0.25,
  greatestHeightOverLength: 1,
  /** flatter than this and longer than the figure, a roof takes the along-ridge bands across too (note to the figure) */
  bandsAcrossBelowDeg: 5,
} as const;
