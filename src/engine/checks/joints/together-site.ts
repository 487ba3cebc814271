import { clause } from '../../../data/sources.ts';
import type { RuleId } from '../../../data/rules.ts';
import type { Place } from '../../check.ts';
import type { Combination } from '../../loads/combination.ts';
import { put, type Note } from '../../note.ts';
import type { Capacity } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { ratedPart, type JointPart } from './rated.ts';

interface Combined {
  readonly combination: Pick<Combination, 'purpose' | 'durationFactor'>;
}

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
 * bears two directions together is its maker's to say, and a straight sum is the harshest usual answer).
 * @returns null where a direction has no rating above zero: the row of that direction says so
 */
export function togetherSite<R extends Combined>(ask: TogetherAsk<R>): CheckSite<R> | null {
  const { ruleId, memberId, place, capacity, parts } = ask;
  const ratings = new Map<string, number>();
  const ratingOf = (part: JointPart, CD: number, note?: Note): number => {
    const key = `${part} ${CD}`;
    const known = note ? undefined : ratings.get(key);
    if (known !== undefined) return known;
    const rated = ratedPart(capacity, part, CD, note);
    const found = rated.ok ? rated.capacityLb : NaN;
    ratings.set(key, found);
    return found;
  };
  if (parts.some(({ part }) => !(ratingOf(part, 1) > 0))) return null;
  return {
    ruleId,
    memberId,
    place,
    unit: '1',
    applies: (r) => r.combination.purpose === 'strength',
    demand: (r, note) => {
      let sum = 0;
      const shares = [];
      for (const { part, force } of parts) {
        const share = force(r, note) / ratingOf(part, r.combination.durationFactor, note);
        sum += share;
        if (note) shares.push(put(part, share, '1', `share of its rating, ${part}`));
      }
      note?.({
        symbol: 'Σ',
        words: 'shares of all directions together',
        formula: parts.map(({ part }) => part).join(' + '),
        put: shares,
        result: quantity(sum, '1'),
        clause: clause('OWN', 'one straight sum of shares'),
      });
      return sum;
    },
    capacity: () => 1,
  };
}
