import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { layersWeight, stickWeight } from '../../src/engine/loads/site/dead.ts';
import { INCHES_PER_FOOT, lineLoadFromPsf } from '../../src/engine/units.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import { ROOF_MATERIALS } from '../../src/data/loads/dead-materials.ts';
import roofParts from './dead-roof-parts.json' with { type: 'json' };
import record from './dead-permit-record.json' with { type: 'json' };
import sticks from './dead-stick-weight.json' with { type: 'json' };
import strips from './dead-strip-weight.json' with { type: 'json' };

const sums = fixtureOf(
  z.strictObject({ partsPsf: z.array(z.number()) }),
  z.strictObject({ totalPsf: z.number() }),
).parse(record);
const perFoot = fixtureOf(
  z.strictObject({ densityPcf: z.number(), areaIn2: z.number() }),
  z.strictObject({ plf: z.number() }),
).parse(sticks);
const strip = fixtureOf(
  z.strictObject({ widthIn: z.number(), partsPsf: z.array(z.number()) }),
  z.strictObject({ partsPlf: z.array(z.number()), sumPlf: z.number() }),
).parse(strips);

const surfaces = fixtureOf(z.strictObject({ key: z.string() }), z.strictObject({ psf: z.number() })).parse(roofParts);

const layersOf = (parts: readonly number[]) => parts.map((psf, i) => ({ name: `part ${i + 1}`, psf }));

describe('dead weights', () => {
  it.each(sums.rows)('[permit record 4854] $row: the layers add up', (row) => {
    const sum = layersWeight(layersOf(row.in.partsPsf));
    expect(Math.abs(sum - row.out.totalPsf)).toBeLessThanOrEqual(sums.tolerance.abs);
  });

  it.each(perFoot.rows)('[Leet 5th ed.] $row: weight per foot of a stick', (row) => {
    expect(Math.abs(stickWeight(row.in) - row.out.plf)).toBeLessThanOrEqual(perFoot.tolerance.abs);
  });

  it.each(strip.rows)('[Leet 5th ed. P2.2] $row: layers over a strip', (row) => {
    const plf = (psf: number) => lineLoadFromPsf(psf, row.in.widthIn) * INCHES_PER_FOOT;
    row.in.partsPsf.forEach((psf, i) => {
      expect(Math.abs(plf(psf) - row.out.partsPlf[i]!)).toBeLessThanOrEqual(strip.tolerance.abs);
    });
    expect(Math.abs(plf(layersWeight(layersOf(row.in.partsPsf))) - row.out.sumPlf)).toBeLessThanOrEqual(
      strip.tolerance.abs,
    );
  });

  it.each(surfaces.rows)('[roof surfaces] $row', (row) => {
    const held = ROOF_MATERIALS.find(({ key }) => key === row.in.key);
    expect(Math.abs(held!.psf - row.out.psf)).toBeLessThanOrEqual(surfaces.tolerance.abs);
  });

  // Flat sheet of 29 gauge 0.719 psf and of 26 gauge 0.906 (gauge table, from memory), a tenth more for ribs and laps.
  it('[roof surfaces] holds no row besides, but for ribbed steel, which follows from its gauge', () => {
    const printed = new Set(surfaces.rows.map((row) => row.in.key));
    const own = ROOF_MATERIALS.filter(({ key }) => !printed.has(key));
    expect(own.map(({ key, source }) => [key, source])).toEqual([
      ['ribbedSteel29', 'OWN'],
      ['ribbedSteel26', 'OWN'],
    ]);
    expect(own[0]!.psf / 0.719).toBeGreaterThan(1.1);
    expect(own[1]!.psf / 0.906).toBeGreaterThan(1.1);
  });

  it('a negative layer is refused and no layer weighs nothing', () => {
    expect(() => layersWeight([{ name: 'helium', psf: -1 }])).toThrow(/zero or above/);
    expect(layersWeight([])).toBe(0);
  });
});
