import type { ElasticElement } from './element.ts';
import { PER_ELEMENT } from './stiffness.ts';

/**
 * What the thrust of every element does to a movement of the frame: an element that leans is pushed farther over, one that
 * bows is bowed farther. Between its ends it is taken to bow as a cubic, so several elements are wanted where a member
 * bows; a bar stays straight.
 * @param thrust  per element, push + [lb]
 * @param equations  of the end movements of every element, -1 where held
 * @param moves  of all unknowns
 * @param forces  zeros, to which is added
 * @returns the forces on all unknowns: geometric stiffness, its sign turned round, times the movement
 * @source MECHANICS work of an axial force on the slope of a beam, cubic between its ends
 */
export function thrustForces(
  elements: readonly ElasticElement[],
  equations: Int32Array,
  thrust: ArrayLike<number>,
  moves: Float64Array,
  forces: Float64Array,
): Float64Array {
  const give = (at: number, force: number): void => {
    const row = equations[at]!;
    if (row >= 0) forces[row]! += force;
  };
  for (let i = 0; i < elements.length; i++) {
    const P = thrust[i]!;
    if (P === 0) continue;
    const { lengthIn: L, cos, sin } = elements[i]!;
    const { lean, bowA, bowB } = shapeOf(elements[i]!, equations, i, moves);
    const momentA = (P * L * (4 * bowA - bowB)) / 30;
    const momentB = (P * L * (4 * bowB - bowA)) / 30;
    const across = P * lean - (momentA + momentB) / L;
    const at = PER_ELEMENT * i;
    give(at, across * sin);
    give(at + 1, -across * cos);
    give(at + 2, momentA);
    give(at + 3, -across * sin);
    give(at + 4, across * cos);
    give(at + 5, momentB);
  }
  return forces;
}

/** Per element: twice the work that a pound of thrust in it does in a movement [in]. */
export function workPerLb(
  elements: readonly ElasticElement[],
  equations: Int32Array,
  moves: Float64Array,
): Float64Array {
  return Float64Array.from(elements, (element, i) => {
    const { lean, bowA, bowB } = shapeOf(element, equations, i, moves);
    return element.lengthIn * (lean * lean + (2 * bowA * bowA - bowA * bowB + 2 * bowB * bowB) / 15);
  });
}

/** How far the chord of an element leans, and the turns of its ends against the chord. */
function shapeOf(element: ElasticElement, equations: Int32Array, i: number, moves: Float64Array) {
  const moveOf = (k: number): number => {
    const row = equations[PER_ELEMENT * i + k]!;
    return row < 0 ? 0 : moves[row]!;
  };
  const { lengthIn, cos, sin, isBeam } = element;
  const lean = ((moveOf(4) - moveOf(1)) * cos - (moveOf(3) - moveOf(0)) * sin) / lengthIn;
  return isBeam ? { lean, bowA: moveOf(2) - lean, bowB: moveOf(5) - lean } : { lean, bowA: 0, bowB: 0 };
}
