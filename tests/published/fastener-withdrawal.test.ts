import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { BOLTS } from '../../src/data/fasteners/bolts.ts';
import { STEELS } from '../../src/data/fasteners/steel.ts';
import { tensionOfSteel } from '../../src/engine/checks/fasteners/fastener-tension.ts';
import { fastenerGravity } from '../../src/engine/checks/fasteners/specific-gravity.ts';
import { referenceWithdrawal, withdrawal } from '../../src/engine/checks/fasteners/withdrawal.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import gravityPrinted from './fastener-withdrawal-gravity.json' with { type: 'json' };
import lagPrinted from './fastener-withdrawal-lag.json' with { type: 'json' };
import nailPrinted from './fastener-withdrawal-nail.json' with { type: 'json' };
import screwPrinted from './fastener-withdrawal-screw.json' with { type: 'json' };
import steelPrinted from './fastener-withdrawal-steel.json' with { type: 'json' };
import wholePrinted from './fastener-withdrawal-whole.json' with { type: 'json' };
import workedPrinted from './fastener-withdrawal-worked.json' with { type: 'json' };

const kind = z.enum(['lag', 'screw', 'nail', 'spike']);
const lags = fixtureOf(
  z.strictObject({ gravity: z.number() }),
  z.strictObject({ holdsLbPerIn: z.array(z.number().nullable()) }),
).parse(lagPrinted);
const perInch = fixtureOf(
  z.strictObject({ kind, diameterIn: z.number(), gravity: z.number() }),
  z.strictObject({ holdsLbPerIn: z.number() }),
);
const nails = perInch.parse(nailPrinted);
const screws = perInch.parse(screwPrinted);
const worked = perInch.parse(workedPrinted);
const whole = fixtureOf(
  z.strictObject({
    kind,
    diameterIn: z.number(),
    lengthIn: z.number(),
    throughIn: z.number(),
    gravity: z.number(),
    CD: z.number(),
  }),
  z.strictObject({ holdsLb: z.number() }),
).parse(wholePrinted);
const gravities = fixtureOf(z.strictObject({ species: z.string() }), z.strictObject({ gravity: z.number() })).parse(
  gravityPrinted,
);
const steels = fixtureOf(z.strictObject({ diameterIn: z.number() }), z.strictObject({ availableLb: z.number() })).parse(
  steelPrinted,
);

/** The columns of Table 12.2A. */
const LAG_DIAMETERS = [1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 5 / 8, 3 / 4, 7 / 8, 1];

/** What a whole fastener holds, driven through something `throughIn` thick into side grain. */
function holdsLb(given: (typeof whole.rows)[number]['in'], penetrationIn = given.lengthIn - given.throughIn): number {
  const answer = withdrawal(
    { ...given, penetrationIn, grain: 'side', isToed: false, made: 'dry', used: 'dry' },
    given.CD,
  );
  return answer.ok ? answer.pounds : NaN;
}

describe('fasteners that are pulled', () => {
  it.each(lags.rows)('NDS Table 12.2A: what an inch of lag screw holds, every diameter, $row', ({ in: given, out }) => {
    expect(out.holdsLbPerIn).toHaveLength(LAG_DIAMETERS.length);
    for (const [column, printed] of out.holdsLbPerIn.entries()) {
      if (printed === null) continue;
      const W = referenceWithdrawal('lag', LAG_DIAMETERS[column]!, given.gravity);
      expect(Math.abs(W - printed)).toBeLessThanOrEqual(lags.tolerance.abs);
    }
  });

  it.each(nails.rows)('NDS Table 12.2C (from memory): what an inch of nail holds, $row', ({ in: given, out }) => {
    const W = referenceWithdrawal(given.kind, given.diameterIn, given.gravity);
    expect(Math.abs(W - out.holdsLbPerIn)).toBeLessThanOrEqual(nails.tolerance.abs);
  });

  it.each(screws.rows)('NDS Table 12.2B (from memory): what an inch of screw holds, $row', ({ in: given, out }) => {
    const W = referenceWithdrawal(given.kind, given.diameterIn, given.gravity);
    expect(Math.abs(W - out.holdsLbPerIn)).toBeLessThanOrEqual(screws.tolerance.abs);
  });

  it.each(worked.rows)('a worked example of engineering tables: what an inch holds, $row', ({ in: given, out }) => {
    const W = referenceWithdrawal(given.kind, given.diameterIn, given.gravity);
    expect(Math.abs(W - out.holdsLbPerIn)).toBeLessThanOrEqual(worked.tolerance.abs);
  });

  it.each(whole.rows.filter((row) => !row.mismatch))(
    'a permit record: what a whole fastener holds, thread and tip from Appendix L, $row',
    ({ in: given, out }) => {
      expect(Math.abs(holdsLb(given) - out.holdsLb)).toBeLessThanOrEqual(whole.tolerance.abs);
    },
  );

  // the example counts 2.0 in. of penetration where its own lengths leave 2.0625
  it.each(whole.rows.filter((row) => row.mismatch))(
    'FEMA P-55 Example 9.1: as it counts, $row',
    ({ in: given, out }) => {
      expect(Math.abs(holdsLb(given, 2) - out.holdsLb)).toBeLessThanOrEqual(whole.tolerance.abs);
      expect(holdsLb(given)).toBeCloseTo(68.2, 1);
    },
  );

  it.each(gravities.rows)('NDS Table 12.3.3A (from memory): specific gravity of $row', ({ in: given, out }) => {
    expect(fastenerGravity(given.species, 0.99)).toBe(out.gravity);
  });

  it.each(steels.rows)(
    'AISC Table 7-2 (from memory): the steel of a bolt carries no more, $row',
    ({ in: given, out }) => {
      const bolt = BOLTS.rows.find(({ nominalIn }) => nominalIn === given.diameterIn)!;
      const pull = tensionOfSteel({ shankIn: bolt.nominalIn, rootIn: bolt.rootIn, steel: STEELS.rod });
      expect(pull).toBeLessThanOrEqual(out.availableLb);
      expect(pull).toBeGreaterThan(0.85 * out.availableLb);
    },
  );

  it('every row of the fixtures is used', () => {
    const counts = [lags, nails, screws, worked, whole, gravities, steels].map(({ rows }) => rows.length);
    expect(counts).toEqual([22, 6, 3, 2, 2, 11, 4]);
    expect(lags.rows.flatMap(({ out }) => out.holdsLbPerIn).filter((printed) => printed !== null)).toHaveLength(197);
  });
});
