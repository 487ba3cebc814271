import type { ClauseRef } from '../data/sources.ts';
import type { Quantity, Unit } from './units.ts';

/** One number put into a formula; `from` opens further, down to what the person typed or a table printed. */
export interface Put {
  readonly symbol: string;
  readonly value: number;
  readonly unit: Unit;
  readonly words: string;
  readonly from?: readonly Step[];
}

/** One line of a calculation that can be redone with a pocket calculator. */
export interface Step {
  readonly symbol: string;
  readonly words: string;
  readonly formula: string;
  readonly put: readonly Put[];
  readonly result: Quantity;
  readonly clause: ClauseRef;
}

/**
 * Where a formula writes down its steps. Formulas take `note?: Note` as their last parameter and call `note?.({...})`:
 * without a listener nothing is built (optional call does not evaluate its arguments), with one the very same code
 * that judged the check tells how.
 */
export type Note = (step: Step) => void;

export const put = (symbol: string, value: number, unit: Unit, words: string, from?: readonly Step[]): Put =>
  from && from.length > 0 ? { symbol, value, unit, words, from } : { symbol, value, unit, words };

/** Collects the steps of a call: `const fb = stepsOf((note) => bendingStress(M, d, note))`. */
export function stepsOf<T>(call: (note: Note) => T): { readonly value: T; readonly steps: readonly Step[] } {
  const steps: Step[] = [];
  const value = call((step) => steps.push(step));
  return { value, steps };
}
