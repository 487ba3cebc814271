import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { roundArea, roundInertia } from '../../src/engine/checks/wood/round-section.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import printed from './section-round.json' with { type: 'json' };

const table = fixtureOf(
  z.strictObject({ diameter: z.number() }),
  z.strictObject({ area: z.number(), inertia: z.number() }),
).parse(printed);

describe('round sections', () => {
  it.each(table.rows)(
    '[beam.bending] area and inertia match the printed table of round bars, $row',
    ({ in: given, out }) => {
      expect(Math.abs(roundArea(given.diameter) - out.area)).toBeLessThanOrEqual(table.tolerance.abs);
      expect(Math.abs(roundInertia(given.diameter) - out.inertia)).toBeLessThanOrEqual(table.tolerance.abs);
    },
  );

  it('the fixture of round sections has six rows and none is lost', () => {
    expect(table.rows).toHaveLength(6);
  });
});
