import { expect, it } from 'vitest';
import { z } from 'zod';
import { areaReduction, reducedRoofLive, slopeReduction } from '../../src/engine/loads/site/roof-live.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import reductions from './live-reductions.json' with { type: 'json' };
import record from './live-permit-record.json' with { type: 'json' };

const table = fixtureOf(
  z.strictObject({ tributaryAreaFt2: z.number(), risePer12: z.number() }),
  z.strictObject({ r1: z.number(), r2: z.number(), lrPsf: z.number() }),
).parse(record);

it.each(table.rows)('[permit record 4854] $row: reduced roof live load', (row) => {
  expect(areaReduction(row.in.tributaryAreaFt2)).toBeCloseTo(row.out.r1, 12);
  expect(slopeReduction(row.in.risePer12)).toBeCloseTo(row.out.r2, 12);
  const lr = reducedRoofLive({ ...row.in, countyPsf: 0 });
  expect(Math.abs(lr - row.out.lrPsf)).toBeLessThanOrEqual(table.tolerance.abs);
});

const rows = fixtureOf(
  z.strictObject({ tributaryAreaFt2: z.number(), risePer12: z.number() }),
  z.strictObject({ r1: z.number(), r2: z.number(), lrPsf: z.number() }),
).parse(reductions);

it.each(rows.rows)('[ASCE 7-10 4.8.2] $row: reduced roof live load', (row) => {
  expect(areaReduction(row.in.tributaryAreaFt2)).toBeCloseTo(row.out.r1, 9);
  expect(slopeReduction(row.in.risePer12)).toBeCloseTo(row.out.r2, 9);
  expect(reducedRoofLive({ ...row.in, countyPsf: 0 })).toBeCloseTo(row.out.lrPsf, 9);
});
