import {
  CATEGORIES,
  CATEGORY_CLAUSE,
  CATEGORY_E_S1,
  IMPORTANCE_CLAUSE,
  LEAST_SITE_COEFFICIENT,
  PERIOD,
  REDUNDANCY,
  RESPONSE_LIMITS,
  SEISMIC_IMPORTANCE,
  SITE_CLAUSE,
  type SeismicCategory,
} from '../../../data/loads/seismic.ts';
import { notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';

/**
 * Seismic design category of risk categories I to III: the harsher of the two tables, E from an S1 of 0.75 on.
 * @param sds  design spectral acceleration, short periods [g], zero or above
 * @param sd1  the same at one second [g]
 * @param s1  mapped acceleration at one second [g]
 * @throws MisuseError  if a value is negative or not finite
 * @source ASCE7 11.6, Tables 11.6-1 and 11.6-2 (7-16, from memory)
 */
export function seismicCategory(
  { sds, sd1, s1 }: { readonly sds: number; readonly sd1: number; readonly s1: number },
  note?: Note,
): SeismicCategory {
  notNegative('sds', sds);
  notNegative('sd1', sd1);
  const reached = CATEGORIES.filter((c) => sds >= c.sds || sd1 >= c.sd1);
  const category = notNegative('s1', s1) >= CATEGORY_E_S1 ? 'E' : reached[reached.length - 1]!.category;
  note?.({
    symbol: 'SDC',
    words: `seismic design category ${category}, counted from A`,
    formula: 'harsher of the tables by SDS and SD1; E from S1 0.75',
    put: [
      put('SDS', sds, '1', 'design acceleration, short periods, in g'),
      put('SD1', sd1, '1', 'design acceleration at one second, in g'),
      put('S1', s1, '1', 'mapped acceleration at one second, in g'),
    ],
    // the tables print letters: A is the first
    result: { value: category === 'E' ? CATEGORIES.length + 1 : reached.length, unit: '1' },
    clause: CATEGORY_CLAUSE,
  });
  return category;
}

/**
 * Greatest mapped acceleration at one second that an SD1 can come from: Fv is at least 0.8 on any ground.
 * @returns S1 [g]
 * @throws MisuseError  if SD1 is negative or not finite
 * @source ASCE7 11.4.5, Table 11.4-2 (7-16, from memory)
 */
export function greatestS1(sd1: number, note?: Note): number {
  const s1 = (1.5 * notNegative('sd1', sd1)) / LEAST_SITE_COEFFICIENT;
  note?.({
    symbol: 'S1',
    words: 'mapped acceleration at one second, at most',
    formula: '1.5 SD1 / Fv',
    put: [
      put('SD1', sd1, '1', 'design acceleration at one second, in g'),
      put('Fv', LEAST_SITE_COEFFICIENT, '1', 'least site coefficient'),
    ],
    result: { value: s1, unit: '1' },
    clause: SITE_CLAUSE,
  });
  return s1;
}

/**
 * Approximate period of a structure that the tables do not name.
 * @param heightFt  highest level above the base [ft], above zero
 * @returns Ta [s]
 * @throws MisuseError  if the height is not above zero
 * @source ASCE7 12.8.2.1, Eq. 12.8-7 (7-10, the same in 7-16)
 */
export function approximatePeriod(heightFt: number, note?: Note): number {
  const Ta = PERIOD.factor * positive('heightFt', heightFt) ** PERIOD.exponent; // Eq. 12.8-7
  note?.({
    symbol: 'Ta',
    words: 'approximate period in seconds',
    formula: '0.02 hn^0.75',
    put: [put('hn', heightFt, 'ft', 'highest level above the base')],
    result: { value: Ta, unit: '1' },
    clause: PERIOD.clause,
  });
  return Ta;
}

/**
 * Importance factor for earthquake; while nobody has said the risk category that of III (safe side).
 * @source ASCE7 Table 1.5-2 (7-16, from memory)
 */
export function seismicImportance(riskCategory: 'I' | 'II' | 'III' | null, note?: Note): number {
  const Ie = SEISMIC_IMPORTANCE[riskCategory ?? 'III'];
  note?.({
    symbol: 'Ie',
    words: `importance for earthquake, risk category ${riskCategory ?? 'not given, taken as III'}`,
    formula: 'table by risk category',
    put: [],
    result: { value: Ie, unit: '1' },
    clause: IMPORTANCE_CLAUSE,
  });
  return Ie;
}

export interface ResponseGivens {
  readonly sds: number;
  readonly sd1: number;
  readonly s1: number;
  readonly r: number;
  readonly importance: number;
  readonly periodS: number;
}

/**
 * Seismic response coefficient: the share of its weight that pushes a structure sideways, strength level.
 * Use for periods up to TL, the long-period transition, which no small shelter reaches.
 * @param givens  accelerations [g], response modification R, importance Ie, period [s]
 * @returns Cs
 * @throws MisuseError  if R, importance or period is not above zero, or an acceleration is negative
 * @source ASCE7 12.8.1.1, Eq. 12.8-2, 12.8-3, 12.8-5, 12.8-6 (7-10, the same in 7-16)
 */
export function seismicResponseCoefficient(givens: ResponseGivens, note?: Note): number {
  const SDS = notNegative('sds', givens.sds);
  const SD1 = notNegative('sd1', givens.sd1);
  const S1 = notNegative('s1', givens.s1);
  const reduction = positive('r', givens.r) / positive('importance', givens.importance);
  const T = positive('periodS', givens.periodS);
  const plateau = SDS / reduction; // Eq. 12.8-2
  const cap = SD1 / (T * reduction); // Eq. 12.8-3
  const { leastShareOfSds, least, nearFaultS1, nearFaultShare } = RESPONSE_LIMITS;
  const floor = Math.max(leastShareOfSds * SDS * givens.importance, least); // Eq. 12.8-5
  const nearFault = S1 >= nearFaultS1 ? (nearFaultShare * S1) / reduction : 0; // Eq. 12.8-6
  const Cs = Math.max(Math.min(plateau, cap), floor, nearFault);
  note?.({
    symbol: 'Cs',
    words: 'seismic response coefficient',
    formula:
      'SDS / (R / Ie); at most SD1 / (T R / Ie); at least 0.044 SDS Ie, 0.01 and, from S1 0.6, 0.5 S1 / (R / Ie)',
    put: [
      put('SDS', SDS, '1', 'design acceleration, short periods, in g'),
      put('SD1', SD1, '1', 'design acceleration at one second, in g'),
      put('S1', S1, '1', 'mapped acceleration at one second, in g'),
      put('R', givens.r, '1', 'response modification'),
      put('Ie', givens.importance, '1', 'importance'),
      put('T', T, '1', 'period in seconds'),
    ],
    result: { value: Cs, unit: '1' },
    clause: RESPONSE_LIMITS.clause,
  });
  return Cs;
}

/**
 * Redundancy: 1.0 in categories A to C, 1.3 beyond, since nothing here shows that less will do.
 * @source ASCE7 12.3.4 (7-16, from memory)
 */
export function redundancy(category: SeismicCategory, note?: Note): number {
  const rho = category === 'D' || category === 'E' ? REDUNDANCY.high : REDUNDANCY.low;
  note?.({
    symbol: 'ρ',
    words: `redundancy in category ${category}`,
    formula: '1.0 in A to C; 1.3 in D and E',
    put: [],
    result: { value: rho, unit: '1' },
    clause: REDUNDANCY.clause,
  });
  return rho;
}
