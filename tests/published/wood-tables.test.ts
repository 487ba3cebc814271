import { describe, expect, it } from 'vitest';
import { SURVEYED } from '../../src/data/wood/variability.ts';
import { DRY_WOOD } from '../../src/data/wood/dry-wood.ts';
import { CLEAR_WOOD } from '../../src/data/wood/species.ts';
import { LUMBER } from '../../src/data/wood/lumber.ts';
import { crushingStress } from '../../src/engine/material/green-strength.ts';
import crushing from './wood-crushing-line.json' with { type: 'json' };
import deviations from './wood-deviations.json' with { type: 'json' };
import sawn from './wood-sawn-values.json' with { type: 'json' };
import species from './wood-species.json' with { type: 'json' };

describe('tables of wood', () => {
  it.each(species.rows)('Wood Handbook (2021) Table 5-3b: $row green and at 12 %', ({ in: given, out }) => {
    expect(CLEAR_WOOD.find(({ name }) => name === given.species)?.green).toEqual(out.green);
    expect(DRY_WOOD.find(({ name }) => name === given.species)).toMatchObject(out.dry);
  });

  it('no species was dropped or added beside the table', () => {
    expect([CLEAR_WOOD.length, DRY_WOOD.length]).toEqual([species.rows.length, species.rows.length]);
  });

  it.each(sawn.rows)('NDS Supplement (2018) $row', ({ seen, in: given, out }) => {
    const found = LUMBER.filter(
      (row) =>
        row.group === given.group &&
        row.grade === given.grade &&
        row.size === given.size &&
        (row.nominalWidthIn?.[0] ?? null) === given.nominalWidthIn,
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ ...out, seen });
  });

  it('no row of sawn lumber was dropped or added', () => {
    expect(LUMBER.length).toBe(sawn.rows.length);
  });

  it.each(deviations.rows)(
    'ASTM D2555 Table 1, $row: printed deviations are the average scatter of Wood Handbook Table 5-6 times the mean',
    ({ in: given, out }) => {
      const row = SURVEYED.find((candidate) => candidate.species === given.species);
      expect(row?.bending.sdPsi).toBe(out.bendingSdPsi);
      expect(Math.abs(0.16 * (row?.bending.meanPsi ?? 0) - out.bendingSdPsi)).toBeLessThanOrEqual(0.5);
      expect(Math.abs(0.18 * (row?.compressionAlong.meanPsi ?? 0) - out.compressionSdPsi)).toBeLessThanOrEqual(0.5);
      expect(Math.abs(0.14 * (row?.shear.meanPsi ?? 0) - out.shearSdPsi)).toBeLessThanOrEqual(0.5);
    },
  );

  it.each(crushing.rows)(
    'ASTM D2555 Table 1: $row psi at the proportional limit is printed as $out.crushingPsi at 0.04 in.',
    ({ in: given, out }) => {
      expect(Math.abs(crushingStress(given.proportionalLimitPsi) - out.crushingPsi)).toBeLessThanOrEqual(
        crushing.tolerance.abs,
      );
    },
  );
});
