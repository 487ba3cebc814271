import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adjustedCompression,
  allowableColumnStress,
  axialStress,
  columnStabilityFactor,
  eulerStress,
  GREATEST_SLENDERNESS,
  slenderness,
} from '../../../../src/engine/checks/wood/column.ts';
import { roundArea, roundInertia } from '../../../../src/engine/checks/wood/round-section.ts';
import { equalAreaSide, representativeDiameter } from '../../../../src/engine/checks/wood/tapered-column.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';
import { exactConeDiameter } from './exact-cone.ts';

const stress = fc.double({ min: 20, max: 5000, noNaN: true });

describe('a tapered column', () => {
  // proof [post.push]: closed-form - exact Euler load of a truncated cone, derived in exact-cone.ts
  it.each([
    ['bothPinned', 'bothPinnedOneTaper'],
    ['largeEndFixed', 'largeEndFixed'],
    ['smallEndFixed', 'smallEndFixed'],
  ] as const)('[post.push] %s: the taper rule is within 0.2 %% of the exact cone up to 1.6 to 1', (exact, ends) => {
    for (const ratio of [1.05, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6]) {
      const share = representativeDiameter(6, 6 * ratio, ends) / exactConeDiameter(6, 6 * ratio, exact);
      expect(Math.abs(share - 1), `${ratio}`).toBeLessThanOrEqual(0.002);
    }
  });

  it('[post.push] beyond 2 to 1 the rule promises more than the exact cone, as its docstring says', () => {
    expect(representativeDiameter(4, 10, 'bothPinnedOneTaper')).toBeGreaterThan(exactConeDiameter(4, 10, 'bothPinned'));
  });

  // The rule worked by hand: 7 and 9 in.
  it('[post.push] a post of 7 in. at the top and 9 in. at the butt stands for 7.9333 in., or 7.6667 in. by the general rule', () => {
    expect(representativeDiameter(7, 9, 'bothPinnedOneTaper')).toBeCloseTo(7.9333, 4);
    expect(representativeDiameter(7, 9, 'general')).toBeCloseTo(7.6667, 4);
  });

  it('[post.push] a taper of zero equals the plain cylinder', () => {
    for (const ends of [
      'largeEndFixed',
      'smallEndFixed',
      'bothPinnedOneTaper',
      'bothPinnedTwoTapers',
      'general',
    ] as const) {
      expect(representativeDiameter(8, 8, ends)).toBe(8);
    }
  });

  it('[post.push] the representative diameter lies between the ends and grows with each of them', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 12, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (dmin, ratio) => {
          const d = representativeDiameter(dmin, dmin * ratio, 'general');
          expect(d).toBeGreaterThanOrEqual(dmin);
          expect(d).toBeLessThanOrEqual(dmin * ratio);
          for (const ends of ['largeEndFixed', 'smallEndFixed', 'bothPinnedOneTaper'] as const) {
            const here = representativeDiameter(dmin, dmin * ratio, ends);
            expect(representativeDiameter(dmin, dmin * ratio + 0.1, ends)).toBeGreaterThan(here);
          }
        },
      ),
      { seed: 31 },
    );
  });

  it('the equal-area square has the area of the circle', () => {
    expect(equalAreaSide(8) ** 2).toBeCloseTo(roundArea(8), 12);
    // 8 in. and 16 in.: 7.0898 and 14.1796 in., table of round sections
    expect(equalAreaSide(8)).toBeCloseTo(7.0898, 4);
    expect(equalAreaSide(16)).toBeCloseTo(14.1796, 4);
  });

  it('refuses ends the wrong way round', () => {
    expect(() => representativeDiameter(9, 7, 'general')).toThrow(MisuseError);
    expect(() => representativeDiameter(0, 7, 'general')).toThrow(MisuseError);
    expect(() => equalAreaSide(Number.NaN)).toThrow(MisuseError);
  });
});

