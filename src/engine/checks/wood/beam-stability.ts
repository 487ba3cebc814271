import { clause, remembered } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

const STABILITY = clause('NDS', '3.3.3');
const LENGTHS = remembered('NDS', 'Table 3.3.3');
const NOT_DEEPER = remembered('NDS', '3.3.3.1');

/** Greatest slenderness ratio of a bending member. @source NDS 3.3.3.7 */
const GREATEST_RB = 50;
/** @source NDS equation 3.3-6 */
const CONSTANT_FbE = 1.2;
const CONSTANT_CL = { sum: 1.9, product: 0.95 } as const;

/** How a member is held and loaded, row by row of the table of effective lengths; `any` is its last line. */
export type LoadedLength = 'uniform' | 'midspanPoint' | 'cantileverUniform' | 'cantileverTip' | 'any';

export interface BeamStabilityGivens {
  /** across the load [in] */
  readonly breadthIn: number;
  /** along the load [in] */
  readonly depthIn: number;
  /** between places where the edge in compression is held sideways [in] */
  readonly unbracedLengthIn: number;
  readonly effectiveLengthRule: LoadedLength;
  readonly EminPsi: number;
  /** Fb with every factor but CL, flat use and volume [psi] */
  readonly FbStarPsi: number;
}

/**
 * Effective length of a bending member between places held sideways.
 * @param rule how it is held and loaded
 * @param unbracedLengthIn lu [in]
 * @param depthIn d [in]
 * @returns le [in]
 * @throws MisuseError if a length is not above zero
 * @limits rows with loads at places that are themselves held sideways are left out: `any` covers them.
 * @source NDS Table 3.3.3 and its footnote 1, from memory
 */
export function effectiveBeamLength(
  rule: LoadedLength,
  unbracedLengthIn: number,
  depthIn: number,
  note?: Note,
): number {
  const lu = positive('unbracedLengthIn', unbracedLengthIn);
  const d = positive('depthIn', depthIn);
  const slope = slopeOf(rule, lu / d);
  const depths = depthsOf(rule, lu / d);
  const le = slope * lu + depths * d;
  note?.({
    symbol: 'le',
    words: 'effective length against sideways buckling',
    formula: `${slope} × lu + ${depths} × d`,
    put: [put('lu', lu, 'in', 'length not held sideways'), put('d', d, 'in', 'depth')],
    result: quantity(le, 'in'),
    clause: LENGTHS,
  });
  return le;
}

function slopeOf(rule: LoadedLength, ratio: number): number {
  switch (rule) {
    case 'uniform':
      return ratio < 7 ? 2.06 : 1.63;
    case 'midspanPoint':
      return ratio < 7 ? 1.8 : 1.37;
    case 'cantileverUniform':
      return ratio < 7 ? 1.33 : 0.9;
    case 'cantileverTip':
      return ratio < 7 ? 1.87 : 1.44;
    case 'any':
      if (ratio < 7) return 2.06;
      return ratio <= 14.3 ? 1.63 : 1.84;
  }
}

/** Depths added to the length; `any` has none beyond 14.3 depths. */
function depthsOf(rule: LoadedLength, ratio: number): 0 | 3 {
  return ratio < 7 || (rule === 'any' && ratio > 14.3) ? 0 : 3;
}

/**
 * Beam stability factor CL of a rectangular member.
 * Not needed for round wood: no deeper than wide, CL = 1.
 * @returns `CL`, and `outside` when the slenderness ratio RB is above 50 (then CL must not be used)
 * @throws MisuseError if a given is not above zero
 * @source NDS 3.3.3, equations 3.3-5 and 3.3-6
 */
export function beamStabilityFactor(
  givens: BeamStabilityGivens,
  note?: Note,
): { readonly CL: number; readonly outside: boolean } {
  const b = positive('breadthIn', givens.breadthIn);
  const d = positive('depthIn', givens.depthIn);
  const Emin = positive('EminPsi', givens.EminPsi);
  const FbStar = positive('FbStarPsi', givens.FbStarPsi);
  if (d <= b) {
    note?.({
      symbol: 'CL',
      words: 'beam stability factor: not deeper than wide',
      formula: '1',
      put: [put('d', d, 'in', 'depth'), put('b', b, 'in', 'breadth')],
      result: quantity(1, '1'),
      clause: NOT_DEEPER,
    });
    return { CL: 1, outside: false };
  }
  const le = effectiveBeamLength(givens.effectiveLengthRule, givens.unbracedLengthIn, d, note);
  const RB = Math.sqrt((le * d) / (b * b));
  note?.({
    symbol: 'RB',
    words: 'slenderness ratio in bending, at most 50',
    formula: 'sqrt(le × d / b^2)',
    put: [put('le', le, 'in', 'effective length'), put('d', d, 'in', 'depth'), put('b', b, 'in', 'breadth')],
    result: quantity(RB, '1'),
    clause: STABILITY,
  });
  const FbE = (CONSTANT_FbE * Emin) / (RB * RB);
  note?.({
    symbol: 'FbE',
    words: 'bending stress at which it would buckle sideways',
    formula: '1.20 × Emin / RB^2',
    put: [put('Emin', Emin, 'psi', 'stiffness for stability'), put('RB', RB, '1', 'slenderness ratio')],
    result: quantity(FbE, 'psi'),
    clause: STABILITY,
  });
  const half = (1 + FbE / FbStar) / CONSTANT_CL.sum;
  const product = FbE / FbStar / CONSTANT_CL.product;
  // The book's half - sqrt(half^2 - product), turned over so that it keeps its digits for slender members.
  const CL = product / (half + Math.sqrt(half * half - product));
  note?.({
    symbol: 'CL',
    words: 'beam stability factor',
    formula: '(1 + FbE / Fb*) / 1.9 - sqrt(((1 + FbE / Fb*) / 1.9)^2 - FbE / Fb* / 0.95)',
    put: [
      put('FbE', FbE, 'psi', 'stress at which it would buckle sideways'),
      put('Fb*', FbStar, 'psi', 'bending value with every factor but CL'),
    ],
    result: quantity(CL, '1'),
    clause: STABILITY,
  });
  return { CL, outside: RB > GREATEST_RB };
}
