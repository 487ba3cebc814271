/**
 * A pivot this small beside the diagonal it came from makes one look closer. Not smaller: next to a very short, hence
 * very stiff element the rounding of its stiffness can pass for resistance of its soft neighbours.
 */
const WORTH_A_LOOK = 1e-3;
/**
 * Least energy of a movement over the energy that its unknowns would cost one by one. Mechanisms come out at 1e-16, the
 * rounding of a sum; slender frames that hold stay above 1e-12, cut into fifty elements a member or with elements of
 * a sixteenth of an inch.
 */
const NO_RESISTANCE = 1e-14;

/**
 * Symmetric matrix of which each row keeps only what stands between its first entry and the diagonal. Factored in
 * place into L·D·L', after which any number of right sides can be solved.
 */
export class Skyline {
  /** first kept column of each row */
  readonly #first: Int32Array;
  /** entry (row, column) stands at `#start[row] + column` */
  readonly #start: Int32Array;
  readonly #values: Float64Array;
  readonly #pivots: Float64Array;

  constructor(first: Int32Array) {
    this.#first = first;
    this.#start = new Int32Array(first.length);
    let size = 0;
    for (let row = 0; row < first.length; row++) {
      this.#start[row] = size - first[row]!;
      size += row - first[row]! + 1;
    }
    this.#values = new Float64Array(size);
    this.#pivots = new Float64Array(first.length);
  }

  /** Adds to an entry on or below the diagonal. */
  add(row: number, column: number, value: number): void {
    this.#values[this.#start[row]! + column]! += value;
  }

  /**
   * @returns null when every pivot resists; else a movement of all unknowns that costs no force.
   */
  factor(): Float64Array | null {
    const values = this.#values;
    const diagonals = Float64Array.from(this.#pivots, (_, row) => values[this.#start[row]! + row]!);
    for (let row = 0; row < this.#first.length; row++) {
      const rowStart = this.#start[row]!;
      const rowFirst = this.#first[row]!;
      for (let column = rowFirst; column < row; column++) {
        const columnStart = this.#start[column]!;
        let entry = values[rowStart + column]!;
        for (let k = Math.max(rowFirst, this.#first[column]!); k < column; k++)
          entry -= values[rowStart + k]! * values[columnStart + k]!;
        values[rowStart + column] = entry;
      }
      let pivot = diagonals[row]!;
      for (let column = rowFirst; column < row; column++) {
        const entry = values[rowStart + column]!;
        const lower = entry / this.#pivots[column]!;
        pivot -= entry * lower;
        values[rowStart + column] = lower;
      }
      if (!(pivot > WORTH_A_LOOK * diagonals[row]!)) {
        // the pivot is the energy of this movement, twice
        const movement = this.#easiestMovement(row);
        const oneByOne = movement.reduce((sum, amount, k) => sum + amount * amount * diagonals[k]!, 0);
        if (!(pivot > NO_RESISTANCE * oneByOne)) return movement;
      }
      this.#pivots[row] = pivot;
    }
    return null;
  }

  /** Solves in place, for one right side. */
  solve(side: Float64Array): void {
    const values = this.#values;
    const size = this.#first.length;
    for (let row = 0; row < size; row++) {
      const start = this.#start[row]!;
      let sum = side[row]!;
      for (let column = this.#first[row]!; column < row; column++) sum -= values[start + column]! * side[column]!;
      side[row] = sum;
    }
    for (let row = 0; row < size; row++) side[row]! /= this.#pivots[row]!;
    this.#substituteBack(side, size - 1);
  }

  /** Unknowns after `row` held, `row` itself moved by one: those before it go where that costs least. */
  #easiestMovement(row: number): Float64Array {
    const movement = new Float64Array(this.#first.length);
    movement[row] = 1;
    this.#substituteBack(movement, row);
    return movement;
  }

  #substituteBack(side: Float64Array, last: number): void {
    for (let row = last; row >= 0; row--) {
      const start = this.#start[row]!;
      const known = side[row]!;
      for (let column = this.#first[row]!; column < row; column++)
        side[column]! -= this.#values[start + column]! * known;
    }
  }
}
