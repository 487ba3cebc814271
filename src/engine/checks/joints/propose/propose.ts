import type { MessageCode } from '../../../../data/words/en.ts';
import { message, type Message } from '../../../message.ts';
import type { FastenedCapacity, FastenerRow } from '../../../project/model.ts';
import { fastenedAt, fastenedPart, fastenedTogether } from '../fastened/fastened.ts';
import type { Woods } from '../fastened/standing.ts';
import type { JointSetting } from '../joint-setting.ts';
import type { JointPart } from '../rated.ts';
import { drivenRows, pinRows, sheetRows, strapRows } from './candidates.ts';

/** What a combination asks of a joint: each direction, all at once [lb, or lb/ft of a sheet]. */
export interface AskedAtOnce {
  readonly CD: number;
  readonly forces: readonly { readonly part: JointPart; readonly lb: number }[];
}

export type Proposal =
  | {
      readonly ok: true;
      readonly capacity: FastenedCapacity;
      /** of the hardest combination, at most 1 */
      readonly share: number;
    }
  | { readonly ok: false; readonly reason: Message };

const NONE_FITS: Proposal = { ok: false, reason: message('noFastenersFit') };

/** Joints that no computed fastener holds, and why. */
const RATED_ONLY: Partial<Record<JointSetting['kind'], MessageCode>> = {
  ledgerWall: 'wallOnlyRated',
  postFoot: 'anchorNotRated',
  rafterRafter: 'ridgeBeamCarries',
  tiePost: 'tieOnlyRated',
};

/** One joint of those that are to be held alike. */
export interface JointCase {
  readonly setting: JointSetting;
  readonly woods: Woods;
  readonly asked: readonly AskedAtOnce[];
}

/**
 * Hardware that holds every one of some joints of a kind, from computed fasteners alone: the fewest pieces, of as many the
 * thinnest, of as thick the shortest. One row that holds every direction goes before straps with a pin.
 * @param cases  at least one
 * @param sheet  the sheet under the heads, of a joint of the roof's sheet
 * @source OWN: order of choice; every candidate is judged by the checks' own formulas
 */
export function proposeHardware(cases: readonly JointCase[], sheet: FastenerRow['plate'] | null): Proposal {
  const { setting } = cases[0]!;
  // wood of the wall is asked by shares of all directions, which no candidate can be tried against
  const isOnWood = setting.kind === 'ledgerWall' && setting.lower.of === 'wood';
  const only = isOnWood ? 'ledgerNotProposed' : RATED_ONLY[setting.kind];
  if (only) return refuse(only);
  if (setting.upper.of === 'sheet')
    return sheet ? firstThatHolds(cases, singles(sheetRows(sheet))) : refuse('sheetThicknessNotGiven');
  const single = setting.line ? firstThatHolds(cases, singles(drivenRows(setting))) : NONE_FITS;
  return single.ok ? single : firstThatHolds(cases, withPins(cases));
}

const refuse = (code: MessageCode): Proposal => ({ ok: false, reason: message(code) });

type Rows = readonly FastenerRow[];

const singles = (rows: Rows): readonly Rows[] => rows.toSorted(inOrder).map((row) => [row]);

/** Straps for the pull and, where something pushes sideways, a pin; each must hold its own share alone. */
function withPins(cases: readonly JointCase[]): readonly Rows[] {
  const { setting } = cases[0]!;
  const straps = strapRows(setting)
    .toSorted(inOrder)
    .filter((row) => holdsAlone(cases, row, ['pull']));
  const isPushed = cases.some(({ asked }) =>
    asked.some(({ forces }) => forces.some(({ part, lb }) => part !== 'pull' && lb > 0)),
  );
  if (!isPushed) return straps.map((row) => [row]);
  const pins = pinRows(setting).filter((row) => holdsAlone(cases, row, ['along', 'across']));
  return straps.flatMap((strap) => pins.map((pin) => [strap, pin]));
}

function holdsAlone(cases: readonly JointCase[], row: FastenerRow, parts: readonly JointPart[]): boolean {
  const only = cases.map((c) => ({
    ...c,
    asked: c.asked.map(({ CD, forces }) => ({ CD, forces: forces.filter(({ part }) => parts.includes(part)) })),
  }));
  return worstShare(only, [row]) <= 1;
}

/** Fewest pieces, then thinnest, then shortest. */
const inOrder = (a: FastenerRow, b: FastenerRow): number =>
  piecesOf(a) - piecesOf(b) || a.diameterIn - b.diameterIn || a.lengthIn - b.lengthIn;

/** Pieces of a joint; of a sheet, of each foot of row. */
const piecesOf = ({ count, plate, spacingIn }: FastenerRow): number => {
  if (!plate) return count;
  return plate.widthIn === null ? count / (spacingIn ?? 1) : 2 * count * plate.each + plate.each;
};

function firstThatHolds(cases: readonly JointCase[], candidates: readonly Rows[]): Proposal {
  for (const rows of candidates) {
    const share = worstShare(cases, rows);
    if (share <= 1) return { ok: true, capacity: capacityOf(rows), share };
  }
  return NONE_FITS;
}

const capacityOf = (rows: Rows): FastenedCapacity => ({ kind: 'fasteners', rows, shoulder: false });

/** The hardest share of all joints; what comes after one that does not hold is not asked. */
function worstShare(cases: readonly JointCase[], rows: Rows): number {
  let worst = 0;
  for (const one of cases) {
    worst = Math.max(worst, shareIn(one, rows));
    if (worst > 1) return worst;
  }
  return worst;
}

/** The hardest share of all combinations; Infinity where a direction is not held. */
function shareIn({ setting, woods, asked }: JointCase, rows: Rows): number {
  const fastened = fastenedAt(setting, woods, capacityOf(rows));
  const known = new Map<string, number>();
  const holds = (part: JointPart, CD: number): number => {
    const key = `${part} ${CD}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const answer = fastenedPart(fastened, part, CD);
    const lb = answer.ok ? answer.capacityLb : 0;
    known.set(key, lb);
    return lb;
  };
  let worst = 0;
  for (const { CD, forces } of asked) {
    const acting = forces.filter(({ lb }) => lb > 0);
    if (acting.length === 0) continue;
    const shares = acting.map(({ part, lb }) => lb / holds(part, CD));
    const sum = shares.reduce((total, share) => total + share, 0);
    // a straight sum over 1 may still pass by the equation for both at once
    const parts = acting.map(({ part }) => part);
    const equation = sum > 1 && Number.isFinite(sum) && parts.length > 1 ? fastenedTogether(fastened, parts, CD) : null;
    const together = equation ? equation(acting.map(({ lb }) => lb)) : sum;
    worst = Math.max(worst, together);
    if (worst > 1) return worst;
  }
  return worst;
}
