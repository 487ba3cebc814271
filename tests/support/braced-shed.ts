import type { Member, Project } from '../../src/engine/project/model.ts';
import { plainShed, postId, type Measures } from './plain-shed.ts';

/** What the tests vary on a plain shed of pole rafters whose braces run from posts to rafters. */
interface Braced {
  readonly runIn: number;
  readonly dropIn: number;
  readonly rafterDiametersIn: readonly [butt: number, tip: number];
  readonly seatCutIn: number;
  /** which posts of a line (by number) have a brace to the rafter over them */
  readonly at: readonly number[];
  readonly bracesAt: readonly ('high' | 'low')[];
  /** how far the braced rafters lie beside their posts [in] */
  readonly besideIn: number;
  readonly braceTop: 'coped' | 'housed';
  /** pull of every brace joint [lb]; null where nobody said */
  readonly pullLb: number | null;
  /** pull and level force of everything between rafter and post [lb] */
  readonly tiesLb: number;
}

const BRACED: Braced = {
  runIn: 30,
  dropIn: 36,
  rafterDiametersIn: [8, 7],
  seatCutIn: 1,
  at: [0, 1],
  bracesAt: ['high', 'low'],
  besideIn: 0,
  braceTop: 'coped',
  pullLb: 20_000,
  tiesLb: 20_000,
};

export const bracedRafterId = (k: number): string => `rafter-over-${k}`;
export const rafterBraceId = (k: number, end: 'high' | 'low'): string => `to-rafter-${k}-${end}`;

/** A plain shed of two lines held across by rows of posts with braces to the rafters over them; the high line first. */
export function bracedShed(change: Partial<Braced> = {}, measures: Partial<Measures> = {}): Project {
  const t = { ...BRACED, ...change };
  const postXsIn = measures.postXsIn ?? [0, 144];
  const [highYIn, lowYIn] = measures.lineYsIn ?? [0, 120];
  const falls = lowYIn! > highYIn! ? (['plus', 'minus'] as const) : (['minus', 'plus'] as const);
  const between = [-20, 24, 48, 72, 96, 120, 164];
  const plain = plainShed({ topFlatIn: 1, rafterXsIn: between, ...measures });
  const pole = { id: 'poles', role: 'rafter', seatCutIn: t.seatCutIn, tailEnd: 'plumb', blocked: true } as const;
  const members = t.at.flatMap((k): Member[] => [
    { id: bracedRafterId(k), role: 'rafter', group: 'poles', plane: 'plane', xIn: postXsIn[k]! + t.besideIn },
    ...t.bracesAt.map((end): Member => ({
      id: rafterBraceId(k, end),
      role: 'brace',
      group: 'braces-across',
      post: postId(end === 'high' ? 0 : 1, k),
      to: bracedRafterId(k),
      side: end === 'high' ? falls[0] : falls[1],
    })),
  ]);
  const rated = (lb: number, pullLb: number | null) =>
    ({
      kind: 'rated',
      label: 'bolted strap',
      parts: { pushLb: lb, pullLb, alongLb: lb, acrossLb: lb },
      durationIncluded: 1,
    }) as const;
  const log = { kind: 'log', fromButtIn: 0, buttAt: 'start' } as const;
  return {
    ...plain,
    logs: [
      ...plain.logs,
      {
        ...plain.logs.find((l) => l.id === 'brace-log')!,
        id: 'pole-log',
        stations: [
          { fromButtIn: 0, diameterIn: t.rafterDiametersIn[0] },
          { fromButtIn: 220, diameterIn: t.rafterDiametersIn[1] },
        ],
      },
    ],
    groups: [
      ...plain.groups,
      { ...pole, stock: { ...log, logId: 'pole-log' } },
      {
        id: 'braces-across',
        role: 'brace',
        stock: { ...log, logId: 'brace-log' },
        runIn: t.runIn,
        dropIn: t.dropIn,
        ends: {
          post: { kind: 'housed', depthIn: 1 },
          top: { kind: t.braceTop, depthIn: t.braceTop === 'coped' ? 0 : 1 },
        },
      },
    ],
    members: [...plain.members, ...members],
    joints: {
      ...plain.joints,
      defaults: [
        ...(['bracePost', 'braceTop', 'postFoot'] as const).map((kind) => ({
          kind,
          capacity: rated(20_000, t.pullLb),
        })),
        ...(['beamPost', 'rafterStrip', 'stripBeam'] as const).map((kind) => ({
          kind,
          capacity: rated(t.tiesLb, t.tiesLb),
        })),
      ],
    },
    lateral: { ...plain.lateral, across: [{ by: 'transverseFrame' }] },
  };
}
