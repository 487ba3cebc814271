import { clause } from '../../../data/sources.ts';
import { breaks, notGiven, type Verdict } from '../../check.ts';
import { positive } from '../../errors.ts';
import { message, type Message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import type { Capacity, FastenedCapacity, RatedCapacity } from '../../project/model.ts';
import { quantity } from '../../units.ts';

/** Directions in which a joint is asked: pressed together, pulled apart, along and across its upper member. */
export type JointPart = 'push' | 'pull' | 'along' | 'across';

/** A capacity that somebody says, beside fasteners, which are computed. */
export type SaidCapacity = Exclude<Capacity, FastenedCapacity>;

/** A rating as typed, of a whole joint or of what its fasteners hold on to. */
type Rating = Omit<RatedCapacity, 'kind'>;

export type RatedPart =
  | {
      readonly ok: true;
      readonly capacityLb: number;
      /** said on the row where the rating was reduced for a longer load */
      readonly reason: Message | null;
    }
  | {
      readonly ok: false;
      /** why this joint cannot be judged; null where nothing is asked of bare contact */
      readonly verdict: (demandLb: number) => Verdict | null;
    };

const RATED = clause('OWN', 'rated value as typed, never more for a shorter load than its rating holds');

/**
 * What a joint is rated to carry in one direction and one combination.
 * A rating holds a duration factor already: for a longer load it is reduced, for a shorter one it is left as typed.
 * @param capacity what the person said of the joint, see `capacityOf`
 * @param CD load duration factor of the combination, above zero
 * @returns capacity [lb]; where there is none, the verdict for a demand [lb]
 * @throws MisuseError if CD is not above zero
 * @source OWN: min(1, CD / CD held by the rating)
 */
export function ratedPart(capacity: SaidCapacity, part: JointPart, CD: number, note?: Note): RatedPart {
  if (capacity === null) return missing(message('capacityNotGiven'));
  switch (capacity.kind) {
    case 'none':
      return { ok: false, verdict: (demandLb) => (demandLb > 0 ? breaks(message('contactOnly')) : null) };
    case 'rated':
      return ratedFor(capacity, part, CD, note);
  }
}

/**
 * What a rating holds in one direction.
 * @returns capacity [lb]; where there is none, the verdict for a demand [lb]
 * @throws MisuseError if CD is not above zero
 * @source OWN: min(1, CD / CD held by the rating)
 */
export function ratedFor(capacity: Rating, part: JointPart, CD: number, note?: Note): RatedPart {
  const typedLb = typedPart(capacity, part);
  if (typedLb === null) return missing(message('partNotGiven', { label: capacity.label }));
  if (typedLb === 0) {
    // rated to carry nothing this way: as bare contact
    return { ok: false, verdict: (demandLb) => (demandLb > 0 ? breaks(message('contactOnly')) : null) };
  }
  const held = positive('durationIncluded', capacity.durationIncluded);
  const share = Math.min(1, positive('CD', CD) / held);
  const capacityLb = typedLb * share;
  note?.({
    symbol: 'Z',
    words: `rated capacity, ${capacity.label}`,
    formula: 'Zr × min(1, CD / CDr)',
    put: [
      put('Zr', typedLb, 'lb', 'rated value as typed'),
      put('CD', CD, '1', 'load duration factor of this combination'),
      put('CDr', held, '1', 'duration factor that the rating holds'),
    ],
    result: quantity(capacityLb, 'lb'),
    clause: RATED,
  });
  return { ok: true, capacityLb, reason: share < 1 ? message('ratedReduced', { held }) : null };
}

function typedPart({ parts }: Rating, part: JointPart): number | null {
  switch (part) {
    case 'push':
      return parts.pushLb;
    case 'pull':
      return parts.pullLb;
    case 'along':
      return parts.alongLb;
    case 'across':
      return parts.acrossLb;
  }
}

const missing = (reason: Message): RatedPart => ({
  ok: false,
  verdict: (demandLb) => notGiven(reason, quantity(demandLb, 'lb')),
});
