import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { MONOSLOPE_MAIN, PITCHED_MAIN } from '../../src/data/loads/free-roof-main.ts';
import { alongRidgeCoefficient, mainFrameCoefficients } from '../../src/engine/loads/site/free-roof.ts';
import { fixtureOf, flow, windCase } from '../engine/loads/site/published.ts';
import alongRidge from './wind-along-ridge.json' with { type: 'json' };
import monoslope from './wind-main-monoslope.json' with { type: 'json' };
import pitched from './wind-main-pitched.json' with { type: 'json' };

const mainFrame = fixtureOf(
  z.strictObject({
    slopeDeg: z.number(),
    loadCase: windCase,
    windDirection: z.union([z.literal(0), z.literal(180)]),
    flow,
  }),
  z.strictObject({ windward: z.number(), leeward: z.number() }),
);
const bands = fixtureOf(
  z.strictObject({ fromHeights: z.number(), toHeights: z.number().nullable(), loadCase: windCase, flow }),
  z.strictObject({ coefficient: z.number() }),
);

describe('wind on a free roof, main frame', () => {
  for (const [form, file] of [
    ['monoslope', monoslope],
    ['pitched', pitched],
  ] as const) {
    const table = mainFrame.parse(file);

    it.each(table.rows)(
      `[ASCE 7 ${form} figure] matches at $in.slopeDeg deg, case $in.loadCase, $in.windDirection, $in.flow`,
      (row) => {
        const { slopeDeg, windDirection, loadCase, flow: air } = row.in;
        expect(mainFrameCoefficients(form, slopeDeg, windDirection, loadCase, air)).toEqual({ ok: true, ...row.out });
      },
    );

    it(`[ASCE 7 ${form} figure] has every printed cell in the fixture, and each only once`, () => {
      const held = form === 'monoslope' ? MONOSLOPE_MAIN : PITCHED_MAIN;
      expect(new Set(table.rows.map((row) => JSON.stringify(row.in))).size).toBe(held.length * 4);
      expect(table.rows).toHaveLength(held.length * 4);
    });
  }

  const ridge = bands.parse(alongRidge);
  it.each(ridge.rows)('[ASCE 7 Fig. 27.3-7] matches in the band $row, case $in.loadCase, $in.flow', (row) => {
    const heightFt = 11;
    const { fromHeights, toHeights, loadCase, flow: air } = row.in;
    const inside = fromHeights + 0.5;
    for (const heights of [inside, toHeights ?? inside + 40]) {
      expect(alongRidgeCoefficient(heights * heightFt, heightFt, loadCase, air)).toBe(row.out.coefficient);
    }
  });

  it('[ASCE 7 Fig. 27.3-7] has three bands, two cases and two flows in the fixture', () => {
    expect(new Set(ridge.rows.map((row) => JSON.stringify(row.in))).size).toBe(12);
  });

  it('[ASCE 7 Fig. 27.3-4] names both cells on which two copies disagree, in table and fixture alike', () => {
    const inTable = MONOSLOPE_MAIN.filter((row) => row.disputed).map((row) => [row.slopeDeg, row.windCase]);
    const inFixture = mainFrame.parse(monoslope).rows.filter((row) => row.disputed);
    expect(inTable).toEqual([
      [15, 'A'],
      [30, 'B'],
    ]);
    expect(inFixture.map((row) => [row.in.slopeDeg, row.in.loadCase])).toEqual(inTable);
  });
});
