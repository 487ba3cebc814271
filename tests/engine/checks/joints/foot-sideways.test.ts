import { describe, expect, it } from 'vitest';
import { holderAt } from '../../../../src/engine/checks/joints/holder.ts';
import type { JointPart } from '../../../../src/engine/checks/joints/rated.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import type { FastenerRow, Project } from '../../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../../support/files.ts';
import { jointSource } from '../../frame/line-bench.ts';
import { evaluated, off, rowOf } from '../../whole/whole.ts';

const demo = soundProject(exampleText('firewood-shed'));

/** The demo with other plates and bolts in its post bases, and with anchors rated as said. */
function withBases(change: Partial<FastenerRow>, ratedLb = 50_000, pushLb: number | null = null): Project {
  const capacityOf = (capacity: Project['joints']['defaults'][number]['capacity']) =>
    capacity?.kind === 'fasteners' && capacity.alsoRated
      ? {
          ...capacity,
          rows: capacity.rows.map((row) => ({ ...row, ...change })),
          alsoRated: {
            ...capacity.alsoRated,
            parts: { pushLb, pullLb: ratedLb, alongLb: ratedLb, acrossLb: ratedLb },
          },
        }
      : capacity;
  return {
    ...demo,
    joints: {
      ...demo.joints,
      defaults: demo.joints.defaults.map((d) => ({ ...d, capacity: capacityOf(d.capacity) })),
    },
  };
}
function holds(project: Project, part: JointPart, CD = 1.6) {
  const { value, steps } = stepsOf((note) =>
    holderAt(jointSource(project), 'postFoot', 'postFoot/post-1').part(part, CD, note),
  );
  if (!value.ok) throw new Error('it holds nothing');
  const stepAt = (symbol: string): number => steps.find((step) => step.symbol === symbol)!.result.value;
  return { lb: value.capacityLb, reason: value.reason?.code, stepAt };
}

describe('a post base of plates, bolts and a rating', () => {
  it('says that the rating must cover plates that the post presses on; edgewise plates and bolts are computed', () => {
    const evaluation = evaluated(demo);
    expect(rowOf(evaluation, 'post.footAcross/post-1/foot').reason?.code).toBe('footSidewaysByRating');
    expect(rowOf(evaluation, 'post.footAlong/post-1/foot').reason?.code).toBe('anchorsTakeTurning');
    expect(rowOf(evaluation, 'post.foot/post-1/foot').reason).toBeUndefined();
  });

  // AISI S100 F2.1 (from memory): Fy S / 1.67 of each plate, S = t w2 / 6, at the arm from the pier to the bolt
  // proof [post.footAlong]: closed form - the yield moment of two flat bars over their arm
  it('[post.footAlong] thin plates bend edgewise before the bolt holds all that it can', () => {
    const plate = { thicknessIn: 0.0625, widthIn: 1.5, steel: 'plate', each: 2 } as const;
    const project = withBases({ plate });
    const standOffIn = jointSource(project).shelter.posts[0]!.foot;
    if (standOffIn.kind !== 'pier') throw new Error('a post on a pier is meant');
    const arm = standOffIn.standOffIn + 4.5;
    const yields = (2 * 36_000 * 0.0625 * 1.5 ** 2) / 6 / 1.67 / arm;
    const held = holds(project, 'along');
    expect(off(held.stepAt('Pb'), yields)).toBeLessThan(1e-9);
    expect(held.lb).toBe(Math.min(yields, held.stepAt('Zrow')));
  });

  // NDS Table 12.3.1B, 12.3.3: across the grain a 5/8 in. bolt in double shear; its wood shears beside it near the end (3.4.3.3)
  it('[post.footAlong] stout plates leave the bolt and the wood beside it, near the end by the square of the depth', () => {
    const held = holds(withBases({}), 'along');
    expect(held.lb).toBe(held.stepAt('Zrow'));
    expect(held.stepAt('Zrow')).toBeLessThanOrEqual(held.stepAt('Vp'));
    const farther = holds(withBases({ endIn: 9 }), 'along');
    expect(farther.stepAt('Vp')).toBeCloseTo(held.stepAt('Vp'), 6);
  });

  it('[post.footPush] what presses the post is held by the seat that is rated; fasteners through its sides do not help', () => {
    expect(holds(withBases({}, 50_000, 3000), 'push').lb).toBe(3000);
    expect(() => holds(withBases({}), 'push')).toThrow('it holds nothing');
  });

  it('holds no more than what is rated beyond them, and flatwise that alone', () => {
    expect(holds(withBases({}, 300), 'along').lb).toBe(300);
    expect(holds(withBases({}, 300), 'across').lb).toBe(300);
    expect(holds(withBases({}), 'across').lb).toBe(50_000);
  });
});
