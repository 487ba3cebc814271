import { assemble, type Assembled } from './assemble.ts';
import { woodOf } from './checks/joints/fastened/wood-of-piece.ts';
import { demandsOf } from './checks/joints/joint-demands.ts';
import { likenessOf, type JointSetting } from './checks/joints/joint-setting.ts';
import { jointsOf } from './checks/joints/joints.ts';
import { proposeHardware, type AskedAtOnce, type JointCase, type Proposal } from './checks/joints/propose/propose.ts';
import type { JointPart } from './checks/joints/rated.ts';
import type { AskedOf } from './checks/check-source.ts';
import { guarded } from './guarded.ts';
import { message } from './message.ts';
import { capacityOf } from './project/joint-capacity.ts';
import type { Capacity, FastenerRow, JointKind, Project } from './project/model.ts';

/**
 * Hardware for all joints of a kind, or for the one of a key, from computed fasteners alone; where only a rated part would do,
 * the reason. Braces are asked as if their joints held whatever pulls them, as they will once they have hardware.
 */
export function proposeFor(project: Project, kind: JointKind, key?: string): Proposal {
  const answer = guarded<Proposal>(() => {
    const assembled = assemble(pulledAsGiven(project));
    if ('faults' in assembled)
      return { ok: false, reason: assembled.faults[0] ?? message('engineFault', { detail: '' }) };
    const joints = jointsOf(project, assembled.shelter).filter(
      (joint) => joint.kind === kind && (key === undefined || joint.key === key),
    );
    const cases = unlike(joints.map(caseIn(assembled)));
    if (cases.length === 0) return { ok: false, reason: message('noSuchJoint') };
    return proposeHardware(cases, sheetOf(capacityOf(project, kind, key ?? joints[0]!.key)));
  });
  if (answer.ok || 'reason' in answer) return answer;
  return { ok: false, reason: answer.faults[0] ?? message('engineFault', { detail: '' }) };
}

/** More than anything pulls: only whether a brace may pull is read of it [lb]. */
const WHATEVER_LB = 1_000_000;

/** The same shelter with a pull capacity at every brace. */
function pulledAsGiven(project: Project): Project {
  const capacity = {
    kind: 'rated',
    label: '',
    parts: { pushLb: null, pullLb: WHATEVER_LB, alongLb: WHATEVER_LB, acrossLb: WHATEVER_LB },
    durationIncluded: 0.9,
  } as const satisfies Capacity;
  const isBrace = (text: string): boolean => text.startsWith('brace');
  return {
    ...project,
    joints: {
      defaults: [
        ...project.joints.defaults.filter(({ kind }) => !isBrace(kind)),
        { kind: 'bracePost', capacity },
        { kind: 'braceTop', capacity },
      ],
      own: project.joints.own.filter((own) => !isBrace(own.key)),
    },
  };
}

/** The sheet that a capacity is written for. */
const sheetOf = (capacity: Capacity): FastenerRow['plate'] | null =>
  capacity?.kind === 'fasteners' ? (capacity.rows.find((row) => row.plate)?.plate ?? null) : null;

const PARTS = ['pull', 'along', 'across'] as const satisfies readonly JointPart[];

function caseIn(assembled: Assembled): (setting: JointSetting) => JointCase {
  const source = { project: assembled.project, valuesOf: assembled.materials.of };
  const checks = assembled.sources.flatMap((s) => s.rows());
  const lines = assembled.lines.map((l) => l.report);
  return (setting) => {
    const demands = demandsOf(setting, { checks, lines });
    const rows = PARTS.flatMap((part) => {
      const demand = demands[part];
      return demand.asked ? [{ part, key: demand.row.key }] : [];
    });
    return {
      setting,
      woods: { upper: woodOf(source, setting.upper), lower: woodOf(source, setting.lower) },
      asked: askedAtOnce(assembled, rows),
    };
  };
}

/** Bearing of wood on wood is no question of hardware. */
const isForce = ({ unit }: AskedOf): boolean => unit === 'lb' || unit === 'lb/ft';

/** What each combination asks in all directions: the greatest of each, together or not (safe side). */
function askedAtOnce(
  { sources }: Assembled,
  rows: readonly { readonly part: JointPart; readonly key: string }[],
): readonly AskedAtOnce[] {
  const byCombination = new Map<string, { CD: number; forces: { part: JointPart; lb: number }[] }>();
  for (const { part, key } of rows) {
    for (const source of sources) {
      const asked = source.asked?.(key);
      for (const { id, durationFactor, demand } of asked && isForce(asked) ? asked.combinations : []) {
        const found = byCombination.get(id) ?? { CD: durationFactor, forces: [] };
        byCombination.set(id, found);
        found.forces.push({ part, lb: demand });
      }
    }
  }
  return hardest([...byCombination.values()]);
}

/** Combinations of which no other asks as much or more in every direction, for as long. */
const hardest = (asked: readonly AskedAtOnce[]): readonly AskedAtOnce[] =>
  asked.filter(
    (one, i) =>
      !asked.some(
        (other, j) => i !== j && other.CD === one.CD && isUnder(one, other) && (j < i || !isUnder(other, one)),
      ),
  );

const isUnder = (one: AskedAtOnce, other: AskedAtOnce): boolean =>
  one.forces.every(({ part, lb }) => (other.forces.find((f) => f.part === part)?.lb ?? 0) >= lb);

/** Joints that differ in their sticks or in what is asked of them. */
function unlike(cases: readonly JointCase[]): readonly JointCase[] {
  const seen = new Set<string>();
  return cases.filter(({ setting, asked }) => {
    const likeness = likenessOf(setting) + JSON.stringify(asked);
    if (seen.has(likeness)) return false;
    seen.add(likeness);
    return true;
  });
}
