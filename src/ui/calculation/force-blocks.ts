import { CALCULATION_WORDS } from '../../data/words/calculation.ts';
import { MODEL_WORDS } from '../../engine/checks/frame-rows.ts';
import type { Evaluation, LineReport, PostReactions } from '../../engine/evaluation.ts';
import { quantity } from '../../engine/units.ts';
import { combinationInWords } from '../cord/combination.ts';
import type { PieceNames } from '../sheet/piece-names.ts';
import { showLength } from '../units/show-length.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { ledgerTable } from './ledger-table.ts';
import { line, text, type Block, type Row } from '../paper/blocks.ts';

interface ForcePart {
  readonly evaluation: Evaluation;
  readonly names: PieceNames;
  readonly system: UnitSystem;
}

/** Line by line: the greatest force of each kind in every member, and what each post brings to its foot. */
export function forceBlocks(part: ForcePart): readonly Block[] {
  const { evaluation, names, system } = part;
  return [
    text(CALCULATION_WORDS.rafterForces, { leads: true }),
    ...evaluation.lines.flatMap((report): readonly Block[] => {
      const { name, heading } = headed(report.lineId, names);
      if (report.posts.length === 0)
        return [heading, text(report.reason ? names.sayOf(report.reason) : CALCULATION_WORDS.noSteps)];
      return [heading, memberTable(report, name, part), reactionTable(report, name, part)];
    }),
    ...evaluation.rows.flatMap(({ rowId, label, frame }): readonly Block[] => {
      if (!frame) return [];
      const heading: Block = { kind: 'heading', id: `forces-${rowId}`, level: 4, words: `Forces, ${label}` };
      return [heading, memberTable(frame, label, part), reactionTable(frame, label, part, 'across')];
    }),
    ...evaluation.ledgers.flatMap((report): readonly Block[] => {
      const { name, heading } = headed(report.lineId, names);
      const forces = report.forces.length === 0 ? [] : [ledgerTable(report, name, evaluation.loads, system)];
      return [heading, ...forces, ...(report.reason ? [text(names.sayOf(report.reason))] : [])];
    }),
  ];
}

function headed(lineId: string, names: PieceNames): { readonly name: string; readonly heading: Block } {
  const name = names.nameOf(lineId);
  return { name, heading: { kind: 'heading', id: `forces-${lineId}`, level: 4, words: `Forces, ${name}` } };
}

const FORCES = {
  axial: { letter: 'N', unit: 'lb' },
  shear: { letter: 'V', unit: 'lb' },
  moment: { letter: 'M', unit: 'lb·in' },
} as const;

function memberTable({ extremes = [] }: LineReport, name: string, { evaluation, names, system }: ForcePart): Block {
  return {
    kind: 'table',
    label: `Greatest forces of the members of ${name}`,
    columns: [
      { head: 'member', share: 90 },
      { head: 'force', share: 44 },
      { head: 'greatest', share: 76, align: 'right' },
      { head: 'at', share: 56, align: 'right' },
      { head: 'in', share: 274 },
    ],
    rows: extremes.flatMap(({ memberId, extremes: own }) =>
      own.map(({ force, side, value, atIn, combinationId, scenario }): Row => ({
        cells: [
          line(names.nameOf(memberId)),
          line(`${FORCES[force].letter}, ${side}`),
          line(showQuantity(quantity(value, FORCES[force].unit), system), 'strong'),
          line(atIn === null ? '' : showLength(atIn, system, { style: 'marks' })),
          line(combinationInWords(evaluation.loads, { combinationId, scenario })),
        ],
      })),
    ),
  };
}

/** @param level how the level reaction lies: that of a frame across lies across */
function reactionTable(
  { posts }: LineReport,
  name: string,
  part: ForcePart,
  level: 'along' | 'across' = 'along',
): Block {
  return {
    kind: 'table',
    label: `Reactions of ${name}. ${CALCULATION_WORDS.reactions}`,
    columns: [
      { head: 'post', share: 60 },
      { head: 'reaction', share: 60 },
      { head: 'greatest', share: 80, align: 'right' },
      { head: 'in', share: 340 },
    ],
    rows: posts.flatMap((post) => reactionRows(post, part, level)),
  };
}

const KINDS = [
  ['down', 'verticalLb', 1, 'greatestDownLb'],
  ['up', 'verticalLb', -1, 'greatestUpLb'],
  ['level', 'alongLb', 0, 'greatestAlongLb'],
] as const;

function reactionRows(post: PostReactions, { evaluation, names, system }: ForcePart, level: string): readonly Row[] {
  const label = names.nameOf(post.postId);
  return KINDS.map(([words, part, sign, greatest]) => {
    const most = post[greatest];
    const from = Object.entries(post.byCombination).find(([, reaction]) => {
      const value = reaction[part];
      return most > 0 && (sign === 0 ? Math.abs(value) : sign * value) === most;
    });
    const [combinationId = '', model = ''] = from?.[0].split('|') ?? [];
    const scenario = Object.entries(MODEL_WORDS).find(([id]) => id === model)?.[1] ?? model;
    return {
      cells: [
        line(label),
        line(words === 'level' ? level : words),
        line(showQuantity(quantity(most, 'lb'), system), 'strong'),
        line(from ? combinationInWords(evaluation.loads, { combinationId, scenario }) : ''),
      ],
    };
  });
}
