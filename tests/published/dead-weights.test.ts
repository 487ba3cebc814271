import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { layersWeight, stickWeight } from '../../src/engine/loads/site/dead.ts';
import { INCHES_PER_FOOT, lineLoadFromPsf } from '../../src/engine/units.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
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

  it('a negative layer is refused and no layer weighs nothing', () => {
    expect(() => layersWeight([{ name: 'helium', psf: -1 }])).toThrow(/zero or above/);
    expect(layersWeight([])).toBe(0);
  });
});
