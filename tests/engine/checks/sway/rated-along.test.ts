import { describe, expect, it } from 'vitest';
import type { Lateral, Project } from '../../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../../support/files.ts';
import { evaluated, off, rowOf } from '../../whole/whole.ts';

const shed = soundProject(exampleText('firewood-shed'));
const heldAlong = (...along: readonly Lateral[]): Project => ({
  ...shed,
  members: shed.members.filter((m) => m.role !== 'brace'),
  lateral: { ...shed.lateral, along },
});
const keyOf = (line: string): string => `sway.alongRated/${line}/whole`;

describe('lines that something outside the frame holds', () => {
  const apart = evaluated(
    heldAlong(
      { by: 'building', lines: ['line-high'], ratedLb: 5000 },
      { by: 'ratedWalls', lines: ['line-low'], ratedLb: 5000 },
    ),
  );
  const [high, low] = ['line-high', 'line-low'].map((line) => rowOf(apart, keyOf(line)).demand!.value);

  it('[sway.alongRated] asks each line of a rating of its own', () => {
    expect(high).not.toBe(low);
    expect(rowOf(apart, keyOf('line-high')).status).toBe('pass');
  });

  it('[sway.alongRated] asks one rating of two lines for the sum of both, which each alone would not reach', () => {
    const ratedLb = 1.05 * Math.max(high!, low!);
    const together = evaluated(heldAlong({ by: 'building', lines: ['line-high', 'line-low'], ratedLb }));
    for (const line of ['line-high', 'line-low']) {
      const row = rowOf(together, keyOf(line));
      expect(off(row.demand!.value, high! + low!)).toBeLessThan(1e-12);
      expect(row.status).toBe('fail');
    }
  });

  it('[sway.along] a system that names posts holds the line of those posts only', () => {
    const rows = evaluated(heldAlong({ by: 'building', posts: ['post-1'], ratedLb: 5000 })).checks;
    const statusOf = (key: string) => rows.find((row) => row.key === key)?.status;
    expect(statusOf(keyOf('line-high'))).toBe('pass');
    expect(statusOf(keyOf('line-low'))).toBeUndefined();
    expect(statusOf('sway.along/line-low/whole')).toBe('notGiven');
  });
});
