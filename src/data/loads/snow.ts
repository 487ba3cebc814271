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

/** Snow that wind carries from one roof to another, or over a ridge. Heights and lengths in feet. */
export const DRIFT = {
  /** height: `perFetch` lu^(1/3) (pg + `morePsf`)^(1/4) - `lessFt` */
  perFetch: 0.43,
  morePsf: 10,
  lessFt: 1.5,
  /** of that height where the wind comes from the lower roof */
  windwardShare: 0.75,
  /** width of a drift over its height, and at most over the clear height of the step */
  widthPerHeight: 4,
  widthPerClearHeight: 8,
  /** the standard lets a drift go where the clear height is less than this share of the balanced snow's depth */
  negligibleShare: 0.2,
  /** beyond a gap this wide, or this many times the step, nothing drifts from the other roof */
  gapFt: 20,
  gapPerStep: 6,
  source: 'ASCE7_10',
  seen: 'public copy',
} as const;

/** A shorter roof than this counts this long, in drifts beside a step (7-05 and 7-10 figure; 7-16 has 20 ft) [ft]. */
export const LEAST_DRIFT_FETCH = { ft: 25, source: 'ASCE7_10', seen: 'memory' } as const;

/** Snow that slides off a higher roof. */
export const SLIDING = {
  /** of the higher roof's flat-roof snow from eave to ridge, on so many feet from its eave */
  share: 0.4,
  overFt: 15,
  /** from slippery roofs steeper than this rise per 12, and from others */
  slipperyAbovePer12: 0.25,
  otherAbovePer12: 2,
  source: 'ASCE7_10',
  seen: 'public copy',
} as const;

/** Snow that wind carries over the ridge of a gable. */
export const UNBALANCED = {
  leastRisePer12: 0.5,
  greatestRisePer12: 7,
  /** roofs up to this from eave to ridge with simple rafters of one section throughout: ground snow on one side alone [ft] */
  narrowToFt: 20,
  /** of the balanced snow that stays on the side of the wind */
  windwardShare: 0.3,
  /** width of the strip beside the ridge over drift height times the root of the run for a rise of one */
  widthPerHeight: 8 / 3,
  leastFetchFt: 20,
  source: 'ASCE7_10',
  seen: 'public copy',
} as const;
