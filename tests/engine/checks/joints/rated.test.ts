import { describe, expect, test } from 'vitest';
import { ratedPart } from '../../../../src/engine/checks/joints/rated.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import type { Capacity } from '../../../../src/engine/project/model.ts';

const rated = (pullLb: number | null, durationIncluded: number): Capacity => ({
  kind: 'rated',
  label: 'strap',
  parts: { pushLb: null, pullLb, alongLb: 300, acrossLb: null },
  durationIncluded,
});

describe('rated capacity of a joint', () => {
  test('[rafter.tie] a rating for wind is cut down for snow and left alone for wind', () => {
    expect(ratedPart(rated(800, 1.6), 'pull', 1.6)).toEqual({ ok: true, capacityLb: 800, reason: null });
    const snow = ratedPart(rated(800, 1.6), 'pull', 1.15);
    expect(snow).toEqual({
      ok: true,
      capacityLb: (800 * 1.15) / 1.6,
      reason: { code: 'ratedReduced', values: { held: 1.6 } },
    });
  });

  test('[rafter.tie] a rating for permanent load is never raised for a shorter one', () => {
    expect(ratedPart(rated(800, 0.9), 'pull', 1.6)).toEqual({ ok: true, capacityLb: 800, reason: null });
  });

  test('[rafter.tie] what nobody said, what is silent and what comes later are not given, with the demand shown', () => {
    const fasteners: Capacity = { kind: 'fasteners', rows: [], shoulder: false };
    for (const [capacity, code] of [
      [null, 'capacityNotGiven'],
      [rated(null, 1.6), 'partNotGiven'],
      [fasteners, 'fastenersLater'],
    ] as const) {
      const answer = ratedPart(capacity, 'pull', 1.6);
      if (answer.ok) throw new Error('expected no capacity');
      expect(answer.verdict(120)).toMatchObject({
        status: 'notGiven',
        demand: { value: 120, unit: 'lb' },
        reason: { code },
      });
    }
  });

  test('[rafter.tie] contact, and a rating of nothing, break when they are pulled and are not asked otherwise', () => {
    for (const capacity of [{ kind: 'none' } as const, rated(0, 1.6)]) {
      const answer = ratedPart(capacity, 'pull', 1.6);
      if (answer.ok) throw new Error('expected no capacity');
      expect(answer.verdict(1)).toMatchObject({ status: 'fail', ratio: null, reason: { code: 'contactOnly' } });
      expect(answer.verdict(0)).toBeNull();
    }
  });

  test('the step tells the very capacity that is judged', () => {
    const { value, steps } = stepsOf((note) => ratedPart(rated(800, 1.6), 'pull', 1.25, note));
    expect(value.ok && steps[0]!.result.value === value.capacityLb).toBe(true);
  });
});
