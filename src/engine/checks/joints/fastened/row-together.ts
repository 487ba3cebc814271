import type { PulledKind } from '../../../../data/fasteners/kind.ts';
import { clause } from '../../../../data/sources.ts';
import { put, type Note } from '../../../note.ts';
import { quantity } from '../../../units.ts';
import { shareOfCombined } from '../../fasteners/combined.ts';
import { cross, dot, type Vector } from '../../fasteners/space.ts';
import type { JointSetting } from '../joint-setting.ts';
import type { JointPart } from '../rated.ts';
import { squareTo } from './group.ts';
import type { PlacedRow } from './row-holds.ts';
import { heldAgainstPull } from './row-pulled.ts';
import { heldSideways } from './row-sideways.ts';

/** Share of what a joint holds that forces in several directions take at once, in the order they were asked for [lb]. */
export type ShareOf = (forcesLb: readonly number[], note?: Note) => number;

/** A pull this small beside other forces is none [lb]. */
const NO_PULL_LB = 1e-9;

/**
 * Share that forces of several directions take of one row at once: their parts along the shanks add up, those across them
 * as a vector whose terms never relieve one another, against the weakest of their directions (own rule, safe side).
 * @returns null for bolts and drift pins, for which no equation is printed, and where a strap joins two places
 * @source NDS 12.4
 */
export function togetherOnRow(
  { ways }: JointSetting,
  { places }: Extract<PlacedRow, { readonly ok: true }>,
  parts: readonly JointPart[],
  CD: number,
): ShareOf | null {
  const [there, more] = places;
  if (!there || more || there.size.kind === 'bolt' || there.size.kind === 'driftPin') return null;
  const { into } = there.standing;
  const kind: PulledKind = there.size.kind;
  const forces = parts.map((part) => (part === 'push' ? null : ways[part]));
  const pulled = heldAgainstPull(there, CD);
  const sideways = forces.map((way) => way && squareTo(way, into)).filter((way) => way !== null);
  const held = sideways.map((way) => heldSideways(there, way, CD));
  const pushLb = held.reduce((low, answer) => Math.min(low, answer.ok ? answer.pounds : 0), Infinity);
  if (!pulled.ok || !(pushLb > 0) || sideways.length === 0 || forces.includes(null)) return null;
  const weakest = sideways[held.findIndex((answer) => answer.ok && answer.pounds === pushLb)]!;
  const second = cross(into, there.group.along);
  return (forcesLb, note) => {
    const along = (way: Vector): number =>
      forces.reduce((sum, force, i) => sum + (forcesLb[i] ?? 0) * Math.abs(dot(force!, way)), 0);
    const asked = { pullLb: along(into), pushLb: Math.hypot(along(there.group.along), along(second)) };
    if (note) {
      heldAgainstPull(there, CD, note);
      heldSideways(there, weakest, CD, note);
    }
    const carries = { pullLb: pulled.pounds, pushLb };
    const both = asked.pullLb > NO_PULL_LB ? shareOfCombined(kind, asked, carries) : 0;
    const alone = { pull: asked.pullLb / carries.pullLb, push: asked.pushLb / carries.pushLb };
    if (both >= alone.pull && both >= alone.push) return note ? shareOfCombined(kind, asked, carries, note) : both;
    return alone.push >= alone.pull
      ? aloneShare('V', 'sideways, as a vector', asked.pushLb, carries.pushLb, note)
      : aloneShare('N', 'along the shanks', asked.pullLb, carries.pullLb, note);
  };
}

/** The equation may ask less of both forces at once than of one alone: then that one counts (own rule, safe side). */
function aloneShare(symbol: 'N' | 'V', words: string, forceLb: number, holdsLb: number, note?: Note): number {
  const share = forceLb / holdsLb;
  note?.({
    symbol: `${symbol} / Z`,
    words: `share of what it holds, ${words}: alone no less than together`,
    formula: `${symbol} / Z`,
    put: [put(symbol, forceLb, 'lb', words), put('Z', holdsLb, 'lb', 'held in that direction, where it holds least')],
    result: quantity(share, '1'),
    clause: clause('OWN', 'no direction less than alone'),
  });
  return share;
}
