import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { HILLS } from '../../src/data/loads/wind-topography.ts';
import { olderWindSpeed } from '../../src/engine/loads/site/older-wind-speed.ts';
import { topographicFactor, type Hill } from '../../src/engine/loads/site/topography.ts';
import { stepsOf } from '../../src/engine/note.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import speedFile from './wind-fastest-mile.json' with { type: 'json' };
import hillFile from './wind-hills.json' with { type: 'json' };

const shape = z.enum(['ridge', 'escarpment', 'hill']);
const hills = fixtureOf(
  z.strictObject({ shape }),
  z.strictObject({
    speedUpB: z.number(),
    speedUpC: z.number(),
    speedUpD: z.number(),
    decay: z.number(),
    reachUpwind: z.number(),
    reachDownwind: z.number(),
  }),
).parse(hillFile);
const speeds = fixtureOf(z.strictObject({ fastestMileMph: z.number() }), z.strictObject({ gustMph: z.number() })).parse(
  speedFile,
);

/** A ridge of 100 ft, half length 200 ft: steepness 0.5. At its crest, at the ground as near as the formula goes. */
const ridge = (change: Partial<Hill> = {}): Hill => ({
  shape: 'ridge',
  exposure: 'C',
  heightFt: 100,
  halfLengthFt: 200,
  distanceFt: 0,
  side: 'upwind',
  roofHeightFt: 1e-9,
  ...change,
});

describe('wind on hills', () => {
  it.each(hills.rows)('[BNBC Fig. 6.2.4] parameters of a $in.shape are held as printed', (row) => {
    const { speedUp, heightDecay, reach } = HILLS[row.in.shape];
    expect([speedUp.B, speedUp.C, speedUp.D, heightDecay, reach.upwind, reach.downwind]).toEqual([
      row.out.speedUpB,
      row.out.speedUpC,
      row.out.speedUpD,
      row.out.decay,
      row.out.reachUpwind,
      row.out.reachDownwind,
    ]);
  });

  // ASCE 7 Fig. 26.8-1 prints, from memory, K1 of 0.72 for a ridge of steepness 0.50 in exposure C (1.45 / 2, rounded down),
  // K2 of 0.33 at x/Lh = 1 and K3 of 0.74 at z/Lh = 0.1.
  it('[ASCE 7 Fig. 26.8-1] multipliers of a ridge meet the printed ones', () => {
    const { value, steps } = stepsOf((note) => topographicFactor(ridge({ distanceFt: 200, roofHeightFt: 20 }), note));
    const of = (symbol: string): number => steps.find((s) => s.symbol === symbol)!.result.value;
    expect(Math.abs(of('K1') - 0.72)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(of('K2') - 0.33)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(of('K3') - 0.74)).toBeLessThanOrEqual(0.005);
    expect(value).toBeCloseTo((1 + of('K1') * of('K2') * of('K3')) ** 2, 12);
  });

  it('[ASCE 7 Eq. 26.8-1] at a crest is the square of one and the speed-up', () => {
    expect(topographicFactor(ridge())).toBeCloseTo((1 + 1.45 / 2) ** 2, 6);
    expect(topographicFactor(ridge({ shape: 'hill', exposure: 'B' }))).toBeCloseTo((1 + 0.95 / 2) ** 2, 6);
  });

  it('[ASCE 7 26.8.1] a hill that is low or gentle has none', () => {
    expect(topographicFactor(ridge({ halfLengthFt: 500 }))).toBeCloseTo((1 + 1.45 / 5) ** 2, 6);
    expect(topographicFactor(ridge({ halfLengthFt: 501 }))).toBe(1);
    expect(topographicFactor(ridge({ heightFt: 14.9, halfLengthFt: 30 }))).toBe(1);
    expect(topographicFactor(ridge({ heightFt: 15, halfLengthFt: 30 }))).toBeGreaterThan(1);
    expect(topographicFactor(ridge({ heightFt: 59, exposure: 'B' }))).toBe(1);
    expect(topographicFactor(ridge({ heightFt: 60, exposure: 'B' }))).toBeGreaterThan(1);
  });

  it('[ASCE 7 Fig. 26.8-1] a steeper hill counts as one of steepness one half with the same height', () => {
    const place = { distanceFt: 90, roofHeightFt: 12 };
    expect(topographicFactor(ridge({ ...place, halfLengthFt: 50 }))).toBeCloseTo(topographicFactor(ridge(place)), 12);
  });

  it('[ASCE 7 Fig. 26.8-1] ends where its reach ends, farther behind an escarpment than behind a ridge', () => {
    expect(topographicFactor(ridge({ distanceFt: 300 }))).toBe(1);
    expect(topographicFactor(ridge({ distanceFt: 299 }))).toBeGreaterThan(1);
    const behind = { side: 'downwind', distanceFt: 700 } as const;
    expect(topographicFactor(ridge(behind))).toBe(1);
    expect(topographicFactor(ridge({ ...behind, shape: 'escarpment' }))).toBeGreaterThan(1);
  });
});

describe('older wind speeds', () => {
  it.each(speeds.rows)('[IBC 2000 Table 1609.3.1] $in.fastestMileMph mph fastest mile', (row) => {
    const answer = olderWindSpeed(row.in.fastestMileMph);
    // IBC 2018 1609.3.1: Vasd = V sqrt(0.6)
    expect(answer).toMatchObject({ ok: true, gustMph: row.out.gustMph });
    expect(answer.ok && answer.strengthMph * Math.sqrt(0.6)).toBeCloseTo(row.out.gustMph, 9);
    expect(answer.ok && answer.caution.code).toBe('olderSpeedCaution');
  });

  it('[IBC 2000 Table 1609.3.1] runs straight between rows and never falls', () => {
    expect(olderWindSpeed(95)).toMatchObject({ ok: true, gustMph: 115 });
    const gusts = Array.from({ length: 81 }, (_, i) => olderWindSpeed(70 + i)).map((a) => (a.ok ? a.gustMph : NaN));
    expect(gusts.every((gust, i) => i === 0 || gust >= gusts[i - 1]!)).toBe(true);
  });

  it('[IBC 2000 Table 1609.3.1] has no answer outside its rows', () => {
    for (const mph of [69.9, 150.1])
      expect(olderWindSpeed(mph)).toEqual({
        ok: false,
        reason: { code: 'olderSpeedOutside', values: { mph, least: 70, greatest: 150 } },
      });
  });
});
