import type { RafterGeometry, SawnStick } from '../../geometry/shelter.ts';
import { stickOf } from '../../geometry/sticks.ts';
import { sawnValues } from '../../material/sawn-values.ts';
import type { DesignValues } from '../../material/values.ts';
import { capacityOf, jointKey } from '../../project/joint-capacity.ts';
import type { Capacity, JointKind, Project, SupportLine } from '../../project/model.ts';
import { weakestHolder, type Holder, type JointSource } from '../joints/holder.ts';
import type { RoofCheckContext } from './context.ts';

/** What a rafter rests on at a line: the sawn strip or ledger, or else the beam itself. */
export interface Bearer {
  readonly line: SupportLine;
  /** breadth of the strip or ledger; null where nothing sawn lies there [in] */
  readonly breadthIn: number | null;
  /** nobody has said what the ledger is */
  readonly isMissing: boolean;
  /** values across the grain of what lies under the rafter; null where none are known */
  readonly values: DesignValues | null;
}

export function bearerOn(context: JointSource, lineId: string): Bearer {
  const line = context.project.supportLines.find((l) => l.id === lineId)!;
  const stick = sawnBearer(context.project, line);
  if (stick) {
    const answer = sawnValues(stick);
    return { line, isMissing: false, breadthIn: stick.breadthIn, values: answer.ok ? answer.values : null };
  }
  const isMissing = line.kind === 'ledger' && line.stock === null;
  const beams = context.shelter.beams.filter((b) => b.line === lineId).map((b) => context.valuesOf(b.id));
  const known = beams.flatMap((answer) => (answer.ok ? [answer.values] : []));
  const weakest = known.sort((a, b) => a.FcPerpPsi - b.FcPerpPsi)[0] ?? null;
  return { line, isMissing, breadthIn: null, values: weakest };
}

/** The strip of a frame line or the ledger itself, where it is sawn. */
function sawnBearer(project: Project, line: SupportLine): SawnStick | null {
  const stock = line.kind === 'ledger' ? line.stock : (line.strip?.stock ?? null);
  const stick = stickOf(project, stock, 1);
  return stick?.kind === 'sawn' ? stick : null;
}

/** Kind and key of the joint of a rafter on a line. */
function rafterJoint(rafter: RafterGeometry, line: SupportLine): readonly [JointKind, string] {
  const kind = line.kind === 'ledger' ? 'rafterLedger' : 'rafterStrip';
  return [kind, jointKey(kind, rafter.id, line.id)];
}

/** What is said of the tie of a rafter to a line. */
export const rafterTieCapacity = (context: RoofCheckContext, rafter: RafterGeometry, line: SupportLine): Capacity =>
  capacityOf(context.project, ...rafterJoint(rafter, line));

/** What holds a rafter to a line: of all rafters of its slope that are held alike there, the weakest. */
export function rafterTieHolder(context: JointSource, rafter: RafterGeometry, line: SupportLine): Holder {
  const [kind, key] = rafterJoint(rafter, line);
  const own = new Set(context.project.joints.own.map((joint) => joint.key));
  const alike = context.shelter.rafters
    .filter((r) => r.plane === rafter.plane)
    .map((r) => rafterJoint(r, line)[1])
    .filter((other) => !own.has(other));
  return weakestHolder(context, kind, own.has(key) ? [key] : alike);
}
