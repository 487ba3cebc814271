import { readyElement, type ReadyElement } from './element.ts';
import type { Factored, FrameModel } from './model.ts';
import { Skyline } from './skyline.ts';
import { stateSolver } from './solve-state.ts';
import { PER_NODE, turnStiffness, unknownsOf, type Unknowns } from './unknowns.ts';

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
  const matrix = assemble(model, unknowns, elements);
  const free = matrix.factor();
  if (free) return { ok: false, ...largestMovement(model, unknowns, free) };
  return { ok: true, solve: stateSolver(model, unknowns, elements, matrix) };
}

/** How the six end movements (u, w, turn at start, then at end) make up the stretch and the two turns. */
function deformations({ lengthIn, cos, sin }: ReadyElement): readonly [number[], number[], number[]] {
  const c = cos / lengthIn;
  const s = sin / lengthIn;
  return [
    [-cos, -sin, 0, cos, sin, 0],
    [-s, c, 1, s, -c, 0],
    [-s, c, 0, s, -c, 1],
  ];
}

function assemble(model: FrameModel, unknowns: Unknowns, elements: readonly ReadyElement[]): Skyline {
  const { ends, equation } = unknowns;
  // a bar meets no turn, so its turns are left out of the profile
  const equationsOf = elements.map((element, i) =>
    [0, 1, 2, 3, 4, 5].map((k) => {
      const node = ends[2 * i + (k < 3 ? 0 : 1)]!;
      return k % 3 === 2 && !element.isBeam ? -1 : equation[PER_NODE * node + (k % 3)]!;
    }),
  );
  const first = Int32Array.from({ length: unknowns.count }, (_, row) => row);
  for (const list of equationsOf) {
    let least = unknowns.count;
    for (const row of list) if (row >= 0 && row < least) least = row;
    for (const row of list) if (row >= 0 && least < first[row]!) first[row] = least;
  }

  const matrix = new Skyline(first);
  elements.forEach((element, i) => {
    const [stretch, start, end] = deformations(element);
    const equations = equationsOf[i]!;
    for (let a = 0; a < 6; a++) {
      const row = equations[a]!;
      if (row < 0) continue;
      const pull = element.stretch * stretch[a]!;
      const startMoment = element.startTurn * start[a]! + element.crossTurn * end[a]!;
      const endMoment = element.crossTurn * start[a]! + element.endTurn * end[a]!;
      for (let b = 0; b < 6; b++) {
        const column = equations[b]!;
        if (column < 0 || column > row) continue;
        matrix.add(row, column, pull * stretch[b]! + startMoment * start[b]! + endMoment * end[b]!);
      }
    }
  });
  for (const support of model.supports) {
    const row = equation[PER_NODE * unknowns.indexOf(support.node) + 2]!;
    if (row >= 0) matrix.add(row, row, turnStiffness(support.turn));
  }
  return matrix;
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
