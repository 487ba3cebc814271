import { describe, expect, it } from 'vitest';
import { POLE_ITEMS } from '../../../src/data/wood/pole-items.ts';
import { logValues } from '../../../src/engine/material/log-values.ts';
import { sawnValues } from '../../../src/engine/material/sawn-values.ts';
import type { DesignValues, ValueSymbol } from '../../../src/engine/material/values.ts';
import { aLog, aStick, aWood, typedBasis, valuesIn } from './samples.ts';

const derived = valuesIn(logValues(aLog(), aWood()));
const pole = valuesIn(
  logValues(aLog(), aWood('Red pine', { kind: 'poles', ticked: [...POLE_ITEMS], by: 'A. Owner', date: '2026-05-02' })),
);
const typed = valuesIn(logValues(aLog(), aWood('Western larch', typedBasis({ published: 'dry' }))));
const held = valuesIn(logValues(aLog(), aWood('Western larch', typedBasis({ published: 'dry', factorsHeld: ['CM'] }))));
const dryRafter = valuesIn(sawnValues(aStick()));
const wetRafter = valuesIn(sawnValues(aStick({ use: 'wet' })));
const homeSawn = valuesIn(sawnValues(aStick({ species: 'Western larch', grade: null })));

/** Factors named in the last formula of a value. */
const factorsOf = (values: DesignValues, of: ValueSymbol): readonly string[] =>
  values
    .steps(of)
    .at(-1)!
    .put.map(({ symbol }) => symbol)
    .filter((symbol) => symbol.startsWith('C'));

const reasonOf = (values: DesignValues, of: ValueSymbol, symbol: string): string =>
  values.steps(of).find((step) => step.symbol === symbol)?.words ?? 'not told';

describe('factors that stay at 1.0', () => {
  // NDS (2018) Tables 4.3.1 and 6.3.1, from memory: which factors a reviewer looks for beside each value
  it.each([
    ['a derived log, bending', derived, 'Fb', ['CM', 'C_size', 'Cct', 'Ct']],
    ['a derived log, along the grain', derived, 'Fc', ['CM', 'Ccs', 'Cct', 'Ct']],
    ['a pole, bending', pole, 'Fb', ['CF', 'CM', 'Cct', 'Cls', 'Ct']],
    ['a pole, along the grain', pole, 'Fc', ['CM', 'Ccs', 'Cct', 'Cls', 'Ct']],
    ['a pole, stiffness for buckling', pole, 'Emin', ['CM', 'Ct']],
    ['a graded rafter, bending', dryRafter, 'Fb', ['CF', 'CM', 'Cfu', 'Ci', 'Ct']],
    ['a graded rafter, shear', dryRafter, 'Fv', ['CM', 'Ci', 'Ct']],
    ['a home-sawn stick, across the grain', homeSawn, 'Fcp', ['CM', 'Ci', 'Ct']],
    ['a stamp, pull', typed, 'Ft', ['CM', 'C_other', 'Ct']],
  ] as const)('%s names every factor of the standard', (_words, values, of, symbols) => {
    expect(factorsOf(values, of).toSorted()).toEqual([...symbols].toSorted());
  });

  it('each of them says why, and takes nothing', () => {
    for (const values of [derived, pole, typed, held, dryRafter, wetRafter, homeSawn]) {
      for (const of of ['Fb', 'Fv', 'Fcp', 'Fc', 'E'] as const) {
        const stated = values
          .steps(of)
          .filter((step) => step.formula === 'stated value' && step.symbol.startsWith('C'));
        expect(stated.length).toBeGreaterThan(0);
        for (const step of stated) {
          expect(step.result.value).toBe(1);
          expect(step.words.length).toBeGreaterThan(20);
        }
      }
    }
  });

  it('wet service at 1.0 says why by where the value comes from', () => {
    expect(reasonOf(derived, 'Fb', 'CM')).toContain('green wood');
    expect(reasonOf(pole, 'Fb', 'CM')).toContain('wet and dry');
    expect(reasonOf(typed, 'Fb', 'CM')).toContain('lose nothing');
    expect(reasonOf(held, 'Fc', 'CM')).toContain('held');
    expect(reasonOf(dryRafter, 'Fb', 'CM')).toContain('used dry');
  });

  it('a factor that is at work is told once, with its own value', () => {
    const wet = wetRafter.steps('Fv').filter(({ symbol }) => symbol === 'CM');
    expect(wet.map(({ result }) => result.value)).toEqual([0.97]);
    expect(typed.steps('Fcp').filter(({ symbol }) => symbol === 'CM')).toHaveLength(1);
  });
});
