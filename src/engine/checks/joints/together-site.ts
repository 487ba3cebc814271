import { clause } from '../../../data/sources.ts';
import type { RuleId } from '../../../data/rules.ts';
import type { Place } from '../../check.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { byDuration } from '../by-duration.ts';
import type { Asked, CheckSite } from '../site-of-check.ts';
import type { Holder } from './holder.ts';
import type { JointPart } from './rated.ts';

export interface TogetherAsk<R> {
  readonly ruleId: RuleId;
  readonly memberId: string;
  readonly place: Omit<Place, 'atIn'>;
  readonly holder: Holder;
  /** directions asked at the same time; with a note each tells how it comes about */
  readonly parts: readonly { readonly part: JointPart; readonly force: (response: R, note?: Note) => number }[];
}

/**
 * One joint asked in several directions at once. Driven fasteners have an equation for it; else one straight sum of the
 * shares, at most 1 (own rule; how a rated part bears two directions together is its maker's to say, and a straight sum is
 * the harshest usual answer). A direction
 * without a rating above zero has a row that says so and stays out of the sum.
 * @returns null where fewer than two directions are rated
 */
export function togetherSite<R extends Asked>(ask: TogetherAsk<R>): CheckSite<R> | null {
  const { ruleId, memberId, place, holder, parts } = ask;
  const asked = parts
    .map(({ part, force }) => ({ part, force, ratingIn: ratingOf(holder, part) }))
    .filter(({ ratingIn }) => ratingIn(1) > 0);
  if (asked.length < 2) return null;
  const directions = asked.map(({ part }) => part);
  const equationIn = byDuration((CD) => holder.together?.(directions, CD) ?? null);
  return {
    ruleId,
    memberId,
    place,
    unit: '1',
    purpose: 'strength',
    isByDuration: true,
    demand: (r, note) => {
      const CD = r.combination.durationFactor;
      const forcesLb = asked.map(({ force }) => force(r, note));
      const equation = equationIn(CD);
      if (equation) return equation(forcesLb, note);
      const shares = asked.map(({ ratingIn }, i) => forcesLb[i]! / ratingIn(CD, note));
      const sum = shares.reduce((total, share) => total + share, 0);
      note?.({
        symbol: 'Σ',
        words: 'shares of all directions together',
        formula: asked.map(({ part }) => part).join(' + '),
        put: asked.map(({ part }, i) => put(part, shares[i]!, '1', `share of what it holds, ${part}`)),
        result: quantity(sum, '1'),
        clause: clause('OWN', 'one straight sum of shares'),
      });
      return sum;
    },
    capacity: () => 1,
  };
}

/** A rating of one direction; NaN where it is not given. */
const ratingOf = (holder: Holder, part: JointPart): ((CD: number, note?: Note) => number) =>
  byDuration((CD, note) => {
    const rated = holder.part(part, CD, note);
    return rated.ok ? rated.capacityLb : NaN;
  });
