import type { ElasticElement } from './element.ts';
import type { FrameModel } from './model.ts';
import { Skyline } from './skyline.ts';
import { PER_NODE, turnStiffness, type Unknowns } from './unknowns.ts';

/** End movements of an element: u, w, turn at its start, then at its end. */
export const PER_ELEMENT = 6;

/**
 * Numbers of the equations that the end movements of every element stand for; -1 where held. A bar meets no turn, so its
 * turns are left out.
 */
export function equationsOf(elements: readonly ElasticElement[], { ends, equation }: Unknowns): Int32Array {
  const list = new Int32Array(PER_ELEMENT * elements.length);
  elements.forEach((element, i) => {
    for (let k = 0; k < PER_ELEMENT; k++) {
      const node = ends[2 * i + (k < 3 ? 0 : 1)]!;
      const isTurn = k % 3 === 2;
      list[PER_ELEMENT * i + k] = isTurn && !element.isBeam ? -1 : equation[PER_NODE * node + (k % 3)]!;
    }
  });
  return list;
}

/** How the six end movements make up the stretch and the two turns. */
function deformations({ lengthIn, cos, sin }: ElasticElement): readonly [number[], number[], number[]] {
  const c = cos / lengthIn;
  const s = sin / lengthIn;
  return [
    [-cos, -sin, 0, cos, sin, 0],
    [-s, c, 1, s, -c, 0],
    [-s, c, 0, s, -c, 1],
  ];
}

/** Elastic stiffness of the whole frame, not yet factored. */
export function assembleStiffness(
  model: FrameModel,
  unknowns: Unknowns,
  elements: readonly ElasticElement[],
  equations: Int32Array,
): Skyline {
  const matrix = new Skyline(firstColumns(unknowns.count, equations));
  elements.forEach((element, i) => {
    const [stretch, start, end] = deformations(element);
    for (let a = 0; a < PER_ELEMENT; a++) {
      const row = equations[PER_ELEMENT * i + a]!;
      if (row < 0) continue;
      const pull = element.stretch * stretch[a]!;
      const startMoment = element.startTurn * start[a]! + element.crossTurn * end[a]!;
      const endMoment = element.crossTurn * start[a]! + element.endTurn * end[a]!;
      for (let b = 0; b < PER_ELEMENT; b++) {
        const column = equations[PER_ELEMENT * i + b]!;
        if (column < 0 || column > row) continue;
        matrix.add(row, column, pull * stretch[b]! + startMoment * start[b]! + endMoment * end[b]!);
      }
    }
  });
  for (const support of model.supports) {
    const row = unknowns.equation[PER_NODE * unknowns.indexOf(support.node) + 2]!;
    if (row >= 0) matrix.add(row, row, turnStiffness(support.turn));
  }
  return matrix;
}

/** First column of each row that an element reaches. */
function firstColumns(count: number, equations: Int32Array): Int32Array {
  const first = Int32Array.from({ length: count }, (_, row) => row);
  for (let i = 0; i < equations.length; i += PER_ELEMENT) {
    const list = equations.subarray(i, i + PER_ELEMENT);
    let least = count;
    for (const row of list) if (row >= 0 && row < least) least = row;
    for (const row of list) if (row >= 0 && least < first[row]!) first[row] = least;
  }
  return first;
}
