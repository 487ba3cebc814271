import type { Combination } from '../loads/combination.ts';
import {
  addAdverse,
  addAdversePieces,
  deadSums,
  swayed,
  type DeadSums,
  type FreeAndHeld,
  type PieceValues,
} from './dead-sums.ts';
import type { ValueLayout } from './value-layout.ts';

/** Where the solved cases of a line stand in their list: dead pieces heavy, the same pieces light, then all others. */
export interface CaseOrder {
  /** names of the dead pieces */
  readonly pieces: readonly string[];
  /** place in the list of every case that is not dead load */
  readonly indexOf: ReadonlyMap<string, number>;
}

/** How often the sway of a free line counts: what it differs in from the same line held sideways. */
export interface Sway {
  /** the same braces working, the line held */
  readonly held: WorkingSet;
  /** above 1 */
  readonly times: number;
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
    /** by solved case: all values with these braces working */
    readonly caseAt: (index: number) => Float64Array,
  ) {
    this.#room = new Float64Array(layout.size);
    const count = order.pieces.length;
    this.#dead = deadSums(
      layout.size,
      order.pieces.map((_, p) => ({ heavy: caseAt(p), light: caseAt(count + p) })),
    );
  }

  /**
   * Values of a combination as far as its purpose asks for them: forces for strength, moves for sag, both where the line
   * sways. All others are no numbers, so that nobody reads them unawares.
   * @param sway  of a free line: every case, dead load too, brings what it brings to the held line, and its sway so many times
   */
  combine(combination: Combination, sway?: Sway): Float64Array {
    const { movesAt, size } = this.layout;
    const isStrength = combination.purpose === 'strength';
    const from = isStrength ? 0 : movesAt;
    const to = isStrength && !combination.swaysAlong ? movesAt : size;
    const { factor, weight } = combination.dead;
    const values = this.layout.newList();
    values.fill(NaN, 0, from).fill(NaN, to);
    this.#addCases(values, combination, from, to, sway);
    if (weight === 'heavy') this.#addDead(values, 'heavy', factor, from, to, sway);
    else if (sway) addAdversePieces(values, this.#deadPieces(sway), sway.times, factor, from, to);
    else addAdverse(values, this.#dead, factor, from, to);
    return values;
  }

  /**
   * Push of every brace, then how far the ends of each move apart: by these the braces that push are chosen. Dead load
   * counts as one, at the weight and factor of the combination.
   */
  braceValues(combination: Combination, sway?: Sway): Float64Array {
    const { bracesAt, movesAt } = this.layout;
    const { factor, weight } = combination.dead;
    const values = this.#room;
    values.fill(0, bracesAt, movesAt);
    this.#addCases(values, combination, bracesAt, movesAt, sway);
    this.#addDead(values, weight, factor, bracesAt, movesAt, sway);
    return values.slice(bracesAt, movesAt);
  }

  /** One value of one solved case, its sway so often as said. */
  valueOf(index: number, at: number, sway?: Sway): number {
    const free = this.caseAt(index)[at]!;
    return sway ? swayed(free, sway.held.caseAt(index)[at]!, sway.times) : free;
  }

  #addCases(values: Float64Array, { factors }: Combination, from: number, to: number, sway?: Sway): void {
    for (const { caseId, factor } of factors) {
      const index = this.order.indexOf.get(caseId);
      if (index === undefined) continue;
      addTo(values, this.caseAt(index), factor * (sway?.times ?? 1), from, to);
      if (sway) addTo(values, sway.held.caseAt(index), factor * (1 - sway.times), from, to);
    }
  }

  #addDead(
    values: Float64Array,
    weight: 'heavy' | 'light',
    factor: number,
    from: number,
    to: number,
    sway?: Sway,
  ): void {
    addTo(values, this.#dead.all[weight], factor * (sway?.times ?? 1), from, to);
    if (sway) addTo(values, sway.held.#dead.all[weight], factor * (1 - sway.times), from, to);
  }

  /** Values of each dead piece at both weights, on the free line and on the same line held. */
  #deadPieces({ held }: Sway): readonly PieceValues[] {
    const count = this.order.pieces.length;
    const both = (index: number): FreeAndHeld => ({ free: this.caseAt(index), held: held.caseAt(index) });
    return this.order.pieces.map((_, p) => ({ heavy: both(p), light: both(count + p) }));
  }
}

/** Adds the values from one place to another as often as the factor says. */
function addTo(sum: Float64Array, values: Float64Array, factor: number, from: number, to: number): void {
  for (let i = from; i < to; i++) sum[i]! += factor * values[i]!;
}
