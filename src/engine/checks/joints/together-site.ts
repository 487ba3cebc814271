import { clause } from '../../../data/sources.ts';
import type { RuleId } from '../../../data/rules.ts';
import type { Place } from '../../check.ts';
import { put, type Note } from '../../note.ts';
import type { Capacity } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import type { Asked, CheckSite } from '../site-of-check.ts';
import { ratedPart, type JointPart } from './rated.ts';

export interface TogetherAsk<R> {
  readonly ruleId: RuleId;
  readonly memberId: string;
  readonly place: Omit<Place, 'atIn'>;
  readonly capacity: Capacity;
  /** directions asked at the same time; with a note each tells how it comes about */
  readonly parts: readonly { readonly part: JointPart; readonly force: (response: R, note?: Note) => number }[];
}

/**
 * One joint asked in several directions at once: one straight sum of the shares, at most 1 (own rule; how a rated part
 * bears two directions together is its maker's to say, and a straight sum is the harshest usual answer). A direction
 * without a rating above zero has a row that says so and stays out of the sum.
 * @returns null where fewer than two directions are rated
 */
export function togetherSite<R extends Asked>(ask: TogetherAsk<R>): CheckSite<R> | null {
  const { ruleId, memberId, place, capacity, parts } = ask;
  const asked = parts
    .map(({ part, force }) => ({ part, force, ratingIn: ratingByDuration(capacity, part) }))
    .filter(({ ratingIn }) => ratingIn(1) > 0);
  if (asked.length < 2) return null;
  return {
    ruleId,
    memberId,
    place,
    unit: '1',
    purpose: 'strength',
    isByDuration: true,
    demand: (r, note) => {
      let sum = 0;
      const shares = [];
      for (const { part, force, ratingIn } of asked) {
        const share = force(r, note) / ratingIn(r.combination.durationFactor, note);
        sum += share;
        if (note) shares.push(put(part, share, '1', `share of its rating, ${part}`));
      }
      note?.({
        symbol: 'Σ',
        words: 'shares of all directions together',
        formula: asked.map(({ part }) => part).join(' + '),
        put: shares,
        result: quantity(sum, '1'),
        clause: clause('OWN', 'one straight sum of shares'),
      });
      return sum;
    },
    capacity: () => 1,
  };
}

/** A rating of one direction, worked out once for each load duration; NaN where it is not given. */
function ratingByDuration(capacity: Capacity, part: JointPart): (CD: number, note?: Note) => number {
  const known = new Map<number, number>();
  return (CD, note) => {
    const found = note ? undefined : known.get(CD);
    if (found !== undefined) return found;
    const rated = ratedPart(capacity, part, CD, note);
    const pounds = rated.ok ? rated.capacityLb : NaN;
    known.set(CD, pounds);
    return pounds;
  };
}
