import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  beamStabilityFactor,
  effectiveBeamLength,
  type BeamStabilityGivens,
} from '../../../../src/engine/checks/wood/beam-stability.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import { redoFaults } from '../redo-step.ts';

const rafter: BeamStabilityGivens = {
  breadthIn: 1.5,
  depthIn: 7.25,
  unbracedLengthIn: 120,
  effectiveLengthRule: 'uniform',
  EminPsi: 580_000,
  FbStarPsi: 1500,
};

describe('beam stability of a sawn member', () => {
  // NDS 2018 Table 3.3.3 from memory; the rows 1.63 lu + 3d and 1.37 lu + 3d were confirmed by recomputing published examples.
  it.each([
    ['uniform', 6, 2.06 * 60],
    ['uniform', 7, 1.63 * 70 + 30],
    ['midspanPoint', 6, 1.8 * 60],
    ['midspanPoint', 12, 1.37 * 120 + 30],
    ['cantileverUniform', 6, 1.33 * 60],
    ['cantileverUniform', 8, 0.9 * 80 + 30],
    ['cantileverTip', 6, 1.87 * 60],
    ['cantileverTip', 8, 1.44 * 80 + 30],
    ['any', 6.9, 2.06 * 69],
    ['any', 14.3, 1.63 * 143 + 30],
    ['any', 15, 1.84 * 150],
  ] as const)('[NDS Table 3.3.3] %s at lu/d = %f has its effective length', (rule, depths, le) => {
    expect(effectiveBeamLength(rule, depths * 10, 10)).toBeCloseTo(le, 9);
  });

  it('[rafter.bending] CL is the smaller root of (1 - CL)(FbE/Fb* - CL) = 0.05 CL2', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 300, noNaN: true }),
        fc.double({ min: 300, max: 3000, noNaN: true }),
        (lu, FbStar) => {
          const { CL } = beamStabilityFactor({ ...rafter, unbracedLengthIn: lu, FbStarPsi: FbStar });
          const RB = Math.sqrt((effectiveBeamLength('uniform', lu, 7.25) * 7.25) / 1.5 ** 2);
          const a = (1.2 * 580_000) / RB ** 2 / FbStar;
          expect((1 - CL) * (a - CL)).toBeCloseTo(0.05 * CL * CL, 9);
          expect(CL).toBeGreaterThan(0);
          expect(CL).toBeLessThan(Math.min(1, a));
        },
      ),
      { seed: 61 },
    );
  });

  it('[rafter.bending] no deeper than wide needs no holding', () => {
    expect(beamStabilityFactor({ ...rafter, breadthIn: 7.25 })).toEqual({ CL: 1, outside: false });
    expect(beamStabilityFactor({ ...rafter, breadthIn: 9, unbracedLengthIn: 9000 })).toEqual({ CL: 1, outside: false });
  });

  it('[rafter.bending] a slenderness ratio above 50 is outside the method, 50 is not', () => {
    const lengthFor = (RB: number): number => (RB ** 2 * 1.5 ** 2) / 7.25 / 1.84;
    const long: BeamStabilityGivens = { ...rafter, effectiveLengthRule: 'any' };
    expect(beamStabilityFactor({ ...long, unbracedLengthIn: lengthFor(49.99) }).outside).toBe(false);
    expect(beamStabilityFactor({ ...long, unbracedLengthIn: lengthFor(50.01) }).outside).toBe(true);
  });

  it('[rafter.bending] holding the edge closer never lowers CL, but for the steps of the table', () => {
    let before = 1;
    for (let lu = 8 * 7.25; lu < 300; lu += 5) {
      const { CL } = beamStabilityFactor({ ...rafter, unbracedLengthIn: lu });
      expect(CL).toBeLessThan(before);
      before = CL;
    }
  });

  it('refuses sizes and values that are none', () => {
    for (const bad of [0, -1, Number.NaN, Infinity]) {
      expect(() => beamStabilityFactor({ ...rafter, breadthIn: bad })).toThrow(MisuseError);
      expect(() => beamStabilityFactor({ ...rafter, FbStarPsi: bad })).toThrow(MisuseError);
      expect(() => beamStabilityFactor({ ...rafter, unbracedLengthIn: bad })).toThrow(MisuseError);
    }
  });

  it('does not change its givens, and each step can be redone by hand', () => {
    const frozen = Object.freeze({ ...rafter });
    expect(redoFaults((note) => beamStabilityFactor(frozen, note))).toEqual([]);
    const { steps } = stepsOf((note) => beamStabilityFactor(frozen, note));
    expect(steps.map((step) => step.symbol)).toEqual(['le', 'RB', 'FbE', 'CL']);
    expect(redoFaults((note) => beamStabilityFactor({ ...rafter, breadthIn: 8 }, note))).toEqual([]);
    expect(frozen).toEqual(rafter);
  });
});
