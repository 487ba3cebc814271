import type { Combination } from '../loads/combination.ts';
import { addAdverse, deadSums, type DeadSums } from './dead-sums.ts';
import type { ValueLayout } from './value-layout.ts';

/** Where the solved cases of a line stand in their list: dead pieces heavy, the same pieces light, then all others. */
export interface CaseOrder {
  /** names of the dead pieces */
  readonly pieces: readonly string[];
  /** place in the list of every case that is not dead load */
  readonly indexOf: ReadonlyMap<string, number>;
}

/**
 * Every solved case of a line with one set of working braces. Within it everything is linear, so a combination is a
 * weighted sum of long lists of values.
 */
export class WorkingSet {
  readonly #dead: DeadSums;
  /** working room for the few values of the braces */
  readonly #room: Float64Array;

  constructor(
    private readonly layout: ValueLayout,
    private readonly order: CaseOrder,
    readonly working: readonly boolean[],
    /** nothing but the line itself holds it sideways */
    readonly free: boolean,
    /** per solved case: all values with these braces working */
    readonly cases: readonly Float64Array[],
  ) {
    this.#room = new Float64Array(layout.size);
    const count = order.pieces.length;
    this.#dead = deadSums(
      layout.size,
      order.pieces.map((_, p) => ({ heavy: cases[p]!, light: cases[count + p]! })),
    );
  }

  /**
   * Values of a combination as far as its purpose asks for them: forces for strength, moves for sag, both where the line
   * sways. All others are no numbers, so that nobody reads them unawares.
   */
  combine(combination: Combination): Float64Array {
    const { movesAt, size } = this.layout;
    const isStrength = combination.purpose === 'strength';
    const from = isStrength ? 0 : movesAt;
    const to = isStrength && !combination.swaysAlong ? movesAt : size;
    const { factor, weight } = combination.dead;
    const values = new Float64Array(size);
    values.fill(NaN, 0, from).fill(NaN, to);
    this.#addCases(values, combination, from, to);
    if (weight === 'heavy') addTo(values, this.#dead.all.heavy, factor, from, to);
    else addAdverse(values, this.#dead, factor, from, to);
    return values;
  }

  /**
   * Push of every brace, then how far the ends of each move apart: by these the braces that push are chosen. Dead load
   * counts as one, at the weight and factor of the combination.
   */
  braceValues(combination: Combination): Float64Array {
    const { bracesAt, movesAt } = this.layout;
    const { factor, weight } = combination.dead;
    const values = this.#room;
    values.fill(0, bracesAt, movesAt);
    this.#addCases(values, combination, bracesAt, movesAt);
    addTo(values, this.#dead.all[weight], factor, bracesAt, movesAt);
    return values.slice(bracesAt, movesAt);
  }

  #addCases(values: Float64Array, { factors }: Combination, from: number, to: number): void {
    for (const { caseId, factor } of factors) {
      const index = this.order.indexOf.get(caseId);
      if (index !== undefined) addTo(values, this.cases[index]!, factor, from, to);
    }
  }
}

/** Adds the values from one place to another as often as the factor says. */
function addTo(sum: Float64Array, values: Float64Array, factor: number, from: number, to: number): void {
  for (let i = from; i < to; i++) sum[i]! += factor * values[i]!;
}
