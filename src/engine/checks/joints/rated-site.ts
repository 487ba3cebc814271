import { clause } from '../../../data/sources.ts';
import type { RuleId } from '../../../data/rules.ts';
import { asksNothing, type Place } from '../../check.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { Asked, CheckSite } from '../site-of-check.ts';
import type { HeldUnit, Holder } from './holder.ts';
import type { JointPart, RatedPart } from './rated.ts';

export interface RatedAsk<R> {
  readonly ruleId: RuleId;
  readonly memberId: string;
  readonly place: Omit<Place, 'atIn'>;
  readonly holder: Holder;
  readonly part: JointPart;
  /** unit of demand and rating alike: a force, or a force for each foot of row */
  readonly unit?: HeldUnit;
  /** what is asked of the joint in this direction, never below zero; with a note it tells how it comes about */
  readonly force: (response: R, note?: Note) => number;
}

/**
 * A joint asked in one direction, in every combination, each with its own duration. Without a capacity the row still
 * shows the greatest demand; bare contact of which nothing is asked passes and says so.
 */
export function ratedSite<R extends Asked>(ask: RatedAsk<R>): CheckSite<R> {
  const { ruleId, memberId, place, holder, part, unit = 'lb', force } = ask;
  // what it holds depends on the load duration alone: worked out once for each
  const byDuration = new Map<number, RatedPart>();
  const rated = (r: R, note?: Note): RatedPart => {
    const CD = r.combination.durationFactor;
    if (note) return holder.part(part, CD, note);
    const known = byDuration.get(CD) ?? holder.part(part, CD);
    byDuration.set(CD, known);
    return known;
  };
  return {
    ruleId,
    memberId,
    place,
    unit,
    purpose: 'strength',
    isByDuration: holder.part(part, 1).ok,
    stops: (r) => {
      const answer = rated(r);
      if (answer.ok) return null;
      const verdict = answer.verdict(force(r)) ?? asksNothing(unit, message('nothingAsked'));
      return verdict.demand ? { ...verdict, demand: quantity(verdict.demand.value, unit) } : verdict;
    },
    demand: force,
    capacity: (r, note) => {
      const answer = rated(r, note);
      return answer.ok ? answer.capacityLb : NaN;
    },
    reason: (r) => {
      const answer = rated(r);
      return answer.ok ? answer.reason : null;
    },
  };
}

/** A force below this is the rounding of the analysis, not a demand on a joint [lb]. */
const NO_FORCE_LB = 1e-6;

/** A force of the frame on a joint, freed of rounding and told in one step. */
export function fromFrame<R>(words: string, forceLb: (response: R) => number): (response: R, note?: Note) => number {
  return (r, note) => {
    const found = forceLb(r);
    const P = found < NO_FORCE_LB ? 0 : found;
    note?.({
      symbol: 'P',
      words,
      formula: 'P',
      put: [put('P', P, 'lb', 'from the frame analysis')],
      result: quantity(P, 'lb'),
      clause: clause('MECHANICS', 'plane frame, first order'),
    });
    return P;
  };
}
