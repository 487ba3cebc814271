import { describe, expect, it } from 'vitest';
import { LUMBER } from '../../src/data/wood/lumber.ts';
import { repetitiveFactor } from '../../src/engine/material/repetitive-factor.ts';
import { sawnValues } from '../../src/engine/material/sawn-values.ts';
import type { SawnStick } from '../../src/engine/geometry/shelter.ts';
import { valuesIn } from '../engine/material/samples.ts';
import adjusted from './wood-sawn-adjusted.json' with { type: 'json' };
import lrfd from './wood-sawn-lrfd.json' with { type: 'json' };

describe('sawn lumber', () => {
  it.each(adjusted.rows)('adjusted stresses of $row', ({ in: given, out }) => {
    const stick: SawnStick = {
      kind: 'sawn',
      breadthIn: given.breadthIn,
      depthIn: given.depthIn,
      lay: 'edge',
      plies: 1,
      species: given.species,
      grade: given.grade,
      use: given.use === 'wet' ? 'wet' : 'dry',
    };
    const values = valuesIn(sawnValues(stick));
    const timed = given.durationFactor;
    const ours = {
      FbPsi: values.FbPsi * timed * repetitiveFactor(stick, given.spacingIn, given.count),
      FtPsi: values.FtPsi * timed,
      FvPsi: values.FvPsi * timed,
      FcPerpPsi: values.FcPerpPsi,
      FcPsi: values.FcPsi * timed,
      EPsi: values.EPsi,
      EminPsi: values.EminPsi,
    };
    const off = (Object.keys(out) as (keyof typeof out)[]).filter(
      (key) => !(Math.abs(ours[key] - (out[key] ?? NaN)) <= adjusted.tolerance.abs),
    );
    expect(Object.keys(out).length).toBeGreaterThanOrEqual(3);
    expect(off).toEqual([]);
  });

  it.each(lrfd.rows)('nominal LRFD values of No.1 Douglas Fir-Larch, $row, come back from the base values', (row) => {
    const base = LUMBER.find(
      (candidate) =>
        candidate.group === 'Douglas Fir-Larch' && candidate.grade === 'No.1' && candidate.size === row.in.size,
    );
    if (!base) throw new Error('row missing');
    const conversion = {
      FbPsi: 2.16 / 0.85,
      FtPsi: 2.16 / 0.8,
      FvPsi: 2.16 / 0.75,
      FcPerpPsi: 1.875 / 0.9,
      FcPsi: 2.16 / 0.9,
    };
    for (const key of Object.keys(conversion) as (keyof typeof conversion)[]) {
      const rel = (base[key] * conversion[key]) / row.out[key] - 1;
      expect(Math.abs(rel)).toBeLessThanOrEqual(lrfd.tolerance.rel);
    }
  });
});
