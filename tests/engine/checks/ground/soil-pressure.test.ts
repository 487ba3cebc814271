import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soilPressure, type Base } from '../../../../src/engine/checks/ground/soil-pressure.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

const square: Base = { shape: 'square', acrossIn: 24 };
const round: Base = { shape: 'round', acrossIn: 24 };

/**
 * Greatest pressure under a base on springs that cannot pull, found by Newton's method on a grid: a base that sinks by
 * a + b x + c y presses where that is above zero. Size 1, force 1, eccentricities ex and ey.
 */
function onSprings(inside: (x: number, y: number) => boolean, ex: number, ey: number, n = 240): number {
  const points: (readonly [number, number])[] = [];
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const [x, y] = [(i + 0.5) / n - 0.5, (j + 0.5) / n - 0.5];
      if (inside(x, y)) points.push([x, y]);
    }
  }
  const dA = 1 / n ** 2;
  let [a, b, c] = [1, 12 * ex, 12 * ey];
  for (let pass = 0; pass < 60; pass++) {
    let [s, sx, sy, sxx, sxy, syy] = [0, 0, 0, 0, 0, 0];
    for (const [x, y] of points) {
      if (a + b * x + c * y <= 0) continue;
      s += dA;
      sx += x * dA;
      sy += y * dA;
      sxx += x * x * dA;
      sxy += x * y * dA;
      syy += y * y * dA;
    }
    // the part that bears, as if it could pull as well: solve [s sx sy; sx sxx sxy; sy sxy syy] (a b c) = (1 ex ey)
    const det = s * (sxx * syy - sxy ** 2) - sx * (sx * syy - sxy * sy) + sy * (sx * sxy - sxx * sy);
    const na = (1 * (sxx * syy - sxy ** 2) - sx * (ex * syy - sxy * ey) + sy * (ex * sxy - sxx * ey)) / det;
    const nb = (s * (ex * syy - sxy * ey) - 1 * (sx * syy - sxy * sy) + sy * (sx * ey - ex * sy)) / det;
    const nc = (s * (sxx * ey - ex * sxy) - sx * (sx * ey - ex * sy) + 1 * (sx * sxy - sxx * sy)) / det;
    [a, b, c] = [(a + na) / 2, (b + nb) / 2, (c + nc) / 2];
  }
  return a + Math.hypot(b, 0) / 2 + Math.hypot(c, 0) / 2;
}
const inSquare = (): boolean => true;
const inCircle = (x: number, y: number): boolean => x * x + y * y <= 0.25;

describe('pressure on the soil', () => {
  // proof [pier.bearing]: closed-form - force over area, kern, and a base on springs without tension solved on a grid
  it('[pier.bearing] a central force spreads evenly', () => {
    expect(soilPressure(square, 4000, 0)).toBeCloseTo(1000, 9);
    expect(soilPressure(round, 1000 * Math.PI, 0)).toBeCloseTo(1000, 9);
  });

  it('[pier.bearing] at the edge of the kern the greatest pressure is twice the mean', () => {
    expect(soilPressure(square, 4000, 4000 * 4)).toBeCloseTo(2000, 9);
    expect(soilPressure(round, 1000 * Math.PI, 1000 * Math.PI * 3)).toBeCloseTo(2000, 9);
  });

  it('[pier.bearing] a square on which the force stands a quarter of its side off bears on three quarters of it', () => {
    // triangle of 3 (B/2 - e) = 0.75 B: q = 2 N / (0.75 B2)
    expect(soilPressure(square, 3000, 3000 * 6)).toBeCloseTo(3000 / 4 / 0.375, 9);
  });

  it.each([0.02, 0.1, 0.2, 0.3, 0.4])('[pier.bearing] agrees with a square on springs, %f of its side off', (e) => {
    const q = soilPressure({ shape: 'square', acrossIn: 12 }, 1, e * 12);
    expect(q / onSprings(inSquare, e, 0)).toBeCloseTo(1, 2);
  });

  it.each([0.05, 0.125, 0.2, 0.3, 0.4])(
    '[pier.bearing] agrees with a circle on springs, %f of its diameter off',
    (e) => {
      const q = soilPressure({ shape: 'round', acrossIn: 12 }, 1, e * 12);
      expect(q / onSprings(inCircle, e, 0)).toBeCloseTo(1, 2);
    },
  );

  it.each([
    [0.05, 0.05],
    [0.1, 0.1],
    [0.12, 0.05],
    [0.15, 0.15],
    [0.2, 0.1],
    [0.2, 0.2],
    [0.3, 0.1],
  ])(
    '[pier.bearing] on a square, moments of both planes added never give less than its corner gets (%f, %f)',
    (ex, ey) => {
      const added = soilPressure({ shape: 'square', acrossIn: 12 }, 1, (ex + ey) * 12);
      expect(added * 1.002).toBeGreaterThan(onSprings(inSquare, ex, ey));
    },
  );

  it('[pier.bearing] more moment never lowers the pressure, a wider base never raises it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Base['shape']>('square', 'round'),
        fc.double({ min: 10, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 0.44, noNaN: true }),
        (shape, acrossIn, share) => {
          const q = soilPressure({ shape, acrossIn }, 2500, 2500 * share * acrossIn);
          expect(soilPressure({ shape, acrossIn }, 2500, 2500 * (share + 0.02) * acrossIn)).toBeGreaterThan(q);
          expect(soilPressure({ shape, acrossIn: acrossIn + 1 }, 2500, 2500 * share * acrossIn)).toBeLessThan(q);
        },
      ),
      { seed: 81 },
    );
  });

  it('[pier.bearing] a force outside the base tips it, and nothing on it presses nothing', () => {
    for (const base of [square, round]) {
      expect(soilPressure(base, 1000, 12_000)).toBe(Infinity);
      expect(soilPressure(base, 0, 10)).toBe(Infinity);
      expect(soilPressure(base, 0, 0)).toBe(0);
    }
  });

  it('refuses pull, sizes below zero and what is not a number', () => {
    expect(() => soilPressure(square, -1, 0)).toThrow(MisuseError);
    expect(() => soilPressure(square, 1, -1)).toThrow(MisuseError);
    expect(() => soilPressure(square, Number.NaN, 0)).toThrow(MisuseError);
    expect(() => soilPressure({ shape: 'round', acrossIn: 0 }, 1, 0)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    for (const moment of [0, 5000, 20_000]) {
      expect(redoFaults((note) => soilPressure(square, 3000, moment, note))).toEqual([]);
      expect(redoFaults((note) => soilPressure(round, 3000, moment, note))).toEqual([]);
    }
  });
});
