import { RULES, type RuleId } from '../../data/rules.ts';
import { JOINT_NAMES } from '../../data/words/sheet.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import { isWorse } from '../../engine/check.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import { capacityOf } from '../../engine/project/joint-capacity.ts';
import type { Capacity, JointKind, Project } from '../../engine/project/model.ts';
import type { Quantity } from '../../engine/units.ts';
import { showAmount, showQuantity, showRatio, showUnit } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { groupBy } from './group-by.ts';
import type { PieceNames } from './piece-names.ts';
import type { PlainRow, PlainTable } from './sheet-table.ts';

const rafterJoint = ({ place }: CheckRow, project: Project): JointKind =>
  project.supportLines.find((l) => l.id === place.name)?.kind === 'ledger' ? 'rafterLedger' : 'rafterStrip';

/** The joint that a rule asks, by its row: a rafter on a ledger is another joint than one on a strip. */
const JOINT_OF: Readonly<Partial<Record<RuleId, (row: CheckRow, project: Project) => JointKind>>> = {
  'sheet.uplift': ({ memberId }, project) =>
    project.roofPlanes.find((p) => p.id === memberId)?.sheetOn === 'rafters' ? 'sheetRafter' : 'sheetPurlin',
  'purlin.tie': () => 'purlinRafter',
  'rafter.tie': rafterJoint,
  'rafter.tieAcross': rafterJoint,
  'rafter.tieTogether': rafterJoint,
  'ledger.fixing': () => 'ledgerWall',
  'strip.tie': () => 'stripBeam',
  'strip.across': () => 'stripBeam',
  'strip.together': () => 'stripBeam',
  'beam.tie': () => 'beamPost',
  'beam.tieAlong': () => 'beamPost',
  'beam.tieAcross': () => 'beamPost',
  'beam.tieTogether': () => 'beamPost',
  'beam.splice': () => 'beamSplice',
  'brace.tie': ({ place }) => (place.name === 'braceTop' ? 'braceTop' : 'bracePost'),
  'post.foot': () => 'postFoot',
  'post.footAlong': () => 'postFoot',
  'post.footTogether': () => 'postFoot',
};
const SIDEWAYS: ReadonlySet<RuleId> = new Set([
  'rafter.tieAcross',
  'strip.across',
  'beam.tieAlong',
  'beam.tieAcross',
  'post.footAlong',
]);
/** Shares of several directions: they decide the ratio of the row, but are no force that a column could show. */
const TOGETHER: ReadonlySet<RuleId> = new Set([
  'rafter.tieTogether',
  'strip.together',
  'beam.tieTogether',
  'post.footTogether',
]);

export const isJointRule = (ruleId: RuleId): boolean => ruleId in JOINT_OF;

interface JointRow {
  readonly plain: PlainRow;
  readonly worst: CheckRow;
}

/** Every kind of joint, once for all that are held alike: what pulls it, what pushes it sideways, what it is said to hold. Worst first. */
export function jointRows(
  project: Project,
  evaluation: Evaluation,
  names: PieceNames,
  system: UnitSystem,
): readonly JointRow[] {
  const asked = evaluation.checks.flatMap((row) => {
    const kind = JOINT_OF[row.ruleId]?.(row, project);
    return kind ? [{ row, joint: JOINT_NAMES[kind], holds: holdsWords(saidOf(project, kind, row)) }] : [];
  });
  return groupBy(asked, ({ joint, holds }) => `${joint}|${holds}`)
    .map((alike) => {
      const { joint, holds } = alike[0]!;
      const rows = alike.map((a) => a.row);
      const worst = worstOf(rows)!;
      const pull = worstOf(rows.filter((r) => !SIDEWAYS.has(r.ruleId) && !TOGETHER.has(r.ruleId)));
      const sideways = worstOf(rows.filter((r) => SIDEWAYS.has(r.ruleId)));
      const cells = [
        joint,
        names.inShort(rows.map((r) => r.memberId)),
        holds,
        ...pair(pull, system),
        ...pair(sideways, system),
        worst.ratio === null ? '' : showRatio(worst.ratio),
        STATUS_WORDS[worst.status],
      ];
      return { plain: { cells, checkKey: worst.key }, worst };
    })
    .toSorted((a, b) => (isWorse(a.worst, b.worst) ? -1 : isWorse(b.worst, a.worst) ? 1 : 0));
}

export function jointTable(rows: readonly JointRow[], system: UnitSystem): PlainTable {
  const force = showUnit('lb', system);
  return {
    caption: `Joints: what they must hold and what they hold, ${force}`,
    columns: [
      { head: 'joint', share: 90 },
      { head: 'of', share: 76, lines: 2 },
      { head: 'what holds it', share: 126 },
      { head: 'pull', align: 'right' },
      { head: 'holds', align: 'right' },
      { head: 'sideways', align: 'right' },
      { head: 'holds', align: 'right' },
      { head: 'ratio', align: 'right' },
      { head: 'status', strong: true },
    ],
    rows: rows.map((r) => r.plain),
    further: (left) => `${left} further joints on screen.`,
  };
}

const worstOf = (rows: readonly CheckRow[]): CheckRow | undefined =>
  rows.length === 0 ? undefined : rows.reduce((a, b) => (isWorse(b, a) ? b : a));

function pair(row: CheckRow | undefined, system: UnitSystem): readonly [string, string] {
  const shown = (q: Quantity | null): string =>
    q === null ? '' : q.unit === 'lb' ? showAmount(q, system) : showQuantity(q, system);
  return row ? [shown(row.demand), shown(row.capacity)] : ['', ''];
}

/** What the file says of a row's joint: of this one, or of its kind. */
function saidOf(project: Project, kind: JointKind, { memberId, place }: CheckRow): Capacity {
  const key = `${kind}/${memberId}`;
  const own = project.joints.own.find((j) => j.key === key || j.key === `${key}/${place.name}`);
  return capacityOf(project, kind, own?.key ?? key);
}

function holdsWords(capacity: Capacity): string {
  if (capacity === null) return STATUS_WORDS.notGiven;
  switch (capacity.kind) {
    case 'none':
      return 'contact only, as said';
    case 'fasteners':
      return 'fasteners written down, not computed yet';
    case 'rated':
      return `rated: ${capacity.label}`;
  }
}

/** Pier checks have a table of their own beside the reactions. */
export const isPierRule = (ruleId: RuleId): boolean => RULES[ruleId].link === 'pier';
