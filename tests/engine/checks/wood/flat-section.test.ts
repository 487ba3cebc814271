import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  centroidShift,
  flattenedArea,
  flattenedInertia,
  sectionModulusToward,
  sidewaysSectionModulus,
} from '../../../../src/engine/checks/wood/flat-section.ts';
import { flattenedShearStress, shearArea } from '../../../../src/engine/checks/wood/flat-shear.ts';
import { roundArea, roundInertia, roundSectionModulus } from '../../../../src/engine/checks/wood/round-section.ts';
import { roundShearStress } from '../../../../src/engine/checks/wood/shear.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { flatWidth } from '../../../../src/engine/geometry/seats.ts';
import { redoFaults } from '../redo-step.ts';

/** Sums over thin strips of the section, the flat on top: nothing of the closed forms is used. */
function byStrips(diameter: number, top: number, bottom: number, strips = 40_000) {
  const R = diameter / 2;
  const [from, to] = [bottom - R, R - top];
  const dz = (to - from) / strips;
  let [A, first, second, sideways] = [0, 0, 0, 0];
  for (let i = 0; i < strips; i++) {
    const z = from + (i + 0.5) * dz;
    const half = Math.sqrt(R * R - z * z);
    A += 2 * half * dz;
    first += 2 * half * z * dz;
    second += 2 * half * z * z * dz;
    sideways += (2 / 3) * half ** 3 * dz;
  }
  const centroid = first / A;
  const I = second - A * centroid * centroid;
  let [Q, worst] = [0, 0];
  for (let i = 0; i < strips; i++) {
    const z = from + (i + 0.5) * dz;
    const width = 2 * Math.sqrt(R * R - z * z);
    Q += (centroid - z) * width * (dz / 2);
    worst = Math.max(worst, Q / (I * width));
    Q += (centroid - z) * width * (dz / 2);
  }
  return {
    A,
    shift: -centroid,
    I,
    toTop: I / (to - centroid),
    toBottom: I / (centroid - from),
    sideways,
    shearArea: 1 / worst,
  };
}

const section = fc
  .record({
    d: fc.double({ min: 3, max: 24, noNaN: true }),
    t: fc.double({ min: 0, max: 0.6, noNaN: true }),
    u: fc.double({ min: 0, max: 0.3, noNaN: true }),
  })
  .map(({ d, t, u }) => [d, t * d, u * d] as const);

