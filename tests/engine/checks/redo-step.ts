import { evaluate } from 'mathjs';
import { expect } from 'vitest';
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

/** Every step of a call gives its result on another calculator, and the call gives the same with and without a note. */
export function expectRedoable(call: (note?: Note) => unknown): readonly Step[] {
  const { value, steps } = stepsOf((note) => call(note));
  expect(value).toEqual(call());
  expect(steps.length).toBeGreaterThan(0);
  for (const step of steps) {
    const shown = `${step.symbol} = ${step.formula}`;
    expect(redone(step) / step.result.value, shown).toBeCloseTo(1, 9);
  }
  return steps;
}
