import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { peakBelowGround } from '../../../../src/engine/checks/ground/below-ground.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

/**
 * The same by plain sums: a stiff stick in springs that grow with depth, moved by u and turned by t so that push and moment
 * balance; the moment at every depth is then added up slice by slice.
 */
function bySlices(P: number, M: number, d: number, n = 6000): { readonly at: number; readonly most: number } {
  const dz = d / n;
  const slices = Array.from({ length: n }, (_, i) => (i + 0.5) * dz);
  // pressure z (u - t z): force sum = P, moment sum about the ground = -M
  let [z2, z3, z4] = [0, 0, 0];
  for (const z of slices) {
    z2 += z * dz;
    z3 += z * z * dz;
    z4 += z ** 3 * dz;
  }
  // u z2 - t z3 = P; u z3 - t z4 = -M
  const det = -z2 * z4 + z3 * z3;
  const u = (-P * z4 - z3 * M) / det;
  const t = (-M * z2 - P * z3) / det;
  let [shear, moment, most, at] = [P, M, M, 0];
  for (const z of slices) {
    moment += shear * dz;
    shear -= z * (u - t * z) * dz;
    if (moment > most) [most, at] = [moment, z];
  }
  return { at, most };
}

describe('the moment of a post below the ground', () => {
  // proof [post.belowGround]: closed-form - stiff stick in springs that grow with depth, balanced and summed slice by slice
  it.each([
    [1000, 0, 60],
    [500, 24_000, 48],
    [700, 84_000, 72],
    [50, 40_000, 54],
  ])('[post.belowGround] peaks where slices of soil say so: %d lb, %d lb·in, %d in deep', (P, M, d) => {
    const { at, most } = bySlices(P, M, d);
    const peak = peakBelowGround(P, M, d);
    expect(peak.momentLbIn / most).toBeCloseTo(1, 3);
    expect(Math.abs(peak.depthIn - at)).toBeLessThan(d / 300);
  });

  // h = 0: c = d/8, z = (1 + sqrt(33)) d / 16 = 0.4215 d, M = 0.2600 P d
  it('[post.belowGround] pushed at the ground bends with 0.26 P d at 0.42 of its depth', () => {
    const { depthIn, momentLbIn } = peakBelowGround(1000, 0, 100);
    expect(depthIn).toBeCloseTo(((1 + Math.sqrt(33)) / 16) * 100, 9);
    expect(momentLbIn / 100_000).toBeCloseTo(0.26, 3);
  });

  it('[post.belowGround] a moment alone is greatest at the ground; a small push comes close to it', () => {
    expect(peakBelowGround(0, 9000, 60)).toEqual({ depthIn: 0, momentLbIn: 9000 });
    expect(peakBelowGround(1e-6, 9000, 60).momentLbIn).toBeCloseTo(9000, 3);
    expect(peakBelowGround(0, 0, 60)).toEqual({ depthIn: 0, momentLbIn: 0 });
  });

  it('[post.belowGround] is never below the moment at the ground, and grows with push and moment', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 3000, noNaN: true }),
        fc.double({ min: 0, max: 300_000, noNaN: true }),
        fc.double({ min: 24, max: 120, noNaN: true }),
        (P, M, d) => {
          const { depthIn, momentLbIn } = peakBelowGround(P, M, d);
          expect(momentLbIn).toBeGreaterThanOrEqual(M);
          expect(depthIn).toBeLessThanOrEqual(0.4216 * d);
          expect(peakBelowGround(P * 1.1, M, d).momentLbIn).toBeGreaterThan(momentLbIn);
          expect(peakBelowGround(P, M + 100, d).momentLbIn).toBeGreaterThan(momentLbIn);
        },
      ),
      { seed: 17 },
    );
  });

  it('refuses what is no push and no depth', () => {
    expect(() => peakBelowGround(-1, 0, 60)).toThrow(MisuseError);
    expect(() => peakBelowGround(1, Number.NaN, 60)).toThrow(MisuseError);
    expect(() => peakBelowGround(1, 0, 0)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => peakBelowGround(600, 30_000, 54, note))).toEqual([]);
    expect(redoFaults((note) => peakBelowGround(0, 30_000, 54, note))).toEqual([]);
  });
});
