import { expect, it } from 'vitest';
import { z } from 'zod';
import { SOIL_CLASSES, UNKNOWN_SOIL_KEY } from '../../src/data/loads/soil.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import printed from './soil-presumptive.json' with { type: 'json' };

const cell = z.number().nullable();
const table = fixtureOf(
  z.strictObject({ soilClass: z.number() }),
  z.strictObject({ bearingPsf: cell, lateralPsfPerFt: cell, friction: cell, cohesionPsf: cell }),
).parse(printed);

it.each(table.rows)('[IBC Table 1806.2] class $row matches', (row) => {
  expect(SOIL_CLASSES[row.in.soilClass - 1]).toMatchObject(row.out);
});

it('[IBC Table 1806.2] every class is in the fixture', () => {
  expect(table.rows).toHaveLength(SOIL_CLASSES.length);
});

it('[IBC Table 1806.2] unknown soil takes the weakest class that carries a value', () => {
  const weakest = Math.min(...SOIL_CLASSES.flatMap((soil) => soil.bearingPsf ?? []));
  const unknown = SOIL_CLASSES.find((soil) => soil.key === UNKNOWN_SOIL_KEY);
  expect(unknown?.bearingPsf).toBe(weakest);
  expect(unknown?.lateralPsfPerFt).toBe(100);
});
