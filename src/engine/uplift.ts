import { upliftChains, type UpliftChain } from './checks/joints/uplift-chain.ts';
import type { Evaluation } from './evaluation.ts';
import { givensOf } from './givens.ts';
import { guarded } from './guarded.ts';
import type { Project } from './project/model.ts';

/** The uplift chain of every post, made on demand from what an evaluation found; none where the shelter cannot be placed. */
export function upliftOf(project: Project, { checks }: Pick<Evaluation, 'checks'>): readonly UpliftChain[] {
  const answer = guarded(() => {
    const givens = givensOf(project);
    return { ok: true as const, chains: 'faults' in givens ? [] : upliftChains(givens, checks) };
  });
  return answer.ok ? answer.chains : [];
}
