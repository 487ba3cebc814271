import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overturning, temporaryBrace, type BraceGivens } from '../../../src/engine/stages/temporary-brace.ts';
import type { WindPart } from '../../../src/engine/stages/wind-on-post.ts';
import { redoFaults } from '../checks/redo-step.ts';

const wind = (forceLb: number, atZIn: number): WindPart => ({
  name: 'post',
  areaFt2: forceLb / 10,
  psf: 10,
  forceLb,
  atZIn,
  steps: () => [],
});

const GIVENS: BraceGivens = {
  windLb: 120,
  windMomentLbIn: 9000,
  leastLb: 50,
  leastMomentLbIn: 6000,
  pressingLb: 40,
  heightIn: 60,
  angleDeg: 45,
};

describe('turning of a post about its foot', () => {
  // Forces of 100 lb at 48 in. and 40 lb at 96 in. over a foot at 6 in., six tenths of strength level (ASCE 7-16, 2.4.1):
  // 0.6 (100 x 42 + 40 x 90) = 4680 lb in.
  it('is the sum of each force times its height above the foot, at allowable-stress level', () => {
    const found = overturning([wind(100, 48), wind(40, 96)], 6, 106, 1000);
    expect(found.windLb).toBeCloseTo(84, 9);
    expect(found.windMomentLbIn).toBeCloseTo(4680, 9);
  });

  // ASCE 37-14, 4.4 (from memory): 50 lb for each person, or two per cent of the vertical load.
  it.each([
    [1000, 50],
    [2500, 50],
    [6000, 120],
  ])('asks for people at work, under %i lb of weight, at least %i lb at the top', (heavyLb, leastLb) => {
    const found = overturning([], 6, 106, heavyLb);
    expect(found.leastLb).toBeCloseTo(leastLb, 9);
    expect(found.leastMomentLbIn).toBeCloseTo(leastLb * 100, 9);
  });

  it('refuses a top that is not above the foot', () => {
    expect(() => overturning([], 6, 6, 0)).toThrow('height of the top');
  });
});

describe('a temporary brace', () => {
  // Moments about a pinned foot: the brace meets the post at h and holds with its level part, T cos a = M / h.
  it('is asked M / (h cos a)', () => {
    expect(temporaryBrace(GIVENS).braceLb).toBeCloseTo(9000 / (60 * Math.SQRT1_2), 9);
    expect(temporaryBrace({ ...GIVENS, angleDeg: 60 }).braceLb).toBeCloseTo(9000 / (60 * 0.5), 9);
    expect(temporaryBrace({ ...GIVENS, leastMomentLbIn: 12_000 }).braceLb).toBeCloseTo(12_000 / (60 * Math.SQRT1_2), 9);
  });

  // A wind of 120 lb that turns by 9000 lb in. acts at 75 in., above the brace at 60 in.: the brace gives 150 lb and the foot
  // holds 30 lb the other way. At 45 degrees the pushed brace lifts with those 150 lb, less the 40 that press.
  it('leaves the rest to the foot, and lifts it while it is pushed', () => {
    expect(temporaryBrace({ ...GIVENS, leastLb: 1, leastMomentLbIn: 100 })).toMatchObject({
      footLb: expect.closeTo(30, 9),
      liftLb: expect.closeTo(110, 9),
    });
    expect(temporaryBrace({ ...GIVENS, pressingLb: 1000 }).liftLb).toBe(0);
    expect(temporaryBrace({ ...GIVENS, pressingLb: -20 }).liftLb).toBeCloseTo(170, 9);
  });

  it.each([0, 90, -45, Number.NaN])('refuses an angle of %f degrees', (angleDeg) => {
    expect(() => temporaryBrace({ ...GIVENS, angleDeg })).toThrow('angleDeg');
  });

  const givens = fc.record({
    parts: fc.array(
      fc.tuple(fc.double({ min: 1, max: 2000, noNaN: true }), fc.double({ min: 20, max: 200, noNaN: true })),
      {
        minLength: 1,
        maxLength: 6,
      },
    ),
    heightIn: fc.double({ min: 30, max: 150, noNaN: true }),
    angleDeg: fc.double({ min: 20, max: 70, noNaN: true }),
  });

  // Statics in a plane: with the foot's level and plumb forces every sum vanishes, those about the ground's other points too.
  it('holds the post in balance against the wind', () => {
    fc.assert(
      fc.property(givens, ({ parts, heightIn, angleDeg }) => {
        const turning = overturning(
          parts.map(([lb, z]) => wind(lb, z)),
          0,
          200,
          0,
        );
        const alone = { ...turning, leastLb: 1e-9, leastMomentLbIn: 1e-9, pressingLb: 0, heightIn, angleDeg };
        const { braceLb, footLb, liftLb } = temporaryBrace(alone);
        const a = (angleDeg * Math.PI) / 180;
        const level = 0.6 * parts.reduce((sum, [lb]) => sum + lb, 0) - braceLb * Math.cos(a);
        expect(Math.abs(level)).toBeCloseTo(footLb, 6);
        expect(braceLb * Math.sin(a)).toBeCloseTo(liftLb, 6);
        // about the place where the brace meets the post its own force has no lever: wind and foot must balance
        const about = 0.6 * parts.reduce((sum, [lb, z]) => sum + lb * (z - heightIn), 0) + level * heightIn;
        expect(about / (1 + Math.abs(turning.windMomentLbIn))).toBeCloseTo(0, 9);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('is asked more by a stronger wind and a steeper brace, less by one that meets the post higher', () => {
    fc.assert(
      fc.property(givens, fc.double({ min: 1, max: 3, noNaN: true }), ({ parts, heightIn, angleDeg }, more) => {
        const ask = (factor: number, h: number, deg: number): number =>
          temporaryBrace({
            ...overturning(
              parts.map(([lb, z]) => wind(factor * lb, z)),
              0,
              200,
              1000,
            ),
            pressingLb: 0,
            heightIn: h,
            angleDeg: deg,
          }).braceLb;
        const asked = ask(1, heightIn, angleDeg);
        expect(ask(more, heightIn, angleDeg)).toBeGreaterThanOrEqual(asked);
        expect(ask(1, heightIn, angleDeg + 10)).toBeGreaterThan(asked);
        expect(ask(1, heightIn * more, angleDeg)).toBeLessThanOrEqual(asked);
      }),
      { seed: 6, numRuns: 200 },
    );
  });

  it('writes steps that another calculator confirms, and changes nothing by it', () => {
    const parts = [wind(100, 48), wind(40, 96), { ...wind(300, 110), name: 'roof' as const, areaFt2: null }];
    expect(redoFaults((note) => overturning(parts, 6, 106, 6000, note))).toEqual([]);
    expect(redoFaults((note) => temporaryBrace(GIVENS, note))).toEqual([]);
  });

  it('leaves what it is given unchanged', () => {
    const parts = [wind(100, 48)].map((part) => Object.freeze(part));
    const before = JSON.stringify(parts);
    temporaryBrace(Object.freeze({ ...GIVENS, ...overturning(Object.freeze(parts), 6, 106, 10) }));
    expect(JSON.stringify(parts)).toBe(before);
  });
});
