import type { ReadyElement } from './element.ts';
import { PER_NODE, type Unknowns } from './unknowns.ts';

/** Numbers per element in a list of loads along elements: across it at start and end, then along it at start and end. */
export const PER_LOAD = 4;
/** Numbers per element in a list of end forces: N, V, M at the start, then at the end. */
export const PER_FORCE = 6;

/**
 * Writes N, V and M at both ends of every element from the movements of its nodes and its loads. The three
 * deformations give the pull and the two end moments; the rest is equilibrium.
 */
export function writeEndForces(
  forces: Float64Array,
  elements: readonly ReadyElement[],
  ends: Int32Array,
  moves: Float64Array,
  loads: Float64Array,
): void {
  for (let i = 0; i < elements.length; i++) {
    const { lengthIn: L, cos, sin, stretch, startTurn, crossTurn, endTurn, held } = elements[i]!;
    const from = PER_NODE * ends[2 * i]!;
    const to = PER_NODE * ends[2 * i + 1]!;
    const du = moves[to]! - moves[from]!;
    const dw = moves[to + 1]! - moves[from + 1]!;
    const chordTurn = (dw * cos - du * sin) / L;
    const turnA = moves[from + 2]! - chordTurn;
    const turnB = moves[to + 2]! - chordTurn;
    const acrossA = loads[PER_LOAD * i]!;
    const acrossB = loads[PER_LOAD * i + 1]!;
    const alongA = loads[PER_LOAD * i + 2]!;
    const alongB = loads[PER_LOAD * i + 3]!;

    const N = stretch * (du * cos + dw * sin) + held.startPull.a * alongA + held.startPull.b * alongB;
    // counter-clockwise on the element at its start, hence minus a sagging moment
    const startMoment =
      startTurn * turnA + crossTurn * turnB + held.startMoment.a * acrossA + held.startMoment.b * acrossB;
    const M = crossTurn * turnA + endTurn * turnB + held.endMoment.a * acrossA + held.endMoment.b * acrossB;
    const V = (M + startMoment) / L - (L * (2 * acrossA + acrossB)) / 6;

    const at = PER_FORCE * i;
    forces[at] = N;
    forces[at + 1] = V;
    forces[at + 2] = -startMoment;
    forces[at + 3] = N - (L * (alongA + alongB)) / 2;
    forces[at + 4] = V + (L * (acrossA + acrossB)) / 2;
    forces[at + 5] = M;
  }
}

/**
 * Writes what is left of the loads on each node once the elements have taken their part: zero where a free movement is
 * in balance, minus the reaction where it is held. u and w gather at the node that carries them.
 */
export function writeUnbalanced(
  unbalanced: Float64Array,
  elements: readonly ReadyElement[],
  { ends, carrier }: Unknowns,
  nodeLoads: Float64Array,
  forces: Float64Array,
): void {
  unbalanced.set(nodeLoads);
  for (let i = 0; i < elements.length; i++) {
    const { cos, sin } = elements[i]!;
    const at = PER_FORCE * i;
    const from = ends[2 * i]!;
    const to = ends[2 * i + 1]!;
    const carrierFrom = PER_NODE * carrier[from]!;
    const carrierTo = PER_NODE * carrier[to]!;
    unbalanced[carrierFrom]! += forces[at]! * cos + forces[at + 1]! * sin;
    unbalanced[carrierFrom + 1]! += forces[at]! * sin - forces[at + 1]! * cos;
    unbalanced[PER_NODE * from + 2]! += forces[at + 2]!;
    unbalanced[carrierTo]! -= forces[at + 3]! * cos + forces[at + 4]! * sin;
    unbalanced[carrierTo + 1]! -= forces[at + 3]! * sin - forces[at + 4]! * cos;
    unbalanced[PER_NODE * to + 2]! -= forces[at + 5]!;
  }
}
