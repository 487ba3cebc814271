import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { adjustedBending, bendingStress } from '../../src/engine/checks/wood/bending.ts';
import { durationFactor } from '../../src/engine/checks/wood/duration.ts';
import { roundSectionModulus } from '../../src/engine/checks/wood/round-section.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import joistPrinted from './bending-joist.json' with { type: 'json' };
import polePrinted from './bending-pole-moment.json' with { type: 'json' };
import stickPrinted from './bending-round-stick.json' with { type: 'json' };
import taperPrinted from './bending-tapered.json' with { type: 'json' };

const poles = fixtureOf(
  z.strictObject({ girthIn: z.number(), FbPsi: z.number() }),
  z.strictObject({ inchKips: z.number() }),
).parse(polePrinted);
const joist = fixtureOf(
  z.strictObject({ momentLbIn: z.number(), sectionModulusIn3: z.number() }),
  z.strictObject({ stressPsi: z.number() }),
).parse(joistPrinted);
const stick = fixtureOf(z.strictObject({ diameterIn: z.number() }), z.strictObject({ share: z.number() })).parse(
  stickPrinted,
);
const tapered = fixtureOf(
  z.strictObject({
    member: z.enum(['tube', 'rectangle']),
    force: z.number(),
    momentAtTip: z.number(),
    length: z.number(),
    atTip: z.number(),
    atBase: z.number(),
    wall: z.number(),
  }),
  z.strictObject({ place: z.number(), stress: z.number(), overBase: z.number() }),
).parse(taperPrinted);

describe('bending of round wood', () => {
  // proof [beam.bending]: printed - Timber Poles and Piles Supplement 2001 Table 5.10, moments of redcedar poles
  it.each(poles.rows)('[beam.bending] the moment of a round section matches Table 5.10, $row', ({ in: given, out }) => {
    const Fb = adjustedBending(given.FbPsi, durationFactor('tenMinutes'), 1, 1);
    const capacity = (Fb * roundSectionModulus(given.girthIn / Math.PI)) / 1000;
    expect(Math.abs(capacity - out.inchKips)).toBeLessThanOrEqual(poles.tolerance.abs);
  });

  // proof [rafter.bending]: printed - Gere and Goodno, Mechanics of Materials 7th ed., problem 5.6-7, floor joists
  it.each(joist.rows)('[rafter.bending] matches Gere and Goodno problem $row', ({ in: given, out }) => {
    const stress = bendingStress(given.momentLbIn, given.sectionModulusIn3);
    expect(Math.abs(stress - out.stressPsi)).toBeLessThanOrEqual(joist.tolerance.abs);
  });

  it.each(stick.rows)(
    '[beam.bending] a $row has six tenths of the square of its depth (Dyer)',
    ({ in: given, out }) => {
      const square = given.diameterIn ** 3 / 6;
      expect(Math.abs(roundSectionModulus(given.diameterIn) / square - out.share)).toBeLessThanOrEqual(
        stick.tolerance.abs,
      );
    },
  );

  it('every row of the pole table is used', () => {
    expect(poles.rows).toHaveLength(38);
  });
});

/** The greatest of a stress over the length of a cantilever, by looking at many places. */
function worstAlong(length: number, stressAt: (x: number) => number): { place: number; stress: number } {
  let worst = { place: 0, stress: 0 };
  for (let i = 1; i <= 8000; i++) {
    const place = (length * i) / 8000;
    const stress = stressAt(place);
    if (stress > worst.stress) worst = { place, stress };
  }
  return worst;
}

describe('bending stress along a taper', () => {
  it.each(tapered.rows)('the worst place matches Gere and Goodno problem $row', ({ in: given, out }) => {
    const stressAt = (x: number): number => {
      const depth = given.atTip + ((given.atBase - given.atTip) * x) / given.length;
      const S = given.member === 'tube' ? (Math.PI * depth ** 2 * given.wall) / 4 : (given.wall * depth ** 2) / 6;
      return bendingStress(given.force * x + given.momentAtTip, S);
    };
    const worst = worstAlong(given.length, stressAt);
    expect(Math.abs(worst.place / out.place - 1)).toBeLessThanOrEqual(tapered.tolerance.abs);
    expect(Math.abs(worst.stress / out.stress - 1)).toBeLessThanOrEqual(tapered.tolerance.abs);
    expect(Math.abs(worst.stress / stressAt(given.length) / out.overBase - 1)).toBeLessThanOrEqual(
      tapered.tolerance.abs,
    );
  });

  // Gere, Mechanics of Materials, section 5.7, from memory: 128 P L / (27 pi dA3) where d = 1.5 dA.
  it('a solid round cantilever twice as thick at its base has 128/27 P L / (pi dA3) at half its length', () => {
    const [P, L, tip] = [100, 96, 5];
    const worst = worstAlong(L, (x) => bendingStress(P * x, roundSectionModulus(tip * (1 + x / L))));
    expect(worst.place).toBeCloseTo(L / 2, 1);
    expect((worst.stress * Math.PI * tip ** 3) / (P * L)).toBeCloseTo(128 / 27, 6);
  });
});
