import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  angleToGrain,
  braceContactArea,
  forceAlongLog,
  forceSquareToLog,
  shearBeyondShoulder,
  shoulderArea,
} from '../../../../src/engine/checks/wood/brace-end.ts';
import { flattenedArea } from '../../../../src/engine/checks/wood/flat-section.ts';
import { sagAfterYears, sagLimit, wholeSag } from '../../../../src/engine/checks/wood/sag.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { flatWidth } from '../../../../src/engine/geometry/seats.ts';
import { redoFaults } from '../redo-step.ts';

describe('sag', () => {
  // proof [rafter.sag]: printed - IBC 2018 Table 1604.3, the same row
  // proof [purlin.sag]: printed - IBC 2018 Table 1604.3, the same row
  // proof [beam.sag]: printed - IBC 2018 Table 1604.3, roof members without ceiling: L/180, L/180, L/120, cantilever twice
  it.each([
    ['live', false, 1],
    ['snowOrWind', false, 1],
    ['longTerm', false, 1.5],
    ['live', true, 2],
    ['longTerm', true, 3],
  ] as const)(
    '[beam.sag] [rafter.sag] [purlin.sag] 180 in. may sag by the printed share: %s, overhang %s',
    (kind, isOverhang, limit) => {
      expect(sagLimit(180, kind, isOverhang)).toBeCloseTo(limit, 12);
    },
  );

  // proof [beam.sagLongTerm]: closed-form - NDS 3.5.2 (from memory) written out for green wood
  // proof [rafter.sagLongTerm]: closed-form - the same
  it('[beam.sagLongTerm] [rafter.sagLongTerm] green wood creeps by as much as the dead load bent it at first', () => {
    expect(sagAfterYears(0.4, 0.3, 2)).toBeCloseTo(0.7, 12);
    expect(wholeSag(0.4, 0.3, 2)).toBeCloseTo(1.1, 12);
    expect(wholeSag(0.4, 0.3, 1.5) - sagAfterYears(0.4, 0.3, 1.5)).toBeCloseTo(0.4, 12);
    expect(sagAfterYears(-0.1, 0.3, 2)).toBeCloseTo(0.2, 12);
  });

  it('refuses what is no span, sag or creep', () => {
    expect(() => sagLimit(0, 'live', false)).toThrow(MisuseError);
    expect(() => sagAfterYears(Number.NaN, 0, 2)).toThrow(MisuseError);
    expect(() => wholeSag(0.1, 0.1, 0.9)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => sagLimit(131, 'longTerm', true, note))).toEqual([]);
    expect(redoFaults((note) => sagAfterYears(0.4, 0.3, 2, note))).toEqual([]);
    expect(redoFaults((note) => wholeSag(0.4, 0.3, 1.5, note))).toEqual([]);
  });
});

describe('the end of a brace', () => {
  it('[brace.bearing] 30 and 60 degrees are not swapped: square is the sine, along the cosine, the sign stays', () => {
    expect(forceSquareToLog(-1000, 30)).toBeCloseTo(-500, 9);
    expect(forceAlongLog(-1000, 30)).toBeCloseTo(-866.025, 3);
    expect(forceSquareToLog(1000, 60)).toBeCloseTo(866.025, 3);
    expect(forceAlongLog(1000, 60)).toBeCloseTo(500, 9);
    expect(forceAlongLog(1000, 90)).toBeCloseTo(0, 9);
  });

  it('[brace.bearing] both parts make up the whole force at any angle', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 90, noNaN: true }), (beta) => {
        expect(Math.hypot(forceSquareToLog(700, beta), forceAlongLog(700, beta))).toBeCloseTo(700, 9);
      }),
      { seed: 71 },
    );
  });

  it('[brace.bearing] each face meets the grain of each wood at its own angle', () => {
    expect(angleToGrain('log', 'side', 30)).toBe(90);
    expect(angleToGrain('log', 'shoulder', 30)).toBe(0);
    expect(angleToGrain('brace', 'side', 30)).toBe(60);
    expect(angleToGrain('brace', 'shoulder', 30)).toBe(30);
  });

  it('[brace.bearing] on a flat wider than itself a brace bears on the whole ellipse of its cut', () => {
    // log 10 in., flat 2 in.: 8 in. wide
    expect(braceContactArea(5, 2, 10, 30)).toBeCloseTo((Math.PI / 4) * 5 * (5 / Math.sin(Math.PI / 6)), 9);
    expect(braceContactArea(5, 2, 10, 90)).toBeCloseTo((Math.PI / 4) * 25, 9);
  });

  it('[brace.bearing] on a narrow flat only the strip of the ellipse bears, as counted by thin strips', () => {
    const [brace, log, depth, beta] = [5, 9, 0.35, 50];
    const width = flatWidth(log, depth);
    expect(width).toBeLessThan(brace);
    const n = 20_000;
    let area = 0;
    for (let i = 0; i < n; i++) {
      const y = ((i + 0.5) / n - 0.5) * width;
      area += ((2 * Math.sqrt((brace / 2) ** 2 - y * y)) / Math.sin((beta * Math.PI) / 180)) * (width / n);
    }
    expect(braceContactArea(brace, depth, log, beta)).toBeCloseTo(area, 6);
  });

  // proof [brace.shoulder]: closed-form - exact area of the circle's slice at the shoulder, never below two thirds of w h
  it('[brace.shoulder] the shoulder counted never passes the slice of the log that is really there', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 16, noNaN: true }),
        fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        fc.double({ min: 0.05, max: 1.5, noNaN: true }),
        (log, share, braceShare) => {
          const [depth, brace] = [share * log, braceShare * log];
          const half = Math.min(flatWidth(log, depth), brace) / 2;
          const R = log / 2;
          // area under the log's edge, over the floor, within the width of the brace
          const under = half * Math.sqrt(R * R - half * half) + R * R * Math.asin(half / R);
          expect(shoulderArea(depth, log, brace)).toBeLessThanOrEqual(under - 2 * half * (R - depth) + 1e-9);
        },
      ),
      { seed: 72 },
    );
  });

  it('[brace.shoulder] of a brace as wide as the floor it is within a tenth of the slice for housings to a sixth', () => {
    const [log, depth] = [9, 1.5];
    const slice = Math.PI * (log / 2) ** 2 - flattenedArea(log, depth, 0);
    expect(shoulderArea(depth, log, 9) / slice).toBeGreaterThan(0.9);
  });

  it('[brace.shoulder] the log beyond the shoulder is counted with half of its sheared plane', () => {
    expect(shearBeyondShoulder(120, 4, 10)).toBeCloseTo(2400, 9);
  });

  it('refuses angles and depths that make no joint', () => {
    expect(() => forceSquareToLog(100, 0)).toThrow(MisuseError);
    expect(() => forceAlongLog(100, 91)).toThrow(MisuseError);
    expect(() => angleToGrain('brace', 'side', -3)).toThrow(MisuseError);
    expect(() => braceContactArea(5, 0, 9, 45)).toThrow(MisuseError);
    expect(() => shoulderArea(0, 9, 5)).toThrow(MisuseError);
    expect(() => shearBeyondShoulder(120, 4, 0)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => forceSquareToLog(900, 35, note))).toEqual([]);
    expect(redoFaults((note) => forceAlongLog(900, 35, note))).toEqual([]);
    expect(redoFaults((note) => braceContactArea(5, 0.4, 9, 35, note))).toEqual([]);
    expect(redoFaults((note) => shoulderArea(1, 9, 5, note))).toEqual([]);
    expect(redoFaults((note) => shearBeyondShoulder(120, 4, 10, note))).toEqual([]);
  });
});
