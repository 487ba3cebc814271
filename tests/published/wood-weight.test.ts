import { describe, expect, it } from 'vitest';
import { woodWeight } from '../../src/engine/material/wood-weight.ts';
import { aWood } from '../engine/material/samples.ts';
import green from './wood-green-weight.json' with { type: 'json' };

describe('weight of green wood', () => {
  it.each(green.rows)(
    'USDA Forest Service NRS-38 (2009): a thick $row log weighs $out.greenPcf pcf',
    ({ in: given, out }) => {
      const answer = woodWeight(aWood(given.species), 14);
      if (!answer.ok) throw new Error(answer.reason.code);
      expect(Math.abs(answer.weight.heavyPcf / out.greenPcf - 1)).toBeLessThanOrEqual(green.tolerance.rel);
    },
  );
});
