import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { ALONG_RIDGE_BANDS, MONOSLOPE_MAIN, PITCHED_MAIN } from '../../src/data/loads/free-roof-main.ts';
import { COMPONENT_ROWS } from '../../src/data/loads/free-roof-components.ts';
import { componentCoefficients } from '../../src/engine/loads/site/components.ts';
import { fixtureOf, flow } from '../engine/loads/site/published.ts';
import monoslope from './wind-components-monoslope.json' with { type: 'json' };
import pitched from './wind-components-pitched.json' with { type: 'json' };

const components = fixtureOf(
  z.strictObject({
    slopeDeg: z.number(),
    areaClass: z.enum(['upToA2', 'upTo4A2', 'over4A2']),
    zone: z.union([z.literal(1), z.literal(2), z.literal(3)]),
    flow,
  }),
  z.strictObject({ positive: z.number(), negative: z.number() }),
);

describe('wind on a free roof, components', () => {
  for (const [form, file] of [
    ['monoslope', monoslope],
    ['pitched', pitched],
  ] as const) {
    const table = components.parse(file);

    it.each(table.rows)(
      `[BNBC Fig. 6.2.19 ${form}] matches at $in.slopeDeg deg, $in.areaClass, zone $in.zone, $in.flow`,
      (row) => {
        const { slopeDeg, areaClass, zone, flow: air } = row.in;
        expect(componentCoefficients(form, slopeDeg, areaClass, zone, air)).toEqual({ ok: true, ...row.out });
      },
    );

    it(`[BNBC Fig. 6.2.19 ${form}] has every printed cell in the fixture, and each only once`, () => {
      expect(new Set(table.rows.map((row) => JSON.stringify(row.in))).size).toBe(COMPONENT_ROWS[form].length * 6);
      expect(table.rows).toHaveLength(COMPONENT_ROWS[form].length * 6);
    });

    // Second source: the two sets of figures come from different documents, yet zone 1 of the components must be the
    // extreme of all main-frame coefficients of the same slope and flow, wind along the ridge included.
    it.each(COMPONENT_ROWS[form].filter((row) => row.areaClass === 'upToA2').map((row) => row.slopeDeg))(
      `[ASCE 7 Fig. 27.3-4, -5, -7] ${form} at %s deg spans the same extremes as zone 1 of the components`,
      (slopeDeg) => {
        const isFlat = slopeDeg < 7.5;
        const main = (form === 'monoslope' || isFlat ? MONOSLOPE_MAIN : PITCHED_MAIN).filter(
          (row) => row.slopeDeg === slopeDeg,
        );
        for (const air of ['clear', 'obstructed'] as const) {
          const all = [
            ...main.flatMap((row) => [...row.coefficients[0][air], ...row.coefficients[180][air]]),
            ...ALONG_RIDGE_BANDS.flatMap((band) => [band.coefficients[air].A, band.coefficients[air].B]),
          ];
          const zone1 = componentCoefficients(form, slopeDeg, 'upToA2', 1, air);
          expect(zone1).toEqual({ ok: true, positive: Math.max(...all), negative: Math.min(...all) });
        }
      },
    );
  }

  it('[BNBC Fig. 6.2.19a] names both misprinted cells, in table and fixture alike', () => {
    const inTable = COMPONENT_ROWS.monoslope.filter((row) => row.disputed).map((row) => [row.slopeDeg, row.areaClass]);
    const inFixture = components.parse(monoslope).rows.filter((row) => row.disputed);
    expect(inTable).toEqual([
      [7.5, 'upToA2'],
      [15, 'over4A2'],
    ]);
    expect(inFixture.map((row) => [row.in.slopeDeg, row.in.areaClass])).toEqual(inTable);
  });
});
