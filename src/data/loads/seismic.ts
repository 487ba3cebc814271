import { clause, remembered } from '../sources.ts';

/**
 * Cantilevered column systems, timber frames: what a frame of logs is judged as unless somebody answers for another R.
 * Not permitted in categories E and F.
 */
export const TIMBER_FRAME = {
  R: 1.5,
  overstrength: 1.5,
  deflectionAmplification: 1.5,
  tallestFt: 35,
  clause: clause('ASCE7_10', 'Table 12.2-1, G.6'),
} as const;

/** Limits of the seismic response coefficient. */
export const RESPONSE_LIMITS = {
  leastShareOfSds: 0.044,
  least: 0.01,
  /** near a fault: from this S1 on, at least this share of it over R / Ie */
  nearFaultS1: 0.6,
  nearFaultShare: 0.5,
  clause: clause('ASCE7_10', '12.8.1.1, Eq. 12.8-2 to 12.8-6'),
} as const;

/** Approximate period of any other structure, Ta = 0.02 hn^0.75, hn in feet. */
export const PERIOD = { factor: 0.02, exponent: 0.75, clause: clause('ASCE7_10', '12.8.2.1, Table 12.8-2') } as const;

/** Importance for earthquake by risk category. */
export const SEISMIC_IMPORTANCE: Readonly<Record<'I' | 'II' | 'III', number>> = { I: 1, II: 1, III: 1.25 };
export const IMPORTANCE_CLAUSE = remembered('ASCE7', 'Table 1.5-2');

export type SeismicCategory = 'A' | 'B' | 'C' | 'D' | 'E';

/** Category by the harsher of the two values, risk categories I to III; a category begins at its value. */
export const CATEGORIES: readonly { readonly category: SeismicCategory; readonly sds: number; readonly sd1: number }[] =
  [
    { category: 'A', sds: 0, sd1: 0 },
    { category: 'B', sds: 0.167, sd1: 0.067 },
    { category: 'C', sds: 0.33, sd1: 0.133 },
    { category: 'D', sds: 0.5, sd1: 0.2 },
  ];
/** From this S1 on it is category E. */
export const CATEGORY_E_S1 = 0.75;
export const CATEGORY_CLAUSE = remembered('ASCE7', '11.6, Tables 11.6-1 and 11.6-2');

/** SD1 = 2/3 Fv S1; Fv is at least 0.8 on any ground, which bounds S1 where only SD1 is known. */
export const LEAST_SITE_COEFFICIENT = 0.8;
export const SITE_CLAUSE = remembered('ASCE7', '11.4.5, Table 11.4-2');

/** Redundancy: 1.0 in A to C; 1.3 in D unless shown otherwise. */
export const REDUNDANCY = { low: 1, high: 1.3, clause: remembered('ASCE7', '12.3.4') } as const;

/** Vertical effect, share of the dead load per SDS. */
export const VERTICAL = { perSds: 0.2, clause: remembered('ASCE7', '12.4.2.2') } as const;

/** Snow that moves with the roof: from above this flat-roof snow on, this share of it. */
export const MOVING_SNOW = { abovePsf: 30, share: 0.2, clause: remembered('ASCE7', '12.7.2') } as const;
