import { clause } from '../../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

const SLENDER = clause('NDS', '3.7.1.4');
const STABILITY = clause('NDS', '3.7.1.5');
const FACTORS = clause('NDS', '3.6, 3.7.1');

/** Greatest slenderness of a column in service. @source NDS 3.7.1.4 */
export const GREATEST_SLENDERNESS = 50;
/** pi2 / 12 with the rounding of the standard. @source NDS 3.7.1.5 */
const EULER = 0.822;

/**
 * Slenderness of a column in one direction.
 * @param effectiveLengthIn Ke times the length [in]
 * @param depthIn side of the section in that direction; of a round column the side of the equal-area square [in]
 * @returns le / d; above `GREATEST_SLENDERNESS` the column fails
 * @throws MisuseError if a length is not above zero
 * @source NDS 3.7.1.3
 */
export function slenderness(effectiveLengthIn: number, depthIn: number, note?: Note): number {
  const ratio = positive('effectiveLengthIn', effectiveLengthIn) / positive('depthIn', depthIn);
  note?.({
    symbol: 'le/d',
    words: 'slenderness, at most 50',
    formula: 'le / s',
    put: [
      put('le', effectiveLengthIn, 'in', 'effective length'),
      put('s', depthIn, 'in', 'side of the section, for round wood of the square of equal area'),
    ],
    result: quantity(ratio, '1'),
    clause: SLENDER,
  });
  return ratio;
}

/**
 * Euler stress of a column in one direction.
 * @param EminPsi stiffness for stability, wet service in [psi]
 * @param effectiveLengthIn Ke times the length [in]
 * @param depthIn side of the section in that direction; of a round column the side of the equal-area square [in]
 * @returns FcE [psi]
 * @throws MisuseError if a value is not above zero
 * @source NDS 3.7.1.5
 */
export function eulerStress(EminPsi: number, effectiveLengthIn: number, depthIn: number, note?: Note): number {
  const ratio = slenderness(effectiveLengthIn, depthIn, note);
  const FcE = (EULER * positive('EminPsi', EminPsi)) / (ratio * ratio);
  note?.({
    symbol: 'FcE',
    words: 'Euler stress, at which the column would buckle',
    formula: '0.822 × Emin / (le/d)^2',
    put: [put('Emin', EminPsi, 'psi', 'stiffness for stability'), put('le/d', ratio, '1', 'slenderness')],
    result: quantity(FcE, 'psi'),
    clause: STABILITY,
  });
  return FcE;
}

/**
 * Column stability factor.
 * @param FcStarPsi Fc with every factor but this one [psi]
 * @param FcEPsi Euler stress [psi]; Infinity where nothing can buckle
 * @param c 0.8 sawn wood and derived logs, 0.85 poles and piles graded as such
 * @returns CP, above 0, at most 1
 * @throws MisuseError if a value is not above zero or c not below 1
 * @source NDS 3.7.1.5, equation 3.7-1
 */
export function columnStabilityFactor(FcStarPsi: number, FcEPsi: number, c: number, note?: Note): number {
  if (FcEPsi === Infinity) return 1;
  const a = positive('FcEPsi', FcEPsi) / positive('FcStarPsi', FcStarPsi);
  if (!(c < 1)) throw new MisuseError('c', c, 'a number below 1');
  const half = (1 + a) / (2 * positive('c', c));
  // The book's half - sqrt(half^2 - a / c), turned over so that it keeps its digits for slender columns.
  const CP = a / c / (half + Math.sqrt(half * half - a / c));
  note?.({
    symbol: 'CP',
    words: 'column stability factor',
    formula: '(1 + FcE / Fc*) / (2 × c) - sqrt(((1 + FcE / Fc*) / (2 × c))^2 - FcE / Fc* / c)',
    put: [
      put('FcE', FcEPsi, 'psi', 'Euler stress'),
      put('Fc*', FcStarPsi, 'psi', 'value along the grain with every factor but this one'),
      put(
        'c',
        c,
        '1',
        c === 0.85 ? 'round poles and piles graded as such' : 'sawn wood, and logs without a pole grade',
      ),
    ],
    result: quantity(CP, '1'),
    clause: STABILITY,
  });
  return CP;
}

/**
 * Compression value along the grain with every factor but column stability.
 * @param FcPsi reference value, wet service in [psi]
 * @param CD load duration factor
 * @returns Fc* [psi]
 * @throws MisuseError if a value is not above zero
 * @source NDS 3.6.3, Table 4.3.1
 */
export function adjustedCompression(FcPsi: number, CD: number, note?: Note): number {
  const FcStar = positive('FcPsi', FcPsi) * positive('CD', CD);
  note?.({
    symbol: 'Fc*',
    words: 'value along the grain with every factor but column stability',
    formula: 'Fc × CD',
    put: [put('Fc', FcPsi, 'psi', 'reference value along the grain'), put('CD', CD, '1', 'load duration factor')],
    result: quantity(FcStar, 'psi'),
    clause: FACTORS,
  });
  return FcStar;
}

/**
 * Allowable compression stress of a column.
 * @param FcStarPsi Fc* [psi]
 * @param CP column stability factor
 * @returns Fc' [psi]
 * @throws MisuseError if a value is not above zero
 * @source NDS 3.7.1
 */
export function allowableColumnStress(FcStarPsi: number, CP: number, note?: Note): number {
  const allowable = positive('FcStarPsi', FcStarPsi) * positive('CP', CP);
  note?.({
    symbol: "Fc'",
    words: 'allowable compression stress of the column',
    formula: 'Fc* × CP',
    put: [
      put('Fc*', FcStarPsi, 'psi', 'value along the grain with every factor but column stability'),
      put('CP', CP, '1', 'column stability factor'),
    ],
    result: quantity(allowable, 'psi'),
    clause: FACTORS,
  });
  return allowable;
}

/**
 * Stress along the member from its axial force.
 * @param forceLb push or pull, without sign [lb]
 * @param areaIn2 of the section in question [in2]
 * @returns fc or ft [psi]
 * @throws MisuseError if the force is below zero or the area not above zero
 * @source NDS 3.6, 3.8
 */
export function axialStress(forceLb: number, areaIn2: number, note?: Note): number {
  const P = notNegative('forceLb', forceLb);
  const f = P / positive('areaIn2', areaIn2);
  note?.({
    symbol: 'f',
    words: 'stress along the member',
    formula: 'P / A',
    put: [put('P', P, 'lb', 'force along the member'), put('A', areaIn2, 'in2', 'area of the section')],
    result: quantity(f, 'psi'),
    clause: FACTORS,
  });
  return f;
}
