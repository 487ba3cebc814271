import { JOINT_NAMES, SHEET_WORDS } from '../../data/words/sheet.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import { isWorse } from '../../engine/check.ts';
import { demandsOf, togetherOf, togetherRules } from '../../engine/checks/joints/joint-demands.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { jointsOf } from '../../engine/checks/joints/joints.ts';
import type { JointPart } from '../../engine/checks/joints/rated.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import { capacityOf } from '../../engine/project/joint-capacity.ts';
import type { Project } from '../../engine/project/model.ts';
import { showRatio, showUnit } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { clauseWords } from './check-words.ts';
import { groupBy } from './group-by.ts';
import { heldBy } from './held-by.ts';
import { askedCell, ledgerWords } from './joint-cells.ts';
import { isJointRule } from './joint-rules.ts';
import type { PieceNames } from './piece-names.ts';
import { leftOut, type PlainRow, type PlainTable } from './sheet-table.ts';

/** Alike joints that are held alike, with every row that asks them. */
interface AlikeJoints {
  /** the first of them */
  readonly joint: JointSetting;
  readonly upperIds: readonly string[];
  readonly held: string;
  readonly ways: Readonly<Record<JointPart, CheckRow | null>>;
  readonly worst: CheckRow;
}

/** Every kind of joint, once for all that are held alike: what asks it in each direction and what it holds. Worst first. */
export function jointRows(
  project: Project,
  evaluation: Evaluation,
  names: PieceNames,
  system: UnitSystem,
): readonly PlainRow[] {
  return alikeJoints(project, evaluation, system).map((alike) => {
    const { joint, upperIds, held, ways, worst } = alike;
    return {
      cells: [
        `${JOINT_NAMES[joint.kind]}, ${names.inShort(upperIds)}: ${held}${ledgerWords(project, joint, evaluation.ledgers, system)}`,
        pullOrPush(ways, evaluation, system),
        askedCell(ways.along, 'along', evaluation, system),
        askedCell(ways.across, 'across', evaluation, system),
        worst.ratio === null ? '' : showRatio(worst.ratio),
        togetherRules(joint.kind).includes(worst.ruleId)
          ? `${SHEET_WORDS.together}: ${clauseWords(worst)}`
          : clauseWords(worst),
        STATUS_WORDS[worst.status],
      ],
      checkKey: worst.key,
    };
  });
}

/** Pull, or push where that is harder: then the cell says so. */
function pullOrPush({ pull, push }: AlikeJoints['ways'], evaluation: Evaluation, system: UnitSystem): string {
  if (!isWorseWay(push, pull)) return askedCell(pull, 'pull', evaluation, system);
  const cell = askedCell(push, 'push', evaluation, system);
  return cell === '' ? cell : `${cell} ${SHEET_WORDS.pushed}`;
}

export function jointTable(rows: readonly PlainRow[], system: UnitSystem): PlainTable {
  const force = showUnit('lb', system);
  return {
    caption: 'Joints: what is asked of each, of what it holds; the hardest of alike ones',
    columns: [
      { head: 'joint: what holds it', share: 250, lines: 6 },
      { head: `pull, ${force}`, align: 'right' },
      { head: `along, ${force}`, align: 'right' },
      { head: `across, ${force}`, align: 'right' },
      { head: 'ratio', align: 'right' },
      { head: 'clause', share: 98, lines: 3 },
      { head: 'status', strong: true },
    ],
    rows,
    further: (left) => leftOut(left, 'joint'),
  };
}

function alikeJoints(project: Project, evaluation: Evaluation, system: UnitSystem): readonly AlikeJoints[] {
  const asked = evaluation.checks.filter(({ ruleId }) => isJointRule(ruleId));
  const told = jointsOf(project, evaluation.shelter).map((joint) => ({
    joint,
    capacity: capacityOf(project, joint.kind, joint.key),
    ways: waysOf(joint, asked, evaluation),
    together: togetherOf(joint, asked),
  }));
  return groupBy(told, ({ joint, capacity }) => `${JOINT_NAMES[joint.kind]}|${JSON.stringify(capacity)}`)
    .flatMap((alike): readonly AlikeJoints[] => {
      const way = (part: JointPart): CheckRow | null => worstOf(alike.map(({ ways }) => ways[part]));
      const ways = { push: way('push'), pull: way('pull'), along: way('along'), across: way('across') };
      const worst = worstOf([...Object.values(ways), ...alike.flatMap(({ together }) => together)]);
      const [first] = alike;
      if (!worst || !first) return [];
      const upperIds = [...new Set(alike.map(({ joint }) => joint.upper.id))];
      const held = heldBy(
        alike.map(({ joint }) => joint),
        first.capacity,
        evaluation.shelter,
        system,
      );
      return [{ joint: first.joint, upperIds, held, ways, worst }];
    })
    .toSorted((a, b) => (isWorse(a.worst, b.worst) ? -1 : isWorse(b.worst, a.worst) ? 1 : 0));
}

/** What asks the hardware of a joint in each direction; contact alone is not asked here. */
function waysOf(joint: JointSetting, asked: readonly CheckRow[], { lines }: Evaluation): AlikeJoints['ways'] {
  const demands = demandsOf(joint, { checks: asked, lines });
  const way = (part: JointPart): CheckRow | null => {
    const demand = demands[part];
    return demand.asked ? demand.row : null;
  };
  return { push: way('push'), pull: way('pull'), along: way('along'), across: way('across') };
}

const isWorseWay = (a: CheckRow | null, b: CheckRow | null): boolean => a !== null && (b === null || isWorse(a, b));

const worstOf = (rows: readonly (CheckRow | null)[]): CheckRow | null =>
  rows.reduce((a, b) => (isWorseWay(b, a) ? b : a), null);
