import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { TIMBER_FRAME } from '../../src/data/loads/seismic.ts';
import {
  approximatePeriod,
  greatestS1,
  redundancy,
  seismicCategory,
  seismicImportance,
  seismicResponseCoefficient,
} from '../../src/engine/loads/site/seismic.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import category from './seismic-category.json' with { type: 'json' };
import response from './seismic-response.json' with { type: 'json' };

const categories = fixtureOf(
  z.strictObject({ sds: z.number(), sd1: z.number(), s1: z.number() }),
  z.strictObject({ category: z.enum(['A', 'B', 'C', 'D', 'E']) }),
).parse(category);
const responses = fixtureOf(
  z.strictObject({
    sds: z.number(),
    sd1: z.number(),
    s1: z.number(),
    r: z.number(),
    importance: z.number(),
    periodS: z.number(),
  }),
  z.strictObject({ cs: z.number() }),
).parse(response);

describe('earthquake on the site', () => {
  it.each(categories.rows)('[ASCE 7-16 11.6] $row', (row) => {
    expect(seismicCategory(row.in)).toBe(row.out.category);
  });

  // proof [site.seismic]: closed-form - each equation of 12.8.1.1 put in by hand, where it governs
  it.each(responses.rows)('[site.seismic] ASCE 7-10 12.8.1.1, $row', (row) => {
    expect(Math.abs(seismicResponseCoefficient(row.in) - row.out.cs)).toBeLessThanOrEqual(responses.tolerance.abs);
  });

  // ASCE 7-10 12.8.2.1: 0.02 hn^0.75; 16 ft gives 0.02 x 8 = 0.16 s exactly.
  it('[ASCE 7-10 12.8.2.1] a roof 16 ft high has an approximate period of 0.16 s', () => {
    expect(approximatePeriod(16)).toBeCloseTo(0.16, 12);
  });

  // ASCE 7-10 Table 12.2-1, G.6 as read in a public copy.
  it('[ASCE 7-10 Table 12.2-1] timber frames of cantilevered columns: 1.5 each, to 35 ft', () => {
    const { R, overstrength, deflectionAmplification, tallestFt } = TIMBER_FRAME;
    expect([R, overstrength, deflectionAmplification, tallestFt]).toEqual([1.5, 1.5, 1.5, 35]);
  });

  // ASCE 7-16 Table 1.5-2 and 12.3.4, from memory.
  it('[ASCE 7-16 Table 1.5-2] importance by risk category, the highest while nobody has said', () => {
    expect((['I', 'II', 'III', null] as const).map((c) => seismicImportance(c))).toEqual([1, 1, 1.25, 1.25]);
  });

  it('[ASCE 7-16 12.3.4] redundancy is 1.0 to category C and 1.3 beyond', () => {
    expect((['A', 'B', 'C', 'D', 'E'] as const).map((c) => redundancy(c))).toEqual([1, 1, 1, 1.3, 1.3]);
  });

  // ASCE 7-16 11.4.5: SD1 = 2/3 Fv S1, and Fv of rock 0.8 (Table 11.4-2, from memory): 0.4 = 2/3 x 0.8 x 0.75.
  it('[ASCE 7-16 11.4.5] an SD1 of 0.4 may come from an S1 of 0.75 and from no greater', () => {
    expect(greatestS1(0.4)).toBeCloseTo(0.75, 12);
  });

  it('a negative or unreadable acceleration is refused', () => {
    expect(() => seismicCategory({ sds: -0.1, sd1: 0, s1: 0 })).toThrow(/zero or above/);
    expect(() => greatestS1(Number.NaN)).toThrow(/zero or above/);
    expect(() => approximatePeriod(0)).toThrow(/above zero/);
  });

  it('more acceleration never gives a smaller push, more R never a greater one', () => {
    const given = { sds: 0.5, sd1: 0.2, s1: 0.2, r: 1.5, importance: 1, periodS: 0.15 };
    const pushes = [0.1, 0.5, 1, 2].map((sds) => seismicResponseCoefficient({ ...given, sds }));
    expect(pushes).toEqual([...pushes].sort((a, b) => a - b));
    const milder = [1, 1.5, 3, 8].map((r) => seismicResponseCoefficient({ ...given, r }));
    expect(milder).toEqual([...milder].sort((a, b) => b - a));
  });
});
