import type { ClauseRef } from '../data/sources.ts';
import type { RuleId } from '../data/rules.ts';
import type { Message } from './message.ts';
import type { Quantity, Unit } from './units.ts';

/** The four words (nowhere others): passes, fails, not given, outside the method. */
export type Status = 'pass' | 'fail' | 'notGiven' | 'outside';

export interface Verdict {
  readonly status: Status;
  readonly demand: Quantity | null;
  readonly capacity: Quantity | null;
  /** unrounded; null where a rule has no ratio or a number is missing */
  readonly ratio: number | null;
  readonly reason?: Message;
}

/** Demand against capacity. Finite first: nothing that is not a number can ever read as a pass. */
export function judge(demand: Quantity, capacity: Quantity, reason?: Message): Verdict {
  const because = reason ? { reason } : {};
  if (!Number.isFinite(demand.value) || !Number.isFinite(capacity.value) || !(capacity.value > 0)) {
    return {
      status: 'outside',
      demand: null,
      capacity: null,
      ratio: null,
      reason: reason ?? { code: 'notFinite', values: {} },
    };
  }
  const ratio = demand.value / capacity.value;
  return { status: ratio <= 1 ? 'pass' : 'fail', demand, capacity, ratio, ...because };
}

/**
 * Nothing is asked of what can carry nothing: bare contact that no combination pulls. It passes with a demand of zero
 * and no capacity, since there is none to show. So does a distance of which nothing is missing. Only for a demand that was
 * looked for and is zero in truth.
 */
export function asksNothing(unit: Unit, reason: Message): Verdict {
  return { status: 'pass', demand: { value: 0, unit }, capacity: null, ratio: 0, reason };
}

/** A rule without a ratio is broken: mechanism, cut too deep, nothing holds it sideways. */
export function breaks(reason: Message): Verdict {
  return { status: 'fail', demand: null, capacity: null, ratio: null, reason };
}

/** A value or a capacity that the person must supply; the demand is still shown where there is one. */
export function notGiven(reason: Message, demand: Quantity | null = null): Verdict {
  return { status: 'notGiven', demand, capacity: null, ratio: null, reason };
}

/** Past the stated range of the standard or of our own method. */
export function outside(reason: Message, demand: Quantity | null = null): Verdict {
  return { status: 'outside', demand, capacity: null, ratio: null, reason };
}

/** Where on its member a check sits; `name` is stable (built from ids), `atIn` is where the worst section was found. */
export interface Place {
  readonly kind: 'whole' | 'span' | 'overhang' | 'support' | 'end' | 'joint' | 'segment';
  /** unique within rule and member; '' for the whole member */
  readonly name: string;
  readonly atIn?: number;
}

export interface Check extends Verdict {
  /** ruleId/memberId/place: unique, stable under re-ordering */
  readonly key: string;
  readonly ruleId: RuleId;
  readonly memberId: string;
  readonly place: Place;
  /** the governing one; '' where no load is involved */
  readonly combinationId: string;
  /** brace model and flow that governed, for example `braces both ways` */
  readonly scenario: string;
  readonly clause: ClauseRef;
}

export const checkKey = (ruleId: RuleId, memberId: string, place: Place): string =>
  [ruleId, memberId, place.name === '' ? place.kind : place.name].join('/');

const SEVERITY: Record<Status, number> = { pass: 0, notGiven: 1, outside: 2, fail: 3 };

/** True when `a` must be shown before `b`: broken rules, then failing ratios, then what was not judged, then passes. */
export function isWorse(a: Verdict, b: Verdict): boolean {
  if (a.status !== b.status) return SEVERITY[a.status] > SEVERITY[b.status];
  if (a.status === 'fail' && (a.ratio === null) !== (b.ratio === null)) return a.ratio === null;
  return (a.ratio ?? a.demand?.value ?? 0) > (b.ratio ?? b.demand?.value ?? 0);
}
