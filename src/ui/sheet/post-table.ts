import { STATUS_WORDS } from '../../data/words/status.ts';
import { RULES } from '../../data/rules.ts';
import { isWorse } from '../../engine/check.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { PostGeometry } from '../../engine/geometry/shelter.ts';
import { quantity } from '../../engine/units.ts';
import { showLength } from '../units/show-length.ts';
import { showAmount, showQuantity, showRatio, showUnit } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { groupBy } from './group-by.ts';
import { isPierRule } from './joint-table.ts';
import { postsInShort, type PieceNames } from './piece-names.ts';
import type { PlainRow, PlainTable } from './sheet-table.ts';

/** Forces that alike posts bring to their piers, worst combination of each, and the worst check of those piers. */
export function postTable(evaluation: Evaluation, names: PieceNames, system: UnitSystem): PlainTable {
  const { posts } = evaluation.shelter;
  const alike = groupBy(posts, (post) => `${names.pieceOf(post.id).key}|${footWords(post, system)}`);
  const force = showUnit('lb', system);
  return {
    caption: `Reactions and piers, worst of each, ${force}`,
    columns: [
      { head: 'at', share: 66, lines: 2 },
      { head: 'down', align: 'right' },
      { head: 'up', align: 'right' },
      { head: 'along', align: 'right' },
      { head: 'pier', share: 106 },
      { head: 'ratio', align: 'right' },
    ],
    rows: alike.map((group) => postRow(evaluation, group, names, system)),
    further: (left) => `${left} further groups of posts on screen.`,
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
  const most = (of: (p: (typeof reactions)[number]) => number): string =>
    reactions.length === 0 ? STATUS_WORDS.notGiven : showAmount(quantity(Math.max(...reactions.map(of)), 'lb'), system);
  const checks = evaluation.checks.filter((c) => isPierRule(c.ruleId) && ids.has(c.memberId));
  const worst = checks.length === 0 ? null : checks.reduce((a, b) => (isWorse(b, a) ? b : a));
  return {
    cells: [
      postsInShort(group),
      most((p) => p.greatestDownLb),
      most((p) => p.greatestUpLb),
      most((p) => p.greatestAlongLb),
      footWords(group[0]!, system),
      worst === null || worst.ratio === null ? '' : showRatio(worst.ratio),
    ],
    ...(worst ? { below: `Worst of its pier: ${pierWords(worst, names, system)}`, checkKey: worst.key } : {}),
  };
}

function pierWords(row: CheckRow, names: PieceNames, system: UnitSystem): string {
  const words = RULES[row.ruleId].words.toLowerCase();
  if (row.ratio !== null && row.demand && row.capacity)
    return `${words}, ${showQuantity(row.demand, system)} of ${showQuantity(row.capacity, system)}: ${STATUS_WORDS[row.status]}`;
  return `${words}: ${STATUS_WORDS[row.status]}${row.reason ? `. ${names.sayOf(row.reason)}` : ''}`;
}

function footWords({ foot }: PostGeometry, system: UnitSystem): string {
  const length = (inches: number): string => showLength(inches, system, { style: 'marks' });
  if (foot.kind === 'embedded') return `in the ground ${length(foot.depthIn)}, hole ${length(foot.holeIn)}`;
  const { shaft, pad } = foot;
  const across = showLength(shaft.acrossIn, system, { style: 'marks', feetFrom: 'never' });
  const padWords = pad ? `, pad ${length(pad.acrossIn)}` : '';
  return `${across} ${shaft.shape}, ${length(shaft.lengthIn)} long${padWords}`;
}
