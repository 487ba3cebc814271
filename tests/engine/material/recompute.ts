import { evaluate } from 'mathjs';
import type { Step } from '../../../src/engine/note.ts';

/** The formula of a step with its own numbers put in, worked out by another calculator. */
export function recomputed(step: Step): number {
  const scope = Object.fromEntries(step.put.map(({ symbol, value }) => [symbol, value]));
  const formula = step.formula.replaceAll('×', '*').replaceAll('−', '-');
  return Number(evaluate(formula, scope));
}

/** Steps with nothing put in: read off a table, typed or stated. */
export const isGiven = (step: Step): boolean => step.put.length === 0 && /^[a-z ]+$/.test(step.formula);
