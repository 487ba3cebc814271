import { clause } from '../../../../data/sources.ts';
import { breaks, notGiven, outside, type Verdict } from '../../../check.ts';
import { message, type Message } from '../../../message.ts';
import { put, type Note } from '../../../note.ts';
import type { FastenedCapacity } from '../../../project/model.ts';
import { INCHES_PER_FOOT, quantity } from '../../../units.ts';
import { refused, type Refused } from '../../fasteners/refused.ts';
import type { Pounds } from '../../fasteners/withdrawal.ts';
import type { JointSetting } from '../joint-setting.ts';
import { ratedFor, type JointPart, type RatedPart } from '../rated.ts';
import { footHoldsEdgewise, pressesFlat } from './foot-sideways.ts';
import { togetherOnOwnRows, type HeldBy } from './own-rows.ts';
import { placeRow, rowHolds, type PlacedRow } from './row-holds.ts';
import { togetherOnRow, type ShareOf } from './row-together.ts';
import type { Woods } from './standing.ts';

type Placed = Extract<PlacedRow, { readonly ok: true }>;

/** The fasteners of a joint, placed in it. */
export interface Fastened {
  readonly setting: JointSetting;
  readonly capacity: FastenedCapacity;
  readonly rows: readonly PlacedRow[];
  /** the row that holds most in a direction and load duration, looked for once */
  readonly strongest: (part: JointPart, CD: number) => Strongest;
}

export function fastenedAt(setting: JointSetting, woods: Woods, capacity: FastenedCapacity): Fastened {
  const rows = capacity.rows.map((row) => placeRow(setting, woods, row));
  const known = new Map<string, Strongest>();
  return {
    setting,
    capacity,
    rows,
    strongest: (part, CD) => {
      const key = `${part} ${CD}`;
      const found = known.get(key) ?? strongestRow(setting, rows, part, CD);
      known.set(key, found);
      return found;
    },
  };
}

/**
 * What the fasteners of a joint hold in one direction and one load duration. Rows do not add: they share no load in
 * proportion to their strength, so the strongest counts alone (own rule). What they hold on to beyond the pieces counts by
 * its rating.
 * @returns capacity [lb]; where there is none, the verdict for a demand [lb]
 * @source NDS 11.2.2; OWN: the strongest row alone
 */
export function fastenedPart(fastened: Fastened, part: JointPart, CD: number, note?: Note): RatedPart {
  const { setting, capacity, rows } = fastened;
  const isFoot = setting.lower.of === 'pier';
  const rating = capacity.alsoRated ? ratedFor(capacity.alsoRated, part, CD, note) : null;
  if (isFoot && !rating) return refusedPart(refused('anchorNotRated'));
  if (rating && !rating.ok) return rating;
  // fasteners through its sides are not counted for what presses a post down: the seat under its end is rated
  if (isFoot && part === 'push' && rating) return rating;
  // plates that the post presses on flatwise are not computed: the row says so
  if (isFoot && part !== 'pull' && rating && isFlatwise(fastened, part))
    return { ...rating, reason: rating.reason ?? message('footSidewaysByRating') };
  const strongest = fastened.strongest(part, CD);
  if (!strongest.ok) return refusedPart(strongest);
  if (note) holdsOf(setting, strongest.row, part, CD, note);
  const { pounds, row } = strongest;
  const unit = setting.upper.of === 'sheet' ? 'lb/ft' : 'lb';
  if (note && setting.upper.of === 'sheet') tellPerFoot(pounds, perFoot(setting, row), row.row.spacingIn, note);
  const capacityLb = Math.min(pounds, rating?.ok ? rating.capacityLb : Infinity);
  note?.({
    symbol: 'R',
    words: rows.length > 1 ? 'what the strongest row of the joint holds' : 'what the fasteners of the joint hold',
    formula: rating ? 'min(F, Z)' : 'F',
    put: [
      put('F', pounds, unit, unit === 'lb/ft' ? 'fasteners on each foot' : 'fasteners'),
      ...(rating?.ok ? [put('Z', rating.capacityLb, unit, 'rated beyond them')] : []),
    ],
    result: quantity(capacityLb, unit),
    clause: clause('OWN', 'the strongest row alone'),
  });
  const byRating = rating?.ok && rating.capacityLb < pounds ? rating.reason : null;
  // the push of a foot stands above the pier: what that turns is for the anchors alone
  const turns = isFoot && (part === 'along' || part === 'across') ? message('anchorsTakeTurning') : null;
  return { ok: true, capacityLb, reason: byRating ?? turns };
}

/**
 * Share that several directions at once take of a joint: of one row of driven fasteners by the equation for pull and sideways
 * force together, of a strap and a pin each by itself.
 * @returns null where a rating takes part, rows may hold for one another, or the one row is of bolts
 * @source NDS 12.4
 */
