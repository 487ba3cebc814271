import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import {
  flatRoofSnow,
  leastLowSlopeSnow,
  slopedRoofSnow,
  slopeFactor,
  snowDensity,
} from '../../src/engine/loads/site/snow.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import openRoof from './snow-open-roof.json' with { type: 'json' };
import postedSheet from './snow-posted-sheet.json' with { type: 'json' };
import slopeLines from './snow-slope-lines.json' with { type: 'json' };

const sheet = fixtureOf(
  z.strictObject({ groundSnowPsf: z.number(), ce: z.number(), ct: z.number(), is: z.number() }),
  z.strictObject({
    flatRoofPsf: z.number(),
    slopedRoofPsf: z.number(),
    densityPcf: z.number(),
    balancedDepthFt: z.number(),
  }),
).parse(postedSheet);
const report = fixtureOf(z.strictObject({ groundSnowPsf: z.number() }), z.strictObject({ roofPsf: z.number() })).parse(
  openRoof,
);
const lines = fixtureOf(
  z.strictObject({ ct: z.number(), slippery: z.boolean() }),
  z.strictObject({ fullToDeg: z.number(), bareFromDeg: z.number() }),
).parse(slopeLines);

describe('snow on the roof', () => {
  it.each(sheet.rows)('[posted sheet after ASCE 7-16] $row', (row) => {
    const { abs } = sheet.tolerance;
    const pf = flatRoofSnow(row.in);
    const cs = slopeFactor({ slopeDeg: 4, ct: row.in.ct, slippery: false, unobstructed: false });
    const ps = slopedRoofSnow({ flatRoofSnowPsf: pf, slopeFactor: cs });
    const gamma = snowDensity(row.in.groundSnowPsf);
    expect(Math.abs(pf - row.out.flatRoofPsf)).toBeLessThanOrEqual(abs);
    expect(Math.abs(ps - row.out.slopedRoofPsf)).toBeLessThanOrEqual(abs);
    expect(Math.abs(gamma - row.out.densityPcf)).toBeLessThanOrEqual(abs);
    expect(Math.abs(ps / gamma - row.out.balancedDepthFt)).toBeLessThanOrEqual(abs);
  });

  it.each(report.rows)('[patio cover report] $row: $in.groundSnowPsf psf on the ground', (row) => {
    const { groundSnowPsf } = row.in;
    const pf = flatRoofSnow({ groundSnowPsf, ce: 1, ct: 1.2, is: 1 });
    const pm = leastLowSlopeSnow({ groundSnowPsf, is: 1, slopeDeg: 5 });
    expect(Math.abs(Math.max(pf, pm) - row.out.roofPsf)).toBeLessThanOrEqual(report.tolerance.abs);
  });

  it.each(lines.rows)('[ASCE 7-16 C7.4] slope factor of $row, from memory', (row) => {
    const { fullToDeg, bareFromDeg } = row.out;
    const at = (slopeDeg: number) => slopeFactor({ ...row.in, slopeDeg, unobstructed: true });
    expect(at(fullToDeg)).toBe(1);
    expect(at(fullToDeg + 0.01)).toBeLessThan(1);
    expect(at((fullToDeg + bareFromDeg) / 2)).toBeCloseTo(0.5, 12);
    expect(at(bareFromDeg)).toBe(0);
    expect(at(89)).toBe(0);
  });
});
