import { describe, expect, it } from 'vitest';
import { wholeMemberShare } from '../../../src/engine/checks/whole-member.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { exampleText, soundProject } from '../../support/files.ts';

const answer = evaluate(soundProject(exampleText('firewood-shed')));
const rows = answer.ok ? answer.evaluation.checks : [];
const of = (memberId: string) => rows.filter((row) => row.memberId === memberId);
const ratio = (memberId: string, ruleId: string): number =>
  Math.max(...of(memberId).flatMap((row) => (row.ruleId === ruleId && row.ratio !== null ? [row.ratio] : [])));

describe('how thick a log must be for what is asked of it as a whole', () => {
  // stiffness of a circle grows with d4: the diameter that brings a sag to its limit is ratio^(1/4) (closed form)
  it('[beam.sag] is the fourth root of the worst ratio of sag', () => {
    const worst = Math.max(ratio('beam-high', 'beam.sag'), ratio('beam-high', 'beam.sagLongTerm'));
    expect(wholeMemberShare(of('beam-high'))?.share).toBeCloseTo(worst ** 0.25, 9);
  });

  // le / d: twice as thick is half as slender (NDS 3.7.1.4)
  it('[post.slender] is the ratio itself where slenderness alone is asked', () => {
    const slender = of('post-1').filter((row) => row.ruleId === 'post.slender');
    expect(wholeMemberShare(slender)?.share).toBe(ratio('post-1', 'post.slender'));
  });

  it('[post.push] never asks for less than the second root of a ratio above 1, nor for less than the fourth below', () => {
    const push = of('post-1').filter((row) => row.ruleId === 'post.push');
    const { ratio: pushed } = push[0]!;
    // a column gains area (d2) and stability (d4): what passes already may lose no more than the fourth root leaves
    expect(wholeMemberShare(push)?.share).toBeCloseTo((pushed ?? NaN) ** 0.25, 9);
  });

  it('has no answer where nothing of the kind was judged', () => {
    expect(wholeMemberShare(of('beam-high').filter((row) => row.ruleId === 'beam.bending'))).toBeNull();
  });
});