export function fastenedTogether(fastened: Fastened, parts: readonly JointPart[], CD: number): ShareOf | null {
  if (fastened.capacity.alsoRated) return null;
  const held = parts.flatMap((part): HeldBy[] => {
    const found = fastened.strongest(part, CD);
    return found.ok ? [{ part, row: found.row, pounds: found.pounds }] : [];
  });
  const [first] = held;
  if (!first || held.length < parts.length) return null;
  return held.every(({ row }) => row === first.row)
    ? togetherOnRow(fastened.setting, first.row, parts, CD)
    : togetherOnOwnRows(held);
}

/** A post base holds sideways by its plates and fasteners; any other row with plates only along them. */
function holdsOf(setting: JointSetting, row: Placed, part: JointPart, CD: number, note?: Note): Pounds {
  const isBase = setting.lower.of === 'pier' && (part === 'along' || part === 'across');
  return isBase
    ? footHoldsEdgewise(setting, row, setting.ways[part], CD, note)
    : rowHolds(setting, row, part, CD, note);
}

const isFlatwise = ({ setting, rows }: Fastened, part: JointPart): boolean =>
  part !== 'push' && rows.some((row) => row.ok && pressesFlat(row, setting.ways[part]));

type Strongest = { readonly ok: true; readonly row: Placed; readonly pounds: number } | Refused;

/**
 * A row that does not fit breaks the joint even beside one that holds: it cannot be built as written, or splits the wood.
 * Where none holds, the reason of one that is meant to is told before that of one which holds other ways.
 */
function strongestRow(setting: JointSetting, rows: readonly PlacedRow[], part: JointPart, CD: number): Strongest {
  let best: Strongest | null = null;
  let why: Refused | null = null;
  for (const row of rows) {
    const held: Pounds = row.ok ? holdsOf(setting, row, part, CD) : row;
    if (!held.ok) {
      if (isMisfit(held)) return held;
      if (!why || holdsOtherWays(why)) why = held;
    } else if (row.ok) {
      const pounds = held.pounds * perFoot(setting, row);
      if (!best?.ok || pounds > best.pounds) best = { ok: true, row, pounds };
    }
  }
  return best ?? why ?? refused('fastenersNone');
}

/** Rows of a sheet are asked by the foot: so many screws in each spacing. */
const perFoot = ({ upper }: JointSetting, { row }: Placed): number =>
  upper.of === 'sheet' && row.spacingIn !== null ? INCHES_PER_FOOT / row.spacingIn : 1;

function tellPerFoot(plf: number, share: number, spacingIn: number | null, note: Note): void {
  if (spacingIn === null) return;
  note({
    symbol: 'F',
    words: 'screws on each foot of row',
    formula: 'P × 12 / s',
    put: [put('P', plf / share, 'lb', 'screws of one spacing'), put('s', spacingIn, 'in', 'spacing along the row')],
    result: quantity(plf, 'lb/ft'),
    clause: clause('MECHANICS', 'so many in each foot'),
  });
}

/** What is merely not said is not given; what the equations do not reach is outside; what does not fit breaks. */
const NOT_SAID: ReadonlySet<Message['code']> = new Set([
  'anchorNotRated',
  'endNotGiven',
  'fastenersNone',
  'fastenersNeedPlate',
  'headNotKnown',
  'memberNotGiven',
  'sheetThicknessNotGiven',
  'spacingNotGiven',
  'strapWidthNotGiven',
  'strapWithoutFasteners',
]);
/** Hardware that is whole and does not hold that way: not given only where something is asked of it. */
const HOLDS_OTHER_WAYS: ReadonlySet<Message['code']> = new Set(['rowDoesNotAct', 'strapOnlyPulls', 'wallOnlyRated']);
const BEYOND: ReadonlySet<Message['code']> = new Set([
  'driftPinNotPulled',
  'fastenerSizeNotListed',
  'fastenerTooThick',
  'fastenerTwoPlanes',
  'fastenerWoodTooLight',
  'fastenerYieldNotListed',
  'fastenersDoNotPush',
  'plateNotFlush',
  'pulledLagNotListed',
  'pulledWoodTooLight',
  'toedNeedsSawn',
  'toedOnlyNails',
]);

const holdsOtherWays = ({ reason: { code } }: Refused): boolean => HOLDS_OTHER_WAYS.has(code);

const isMisfit = ({ reason: { code } }: Refused): boolean =>
  ![NOT_SAID, HOLDS_OTHER_WAYS, BEYOND].some((known) => known.has(code));

const refusedPart = ({ reason }: Refused): RatedPart => ({
  ok: false,
  verdict: (demandLb): Verdict | null => {
    const demand = quantity(demandLb, 'lb');
    if (NOT_SAID.has(reason.code)) return notGiven(reason, demand);
    if (HOLDS_OTHER_WAYS.has(reason.code)) return demandLb > 0 ? notGiven(reason, demand) : null;
    if (BEYOND.has(reason.code)) return demandLb > 0 ? outside(reason, demand) : null;
    return breaks(reason);
  },
});
