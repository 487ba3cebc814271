import { clause } from '../../../data/sources.ts';
import type { RuleId } from '../../../data/rules.ts';
import { breaks, type Place, type Verdict } from '../../check.ts';
import type { Message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { Asked, CheckSite } from '../site-of-check.ts';
import type { Holder } from './holder.ts';
import type { RatedPart } from './rated.ts';

/** Less than this is the rounding of the analysis [lb]. */
const NO_PUSH_LB = 1e-6;

/** From the middle of a contact to the edge that it would roll over; or why there is none. */
export interface Lever {
  readonly refused: Verdict | null;
  readonly halfIn: number;
  readonly tell: (note: Note) => void;
}

/** Something that lies on something else, and what would roll it off. */
export interface OverEdge<R> {
  readonly ruleId: RuleId;
  readonly memberId: string;
  readonly place: Omit<Place, 'atIn'>;
  readonly joint: Holder;
  readonly lever: Lever;
  /** what rolls it [lb·in] */
  readonly turning: (response: R, note?: Note) => number;
  /** what presses it down, a lift less than zero; what the joint holds across and along besides [lb] */
  readonly downLb: (response: R) => number;
  readonly acrossLb: (response: R) => number;
  readonly alongLb: (response: R) => number;
  /** of `downLb` */
  readonly downWords: string;
  /** where nothing holds it down */
  readonly rollsOff: Message;
}

/**
 * Rolling about the edge of a contact, against what presses it and what its tie may pull, times half the width of the contact.
 * What share of the tie the pushes across and along take is not free to pull.
 * @source OWN: moments about the edge
 */
export function overEdgeSite<R extends Asked>(over: OverEdge<R>): CheckSite<R> {
  const { joint, lever, turning } = over;
  const tieOf = (r: R, note?: Note) => joint.part('pull', r.combination.durationFactor, note);
  const freeShare = (r: R, note?: Note): number => {
    const CD = r.combination.durationFactor;
    const used =
      shareOf(joint.part('across', CD, note), over.acrossLb(r)) +
      shareOf(joint.part('along', CD, note), over.alongLb(r));
    const share = Math.max(0, 1 - used);
    note?.({
      symbol: 's',
      words: 'share of the tie that the pushes across and along leave free',
      formula: 'max(0, 1 - u)',
      put: [put('u', used, '1', 'shares of what it carries across and along; all of it where that is not given')],
      result: quantity(share, '1'),
      clause: clause('OWN', 'one straight sum of shares'),
    });
    return share;
  };
  const held = (r: R, note?: Note): number => {
    const tie = tieOf(r, note);
    const F = tie.ok ? tie.capacityLb * freeShare(r, note) : 0;
    const R = over.downLb(r);
    const M = (R + F) * lever.halfIn;
    note?.({
      symbol: 'M max',
      words: 'what holds it down, about the edge of its seat',
      formula: '(R + F) × a',
      put: [
        put('R', R, 'lb', over.downWords),
        put('F', F, 'lb', 'pull of its tie to the post, as far as it is free'),
        put('a', lever.halfIn, 'in', 'from the middle of the seat to its edge'),
      ],
      result: quantity(M, 'lb·in'),
      clause: clause('MECHANICS', 'moments about an edge'),
    });
    return M;
  };
  return {
    ruleId: over.ruleId,
    memberId: over.memberId,
    place: over.place,
    unit: 'lb·in',
    purpose: 'strength',
    stops: (r) => {
      if (lever.refused) return lever.refused;
      const tie = tieOf(r);
      if (tie.ok) return held(r) > 0 ? null : breaks(over.rollsOff);
      const asked = turning(r);
      if (!(asked > Math.max(0, held(r)))) return null;
      const verdict = tie.verdict(asked);
      return verdict?.demand ? { ...verdict, demand: quantity(asked, 'lb·in') } : verdict;
    },
    demand: turning,
    capacity: (r, note) => {
      if (note) lever.tell(note);
      return held(r, note);
    },
  };
}

/** Share of a tie that a push takes; all of it where nobody says what it carries that way. */
const shareOf = (part: RatedPart, pushLb: number): number =>
  part.ok ? pushLb / part.capacityLb : pushLb > NO_PUSH_LB ? 1 : 0;
