import type { ClauseRef } from '../../data/sources.ts';
import { put, type Step } from '../note.ts';
import { quantity } from '../units.ts';

/**
 * A base value times its factors, each factor being the last of its own steps.
 * @param base the step of the base value; its unit is the unit of the result
 * @returns the product with every step that led to it
 */
export function product(
  symbol: string,
  words: string,
  base: Step,
  factors: readonly Step[],
  where: ClauseRef,
): { readonly value: number; readonly steps: readonly Step[] } {
  const terms = [base, ...factors];
  const value = terms.reduce((so_far, term) => so_far * term.result.value, 1);
  return {
    value,
    steps: [
      ...terms,
      {
        symbol,
        words,
        formula: terms.map((term) => term.symbol).join(' × '),
        put: terms.map((term) => put(term.symbol, term.result.value, term.result.unit, term.words)),
        result: quantity(value, base.result.unit),
        clause: where,
      },
    ],
  };
}
