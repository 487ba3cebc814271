import { evaluate } from 'mathjs';
import { stepsOf, type Note, type Step } from '../../../src/engine/note.ts';

/** A step worked out again by another calculator: every symbol of its formula replaced by the number put in. */
function redone(step: Step): number {
  const numbers = new Map(
    step.put.map(({ symbol, value, unit }) => [symbol, `(${unit === 'deg' ? `${value} * pi / 180` : value})`]),
  );
  numbers.set('π', 'pi').set('×', '*');
  for (const name of ['sqrt', 'acos', 'sin', 'cos']) numbers.set(name, name);
  const longestFirst = [...numbers.keys()].sort((a, b) => b.length - a.length);
  const words = new RegExp(longestFirst.map((word) => word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')).join('|'), 'g');
  return Number(evaluate(step.formula.replace(words, (word) => numbers.get(word) ?? word)));
}

/**
 * What is wrong with the steps of a call: none written, a step that gives another result on another calculator, or a
 * call that answers otherwise when somebody listens. Empty when all is well.
 */
export function redoFaults(call: (note?: Note) => unknown): readonly string[] {
  const { value, steps } = stepsOf((note) => call(note));
  const faults = steps
    .filter((step) => !(Math.abs(redone(step) / step.result.value - 1) < 1e-9))
    .map((step) => `${step.symbol} = ${step.formula} gives ${redone(step)}, not ${step.result.value}`);
  if (steps.length === 0) faults.push('no step is written');
  if (JSON.stringify(value) !== JSON.stringify(call())) faults.push('a note changes the answer');
  return faults;
}
