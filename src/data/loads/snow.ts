import type { Seen, SourceKey } from '../sources.ts';

/** Importance for snow by risk category. */
export const SNOW_IMPORTANCE = { I: 0.8, II: 1.0, III: 1.1, source: 'ASCE7_10', seen: 'public copy' } as const;

export interface SlopeLine {
  /** thermal factors up to this one; a factor between two printed curves takes the colder, which sheds less */
  readonly upToCt: number;
  /** full load up to this slope, then a straight line down to nothing at 70 degrees */
  readonly slipperyFullToDeg: number;
  readonly otherFullToDeg: number;
  readonly source: SourceKey;
  readonly seen: Seen;
}

/** Roof slope factor; which curve serves was read, the straight lines themselves are from memory of the commentary. */
export const SLOPE_LINES: readonly SlopeLine[] = [
  { upToCt: 1.0, slipperyFullToDeg: 5, otherFullToDeg: 30, source: 'ASCE7', seen: 'memory' },
  { upToCt: 1.1, slipperyFullToDeg: 10, otherFullToDeg: 37.5, source: 'ASCE7', seen: 'memory' },
  { upToCt: Infinity, slipperyFullToDeg: 15, otherFullToDeg: 45, source: 'ASCE7', seen: 'memory' },
];

/** Slope at which every curve reaches zero [deg]. */
export const BARE_AT_DEG = 70;

/** Where the rules for snow change over; tests read them here. */
export const SNOW_LIMITS = {
  /** flat roof snow of ground snow */
  flatRoofShare: 0.7,
  /** least snow on roofs flatter than this [deg], and the ground snow up to which it is the ground snow itself [psf] */
  lowSlopeBelowDeg: 15,
  lowSlopeGroundPsf: 20,
  /** density grows with ground snow to a limit [pcf] */
  densityPerPsf: 0.13,
  densityBasePcf: 14,
  greatestDensityPcf: 30,
  /** rain on snow [psf], where ground snow is at most this [psf] and the slope less than width over 50 */
  rainOnSnowPsf: 5,
  rainOnSnowGroundPsf: 20,
  rainOnSnowWidthPerDeg: 50,
  source: 'ASCE7_10',
  seen: 'public copy',
} as const;
