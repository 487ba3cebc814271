import { clause } from '../../../data/sources.ts';
import type { RuleId } from '../../../data/rules.ts';
import { asksNothing, type Place } from '../../check.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import type { Capacity } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import type { Asked, CheckSite } from '../site-of-check.ts';
import { ratedPart, type JointPart, type RatedPart } from './rated.ts';

export interface RatedAsk<R> {
  readonly ruleId: RuleId;
  readonly memberId: string;
  readonly place: Omit<Place, 'atIn'>;
  readonly capacity: Capacity;
  readonly part: JointPart;
  /** unit of demand and rating alike: a force, or a force for each foot of row */
  readonly unit?: 'lb' | 'lb/ft';
  /** what is asked of the joint in this direction, never below zero; with a note it tells how it comes about */
  readonly force: (response: R, note?: Note) => number;
}

/**
 * A joint asked in one direction, in every combination, each with its own duration. Without a capacity the row still
 * shows the greatest demand; bare contact of which nothing is asked passes and says so.
 */
export function ratedSite<R extends Asked>(ask: RatedAsk<R>): CheckSite<R> {
  const { ruleId, memberId, place, capacity, part, unit = 'lb', force } = ask;
  // a rating depends on the load duration alone: worked out once for each
  const byDuration = new Map<number, RatedPart>();
  const rated = (r: R, note?: Note): RatedPart => {
    const CD = r.combination.durationFactor;
    if (note) return ratedPart(capacity, part, CD, toldIn(unit, note));
    const known = byDuration.get(CD) ?? ratedPart(capacity, part, CD);
    byDuration.set(CD, known);
    return known;
  };
  return {
    ruleId,
    memberId,
    place,
    unit,
    purpose: 'strength',
    isByDuration: ratedPart(capacity, part, 1).ok,
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

/** A rating is typed in pounds; where it is read for each foot of a row, its steps say so. */
const toldIn =
  (unit: 'lb' | 'lb/ft', note: Note): Note =>
  (step) =>
    note({
      ...step,
      put: step.put.map((p) => (p.unit === 'lb' ? { ...p, unit } : p)),
      result: quantity(step.result.value, unit),
    });

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
