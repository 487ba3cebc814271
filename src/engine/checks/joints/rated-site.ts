import { clause } from '../../../data/sources.ts';
import type { RuleId } from '../../../data/rules.ts';
import { judge, type Place } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { Capacity } from '../../project/model.ts';
import { put } from '../../note.ts';
import { quantity } from '../../units.ts';
import { isStrength } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { ratedPart, type JointPart } from './rated.ts';

export interface RatedAsk {
  readonly ruleId: RuleId;
  readonly memberId: string;
  readonly place: Omit<Place, 'atIn'>;
  readonly capacity: Capacity;
  readonly part: JointPart;
  /** what the frame asks of the joint in this direction, never below zero [lb] */
  readonly force: (response: LineResponse) => number;
  readonly words: string;
}

/** A force below this is the rounding of the analysis, not a demand on a joint [lb]. */
const NO_FORCE_LB = 1e-6;

/**
 * A joint of a frame line asked in one direction, in every combination, each with its own duration. Without a capacity
 * the row still shows the greatest demand; bare contact that nothing pulls passes with a demand of zero.
 */
export function ratedSite(ask: RatedAsk): CheckSite<LineResponse> {
  const { ruleId, memberId, place, capacity, part, words } = ask;
  const force = (r: LineResponse): number => {
    const f = ask.force(r);
    return f < NO_FORCE_LB ? 0 : f;
  };
  return {
    ruleId,
    memberId,
    place,
    unit: 'lb',
    applies: isStrength,
    stops: (r) => {
      const rated = ratedPart(capacity, part, r.combination.durationFactor);
      return rated.ok
        ? null
        : (rated.verdict(force(r)) ?? judge(quantity(0, 'lb'), quantity(1, 'lb'), { code: 'contactOnly', values: {} }));
    },
    demand: (r, note) => {
      note?.({
        symbol: 'P',
        words,
        formula: 'P',
        put: [put('P', force(r), 'lb', 'from the frame analysis')],
        result: quantity(force(r), 'lb'),
        clause: clause('MECHANICS', 'plane frame, first order'),
      });
      return force(r);
    },
    capacity: (r, note) => {
      const rated = ratedPart(capacity, part, r.combination.durationFactor, note);
      return rated.ok ? rated.capacityLb : NaN;
    },
    reason: (r) => {
      const rated = ratedPart(capacity, part, r.combination.durationFactor);
      return rated.ok ? rated.reason : null;
    },
  };
}
