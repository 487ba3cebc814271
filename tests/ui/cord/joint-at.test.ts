import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Evaluation } from '../../../src/engine/evaluation.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { askedOf, jointsHere, PARTS, type AskedJoint } from '../../../src/ui/cord/joint-at.ts';
import { exampleText, soundProject } from '../../support/files.ts';

/** The demo whose tie logs hold alike in every direction, with so much [lb]. */
function tiesRated(ratingLb: number): Project {
  const project = soundProject(exampleText('firewood-shed'));
  const parts = { pushLb: ratingLb, pullLb: ratingLb, alongLb: ratingLb, acrossLb: ratingLb };
  const capacity = { kind: 'rated', label: 'invented', parts, durationIncluded: 1.6 } as const;
  const defaults = project.joints.defaults.filter(({ kind }) => kind !== 'tiePost');
  return { ...project, joints: { ...project.joints, defaults: [...defaults, { kind: 'tiePost', capacity }] } };
}

function evaluated(project: Project): Evaluation {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
}

function hardestTie(project: Project): AskedJoint | null {
  const evaluation = evaluated(project);
  return askedOf(jointsHere(project, evaluation, 'tiePost'), evaluation);
}

describe('the word over a joint', () => {
  it('[tie.together] fails where the straight sum of its shares fails, though each direction alone passes', () => {
    const asked = hardestTie(tiesRated(2600));
    const alone = PARTS.map((part) => asked?.demands[part]).map((way) => (way?.asked ? way.row.status : null));
    expect(alone).not.toContain('fail');
    expect(asked?.together.map(({ ruleId, status }) => [ruleId, status])).toEqual([['tie.together', 'fail']]);
    expect(asked?.worst?.ruleId).toBe('tie.together');
    expect(asked?.worst?.status).toBe('fail');
  });

  it('[tie.together] tells no sum of the hardest of many that another of them exceeds', () => {
    const project = tiesRated(3500);
    const { checks } = evaluated(project);
    const ratios = checks.filter(({ ruleId }) => ruleId === 'tie.together').map(({ ratio }) => ratio ?? NaN);
    expect(ratios.length).toBeGreaterThan(1);
    expect(hardestTie(project)?.worst?.ratio).toBe(Math.max(...ratios));
  });
});
