import { assembledOf } from '../assembled.ts';
import { guarded } from '../guarded.ts';
import type { Step } from '../note.ts';
import type { Project } from '../project/model.ts';
import { raisingSteps, type RaisingPlace } from './raising-stages.ts';

/**
 * How the force in a temporary brace comes about, by the formulas that `raisingStages` asks; empty where it has no figure.
 * Total: never throws.
 * @param angleDeg  of the temporary braces with the ground [deg]
 */
export function explainRaising(project: Project, angleDeg: number, place: RaisingPlace): readonly Step[] {
  const answer = guarded(() => {
    const assembled = assembledOf(project);
    return { ok: true as const, steps: 'faults' in assembled ? [] : raisingSteps(assembled, place, angleDeg) };
  });
  return answer.ok ? answer.steps : [];
}
