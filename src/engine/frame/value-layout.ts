import { listMaker } from '../lists.ts';
import type { FrameState } from '../solver/model.ts';
import type { LineMesh } from './line-mesh.ts';

/**
 * Where everything known of a line stands in one list of values, of a solved state as of a combination: forces of
 * every element (N, V, M at its start, then at its end), reactions of every support (u, w, turn), push of every brace,
 * how far the ends of every brace move apart, and last the moves of every node (u, w, turn).
 */
export class ValueLayout {
  readonly reactionsAt: number;
  readonly bracesAt: number;
  readonly openingsAt: number;
  readonly movesAt: number;
  readonly size: number;
  /** a list of so many zeros */
  readonly newList: () => Float64Array;

  constructor({ model, braces }: LineMesh) {
    this.reactionsAt = model.elements.length * 6;
    this.bracesAt = this.reactionsAt + model.supports.length * 3;
    this.openingsAt = this.bracesAt + braces.length;
    this.movesAt = this.openingsAt + braces.length;
    this.size = this.movesAt + model.nodes.length * 3;
    this.newList = listMaker(this.size);
  }

  copyOf(values: Float64Array): Float64Array {
    const copy = this.newList();
    copy.set(values);
    return copy;
  }
}

/** A state of the mesh as one list of values. The mesh has no braces in it: no push until one is put on its ends. */
export function valuesOfState(mesh: LineMesh, layout: ValueLayout, state: FrameState): Float64Array {
  const values = layout.newList();
  values.set(state.forces);
  values.set(state.reactions, layout.reactionsAt);
  mesh.braces.forEach((_, j) => (values[layout.openingsAt + j] = gapOpening(mesh, state, j)));
  values.set(state.moves, layout.movesAt);
  return values;
}

/** How much the ends of brace j move apart in a state [in]. */
export function gapOpening(mesh: LineMesh, state: FrameState, j: number): number {
  const link = mesh.braces[j]!;
  const a = link.postNode * 3;
  const b = link.topNode * 3;
  return (state.moves[b]! - state.moves[a]!) * link.du + (state.moves[b + 1]! - state.moves[a + 1]!) * link.dw;
}