describe('column stability', () => {
  // An 8 in. post of 120 in., Fc 875 psi, Emin 360,000 psi, snow, c 0.85, worked by hand with the equations of NDS 3.7.1.
  it('[post.push] a whole round post comes out as worked by hand', () => {
    const side = equalAreaSide(8);
    const FcStar = adjustedCompression(875, 1.15);
    const FcE = eulerStress(360_000, 120, side);
    const CP = columnStabilityFactor(FcStar, FcE, 0.85);
    expect(slenderness(120, side)).toBeCloseTo(16.9257, 4);
    expect(FcE).toBeCloseTo(1032.96, 2);
    expect(FcStar).toBeCloseTo(1006.25, 8);
    expect(CP).toBeCloseTo(0.73017, 5);
    expect(allowableColumnStress(FcStar, CP) * roundArea(8)).toBeCloseTo(36_932, 0);
  });

  it('[post.push] the Euler stress is pi2 E I / (A L2) of a square, and 4.7 % over that of the round shaft', () => {
    const [E, L, d] = [400_000, 110, 7];
    const side = equalAreaSide(d);
    const ofSquare = (Math.PI ** 2 * E * (side ** 4 / 12)) / (side ** 2 * L ** 2);
    const ofCircle = (Math.PI ** 2 * E * roundInertia(d)) / (roundArea(d) * L ** 2);
    const rounding = 0.822 / (Math.PI ** 2 / 12); // the standard prints three digits, 0.06 % under
    expect(eulerStress(E, L, side) / ofSquare).toBeCloseTo(rounding, 12);
    expect(eulerStress(E, L, side) / ofCircle).toBeCloseTo((rounding * Math.PI) / 3, 12);
  });

  it('[post.push] CP is the smaller root of (1 - CP)(FcE/Fc* - CP) = (1 - c) CP2, which blends crushing and Euler', () => {
    fc.assert(
      fc.property(stress, stress, fc.constantFrom(0.8, 0.85), (FcStar, FcE, c) => {
        const CP = columnStabilityFactor(FcStar, FcE, c);
        const a = FcE / FcStar;
        expect((1 - CP) * (a - CP)).toBeCloseTo((1 - c) * CP * CP, 9);
        expect(CP).toBeLessThan(Math.min(1, a));
        expect(CP).toBeGreaterThan(0);
      }),
      { seed: 32 },
    );
  });

  it('[post.push] a stocky column keeps the whole value, a slender one the Euler stress', () => {
    expect(columnStabilityFactor(1000, 1e9, 0.8)).toBeCloseTo(1, 5);
    expect(columnStabilityFactor(1000, Infinity, 0.8)).toBe(1);
    expect(columnStabilityFactor(1000, 0.01, 0.8) / 0.00001).toBeCloseTo(1, 5);
  });

  it('[post.push] more Euler stress or a larger c never lowers the factor', () => {
    fc.assert(
      fc.property(stress, stress, fc.double({ min: 1.001, max: 3, noNaN: true }), (FcStar, FcE, more) => {
        const CP = columnStabilityFactor(FcStar, FcE, 0.8);
        expect(columnStabilityFactor(FcStar, FcE * more, 0.8)).toBeGreaterThanOrEqual(CP);
        expect(columnStabilityFactor(FcStar, FcE, 0.85)).toBeGreaterThan(CP);
      }),
      { seed: 33 },
    );
  });

  it('[post.slender] the greatest slenderness is 50 and is a plain quotient', () => {
    expect(GREATEST_SLENDERNESS).toBe(50);
    expect(slenderness(300, 6)).toBe(GREATEST_SLENDERNESS);
  });

  it('refuses values that are none', () => {
    expect(() => columnStabilityFactor(1000, 0, 0.8)).toThrow(MisuseError);
    expect(() => columnStabilityFactor(1000, -Infinity, 0.8)).toThrow(MisuseError);
    expect(() => columnStabilityFactor(1000, Number.NaN, 0.8)).toThrow(MisuseError);
    expect(() => columnStabilityFactor(1000, 500, 1)).toThrow(MisuseError);
    expect(() => eulerStress(-1, 100, 6)).toThrow(MisuseError);
    expect(() => slenderness(0, 6)).toThrow(MisuseError);
    expect(() => axialStress(-1, 6)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => representativeDiameter(7, 9, 'largeEndFixed', note))).toEqual([]);
    expect(redoFaults((note) => representativeDiameter(7, 9, 'general', note))).toEqual([]);
    expect(redoFaults((note) => equalAreaSide(7.9, note))).toEqual([]);
    expect(redoFaults((note) => eulerStress(360_000, 120, 7.09, note))).toEqual([]);
    expect(redoFaults((note) => columnStabilityFactor(1006, 1033, 0.85, note))).toEqual([]);
    expect(redoFaults((note) => columnStabilityFactor(1006, 1033, 0.8, note))).toEqual([]);
    expect(redoFaults((note) => adjustedCompression(875, 1.15, note))).toEqual([]);
    expect(redoFaults((note) => allowableColumnStress(1006, 0.73, note))).toEqual([]);
    expect(redoFaults((note) => axialStress(5200, 50.3, note))).toEqual([]);
  });
});
