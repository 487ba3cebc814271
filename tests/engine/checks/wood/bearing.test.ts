import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adjustedAcrossGrain,
  bearingAreaFactor,
  bearingAtAngle,
  bearingStress,
  needsEndPlate,
} from '../../../../src/engine/checks/wood/bearing.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import { flatWidth, seatArea } from '../../../../src/engine/geometry/seats.ts';
import { redoFaults } from '../redo-step.ts';

describe('bearing across and along the grain', () => {
  it('[beam.seat] the area factor helps only under 6 in. and 3 in. or more from the end', () => {
    expect(bearingAreaFactor(4, 3)).toBeCloseTo(1.09375, 12);
    expect(bearingAreaFactor(4, 2.99)).toBe(1);
    expect(bearingAreaFactor(6, 40)).toBe(1);
    expect(bearingAreaFactor(12, 40)).toBe(1);
  });

  it('[beam.seat] a longer bearing never has a larger factor, and but for the step at 6 in. carries more in all', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 12, noNaN: true }),
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        (lb, more) => {
          // at 6 in. the help of 3/8 in. ends: that much less is carried past the step
          const lost = lb < 6 && lb + more >= 6 ? 0.375 : 0;
          expect(bearingAreaFactor(lb + more, 10)).toBeLessThanOrEqual(bearingAreaFactor(lb, 10));
          expect((lb + more) * bearingAreaFactor(lb + more, 10) + lost).toBeGreaterThan(lb * bearingAreaFactor(lb, 10));
        },
      ),
      { seed: 41 },
    );
  });

  // proof [post.endGrain]: closed-form - stress is force over area, limit at three quarters of Fc*
  it('[post.endGrain] a plate is asked for above three quarters of Fc*, not at it', () => {
    expect(needsEndPlate(750, 1000)).toBe(false);
    expect(needsEndPlate(750.1, 1000)).toBe(true);
    expect(bearingStress(6000, 12)).toBe(500);
  });

  // 875 and 260 psi at 45 degrees: 2 x 875 x 260 / (875 + 260), worked by hand.
  it('[brace.bearing] at 45 degrees the allowable is the harmonic mean of both directions', () => {
    expect(bearingAtAngle(875, 260, 45)).toBeCloseTo(400.9, 1);
    expect(bearingAtAngle(875, 260, 45)).toBeCloseTo((2 * 875 * 260) / (875 + 260), 9);
  });

  it('[brace.bearing] along and across the grain the allowable is that of the direction, between them it falls', () => {
    expect(bearingAtAngle(875, 260, 0)).toBeCloseTo(875, 9);
    expect(bearingAtAngle(875, 260, 90)).toBeCloseTo(260, 9);
    // 30 and 60 degrees cannot be swapped unseen
    expect(bearingAtAngle(875, 260, 30)).toBeCloseTo(1 / (0.75 / 875 + 0.25 / 260), 9);
    expect(bearingAtAngle(875, 260, 60)).toBeCloseTo(1 / (0.25 / 875 + 0.75 / 260), 9);
  });

  it('refuses what is no bearing', () => {
    expect(() => bearingStress(-1, 5)).toThrow(MisuseError);
    expect(() => bearingStress(1, 0)).toThrow(MisuseError);
    expect(() => bearingAreaFactor(0, 5)).toThrow(MisuseError);
    expect(() => bearingAreaFactor(3, -1)).toThrow(MisuseError);
    expect(() => bearingAtAngle(875, 260, 90.1)).toThrow(MisuseError);
    expect(() => bearingAtAngle(875, 260, -1)).toThrow(MisuseError);
    expect(() => bearingAtAngle(0, 260, 45)).toThrow(MisuseError);
    expect(() => needsEndPlate(100, Number.NaN)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => bearingStress(6000, 12, note))).toEqual([]);
    expect(redoFaults((note) => bearingAreaFactor(4, 8, note))).toEqual([]);
    expect(redoFaults((note) => bearingAreaFactor(4, 1, note))).toEqual([]);
    expect(redoFaults((note) => adjustedAcrossGrain(405, 1.09, note))).toEqual([]);
    expect(redoFaults((note) => bearingAtAngle(1000, 405, 35, note))).toEqual([]);
    expect(redoFaults((note) => needsEndPlate(800, 1000, note))).toEqual([]);
    expect(stepsOf((note) => needsEndPlate(800, 1000, note)).steps[0]?.result.value).toBe(750);
  });
});

describe('the seat on a round post', () => {
  /** Points of a fine grid that lie both on the flat and on the post top. */
  function byGrid(width: number, before: number, beyond: number, diameter: number, cells = 700): number {
    const step = diameter / cells;
    let hits = 0;
    for (let i = 0; i < cells; i++) {
      for (let j = 0; j < cells; j++) {
        const x = (i + 0.5) * step - diameter / 2;
        const y = (j + 0.5) * step - diameter / 2;
        if (x * x + y * y <= (diameter / 2) ** 2 && Math.abs(y) <= width / 2 && x >= -before && x <= beyond) hits++;
      }
    }
    return hits * step * step;
  }

  it.each([
    [5.2, 4, 4, 8],
    [5.2, 1.5, 4, 8],
    [9, 2, 2, 8],
    [3.4, 8, 8, 6.5],
    [3.4, 0, 1, 6.5],
  ])(
    '[beam.seat] a flat %f in. wide from %f to %f in. past the axis of an %f in. post has the contact that a grid counts',
    (w, before, beyond, d) => {
      expect(seatArea(w, before, beyond, d) / byGrid(w, before, beyond, d)).toBeCloseTo(1, 2);
    },
  );

  it('[beam.seat] a flat larger than the post gives the whole circle, a narrow one its strip', () => {
    expect(seatArea(20, 20, 20, 8)).toBeCloseTo(16 * Math.PI, 9);
    expect(seatArea(2, 1, 1, 100)).toBeCloseTo(4, 9);
  });

  it('the width of a flat is the chord at its depth: depth and width give the radius back', () => {
    for (const [d, t] of [
      [7.7, 0.4],
      [11.3, 2.2],
    ] as const) {
      const half = flatWidth(d, t) / 2;
      expect((half * half + t * t) / t).toBeCloseTo(d, 10);
    }
  });
});
