/** Pieces of dead load added up: those that count heavy, and those that count light. */
interface DeadSum {
  readonly heavy: Float64Array;
  readonly light: Float64Array;
}

/** What all dead pieces of a line come to, value by value. */
export interface DeadSums {
  /** every piece, at either weight */
  readonly all: DeadSum;
  /** on a value that the other loads push up (+): heavy what pushes it up as well, light the rest */
  readonly onPlus: DeadSum;
  /** on a value that the other loads push down (-) */
  readonly onMinus: DeadSum;
}

/** @param pieces  values of each piece at its heavy and at its light weight */
export function deadSums(size: number, pieces: readonly DeadSum[]): DeadSums {
  const noneYet = (): DeadSum => ({ heavy: new Float64Array(size), light: new Float64Array(size) });
  const [all, onPlus, onMinus] = [noneYet(), noneYet(), noneYet()];
  for (const piece of pieces) {
    for (let i = 0; i < size; i++) {
      const heavy = piece.heavy[i]!;
      const light = piece.light[i]!;
      all.heavy[i]! += heavy;
      all.light[i]! += light;
      if (heavy > 0) onPlus.heavy[i]! += heavy;
      else onPlus.light[i]! += light;
      if (heavy < 0) onMinus.heavy[i]! += heavy;
      else onMinus.light[i]! += light;
    }
  }
  return { all, onPlus, onMinus };
}

/**
 * Own rule of uplift: to what all other loads come to, each value by itself adds the pieces that help at light weight
 * times the factor, those that add to the harm at heavy weight in full. From one place of the list to another.
 */
export function addAdverse(
  others: Float64Array,
  { all, onPlus, onMinus }: DeadSums,
  factor: number,
  from: number,
  to: number,
): void {
  for (let i = from; i < to; i++) {
    const other = others[i]!;
    if (other > 0) others[i] = other + onPlus.heavy[i]! + factor * onPlus.light[i]!;
    else if (other < 0) others[i] = other + onMinus.heavy[i]! + factor * onMinus.light[i]!;
    else others[i] = other + factor * all.light[i]!;
  }
}

/** What one case brings to a free line, and to the same line held sideways. */
export interface FreeAndHeld {
  readonly free: Float64Array;
  readonly held: Float64Array;
}

/** Held and sway are the free value together. @param times  how often the sway counts */
export const swayed = (free: number, held: number, times: number): number => held + times * (free - held);

/** A dead piece at its heavy and at its light weight. */
export interface PieceValues {
  readonly heavy: FreeAndHeld;
  readonly light: FreeAndHeld;
}

/** The same rule on pieces whose values are not added up yet, on a free line whose sway counts so many times. */
export function addAdversePieces(
  others: Float64Array,
  pieces: readonly PieceValues[],
  times: number,
  factor: number,
  from: number,
  to: number,
): void {
  for (let i = from; i < to; i++) {
    const other = others[i]!;
    let sum = other;
    for (const { heavy, light } of pieces) {
      const whole = swayed(heavy.free[i]!, heavy.held[i]!, times);
      sum += whole * other > 0 ? whole : factor * swayed(light.free[i]!, light.held[i]!, times);
    }
    others[i] = sum;
  }
}
