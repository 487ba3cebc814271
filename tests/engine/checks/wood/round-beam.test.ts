import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adjustedBending, bendingStress } from '../../../../src/engine/checks/wood/bending.ts';
import { durationFactor } from '../../../../src/engine/checks/wood/duration.ts';
import { roundArea, roundInertia, roundSectionModulus } from '../../../../src/engine/checks/wood/round-section.ts';
import {
  adjustedShear,
  rectangularEndNotchShear,
  rectangularShearStress,
  roundEndNotchShear,
  roundShearStress,
} from '../../../../src/engine/checks/wood/shear.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import { redoFaults } from '../redo-step.ts';

const diameter = fc.double({ min: 2, max: 30, noNaN: true });

describe('load duration', () => {
  // NDS 2018 Table 2.3.2, as quoted in two public teaching pages.
  it.each([
    ['permanent', 0.9],
    ['tenYears', 1],
    ['twoMonths', 1.15],
    ['sevenDays', 1.25],
    ['tenMinutes', 1.6],
  ] as const)('[NDS Table 2.3.2] %s has the factor %f and writes it down', (kind, factor) => {
    const { value, steps } = stepsOf((note) => durationFactor(kind, note));
    expect(value).toBe(factor);
    expect(steps.map((step) => step.result.value)).toEqual([factor]);
  });
});

describe('bending and shear of a round section', () => {
  // Peeled roof logs of New Mexico practice: 100 lb/ft on 16 ft and 30 ft. Stresses worked by hand from M = w L2/8, V = w L/2.
  it.each([
    [8, 16, 763.9, 21.2],
    [12, 30, 795.8, 17.7],
  ])(
    '[beam.bending] [beam.shear] an %i in. roof log over %i ft under 100 lb/ft has its hand-worked stresses',
    (d, spanFt, fb, fv) => {
      const momentLbIn = (100 / 12) * (spanFt * 12) ** 2 * (1 / 8);
      expect(bendingStress(momentLbIn, roundSectionModulus(d))).toBeCloseTo(fb, 1);
      expect(roundShearStress((100 * spanFt) / 2, roundArea(d))).toBeCloseTo(fv, 1);
    },
  );

  it('[beam.bending] the worst place of a tapered beam under uniform load is the root of its own cubic', () => {
    // d/dx [x (L - x) / d3] = 0 with d = d1 (1 + k x/L): (L - 2x)(1 + k x/L) = 3 k x (L - x)/L, x from the tip
    const [d1, L, k] = [8, 200, 0.5];
    const xi = (1 + k - Math.sqrt((1 + k) ** 2 - k)) / k;
    expect((1 - 2 * xi) * (1 + k * xi)).toBeCloseTo(3 * k * xi * (1 - xi), 12);
    const stressAt = (x: number): number =>
      bendingStress((x * (L - x)) / 2, roundSectionModulus(d1 * (1 + (k * x) / L)));
    const stations = Array.from({ length: 2001 }, (_, i) => (i * L) / 2000);
    const worst = stations.reduce((best, x) => (stressAt(x) > stressAt(best) ? x : best));
    expect(worst / L).toBeCloseTo(xi, 3);
    expect(stressAt(worst) / stressAt(L / 2)).toBeCloseTo(1.096, 3);
  });

  it('[beam.bending] a thicker log never has more stress under the same force', () => {
    fc.assert(
      fc.property(diameter, fc.double({ min: 0.01, max: 5, noNaN: true }), (d, more) => {
        expect(bendingStress(-5000, roundSectionModulus(d + more))).toBeLessThan(
          bendingStress(5000, roundSectionModulus(d)),
        );
        expect(roundShearStress(800, roundArea(d + more))).toBeLessThan(roundShearStress(-800, roundArea(d)));
      }),
      { seed: 21 },
    );
  });

  it('I, S and A of a circle hang together: S = 2 I / d, I = A d2 / 16', () => {
    fc.assert(
      fc.property(diameter, (d) => {
        expect(roundSectionModulus(d) / ((2 * roundInertia(d)) / d)).toBeCloseTo(1, 12);
        expect(roundInertia(d) / ((roundArea(d) * d * d) / 16)).toBeCloseTo(1, 12);
      }),
      { seed: 22 },
    );
  });

  // proof [rafter.shear]: closed-form - V Q / (I b) at mid-depth of a rectangle
  // proof [purlin.shear]: closed-form - the same
  it('[rafter.shear] [purlin.shear] a rectangle has 3 V / (2 b d), by Q over I b at mid-depth', () => {
    const [b, d] = [2, 8];
    const Q = b * (d / 2) * (d / 4);
    expect(rectangularShearStress(-900, b, d)).toBeCloseTo((900 * Q) / (((b * d ** 3) / 12) * b), 10);
  });

  it('factors multiply', () => {
    expect(adjustedBending(1000, 1.15, 0.9, 1.15)).toBeCloseTo(1000 * 1.15 * 0.9 * 1.15, 9);
    expect(adjustedShear(120, 1.6)).toBeCloseTo(192, 9);
  });

  it('refuses what is not a size, a value or a factor', () => {
    for (const bad of [0, -1, Number.NaN, Infinity]) {
      expect(() => roundArea(bad)).toThrow(MisuseError);
      expect(() => roundInertia(bad)).toThrow(MisuseError);
      expect(() => roundSectionModulus(bad)).toThrow(MisuseError);
      expect(() => bendingStress(1, bad)).toThrow(MisuseError);
      expect(() => roundShearStress(1, bad)).toThrow(MisuseError);
      expect(() => rectangularShearStress(1, 2, bad)).toThrow(MisuseError);
      expect(() => adjustedBending(1000, bad, 1, 1)).toThrow(MisuseError);
      expect(() => adjustedShear(bad, 1)).toThrow(MisuseError);
    }
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => roundArea(9, note))).toEqual([]);
    expect(redoFaults((note) => roundSectionModulus(9, note))).toEqual([]);
    expect(redoFaults((note) => bendingStress(-5000, 71.6, note))).toEqual([]);
    expect(redoFaults((note) => adjustedBending(1100, 1.15, 1, 1, note))).toEqual([]);
    expect(redoFaults((note) => adjustedShear(120, 1.25, note))).toEqual([]);
    expect(redoFaults((note) => roundShearStress(-700, 63.6, note))).toEqual([]);
    expect(redoFaults((note) => rectangularShearStress(700, 1.5, 7.25, note))).toEqual([]);
  });
});

