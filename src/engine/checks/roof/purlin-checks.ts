import type { RuleId } from '../../../data/rules.ts';
import type { PurlinGeometry } from '../../geometry/shelter.ts';
import { notGiven, type Verdict } from '../../check.ts';
import { message } from '../../message.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { handCut, raftersOn, refused, unasked, weightProblem, writtenPlane, type RoofCheckContext } from './context.ts';
import { purlinLoading, type PurlinLoading, type PurlinResponse } from './purlin-loading.ts';
import { purlinStickSites, type JudgedStick } from './purlin-stick.ts';
import { purlinTieSites } from './purlin-tie.ts';

const STICK_RULES: readonly RuleId[] = ['purlin.bending', 'purlin.shear', 'purlin.sag'];

/** Every rule of every purlin. */
export function purlinChecks(context: RoofCheckContext): readonly CheckSource[] {
  return context.shelter.purlins.flatMap((purlin): readonly CheckSource[] => {
    const problem = loadProblem(context, purlin);
    if (problem) return [plainSource(unasked([...STICK_RULES, 'purlin.tie'], purlin.id, problem))];
    const loading = purlinLoading(context, purlin);
    const judged = judgedStick(context, purlin);
    return [
      'verdict' in judged
        ? plainSource(unasked(STICK_RULES, purlin.id, judged.verdict))
        : group(loading, purlinStickSites(loading, judged)),
      loading.wind.ok
        ? group(loading, purlinTieSites(context, loading))
        : plainSource(unasked(['purlin.tie'], purlin.id, refused(loading.wind))),
    ];
  });
}

const group = (loading: PurlinLoading, sites: ReturnType<typeof purlinTieSites>): CheckSource =>
  checkSource({
    responses: loading.responses,
    name: (r: PurlinResponse) => ({ combinationId: r.combination.id, scenario: '' }),
    sites,
  });

function loadProblem(context: RoofCheckContext, purlin: PurlinGeometry): Verdict | null {
  if (raftersOn(context, purlin.plane).length === 0) return notGiven(message('memberNotGiven', { member: 'rafters' }));
  const { dead } = writtenPlane(context, purlin.plane);
  const isHeld = dead.by === 'total' && dead.includes.includes('purlins');
  return isHeld ? null : weightProblem(context, purlin);
}

function judgedStick(context: RoofCheckContext, purlin: PurlinGeometry): JudgedStick | { readonly verdict: Verdict } {
  const { stick } = purlin;
  const cut = handCut(context, purlin);
  if (cut) return { verdict: cut };
  if (!stick) return { verdict: notGiven(message('memberNotGiven', { member: purlin.label })) };
  if (stick.kind === 'typed') return { stick, values: null };
  const answer = context.valuesOf(purlin.id);
  return answer.ok ? { stick, values: answer.values } : { verdict: refused(answer) };
}
