import { readyElement } from './element.ts';
import type { Factored, FrameModel } from './model.ts';
import { stateSolver } from './solve-state.ts';
import { assembleStiffness, equationsOf } from './stiffness.ts';
import { PER_NODE, unknownsOf, type Unknowns } from './unknowns.ts';

/**
 * Makes a plane frame ready to answer any number of load states: stiffness method, first order, one factorization.
 * Tapered round members are exact at any taper; axial give is always counted.
 * @returns the solver of load states, or the node that moves freely when the frame is a mechanism
 * @throws MisuseError  when the model contradicts itself: unknown or doubled ids, elements shorter than 1/32 in or without stiffness,
 *   a movement held twice
 * @limits  small movements, linear; bars carry load across them to their ends as simple spans
 * @source  MECHANICS stiffness method with flexibilities of the member lying on its two ends
 */
export function factorFrame(model: FrameModel): Factored {
  const unknowns = unknownsOf(model);
  const elements = model.elements.map((element, i) =>
    readyElement(element, model.nodes[unknowns.ends[2 * i]!]!, model.nodes[unknowns.ends[2 * i + 1]!]!),
  );
  const matrix = assembleStiffness(model, unknowns, elements, equationsOf(elements, unknowns));
  const free = matrix.factor();
  if (free) return { ok: false, ...largestMovement(model, unknowns, free) };
  return { ok: true, solve: stateSolver(model, unknowns, elements, matrix) };
}

/**
 * Who moves most when the frame moves without force. No node can turn freely without something changing its place: where
 * only bars meet there is no turn to solve for.
 */
function largestMovement(
  model: FrameModel,
  { movement }: Unknowns,
  free: Float64Array,
): { node: string; moves: 'u' | 'w' } {
  const shifts = Array.from(free, Math.abs).map((amount, row) => (movement[row]! % PER_NODE === 2 ? 0 : amount));
  const most = Math.max(...shifts);
  // of several that move alike the first node of the model is named, whatever the order of solving
  const named = Math.min(...shifts.map((amount, row) => (amount >= most * (1 - 1e-6) ? movement[row]! : Infinity)));
  const node = model.nodes[Math.floor(named / PER_NODE)]!;
  return { node: node.id, moves: named % PER_NODE === 0 ? 'u' : 'w' };
}
