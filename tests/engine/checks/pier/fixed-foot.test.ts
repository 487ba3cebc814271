import { describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../../support/files.ts';
import { evaluated, off, rowOf } from '../../whole/whole.ts';

/** The shed without braces, its posts held against turning by their feet. */
function onFixedFeet(): Project {
  const shed = soundProject(exampleText('firewood-shed'));
  return {
    ...shed,
    members: shed.members.filter((m) => m.role !== 'brace'),
    groups: shed.groups.map((g) =>
      g.role === 'post' ? { ...g, foot: { ...g.foot, fixity: { along: 'fixed', across: 'pinned' } } } : g,
    ),
    lateral: { ...shed.lateral, along: [{ by: 'embeddedPosts' }] },
  };
}

/** IBC equation 18-1 by plain repetition: force P at height h above the ground, lateral bearing s per foot, width b [ft]. */
function depthFt(P: number, h: number, s: number, b: number): number {
  let d = 4;
  for (let i = 0; i < 500; i++) {
    const A = (2.34 * P) / (((s * Math.min(d, 12)) / 3) * b);
    d = (d + 0.5 * A * (1 + Math.sqrt(1 + (4.36 * h) / A))) / 2;
  }
  return d;
}

describe('a foot that is not free to turn', () => {
  const evaluation = evaluated(onFixedFeet());
  const post = evaluation.lines.flatMap((l) => l.posts).find((p) => p.postId === 'post-1')!;

  it('[pier.sideways] counts the moment of the foot as well as its push: equation 18-1 with h = (H h + M) / H', () => {
    const heightFt = 7 / 12; // pier top 6 in. above the ground, hardware 1 in.
    const depths = Object.values(post.byCombination).map(({ alongLb, momentLbIn }) => {
      const H = Math.abs(alongLb);
      return H > 0 ? depthFt(H, heightFt + Math.abs(momentLbIn) / 12 / H, 200, 2) : 0;
    });
    expect(off(rowOf(evaluation, 'pier.sideways/post-1/whole').demand!.value, Math.max(...depths))).toBeLessThan(1e-6);
  });

  it('[post.footTurning] is not given, with the greatest moment as its demand', () => {
    const row = rowOf(evaluation, 'post.footTurning/post-1/foot');
    const most = Math.max(...Object.values(post.byCombination).map((r) => Math.abs(r.momentLbIn)));
    expect(row.status).toBe('notGiven');
    expect(row.demand).toEqual({ value: most, unit: 'lb·in' });
    expect(most).toBeGreaterThan(0);
  });

  it('[post.footTurning] asks nothing of a foot that turns freely', () => {
    const keys = evaluated(soundProject(exampleText('firewood-shed'))).checks.map((c) => c.key);
    expect(keys.filter((key) => key.startsWith('post.footTurning'))).toEqual([]);
  });
});
