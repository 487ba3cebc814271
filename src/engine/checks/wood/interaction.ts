import { clause } from '../../../data/sources.ts';
import { finite, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

const PUSH = clause('NDS', '3.9.2');
const PULL = clause('NDS', '3.9.1');
const VECTOR = clause('MECHANICS', 'moments in two planes add as a vector');

/**
 * One moment out of two at right angles, for a section that is alike in every direction.
 * @returns resultant, never negative [lb in]
 * @throws MisuseError if a moment is not finite
 * @limits whole round sections only. A cut section is weaker on one side: judge its planes apart.
 * @source MECHANICS: vector sum
 */
export function resultantMoment(oneLbIn: number, otherLbIn: number, note?: Note): number {
  const one = finite('oneLbIn', oneLbIn);
  const other = finite('otherLbIn', otherLbIn);
  const M = Math.sqrt(one * one + other * other);
  note?.({
    symbol: 'M',
    words: 'moment of both planes together',
    formula: 'sqrt(Mx^2 + My^2)',
    put: [put('Mx', one, 'lb·in', 'moment in the plane of the line'), put('My', other, 'lb·in', 'moment across it')],
    result: quantity(M, 'lb·in'),
    clause: VECTOR,
  });
  return M;
}

/**
 * Push and bending together in a round member: the sum that must not pass 1.
 * @param fcPsi compression stress at the representative diameter [psi]
 * @param FcAllowablePsi Fc' [psi]
 * @param fbPsi bending stress of the resultant moment, first order, on the net section [psi]
 * @param FbAllowablePsi Fb' [psi]
 * @param FcEPsi the smaller Euler stress of the two planes [psi]; Infinity where nothing can buckle
 * @returns the sum; Infinity when the push alone reaches the Euler stress. Never NaN.
 * @throws MisuseError if a stress is below zero or an allowable one not above zero
 * @source NDS 3.9.2, equation 3.9-3 with one moment
 */
export function roundPushAndBending(
  fcPsi: number,
  FcAllowablePsi: number,
  fbPsi: number,
  FbAllowablePsi: number,
  FcEPsi: number,
  note?: Note,
): number {
  const fc = notNegative('fcPsi', fcPsi);
  const fb = notNegative('fbPsi', fbPsi);
  const push = fc / positive('FcAllowablePsi', FcAllowablePsi);
  const left = leftOver(fc, FcEPsi);
  const sum = left > 0 ? push * push + fb / (positive('FbAllowablePsi', FbAllowablePsi) * left) : Infinity;
  note?.({
    symbol: 'sum',
    words: left > 0 ? 'push and bending together, at most 1' : 'the push alone reaches the Euler stress',
    formula: "(fc / Fc')^2 + fb / (Fb' × (1 - fc / FcE))",
    put: [
      put('fc', fc, 'psi', 'compression stress'),
      put("Fc'", FcAllowablePsi, 'psi', 'allowable compression of the column'),
      put('fb', fb, 'psi', 'bending stress'),
      put("Fb'", FbAllowablePsi, 'psi', 'allowable bending'),
      put('FcE', FcEPsi, 'psi', 'smaller Euler stress of the two planes'),
    ],
    result: quantity(sum, '1'),
    clause: PUSH,
  });
  return sum;
}

/** Bending of a rectangular member in one of its planes. */
export interface PlaneBending {
  readonly fbPsi: number;
  readonly FbAllowablePsi: number;
  /** Euler stress for buckling in this plane; Infinity where it is held */
  readonly FcEPsi: number;
}

/**
 * Push and bending in both planes of a rectangular member: the sum that must not pass 1.
 * @param fcPsi compression stress [psi]
 * @param FcAllowablePsi Fc' [psi]
 * @param edge bending about the strong axis (load on the narrow face)
 * @param face bending about the weak axis (load on the wide face)
 * @param FbEPsi stress at which it would buckle sideways as a beam [psi]; Infinity where it is no deeper than wide
 * @returns the sum; Infinity when one of the limits of the clause is reached. Never NaN.
 * @throws MisuseError if a stress is below zero or an allowable one not above zero
 * @source NDS 3.9.2, equations 3.9-3 and 3.9-4
 */
export function rectangularPushAndBending(
  fcPsi: number,
  FcAllowablePsi: number,
  edge: PlaneBending,
  face: PlaneBending,
  FbEPsi: number,
  note?: Note,
): number {
  const fc = notNegative('fcPsi', fcPsi);
  const fb1 = notNegative('edge.fbPsi', edge.fbPsi);
  const fb2 = notNegative('face.fbPsi', face.fbPsi);
  const push = fc / positive('FcAllowablePsi', FcAllowablePsi);
  const sideways = FbEPsi === Infinity ? 0 : fb1 / positive('FbEPsi', FbEPsi);
  const left1 = leftOver(fc, edge.FcEPsi);
  const left2 = leftOver(fc, face.FcEPsi) - sideways * sideways;
  const stands = left1 > 0 && left2 > 0 && sideways < 1;
  const sum = stands
    ? push * push +
      fb1 / (positive('edge.FbAllowablePsi', edge.FbAllowablePsi) * left1) +
      fb2 / (positive('face.FbAllowablePsi', face.FbAllowablePsi) * left2)
    : Infinity;
  note?.({
    symbol: 'sum',
    words: stands ? 'push and bending together, at most 1' : 'push and bending reach the stress at which it buckles',
    formula: "(fc / Fc')^2 + fb1 / (Fb1' × (1 - fc / FcE1)) + fb2 / (Fb2' × (1 - fc / FcE2 - (fb1 / FbE)^2))",
    put: [
      put('fc', fc, 'psi', 'compression stress'),
      put("Fc'", FcAllowablePsi, 'psi', 'allowable compression of the column'),
      put('fb1', fb1, 'psi', 'bending stress, load on the narrow face'),
      put("Fb1'", edge.FbAllowablePsi, 'psi', 'allowable bending for it'),
      put('FcE1', edge.FcEPsi, 'psi', 'Euler stress in that plane'),
      put('fb2', fb2, 'psi', 'bending stress, load on the wide face'),
      put("Fb2'", face.FbAllowablePsi, 'psi', 'allowable bending for it'),
      put('FcE2', face.FcEPsi, 'psi', 'Euler stress in that plane'),
      put('FbE', FbEPsi, 'psi', 'stress at which it would buckle sideways as a beam'),
    ],
    result: quantity(sum, '1'),
    clause: PUSH,
  });
  return sum;
}

/** What the push leaves of 1: 1 - fc / FcE, without a NaN where FcE is infinite. */
function leftOver(fc: number, FcE: number): number {
  return FcE === Infinity ? 1 : 1 - fc / positive('FcEPsi', FcE);
}

/**
 * Pull and bending together: the larger of the two sums that must not pass 1 (pulled edge, pressed edge).
 * @param ftPsi tension stress on the net section [psi]
 * @param FtAllowablePsi Ft' [psi]
 * @param fbPsi bending stress [psi]
 * @param FbStarPsi Fb' without CL [psi]
 * @param FbDoubleStarPsi Fb' with CL (without the volume factor) [psi]; the same for round wood
 * @returns the larger sum
 * @throws MisuseError if a stress is below zero or an allowable one not above zero
 * @source NDS 3.9.1, equations 3.9-1 and 3.9-2
 */
export function pullAndBending(
  ftPsi: number,
  FtAllowablePsi: number,
  fbPsi: number,
  FbStarPsi: number,
  FbDoubleStarPsi: number,
  note?: Note,
): number {
  const ft = notNegative('ftPsi', ftPsi);
  const fb = notNegative('fbPsi', fbPsi);
  const pulled = ft / positive('FtAllowablePsi', FtAllowablePsi) + fb / positive('FbStarPsi', FbStarPsi);
  const pressed = (fb - ft) / positive('FbDoubleStarPsi', FbDoubleStarPsi);
  note?.({
    symbol: 'sum1',
    words: 'pull and bending together, pulled edge, at most 1',
    formula: "ft / Ft' + fb / Fb*",
    put: [
      put('ft', ft, 'psi', 'tension stress'),
      put("Ft'", FtAllowablePsi, 'psi', 'allowable tension'),
      put('fb', fb, 'psi', 'bending stress'),
      put('Fb*', FbStarPsi, 'psi', 'allowable bending without beam stability'),
    ],
    result: quantity(pulled, '1'),
    clause: PULL,
  });
  note?.({
    symbol: 'sum2',
    words: 'bending less pull, pressed edge, at most 1',
    formula: '(fb - ft) / Fb**',
    put: [
      put('fb', fb, 'psi', 'bending stress'),
      put('ft', ft, 'psi', 'tension stress'),
      put('Fb**', FbDoubleStarPsi, 'psi', 'allowable bending with beam stability'),
    ],
    result: quantity(pressed, '1'),
    clause: PULL,
  });
  return Math.max(pulled, pressed);
}
