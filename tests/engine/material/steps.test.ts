import { describe, expect, it } from 'vitest';
import { POLE_ITEMS } from '../../../src/data/wood/pole-items.ts';
import { logValues } from '../../../src/engine/material/log-values.ts';
import { sawnValues } from '../../../src/engine/material/sawn-values.ts';
import { sawnWeight } from '../../../src/engine/material/sawn-weight.ts';
import type { DesignValues } from '../../../src/engine/material/values.ts';
import { woodWeight } from '../../../src/engine/material/wood-weight.ts';
import type { Step } from '../../../src/engine/note.ts';
import type { WoodBasis } from '../../../src/engine/project/model.ts';
import { isGiven, recomputed } from './recompute.ts';
import { aLog, aSeen, aStick, aWood, typedBasis, valuesIn } from './samples.ts';

const INSPECTED: WoodBasis = { kind: 'poles', ticked: [...POLE_ITEMS], by: 'A. Owner', date: '2026-05-02' };
const THICK = [{ fromButtIn: 0, diameterIn: 18 }];

const CASES: readonly (readonly [string, DesignValues])[] = [
  ['a log that nobody looked at', valuesIn(logValues(aLog({ seen: null }), aWood()))],
  ['a knotty log', valuesIn(logValues(aLog({ seen: aSeen({ knotsInWorstFootIn: [2, 2, 1, 2] }) }), aWood()))],
  [
    'a log without knots',
    valuesIn(logValues(aLog({ seen: aSeen({ worstKnotIn: 0, knotsInWorstFootIn: [] }) }), aWood('Western hemlock'))),
  ],
  ['a thick oak', valuesIn(logValues(aLog({ stations: THICK }), aWood('White oak')))],
  ['a stamp read dry', valuesIn(logValues(aLog(), aWood('Western larch', typedBasis({ published: 'dry' }))))],
  ['a thick inspected pole', valuesIn(logValues(aLog({ stations: THICK }), aWood('Red pine', INSPECTED)))],
  ['a graded wet rafter', valuesIn(sawnValues(aStick({ use: 'wet' })))],
  ['a purlin on the flat', valuesIn(sawnValues(aStick({ breadthIn: 3.5, depthIn: 1.5, lay: 'flat' })))],
  ['a deep timber', valuesIn(sawnValues(aStick({ breadthIn: 7.5, depthIn: 15.5 })))],
  ['a home-sawn rafter', valuesIn(sawnValues(aStick({ species: 'Western larch', grade: null, depthIn: 14 })))],
];

const KEYS = [
  ['Fb', 'FbPsi'],
  ['Fv', 'FvPsi'],
  ['Fcp', 'FcPerpPsi'],
  ['Fc', 'FcPsi'],
  ['Ft', 'FtPsi'],
  ['E', 'EPsi'],
  ['Emin', 'EminPsi'],
] as const;

const withInner = (steps: readonly Step[]): readonly Step[] =>
  steps.flatMap((step) => [...step.put.flatMap((p) => withInner(p.from ?? [])), step]);

/** Formulas that another calculator does not confirm. */
const wrongFormulas = (steps: readonly Step[]): readonly string[] =>
  withInner(steps)
    .filter((step) => !isGiven(step) && !(Math.abs(recomputed(step) - step.result.value) <= 1e-9 * step.result.value))
    .map((step) => `${step.symbol} = ${step.formula}`);

/** Numbers put into a formula that differ from what an earlier step of that symbol gave. */
function strayNumbers(steps: readonly Step[]): readonly string[] {
  const reached = new Map<string, number>();
  const stray: string[] = [];
  for (const step of withInner(steps)) {
    for (const { symbol, value } of step.put) {
      if ((reached.get(symbol) ?? value) !== value) stray.push(`${symbol} in ${step.symbol}`);
    }
    reached.set(step.symbol, step.result.value);
  }
  return stray;
}

describe('the steps of design values', () => {
  it.each(CASES)('each formula of %s gives its result on another calculator', (_name, values) => {
    expect(KEYS.flatMap(([symbol]) => wrongFormulas(values.steps(symbol)))).toEqual([]);
  });

  it.each(CASES)('the last step of each value of %s is that value', (_name, values) => {
    for (const [symbol, key] of KEYS) {
      expect(values.steps(symbol).at(-1)?.symbol).toBe(symbol);
      expect(values.steps(symbol).at(-1)?.result.value).toBe(values[key]);
    }
  });

  it.each(CASES)('numbers put into the formulas of %s are those of the steps before', (_name, values) => {
    expect(KEYS.flatMap(([symbol]) => strayNumbers(values.steps(symbol)))).toEqual([]);
  });
});

describe('the steps of weights', () => {
  it('each formula gives its result on another calculator', () => {
    const log = woodWeight(aWood(), 9);
    const stick = sawnWeight(aStick());
    if (!log.ok || !stick.ok) throw new Error('weights expected');
    for (const { weight } of [log, stick]) {
      expect(wrongFormulas([...weight.heavySteps(), ...weight.lightSteps()])).toEqual([]);
      expect(weight.heavySteps().at(-1)?.result.value).toBe(weight.heavyPcf);
      expect(weight.lightSteps().at(-1)?.result.value).toBe(weight.lightPcf);
    }
  });
});