describe('shear at a seat cut', () => {
  // proof [beam.endNotch]: closed-form - share of the whole log's shear left by a cut, from exact segment geometry
  it.each([
    [1 / 4, 0.8045, 0.5625, 0.4],
    [1 / 10, 0.948, 0.81, 0.68],
  ])(
    '[beam.endNotch] a cut of %f of the diameter leaves its share of the whole log',
    (share, area, depthSquared, left) => {
      const [Fv, d] = [100, 10];
      const whole = 0.75 * roundArea(d) * Fv; // fv = 4 V / (3 A)
      const allowable = roundEndNotchShear(Fv, d, share * d);
      expect(allowable / whole).toBeCloseTo((8 / 9) * area * depthSquared, 3);
      expect(allowable / whole).toBeCloseTo(left, 2);
    },
  );

  it('[beam.endNotch] no cut leaves two thirds of Fv A, eight ninths of the round section', () => {
    expect(roundEndNotchShear(100, 9, 0)).toBeCloseTo((2 / 3) * 100 * roundArea(9), 8);
    expect(rectangularEndNotchShear(100, 2, 8, 0)).toBeCloseTo((2 / 3) * 100 * 16, 8);
  });

  it('[beam.endNotch] a rectangle falls with the cube of the depth left', () => {
    expect(rectangularEndNotchShear(150, 1.5, 8, 2) / rectangularEndNotchShear(150, 1.5, 8, 0)).toBeCloseTo(
      0.75 ** 3,
      12,
    );
  });

  it('[beam.endNotch] a deeper cut never allows more, a thicker log never less', () => {
    fc.assert(
      fc.property(
        diameter,
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 0.01, max: 0.4, noNaN: true }),
        (d, t, more) => {
          expect(roundEndNotchShear(100, d, (t + more) * d)).toBeLessThan(roundEndNotchShear(100, d, t * d));
          expect(roundEndNotchShear(100, d + more, t * d)).toBeGreaterThan(roundEndNotchShear(100, d, t * d));
        },
      ),
      { seed: 23 },
    );
  });

  it('refuses a cut through and through', () => {
    expect(() => roundEndNotchShear(100, 9, 9)).toThrow(MisuseError);
    expect(() => rectangularEndNotchShear(100, 2, 8, 8)).toThrow(MisuseError);
    expect(() => rectangularEndNotchShear(100, 2, 8, -1)).toThrow(MisuseError);
    expect(() => roundEndNotchShear(0, 9, 1)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => roundEndNotchShear(130, 9, 1.1, note))).toEqual([]);
    expect(redoFaults((note) => rectangularEndNotchShear(130, 1.5, 7.25, 1.1, note))).toEqual([]);
  });
});
