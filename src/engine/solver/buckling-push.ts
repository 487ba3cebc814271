import type { ReadyElement } from './element.ts';
import { PER_ELEMENT } from './stiffness.ts';

/**
 * Adds what the thrust of every element does to a movement of the frame: an element that leans is pushed farther over,
 * one that bows is bowed farther. Between its ends it is taken to bow as a cubic, so several elements are wanted where a
 * member bows; a bar stays straight.
 * @param thrust  per element, push + [lb]
 * @param equations  of the end movements of every element, -1 where held
 * @param moves  of all unknowns
 * @returns the forces on all unknowns: geometric stiffness, its sign turned round, times the movement
 * @source MECHANICS work of an axial force on the slope of a beam, cubic between its ends
 */
export function thrustForces(
  elements: readonly ReadyElement[],
  equations: Int32Array,
  thrust: ArrayLike<number>,
  moves: Float64Array,
): Float64Array {
  const forces = new Float64Array(moves.length);
  for (let i = 0; i < elements.length; i++) {
    const P = thrust[i]!;
    if (P === 0) continue;
    const { lengthIn: L, cos, sin, isBeam } = elements[i]!;
    const at = PER_ELEMENT * i;
    const fromU = equations[at]!;
    const fromW = equations[at + 1]!;
    const fromTurn = equations[at + 2]!;
    const toU = equations[at + 3]!;
    const toW = equations[at + 4]!;
    const toTurn = equations[at + 5]!;

    const du = (toU < 0 ? 0 : moves[toU]!) - (fromU < 0 ? 0 : moves[fromU]!);
    const dw = (toW < 0 ? 0 : moves[toW]!) - (fromW < 0 ? 0 : moves[fromW]!);
    const chordTurn = (dw * cos - du * sin) / L;
    let across = P * chordTurn;
    if (isBeam) {
      const turnA = (fromTurn < 0 ? 0 : moves[fromTurn]!) - chordTurn;
      const turnB = (toTurn < 0 ? 0 : moves[toTurn]!) - chordTurn;
      const momentA = (P * L * (4 * turnA - turnB)) / 30;
      const momentB = (P * L * (4 * turnB - turnA)) / 30;
      across -= (momentA + momentB) / L;
      if (fromTurn >= 0) forces[fromTurn]! += momentA;
      if (toTurn >= 0) forces[toTurn]! += momentB;
    }
    if (toU >= 0) forces[toU]! -= across * sin;
    if (toW >= 0) forces[toW]! += across * cos;
    if (fromU >= 0) forces[fromU]! += across * sin;
    if (fromW >= 0) forces[fromW]! -= across * cos;
  }
  return forces;
}
