import type { RuleId } from '../../../data/rules.ts';
import { judge, type Place } from '../../check.ts';
import type { Combination } from '../../loads/combination.ts';
import { message } from '../../message.ts';
import type { Note } from '../../note.ts';
import type { Capacity } from '../../project/model.ts';
import { quantity, type Unit } from '../../units.ts';
import { ratedPart } from '../joints/rated.ts';
import type { CheckSite } from '../site-of-check.ts';

export interface PullAsk<R> {
  readonly ruleId: RuleId;
  readonly memberId: string;
  readonly place: Omit<Place, 'atIn'>;
  readonly capacity: Capacity;
  /** unit of demand and rating alike: a force, or a force per foot of row */
  readonly unit: 'lb' | 'lb/ft';
  /** what pulls, never below zero; with a note it tells how it adds up */
  readonly pull: (response: R, note?: Note) => number;
}

/** A tie of the roof asked for pull in every combination, each with its own duration. Bare contact passes where nothing pulls. */
export function pullSite<R extends { readonly combination: Combination }>(ask: PullAsk<R>): CheckSite<R> {
  const { ruleId, memberId, place, capacity, unit, pull } = ask;
  const ratedIn = (r: R, note?: Note) =>
    ratedPart(capacity, 'pull', r.combination.durationFactor, note && inUnit(unit, note));
  return {
    ruleId,
    memberId,
    place,
    unit,
    applies: (r) => r.combination.purpose === 'strength',
    stops: (r) => {
      const rated = ratedIn(r);
      if (rated.ok) return null;
      const stopped = rated.verdict(pull(r));
      return stopped
        ? { ...stopped, demand: stopped.demand && quantity(stopped.demand.value, unit) }
        : judge(quantity(0, unit), quantity(1, unit), message('contactOnly'));
    },
    demand: (r, note) => pull(r, note),
    capacity: (r, note) => {
      const rated = ratedIn(r, note && toldIn(unit, note));
      return rated.ok ? rated.capacityLb : NaN;
    },
    reason: (r) => {
      const rated = ratedIn(r);
      return rated.ok ? rated.reason : null;
    },
  };
}

/** A rating along a row is typed in the same field as a force: its steps say which of the two it is. */
const toldIn =
  (unit: 'lb' | 'lb/ft', note: Note): Note =>
  (step) =>
    note({
      ...step,
      put: step.put.map((p) => (p.unit === 'lb' ? { ...p, unit } : p)),
      result: quantity(step.result.value, unit),
    });

/** A rating is typed in pounds; where it is read for each foot of a row, its step says so. */
const inUnit =
  (unit: PullAsk<never>['unit'], note: Note): Note =>
  (step) => {
    const read = (from: Unit): Unit => (from === 'lb' ? unit : from);
    note({
      ...step,
      put: step.put.map((put) => ({ ...put, unit: read(put.unit) })),
      result: quantity(step.result.value, read(step.result.unit)),
    });
  };
