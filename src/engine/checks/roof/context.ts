import type { RoofForm } from '../../../data/loads/free-roof-main.ts';
import type { RuleId } from '../../../data/rules.ts';
import { notGiven, outside, type Verdict } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import type { PlaneGeometry, PurlinGeometry, RafterGeometry, Shelter } from '../../geometry/shelter.ts';
import type { RunOf } from '../../loads/roof-cases.ts';
import type { SitePressures } from '../../loads/site/site-pressures.ts';
import type { MemberWeights } from '../../loads/weights.ts';
import type { MaterialAnswer } from '../../material/values.ts';
import { message, type Message } from '../../message.ts';
import type { Project, RoofPlane } from '../../project/model.ts';
import { plainRow } from '../site-of-check.ts';

/** What the checks of the roof look at. */
export interface RoofCheckContext {
  readonly project: Project;
  readonly shelter: Shelter;
  readonly site: SitePressures;
  readonly form: RoofForm | null;
  readonly runOf: RunOf;
  readonly weights: MemberWeights;
  readonly valuesOf: (memberId: string) => MaterialAnswer;
}

/** The plane as the person wrote it. */
export const writtenPlane = (context: RoofCheckContext, planeId: string): RoofPlane =>
  context.project.roofPlanes.find((p) => p.id === planeId)!;

export const placedPlane = (context: RoofCheckContext, planeId: string): PlaneGeometry =>
  context.shelter.planes.find((p) => p.id === planeId)!;

export const purlinsOn = (context: RoofCheckContext, planeId: string): readonly PurlinGeometry[] =>
  context.shelter.purlins.filter((p) => p.plane === planeId);

export const raftersOn = (context: RoofCheckContext, planeId: string): readonly RafterGeometry[] =>
  context.shelter.rafters.filter((r) => r.plane === planeId);

/** Why something has no figures: not given or past the method. */
export const refused = (answer: { readonly status: 'notGiven' | 'outside'; readonly reason: Message }): Verdict =>
  answer.status === 'notGiven' ? notGiven(answer.reason) : outside(answer.reason);

/** One row per rule that cannot be asked of a member, so that none is missing without a word. */
export const unasked = (ruleIds: readonly RuleId[], memberId: string, verdict: Verdict): readonly CheckRow[] =>
  ruleIds.map((ruleId) => plainRow(ruleId, memberId, { kind: 'whole', name: '' }, verdict));

/** Why the weight of a stick is not known; null when it is. */
export function weightProblem(
  context: RoofCheckContext,
  member: { readonly id: string; readonly label: string; readonly stick: unknown },
): Verdict | null {
  if (member.stick === null) return notGiven(message('memberNotGiven', { member: member.label }));
  const missing = context.weights.missing.get(member.id);
  return missing ? notGiven(missing) : null;
}

/** Why the stick of a member cannot be judged whole: a cut that the checks of the roof do not see. */
export function handCut(context: RoofCheckContext, member: { readonly id: string; readonly label: string }) {
  return context.project.cuts.some((cut) => cut.member === member.id)
    ? outside(message('handCutOnRoof', { member: member.label }))
    : null;
}
