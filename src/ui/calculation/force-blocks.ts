import { CALCULATION_WORDS } from '../../data/words/calculation.ts';
import { MODEL_WORDS } from '../../engine/checks/frame-rows.ts';
import type { Evaluation, LineReport, MemberEnvelope, PostReactions } from '../../engine/evaluation.ts';
import { quantity, type Unit } from '../../engine/units.ts';
import { combinationInWords } from '../cord/combination.ts';
import type { PieceNames } from '../sheet/piece-names.ts';
import { showLength } from '../units/show-length.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { ledgerTable } from './ledger-table.ts';
import { line, text, type Block, type Cell, type Row } from '../paper/blocks.ts';

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

function memberTable({ members, braces }: LineReport, name: string, { names, system }: ForcePart): Block {
  const extreme = (envelope: MemberEnvelope, values: readonly number[], unit: Unit, most: boolean): Cell => {
    const at = values.reduce((best, v, i) => (most === v > values[best]! ? i : best), 0);
    return [
      { text: showQuantity(quantity(values[at] ?? 0, unit), system) },
      { text: `at ${showLength(envelope.atIn[at] ?? 0, system, { style: 'marks' })}`, tone: 'quiet' },
    ];
  };
  const axial = (lb: number): Cell => line(showQuantity(quantity(lb, 'lb'), system));
  return {
    kind: 'table',
    label: `Greatest forces of the members of ${name}`,
    columns: [
      { head: 'member', share: 64 },
      { head: 'N, most', share: 78, align: 'right' },
      { head: 'N, least', share: 78, align: 'right' },
      { head: 'V, most', share: 78, align: 'right' },
      { head: 'V, least', share: 78, align: 'right' },
      { head: 'M, most', share: 82, align: 'right' },
      { head: 'M, least', share: 82, align: 'right' },
    ],
    rows: [
      ...members.map((m): Row => ({
        cells: [
          line(names.nameOf(m.memberId)),
          extreme(m, m.axialMaxLb, 'lb', true),
          extreme(m, m.axialMinLb, 'lb', false),
          extreme(m, m.shearMaxLb, 'lb', true),
          extreme(m, m.shearMinLb, 'lb', false),
          extreme(m, m.momentMaxLbIn, 'lb·in', true),
          extreme(m, m.momentMinLbIn, 'lb·in', false),
        ],
      })),
      ...braces.map((b): Row => ({
        cells: [
          line(names.nameOf(b.braceId)),
          axial(b.greatestPullLb),
          axial(-b.greatestPushLb),
          ...Array.from({ length: 4 }, () => line('')),
        ],
      })),
    ],
  };
}

function reactionTable({ posts }: LineReport, name: string, part: ForcePart): Block {
  return {
    kind: 'table',
    label: `Reactions of ${name}. ${CALCULATION_WORDS.reactions}`,
    columns: [
      { head: 'post', share: 60 },
      { head: 'reaction', share: 60 },
      { head: 'greatest', share: 80, align: 'right' },
      { head: 'in', share: 340 },
    ],
    rows: posts.flatMap((post) => reactionRows(post, part)),
  };
}

const KINDS = [
  ['down', 'verticalLb', 1, 'greatestDownLb'],
  ['up', 'verticalLb', -1, 'greatestUpLb'],
  ['along', 'alongLb', 0, 'greatestAlongLb'],
] as const;

function reactionRows(post: PostReactions, { evaluation, names, system }: ForcePart): readonly Row[] {
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
        line(words),
        line(showQuantity(quantity(most, 'lb'), system), 'strong'),
        line(from ? combinationInWords(evaluation.loads, { combinationId, scenario }) : ''),
      ],
    };
  });
}
