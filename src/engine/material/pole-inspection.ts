import { POLE_ITEMS, POLE_KNOTS, POLE_RINGS_PER_IN, POLE_TWIST, type PoleItem } from '../../data/wood/pole-items.ts';
import { message, type Message } from '../message.ts';
import { isNamed } from '../project/is-named.ts';
import type { Log, Seen, WoodBasis } from '../project/model.ts';
import { diameterAtKnots } from './log-diameter.ts';

type PoleBasis = Extract<WoodBasis, { kind: 'poles' }>;

/** What the inspection has not answered yet; null when every item is ticked and signed. */
export function whyNotInspected({ ticked, by, date }: PoleBasis): Message | null {
  const open = POLE_ITEMS.filter((item) => !ticked.includes(item));
  if (open.length > 0) {
    return message('woodPolesNotTicked', { count: open.length, items: open.map(inWords).join(', ') });
  }
  return !isNamed(by) || date === null ? message('woodPolesNotSigned') : null;
}

/** `knotsInAFoot`: knots in a foot. */
const inWords = (item: PoleItem): string => item.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/**
 * What was seen on the log and contradicts the ticked list; null when nothing does.
 * Places that nobody noted count as the thinnest of the log (safe side).
 * @source D25 by its items in POLE_ITEMS
 */
export function whyNoPole(log: Log): Message | null {
  const { seen } = log;
  const diameterIn = diameterAtKnots(log, undefined);
  if (!seen || diameterIn === null) return null;
  return knotsPastPole(seen, diameterIn) ?? growthPastPole(seen, diameterIn);
}

function knotsPastPole(seen: Seen, diameterIn: number): Message | null {
  const girthIn = Math.PI * diameterIn;
  const foot = seen.knotsInWorstFootIn ?? [];
  const widestIn = Math.max(seen.worstKnotIn ?? 0, ...foot);
  const mostIn = Math.min(POLE_KNOTS.widestIn, girthIn * POLE_KNOTS.widestGirthShare);
  if (widestIn > mostIn) return message('logKnotPastPole', { knotIn: widestIn, mostIn: rounded(mostIn) });
  const sumIn = foot.reduce((sum, knot) => sum + knot, 0);
  const mostSumIn = girthIn * POLE_KNOTS.sumGirthShare;
  return sumIn > mostSumIn ? message('logKnotsPastPole', { sumIn, mostIn: rounded(mostSumIn) }) : null;
}

function growthPastPole({ grainSlope1In, ringsPerIn, straightIn }: Seen, diameterIn: number): Message | null {
  const steepest1In = POLE_TWIST.inIn / (Math.PI * diameterIn * POLE_TWIST.turn);
  if (grainSlope1In !== null && grainSlope1In < steepest1In) {
    return message('logTwistPastPole', { oneIn: grainSlope1In, leastIn: rounded(steepest1In) });
  }
  if (ringsPerIn !== undefined && ringsPerIn < POLE_RINGS_PER_IN) {
    return message('logRingsPastPole', { rings: ringsPerIn, least: POLE_RINGS_PER_IN });
  }
  return straightIn !== null && straightIn > diameterIn / 2
    ? message('logCrookPastPole', { crookIn: straightIn, mostIn: rounded(diameterIn / 2) })
    : null;
}

const rounded = (value: number): number => Math.round(value * 10) / 10;
