import { listMaker } from '../lists.ts';
import { eigenvalueAt, eigenvectorAt, type Tridiagonal } from './buckling-tridiagonal.ts';

/** A frame as its buckling sees it: `solve` divides by the elastic stiffness in place, `push` multiplies by what thrust takes off it. */
export interface PushedFrame {
  readonly count: number;
  readonly solve: (side: Float64Array) => void;
  /** @param forces  zeros, where the answer is written */
  readonly push: (moves: Float64Array, forces: Float64Array) => Float64Array;
}

/** One way to buckle; the movement of all unknowns has the elastic energy of one half. */
export interface Pair {
  /** thrust's share of the stiffness, one over the load factor; above zero */
  readonly share: number;
  readonly moves: Float64Array;
}

/** A pair is found when what it leaves out of balance is less than this share of it; its factor is then good to 1e-11. */
const FOUND = 1e-6;
/** Nothing is left to look for, or nothing pushes: rounding beside the greatest share. */
const NOTHING = 1e-12;
/** Looked at first after so many steps, then after every further so many. */
const STEPS_BETWEEN_LOOKS = 3;
/** Frames of this kind need about a dozen; what is not found by then is left out. */
const MOST_STEPS = 120;

/**
 * The greatest shares of `push` over stiffness, by Lanczos' method in the measure of elastic energy, every new movement made
 * square to all before it: each step asks how the frame gives way under the thrust of the movement before.
 * @returns up to `count` pairs, greatest first; none where no thrust takes stiffness away
 * @limits  of several equal shares one is found, with the movement that the start leads to
 * @source  MECHANICS Lanczos method for K x = lambda G x with full orthogonalization
 */
export function greatestShares(frame: PushedFrame, count: number): readonly Pair[] {
  const basis: Float64Array[] = [];
  const forces: Float64Array[] = []; // the stiffness times each of the basis
  const diagonal: number[] = [];
  const beside: number[] = [];
  const most = Math.min(frame.count, MOST_STEPS);

  const newList = listMaker(frame.count);
  let force = unevenForce(newList());
  let moves = solved(frame, force, newList());
  let size = Math.sqrt(dot(moves, force));
  while (basis.length < most) {
    // this step's movement and force stay in the basis
    basis.push(scale(moves, 1 / size));
    forces.push(scale(force, 1 / size));
    force = frame.push(moves, newList());
    moves = solved(frame, force, newList());
    diagonal.push(dot(basis[basis.length - 1]!, force));
    takeOut(basis, forces, moves, force);
    size = Math.sqrt(Math.max(0, dot(moves, force)));
    const isDone = !(size > NOTHING * Math.max(...diagonal.map(Math.abs), ...beside)) || basis.length === most;
    if (isDone || basis.length % STEPS_BETWEEN_LOOKS === 0) {
      const found = pairsOf({ diagonal, beside }, count, isDone ? 0 : size);
      if (found) return found.map(({ share, vector }) => ({ share, moves: combined(basis, vector) }));
    }
    beside.push(size);
  }
  return [];
}

/** The first positive eigenpairs; null while one of them is not yet found. @param left  what the next step would add */
function pairsOf(
  T: Tridiagonal,
  count: number,
  left: number,
): readonly { share: number; vector: Float64Array }[] | null {
  const pairs: { share: number; vector: Float64Array }[] = [];
  const least = NOTHING * Math.max(...T.diagonal.map(Math.abs), ...T.beside);
  for (let rank = 0; rank < Math.min(count, T.diagonal.length); rank++) {
    const share = eigenvalueAt(rank, T);
    const vector = eigenvectorAt(share, T);
    if (Math.abs(left * vector[vector.length - 1]!) > FOUND * Math.abs(share)) return null;
    if (!(share > least)) break;
    pairs.push({ share, vector });
  }
  return pairs;
}

/** A force on every unknown, like no other: no movement of a frame, even or mirrored, can be square to it. */
function unevenForce(force: Float64Array): Float64Array {
  for (let i = 0; i < force.length; i++) force[i] = 1 + Math.sin(1 + i * i);
  return force;
}

function solved(frame: PushedFrame, force: Float64Array, moves: Float64Array): Float64Array {
  moves.set(force);
  frame.solve(moves);
  return moves;
}

/** Makes a movement, and the force that goes with it, square to all before it. */
function takeOut(basis: Float64Array[], forces: Float64Array[], moves: Float64Array, force: Float64Array): void {
  for (let k = 0; k < basis.length; k++) {
    const share = dot(basis[k]!, force);
    add(moves, basis[k]!, -share);
    add(force, forces[k]!, -share);
  }
}

function combined(basis: readonly Float64Array[], amounts: Float64Array): Float64Array {
  const sum = new Float64Array(basis[0]!.length);
  basis.forEach((vector, k) => add(sum, vector, amounts[k]!));
  return sum;
}

function scale(vector: Float64Array, factor: number): Float64Array {
  for (let i = 0; i < vector.length; i++) vector[i]! *= factor;
  return vector;
}

function add(sum: Float64Array, vector: Float64Array, amount: number): void {
  for (let i = 0; i < sum.length; i++) sum[i]! += amount * vector[i]!;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
