import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { bearingAreaFactor, bearingAtAngle, bearingStress } from '../../src/engine/checks/wood/bearing.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import anglePrinted from './bearing-at-angle.json' with { type: 'json' };
import factorPrinted from './bearing-area-factor.json' with { type: 'json' };

const factors = fixtureOf(z.strictObject({ lengthIn: z.number() }), z.strictObject({ Cb: z.number() })).parse(
  factorPrinted,
);
const oblique = fixtureOf(
  z.strictObject({
    forceLb: z.number(),
    sideIn: z.number(),
    FcPsi: z.number(),
    FcPerpPsi: z.number(),
    sineSquared: z.number(),
  }),
  z.strictObject({ stressPsi: z.number(), allowablePsi: z.number() }),
).parse(anglePrinted);

describe('bearing', () => {
  // proof [beam.seat]: printed - NDS 2018 Table 3.10.4 (from memory), bearing area factor
  it.each(factors.rows)('[beam.seat] the bearing area factor matches Table 3.10.4 at $row', ({ in: given, out }) => {
    expect(Math.abs(bearingAreaFactor(given.lengthIn, 3) - out.Cb)).toBeLessThanOrEqual(factors.tolerance.abs);
  });

  // proof [brace.bearing]: printed - Handbook of Civil Engineering Calculations, Section 3, compression on an oblique plane
  it.each(oblique.rows)(
    '[brace.bearing] stress and allowable on an oblique plane match the handbook, $row',
    ({ in: given, out }) => {
      const angleDeg = (Math.asin(Math.sqrt(given.sineSquared)) * 180) / Math.PI;
      const stress = bearingStress(given.forceLb, given.sideIn ** 2);
      const allowable = bearingAtAngle(given.FcPsi, given.FcPerpPsi, angleDeg);
      expect(Math.abs(stress - out.stressPsi)).toBeLessThanOrEqual(oblique.tolerance.abs);
      expect(Math.abs(allowable - out.allowablePsi)).toBeLessThanOrEqual(oblique.tolerance.abs);
    },
  );

  it('every row of both fixtures is used', () => {
    expect([factors.rows.length, oblique.rows.length]).toEqual([7, 1]);
  });
});