describe('a round section with flats', () => {
  // Exact geometry of a 10 in. circle, printed to these digits in the project's own working and confirmed by strips below.
  it.each([
    [0, 78.54, 0, 490.874, 98.175, 98.175],
    [0.5, 77.072, 0.09, 457.787, 99.746, 93.227],
    [1, 74.452, 0.242, 406.975, 95.945, 85.531],
    [1.5, 71.152, 0.427, 352.084, 89.667, 76.985],
  ])('[beam.bending] a 10 in. log with a flat %f in. deep keeps its tabled section', (t, A, e, I, toFlat, toRound) => {
    expect(flattenedArea(10, t, 0)).toBeCloseTo(A, 3);
    expect(centroidShift(10, t, 0)).toBeCloseTo(e, 3);
    expect(flattenedInertia(10, t, 0)).toBeCloseTo(I, 3);
    expect(sectionModulusToward(10, t, 0)).toBeCloseTo(toFlat, 3);
    expect(sectionModulusToward(10, 0, t)).toBeCloseTo(toRound, 3);
  });

  // proof [beam.shear]: closed-form - V Q / (I b) summed over thin strips of the cut circle, and 4 V / (3 A) of the whole
  it('[beam.bending] [beam.shear] every property agrees with sums over thin strips', () => {
    fc.assert(
      fc.property(section, ([d, t, u]) => {
        const strips = byStrips(d, t, u);
        expect(flattenedArea(d, t, u) / strips.A).toBeCloseTo(1, 4);
        expect((centroidShift(d, t, u) - strips.shift) / d).toBeCloseTo(0, 4);
        expect(flattenedInertia(d, t, u) / strips.I).toBeCloseTo(1, 4);
        expect(sectionModulusToward(d, t, u) / strips.toTop).toBeCloseTo(1, 4);
        expect(sectionModulusToward(d, u, t) / strips.toBottom).toBeCloseTo(1, 4);
        expect(shearArea(d, t, u) / strips.shearArea).toBeCloseTo(1, 3);
        const reach = Math.max(t, u) > d / 2 ? flatWidth(d, Math.max(t, u)) / 2 : d / 2;
        expect(sidewaysSectionModulus(d, t, u) / (strips.sideways / reach)).toBeCloseTo(1, 4);
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it('[beam.shear] without a flat it is the whole circle', () => {
    for (const d of [4, 9.3, 18]) {
      expect(flattenedArea(d, 0, 0)).toBeCloseTo(roundArea(d), 10);
      expect(flattenedInertia(d, 0, 0)).toBeCloseTo(roundInertia(d), 9);
      expect(sectionModulusToward(d, 0, 0)).toBeCloseTo(roundSectionModulus(d), 9);
      expect(sidewaysSectionModulus(d, 0, 0)).toBeCloseTo(roundSectionModulus(d), 9);
      expect(flattenedShearStress(-1000, shearArea(d, 0, 0))).toBeCloseTo(roundShearStress(1000, roundArea(d)), 9);
    }
  });

  it('a flat cut to the middle leaves a half circle: I = (pi/8 - 8/(9 pi)) R4, centroid 4 R / (3 pi)', () => {
    const R = 5;
    expect(flattenedInertia(2 * R, R, 0)).toBeCloseTo((Math.PI / 8 - 8 / (9 * Math.PI)) * R ** 4, 9);
    expect(centroidShift(2 * R, R, 0)).toBeCloseTo((4 * R) / (3 * Math.PI), 12);
  });

  it('two equal flats keep the centroid in the middle and the worst shear at mid-depth', () => {
    const [d, t] = [9, 0.9];
    expect(centroidShift(d, t, t)).toBe(0);
    const R = d / 2;
    const Q = (2 / 3) * (R ** 3 - (flatWidth(d, t) / 2) ** 3);
    expect(shearArea(d, t, t)).toBeCloseTo((flattenedInertia(d, t, t) * d) / Q, 9);
  });

  it('a wider log never has a smaller property with the same flats, and a deeper flat never a larger area or inertia', () => {
    fc.assert(
      fc.property(section, fc.double({ min: 0.01, max: 2, noNaN: true }), ([d, t, u], more) => {
        for (const property of [
          flattenedArea,
          flattenedInertia,
          sectionModulusToward,
          sidewaysSectionModulus,
          shearArea,
        ]) {
          expect(property(d + more, t, u)).toBeGreaterThan(property(d, t, u));
        }
        const deeper = Math.min(t + more * 0.1, d * 0.65);
        for (const property of [flattenedArea, flattenedInertia]) {
          expect(property(d, deeper, u)).toBeLessThanOrEqual(property(d, t, u));
        }
      }),
      { numRuns: 300, seed: 12 },
    );
  });

  it('a flat shallower than about a twentieth adds to the modulus on its own side and always takes from the other', () => {
    expect(sectionModulusToward(10, 0.3, 0)).toBeGreaterThan(roundSectionModulus(10));
    expect(sectionModulusToward(10, 0, 0.3)).toBeLessThan(roundSectionModulus(10));
  });

  it.each([
    [Number.NaN, 0, 0],
    [Infinity, 0, 0],
    [0, 0, 0],
    [-8, 0, 0],
    [8, -0.1, 0],
    [8, 0, Number.NaN],
    [8, 5, 3],
    [8, 9, 0],
  ])('refuses a diameter of %f with flats of %f and %f', (d, t, u) => {
    for (const property of [
      flattenedArea,
      centroidShift,
      flattenedInertia,
      sectionModulusToward,
      sidewaysSectionModulus,
      shearArea,
    ]) {
      expect(() => property(d, t, u)).toThrow(MisuseError);
    }
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => flattenedArea(9, 0.8, 0.4, note))).toEqual([]);
    expect(redoFaults((note) => sectionModulusToward(9, 0.8, 0.4, note))).toEqual([]);
    expect(redoFaults((note) => sidewaysSectionModulus(9, 0.8, 0, note))).toEqual([]);
    expect(redoFaults((note) => shearArea(9, 0.8, 0, note))).toEqual([]);
    expect(redoFaults((note) => flattenedShearStress(1200, 45, note))).toEqual([]);
  });
});
