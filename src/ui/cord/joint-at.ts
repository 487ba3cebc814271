import { demandsOf, togetherOf, type JointDemands } from '../../engine/checks/joints/joint-demands.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { jointsOf } from '../../engine/checks/joints/joints.ts';
import type { JointPart } from '../../engine/checks/joints/rated.ts';
import { isWorse } from '../../engine/check.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { JointKind, Project } from '../../engine/project/model.ts';

/** As they are told: what hardware answers for first, contact last. */
export const PARTS: readonly JointPart[] = ['pull', 'along', 'across', 'push'];

/** What is asked of a joint, or of the hardest of several in each direction. */
export interface AskedJoint {
  /** the one whose worst row is the worst of all */
  readonly setting: JointSetting;
  readonly demands: JointDemands;
  /** in several directions at once: of each rule that asks so the hardest row */
  readonly together: readonly CheckRow[];
  readonly worst: CheckRow | null;
}

const known = new WeakMap<Evaluation, readonly JointSetting[]>();

/** The joints of a kind, or those of them under one upper piece. */
export function jointsHere(
  project: Project,
  evaluation: Evaluation,
  kind: JointKind,
  upperId?: string,
): readonly JointSetting[] {
  const all = known.get(evaluation) ?? jointsOf(project, evaluation.shelter);
  known.set(evaluation, all);
  return all.filter((joint) => joint.kind === kind && (upperId === undefined || joint.upper.id === upperId));
}

/** Of alike joints the hardest row of each direction; null without a joint. */
export function askedOf(joints: readonly JointSetting[], evaluation: Evaluation): AskedJoint | null {
  return joints
    .map((setting): AskedJoint => {
      const demands = demandsOf(setting, evaluation);
      const together = hardestOfEach(togetherOf(setting, evaluation.checks));
      return { setting, demands, together, worst: worstOf(demands, together) };
    })
    .reduce<AskedJoint | null>((so, one) => (so === null ? one : harder(so, one)), null);
}

function harder(a: AskedJoint, b: AskedJoint): AskedJoint {
  const hardest = isHarder(b.worst, a.worst) ? b : a;
  const part = (name: JointPart): JointDemands[JointPart] =>
    isHarder(rowAt(b.demands, name), rowAt(a.demands, name)) ? b.demands[name] : a.demands[name];
  return {
    setting: hardest.setting,
    worst: hardest.worst,
    together: hardestOfEach([...a.together, ...b.together]),
    demands: { push: part('push'), pull: part('pull'), along: part('along'), across: part('across') },
  };
}

const rowAt = (demands: JointDemands, part: JointPart): CheckRow | null => {
  const demand = demands[part];
  return demand.asked ? demand.row : null;
};

const isHarder = (a: CheckRow | null, b: CheckRow | null): boolean => a !== null && (b === null || isWorse(a, b));

const hardestOf = (rows: readonly (CheckRow | null)[]): CheckRow | null =>
  rows.reduce((a, b) => (isHarder(b, a) ? b : a), null);

const worstOf = (demands: JointDemands, together: readonly CheckRow[]): CheckRow | null =>
  hardestOf([...PARTS.map((part) => rowAt(demands, part)), ...together]);

const hardestOfEach = (rows: readonly CheckRow[]): readonly CheckRow[] =>
  [...new Set(rows.map(({ ruleId }) => ruleId))].flatMap(
    (rule) => hardestOf(rows.filter(({ ruleId }) => ruleId === rule)) ?? [],
  );
