import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { ASD_COMBINATIONS } from '../../src/data/loads/combinations.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import printed from './combinations-allowable-stress.json' with { type: 'json' };

const factor = z.number().optional();
const table = fixtureOf(
  z.strictObject({ id: z.string() }),
  z.strictObject({
    dead: z.number(),
    ownLive: factor,
    roofLive: factor,
    snow: factor,
    wind: factor,
    notional: factor,
    seismic: factor,
    vertical: factor,
  }),
).parse(printed);

const KINDS = ['ownLive', 'roofLive', 'snow', 'wind', 'notional', 'seismic'] as const;

describe('allowable-stress combinations', () => {
  it.each(table.rows)('[ASCE 7 2.4.1 and 1.4.1] $row carries the printed factors', (row) => {
    const held = ASD_COMBINATIONS.find((combination) => combination.id === row.in.id);
    expect(held?.dead.factor).toBe(row.out.dead);
    for (const kind of KINDS) expect(held?.factors[kind] ?? 0).toBeCloseTo(row.out[kind] ?? 0, 12);
    expect(held?.vertical).toBe(row.out.vertical ?? 0);
  });

  it('[ASCE 7 2.4.1 and 1.4.1] has every combination in the fixture and none besides', () => {
    expect(ASD_COMBINATIONS.map((combination) => combination.id)).toEqual(table.rows.map((row) => row.in.id));
  });

  it('roof live and snow never act together, nor do wind, the notional push and an earthquake', () => {
    for (const { factors } of ASD_COMBINATIONS) {
      expect((factors.roofLive ?? 0) * (factors.snow ?? 0)).toBe(0);
      expect([factors.wind, factors.notional, factors.seismic].filter(Boolean).length).toBeLessThan(2);
    }
  });

  // NDS 2018 Table 2.3.2, common practice: the shortest load of a combination sets its duration.
  it('[NDS Table 2.3.2] takes the duration of the shortest load', () => {
    for (const { factors, duration } of ASD_COMBINATIONS) {
      const expected =
        factors.wind || factors.notional || factors.seismic
          ? 'tenMinutes'
          : factors.roofLive
            ? 'sevenDays'
            : factors.snow
              ? 'twoMonths'
              : factors.ownLive
                ? 'tenYears'
                : 'permanent';
      expect(duration).toBe(expected);
    }
  });

  it('takes light dead load exactly where the standard multiplies it by 0.6', () => {
    for (const { dead } of ASD_COMBINATIONS) {
      expect(dead.weight === 'light').toBe(dead.factor === 0.6);
    }
  });

  it('[ASCE 7-16 2.4.5] marks the three with earthquake as remembered', () => {
    const marked = ASD_COMBINATIONS.filter(({ clause }) => clause.memory).map(({ id }) => id);
    expect(marked).toEqual(['8', '9', '10']);
  });
});
