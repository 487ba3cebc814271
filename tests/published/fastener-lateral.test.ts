import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { STEELS } from '../../src/data/fasteners/steel.ts';
import { dowelBearingOnSteel, dowelBearingOnWood } from '../../src/engine/checks/fasteners/dowel-bearing.ts';
import { groupActionFactor } from '../../src/engine/checks/fasteners/group-action.ts';
import { lateralValue, type LateralFastener } from '../../src/engine/checks/fasteners/lateral.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import bearingPrinted from './fastener-dowel-bearing.json' with { type: 'json' };
import boltsPrinted from './fastener-lateral-bolts.json' with { type: 'json' };
import groupPrinted from './fastener-lateral-group.json' with { type: 'json' };
import lagPrinted from './fastener-lateral-lag-plate.json' with { type: 'json' };
import nailCheckPrinted from './fastener-lateral-nail-check.json' with { type: 'json' };
import nailsPrinted from './fastener-lateral-nails.json' with { type: 'json' };

const pounds = z.strictObject({ ZLb: z.number() });
const lags = fixtureOf(
  z.strictObject({
    nominalIn: z.number(),
    rootIn: z.number(),
    tipIn: z.number(),
    plateIn: z.number(),
    gravity: z.number(),
    penetrationIn: z.number(),
    angleDeg: z.number(),
  }),
  pounds,
).parse(lagPrinted);
const nail = z.strictObject({
  diameterIn: z.number(),
  sideIn: z.number(),
  gravity: z.number(),
  penetrationIn: z.number(),
});
const nails = fixtureOf(nail, pounds).parse(nailsPrinted);
const nailCheck = fixtureOf(nail.extend({ CD: z.number() }), pounds).parse(nailCheckPrinted);
const bolts = fixtureOf(
  z.strictObject({
    diameterIn: z.number(),
    mainIn: z.number(),
    sideIn: z.number(),
    planes: z.union([z.literal(1), z.literal(2)]),
    mainAngleDeg: z.number(),
    sideAngleDeg: z.number(),
  }),
  pounds,
).parse(boltsPrinted);
const groups = fixtureOf(
  z.strictObject({
    count: z.number(),
    sideMaterial: z.enum(['wood', 'steel']),
    mainIn2: z.number(),
    sideIn2: z.number(),
    sideEPsi: z.number(),
  }),
  z.strictObject({ Cg: z.number() }),
).parse(groupPrinted);
const bearings = fixtureOf(
  z.strictObject({ gravity: z.number(), diameterIn: z.number(), angleDeg: z.number() }),
  z.strictObject({ FePsi: z.number() }),
).parse(bearingPrinted);

/** Z, or NaN where it is refused, which no printed value agrees with. */
function valueOf(fastener: LateralFastener): number {
  const answer = lateralValue(fastener);
  return answer.ok ? answer.ZLb : NaN;
}

const nailed = (given: z.infer<typeof nail>): number =>
  valueOf({
    kind: 'nail',
    nominalIn: given.diameterIn,
    diameterIn: given.diameterIn,
    tipIn: 2 * given.diameterIn,
    main: { material: 'wood', lengthIn: given.penetrationIn, gravity: given.gravity, angleDeg: 0, grain: 'side' },
    side: { material: 'wood', lengthIn: given.sideIn, gravity: given.gravity, angleDeg: 0, grain: 'side' },
    gapIn: 0,
    planes: 1,
  });

describe('fasteners loaded sideways', () => {
  it.each(bearings.rows)('dowel bearing matches NDS 2018 Table 12.3.3 (from memory), $row', ({ in: given, out }) => {
    const Fe = dowelBearingOnWood(given.gravity, given.diameterIn, given.angleDeg);
    expect(Math.abs(Fe - out.FePsi)).toBeLessThanOrEqual(bearings.tolerance.abs);
  });

  it('dowel bearing on steel is 87,000 psi for A36 and 61,850 psi for A653 grade 33, as the notes of the NDS tables say', () => {
    expect(dowelBearingOnSteel(STEELS.plate)).toBe(87_000);
    // the notes round 61,875 down to 50 psi
    expect(Math.abs(dowelBearingOnSteel(STEELS.strap) - 61_850)).toBeLessThanOrEqual(25);
  });

  it.each(lags.rows)('a lag screw through a steel plate matches NDS 2018 Table 12K, $row', ({ in: given, out }) => {
    const Z = valueOf({
      kind: 'lag',
      nominalIn: given.nominalIn,
      diameterIn: given.rootIn,
      tipIn: given.tipIn,
      main: {
        material: 'wood',
        lengthIn: given.penetrationIn + given.tipIn,
        gravity: given.gravity,
        angleDeg: given.angleDeg,
        grain: 'side',
      },
      side: { material: 'steel', lengthIn: given.plateIn, steel: STEELS.strap },
      gapIn: 0,
      planes: 1,
    });
    expect(Math.abs(Z - out.ZLb)).toBeLessThanOrEqual(lags.tolerance.abs);
  });

  it.each(nails.rows)('a common nail matches NDS 2018 Table 12N (from memory), $row', ({ in: given, out }) => {
    expect(Math.abs(nailed(given) - out.ZLb)).toBeLessThanOrEqual(nails.tolerance.abs);
  });

  it.each(nailCheck.rows)('a nail matches a published check, $row', ({ in: given, out }) => {
    expect(Math.abs(nailed(given) * given.CD - out.ZLb)).toBeLessThanOrEqual(nailCheck.tolerance.abs);
  });

  it.each(bolts.rows)('a bolt matches NDS 2018 Tables 12A and 12F (from memory), $row', ({ in: given, out }) => {
    const Z = valueOf({
      kind: 'bolt',
      nominalIn: given.diameterIn,
      diameterIn: given.diameterIn,
      tipIn: 0,
      main: { material: 'wood', lengthIn: given.mainIn, gravity: 0.5, angleDeg: given.mainAngleDeg, grain: 'side' },
      side: { material: 'wood', lengthIn: given.sideIn, gravity: 0.5, angleDeg: given.sideAngleDeg, grain: 'side' },
      gapIn: 0,
      planes: given.planes,
    });
    expect(Math.abs(Z - out.ZLb)).toBeLessThanOrEqual(bolts.tolerance.abs);
  });

  it.each(groups.rows)('group action matches NDS 2018 Tables 11.3.6 (from memory), $row', ({ in: given, out }) => {
    const Cg = groupActionFactor({
      nominalIn: 1,
      count: given.count,
      spacingIn: 4,
      main: { EPsi: 1_400_000, areaIn2: given.mainIn2 },
      side: { EPsi: given.sideEPsi, areaIn2: given.sideIn2 },
      sideMaterial: given.sideMaterial,
    });
    expect(Math.abs(Cg - out.Cg)).toBeLessThanOrEqual(groups.tolerance.abs);
  });

  it('every row of every fixture is used', () => {
    expect([bearings, lags, nails, nailCheck, bolts, groups].map(({ rows }) => rows.length)).toEqual([
      9, 18, 8, 2, 50, 44,
    ]);
  });
});
