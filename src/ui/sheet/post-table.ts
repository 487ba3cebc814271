import { RULES } from '../../data/rules.ts';
import { PIER_WORDS, SHEET_WORDS } from '../../data/words/sheet.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import { isWorse } from '../../engine/check.ts';
import { bagsFor, concreteVolume, postAreaInGround } from '../../engine/checks/ground/concrete.ts';
import type { CheckRow, Evaluation, PostReactions } from '../../engine/evaluation.ts';
import type { PostGeometry } from '../../engine/geometry/shelter.ts';
import { quantity } from '../../engine/units.ts';
import { lowerCase } from '../cord/letter-case.ts';
import { showLength } from '../units/show-length.ts';
import { showAmount, showQuantity, showRatio, showUnit } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { groupBy } from './group-by.ts';
import { isPierRule } from './joint-rules.ts';
import { postsInShort, type PieceNames } from './piece-names.ts';
import { leftOut, type PlainRow, type PlainTable } from './sheet-table.ts';

/** Forces that alike posts bring to their piers, worst combination of each; what those piers are and what they are asked. */
export function postTable(evaluation: Evaluation, names: PieceNames, system: UnitSystem): PlainTable {
  const { posts } = evaluation.shelter;
  const alike = groupBy(posts, (post) => `${names.pieceOf(post.id).key}|${footWords(post, system)}`);
  const force = showUnit('lb', system);
  return {
    caption: 'Reactions, uplift and piers, the worst of each',
    columns: [
      { head: 'at', share: 60, lines: 2 },
      { head: `down, ${force}`, align: 'right' },
      { head: `up, ${force}`, align: 'right' },
      { head: `along, ${force}`, align: 'right' },
      { head: `across, ${force}`, align: 'right' },
      { head: 'ratio', align: 'right' },
      { head: 'status', strong: true },
    ],
    rows: alike.map((group) => postRow(evaluation, group, names, system)),
    further: (left) => leftOut(left, 'group', ' of posts'),
  };
}

function postRow(
  evaluation: Evaluation,
  group: readonly PostGeometry[],
  names: PieceNames,
  system: UnitSystem,
): PlainRow {
  const ids = new Set(group.map((p) => p.id));
  const reactions = evaluation.lines.flatMap((l) => l.posts).filter((p) => ids.has(p.postId));
  const checks = evaluation.checks.filter((c) => isPierRule(c.ruleId) && ids.has(c.memberId));
  const worst = checks.length === 0 ? null : worstOf(checks);
  const most = (of: (p: PostReactions) => number | null): string => greatest(reactions.map(of), system);
  return {
    cells: [
      postsInShort(group),
      most((p) => p.greatestDownLb),
      most((p) => p.greatestUpLb),
      most((p) => p.greatestAlongLb),
      most((p) => p.greatestAcrossLb),
      worst === null || worst.ratio === null ? '' : showRatio(worst.ratio),
      worst === null ? '' : STATUS_WORDS[worst.status],
    ],
    below: [
      ...pierWords(group[0]!, system),
      byRule(checks)
        .map((row) => checkWords(row, row === worst, names, system))
        .join(', '),
    ].join('; '),
    ...(worst ? { checkKey: worst.key } : {}),
  };
}

/** One that nobody knows makes the greatest unknown. */
function greatest(forces: readonly (number | null)[], system: UnitSystem): string {
  const known = forces.filter((lb) => lb !== null);
  if (known.length === 0 || known.length < forces.length) return STATUS_WORDS.notGiven;
  return showAmount(quantity(Math.max(...known), 'lb'), system);
}

const worstOf = (rows: readonly CheckRow[]): CheckRow => rows.reduce((a, b) => (isWorse(b, a) ? b : a));

/** The worst of each rule, worst first: with a ratio or not a pass, each is told. */
const byRule = (checks: readonly CheckRow[]): readonly CheckRow[] =>
  groupBy(checks, ({ ruleId }) => ruleId)
    .map(worstOf)
    .filter((row) => row.status !== 'pass' || row.ratio !== null)
    .toSorted((a, b) => (isWorse(a, b) ? -1 : isWorse(b, a) ? 1 : 0));

/** `Sliding 0.40`; of the worst its figures too, of what is not judged the reason. */
function checkWords(row: CheckRow, isWorst: boolean, names: PieceNames, system: UnitSystem): string {
  const words = PIER_WORDS[row.ruleId] ?? lowerCase(RULES[row.ruleId].words);
  if (row.ratio === null)
    return `${words} ${STATUS_WORDS[row.status]}${row.reason ? ` (${names.sayOf(row.reason).replace(/\.$/, '')})` : ''}`;
  const figures =
    isWorst && row.demand && row.capacity
      ? ` (${showQuantity(row.demand, system)} of ${showQuantity(row.capacity, system)})`
      : '';
  return `${words} ${showRatio(row.ratio)}${figures}${row.status === 'fail' ? ` ${STATUS_WORDS.fail}` : ''}`;
}

/** The pier, and how much concrete it takes. */
function pierWords(post: PostGeometry, system: UnitSystem): readonly string[] {
  const ft3 = concreteVolume(post.foot, postAreaInGround(post.stick));
  if (ft3 === 0) return [footWords(post, system)];
  const bags = bagsFor(ft3)
    .map(({ lb, count }) => `${count} × ${lb} lb`)
    .join(' or ');
  const volume = showQuantity(quantity(ft3, 'ft3'), system);
  return [footWords(post, system), `${SHEET_WORDS.concreteEach} ${volume}, ${bags} ${SHEET_WORDS.bags}`];
}

function footWords({ foot }: PostGeometry, system: UnitSystem): string {
  const length = (inches: number): string => showLength(inches, system, { style: 'marks' });
  if (foot.kind === 'embedded') return `in the ground ${length(foot.depthIn)}, hole ${length(foot.holeIn)}`;
  const { shaft, pad } = foot;
  const across = showLength(shaft.acrossIn, system, { style: 'marks', feetFrom: 'never' });
  const padWords = pad ? `, pad ${length(pad.acrossIn)} by ${length(pad.thickIn)} thick` : '';
  return `${across} ${shaft.shape} pier, ${length(shaft.lengthIn)} long${padWords}`;
}
