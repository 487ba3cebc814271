import type { Member, Project } from '../../src/engine/project/model.ts';
import { plainShed, postId, type Measures } from './plain-shed.ts';

/** What the tests vary on frames across a plain shed: a tie log between the lines at every post, a brace at each end. */
export interface Tied {
  readonly downIn: number;
  readonly runIn: number;
  readonly dropIn: number;
  readonly tieDiametersIn: readonly [butt: number, tip: number];
  readonly ends: 'between' | 'beside';
  /** which posts of a line (by number) have a tie to the next line */
  readonly at: readonly number[];
  /** ends of each tie that have a brace */
  readonly bracesAt: readonly ('near' | 'far')[];
  readonly braceTop: 'coped' | 'housed';
  /** how far each tie log bows from straight [in] */
  readonly bowIn: number;
  /** pull of every brace joint [lb]; null where nobody said */
  readonly pullLb: number | null;
}

const TIED: Tied = {
  downIn: 20,
  runIn: 24,
  dropIn: 30,
  tieDiametersIn: [8, 8],
  ends: 'between',
  at: [0, 1],
  bracesAt: ['near', 'far'],
  braceTop: 'coped',
  bowIn: 0,
  pullLb: 20_000,
};

const tieId = (k: number): string => `tie-${k}`;
const acrossBraceId = (k: number, end: 'near' | 'far'): string => `across-${k}-${end}`;

/** A plain shed of two lines that frames across hold. */
export function tiedShed(change: Partial<Tied> = {}, measures: Partial<Measures> = {}): Project {
  const t = { ...TIED, ...change };
  const plain = plainShed(measures);
  const [near, far] = [0, 1];
  const lengthIn = 200;
  const members = t.at.flatMap((k): Member[] => [
    {
      id: tieId(k),
      role: 'tie',
      group: 'ties',
      fromPost: postId(near, k),
      toPost: postId(far, k),
      pastFromIn: 0,
      pastToIn: 0,
    },
    ...t.bracesAt.map((end): Member => ({
      id: acrossBraceId(k, end),
      role: 'brace',
      group: 'braces-across',
      post: postId(end === 'near' ? near : far, k),
      to: tieId(k),
      side: end === 'near' ? 'plus' : 'minus',
    })),
  ]);
  const rated = {
    kind: 'rated',
    label: 'bolted strap',
    parts: { pushLb: 20_000, pullLb: t.pullLb, alongLb: 20_000, acrossLb: 20_000 },
    durationIncluded: 1,
  } as const;
  return {
    ...plain,
    logs: [
      ...plain.logs,
      {
        ...plain.logs.find((l) => l.id === 'brace-log')!,
        id: 'tie-log',
        seen: {
          worstKnotIn: 1,
          grainSlope1In: 40,
          spiral: 'none',
          checks: '',
          straightIn: t.bowIn,
          by: 'the owner',
          date: '2026-03-02',
        },
        stations: [
          { fromButtIn: 0, diameterIn: t.tieDiametersIn[0] },
          { fromButtIn: lengthIn, diameterIn: t.tieDiametersIn[1] },
        ],
      },
    ],
    groups: [
      ...plain.groups,
      {
        id: 'ties',
        role: 'tie',
        stock: { kind: 'log', logId: 'tie-log', fromButtIn: 0, buttAt: 'start' },
        downIn: t.downIn,
        ends: t.ends,
      },
      {
        id: 'braces-across',
        role: 'brace',
        stock: { kind: 'log', logId: 'brace-log', fromButtIn: 0, buttAt: 'start' },
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
      defaults: (['bracePost', 'braceTop', 'tiePost', 'beamPost', 'postFoot'] as const).map((kind) => ({
        kind,
        capacity: rated,
      })),
    },
    lateral: { ...plain.lateral, across: [{ by: 'transverseFrame' }] },
  };
}
