import { describe, expect, it } from 'vitest';
import { MODEL_WORDS } from '../../../src/engine/checks/frame-rows.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Evaluation, ForceExtreme, LineReport } from '../../../src/engine/evaluation.ts';
import { exampleText, soundProject, type Example } from '../../support/files.ts';

function evaluated(name: Example): Evaluation {
  const answer = evaluate(soundProject(exampleText(name)));
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
}

/** Lines, and the frames that stand across them. */
const framesOf = ({ lines, rows }: Evaluation): readonly LineReport[] => [
  ...lines.filter(({ posts }) => posts.length > 0),
  ...rows.flatMap(({ frame }) => (frame ? [frame] : [])),
];
const EXAMPLES_HERE = ['framed-shed', 'snow-lean-to', 'gable'] as const;

describe('the greatest forces of members', () => {
  it.each(EXAMPLES_HERE)('are the peaks of what is hatched along each member and pushes each brace: %s', (name) => {
    for (const { members, braces, extremes = [] } of framesOf(evaluated(name))) {
      const found = (memberId: string, force: ForceExtreme['force'], side: ForceExtreme['side']): number =>
        extremes
          .find((each) => each.memberId === memberId)
          ?.extremes.find((each) => each.force === force && each.side === side)?.value ?? 0;
      for (const m of members) {
        expect(found(m.memberId, 'axial', 'most')).toBe(Math.max(0, ...m.axialMaxLb));
        expect(found(m.memberId, 'axial', 'least')).toBe(Math.min(0, ...m.axialMinLb));
        expect(found(m.memberId, 'shear', 'most')).toBe(Math.max(0, ...m.shearMaxLb));
        expect(found(m.memberId, 'shear', 'least')).toBe(Math.min(0, ...m.shearMinLb));
        expect(found(m.memberId, 'moment', 'most')).toBe(Math.max(0, ...m.momentMaxLbIn));
        expect(found(m.memberId, 'moment', 'least')).toBe(Math.min(0, ...m.momentMinLbIn));
      }
      for (const brace of braces) {
        expect(found(brace.braceId, 'axial', 'most')).toBe(brace.greatestPullLb);
        expect(found(brace.braceId, 'axial', 'least')).toBeCloseTo(-brace.greatestPushLb, 9);
      }
    }
  });

  // statics: at its foot a plumb post is pushed by as much as its pier pushes back, in one and the same combination
  it.each(EXAMPLES_HERE)('name the combination in which the pier pushes back as hard: %s', (name) => {
    const compared = evaluated(name).lines.flatMap(({ posts, extremes = [] }) =>
      posts.flatMap(({ postId, byCombination }) => {
        const push = extremes
          .find(({ memberId }) => memberId === postId)!
          .extremes.find(({ force, side }) => force === 'axial' && side === 'least')!;
        const model = Object.entries(MODEL_WORDS).find(([, words]) => push.scenario.startsWith(words))![0];
        const reaction = byCombination[`${push.combinationId}|${model}`];
        return push.atIn === 0 && reaction ? [[-push.value, reaction.verticalLb] as const] : [];
      }),
    );
    expect(compared.length).toBeGreaterThan(1);
    for (const [push, pushesBack] of compared) expect(push).toBeCloseTo(pushesBack, 6);
  });
});
