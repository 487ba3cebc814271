import type { ClauseRef } from '../../data/sources.ts';
import { RULES, type RuleId } from '../../data/rules.ts';
import { checkKey, isWorse, judge, type Place, type Verdict } from '../check.ts';
import type { CheckRow } from '../evaluation.ts';
import type { Combination } from '../loads/combination.ts';
import type { Message } from '../message.ts';
import type { Note } from '../note.ts';
import { once } from '../once.ts';
import { quantity, type Unit } from '../units.ts';

/** What every response says of itself: of which combination it is. */
export interface Asked {
  readonly combination: Pick<Combination, 'id' | 'purpose' | 'durationFactor'>;
}

/** What is asked without any load: rules of size, and forces that come ready made. */
export const ASKED_ONCE: Asked = { combination: { id: '', purpose: 'strength', durationFactor: 1 } };

/**
 * One place where one rule is asked in every combination of its purpose. `demand` and `capacity` are the formulas
 * themselves: called thousands of times without a note to find the worst combination, and once with a note to tell its
 * steps.
 */
export interface CheckSite<Response extends Asked> {
  readonly ruleId: RuleId;
  readonly memberId: string;
  readonly place: Omit<Place, 'atIn'>;
  readonly unit: Unit;
  readonly clause?: ClauseRef;
  /** combinations that the rule is asked in */
  readonly purpose: Combination['purpose'];
  /** responses of its purpose in which the rule asks anything; all where it is left out */
  readonly applies?: (response: Response) => boolean;
  /** `stops` and `capacity` hear nothing of a response but its load duration: they are asked once for each */
  readonly isByDuration?: boolean;
  /** what ends the question before any number: a broken rule, past the method, a capacity nobody gave */
  readonly stops?: (response: Response) => Verdict | null;
  readonly demand: (response: Response, note?: Note) => number;
  readonly capacity: (response: Response, note?: Note) => number;
  /** where the worst section lies in this response, from the member's start [in] */
  readonly worstAt?: (response: Response) => number;
  /** a stated departure that rides along with the verdict */
  readonly reason?: (response: Response) => Message | null;
  /** how the capacity grows with the diameter while forces are held; for inches to spare */
  readonly grows?: {
    /** power of the diameter; of a column, which gains stability as well as area, the least and the most it can be */
    readonly power: Power | readonly [least: Power, most: Power];
    readonly diameterAt: (response: Response) => number;
    /** depth of flat and cuts there, which stay as deep while the wood thins; none where it is left out */
    readonly cutAt?: (response: Response) => number;
  };
}

type Power = 1 | 2 | 3 | 4;

/** A set of responses and the sites that ask of them. */
export interface CheckGroup<Response extends Asked> {
  readonly responses: readonly Response[];
  /** which of several ways of one combination a response is, as rows name it */
  readonly scenario?: (response: Response) => string;
  readonly sites: readonly CheckSite<Response>[];
}

export const siteKey = <R extends Asked>(site: CheckSite<R>): string =>
  checkKey(site.ruleId, site.memberId, site.place);

/** Verdict of a site in one response; with a note it writes the steps of the very numbers it judges. */
export function verdictAt<R extends Asked>(site: CheckSite<R>, response: R, note?: Note): Verdict {
  const stopped = site.stops?.(response) ?? null;
  if (stopped) return stopped;
  const demand = site.demand(response, note);
  const capacity = site.capacity(response, note);
  const reason = site.reason?.(response) ?? undefined;
  return judge(quantity(demand, site.unit), quantity(capacity, site.unit), reason);
}

/** True where a rule asks something of a response. */
export const isAsked = <R extends Asked>(site: CheckSite<R>, response: R): boolean =>
  response.combination.purpose === site.purpose && (site.applies === undefined || site.applies(response));

/** The responses of a group as every site of it is asked: which combination each is of, and what it is called. */
interface Roll {
  readonly combinations: readonly Asked['combination'][];
  readonly labels: () => readonly string[];
}

/** The worst of all responses as one row, with the ratio in every combination; null when the rule asks nothing here. */
function worstRow<R extends Asked>(site: CheckSite<R>, group: CheckGroup<R>, roll: Roll): CheckRow | null {
  const { responses } = group;
  const ratios = new Float64Array(responses.length).fill(NaN);
  const allowed = new Map<number, Allowance>();
  let worst: { index: number; verdict: Verdict } | null = null;
  let bestRatio = -Infinity;
  let bestIndex = -1;
  for (let i = 0; i < ratios.length; i++) {
    const { purpose, durationFactor } = roll.combinations[i]!;
    if (purpose !== site.purpose) continue;
    const response = responses[i]!;
    if (site.applies && !site.applies(response)) continue;
    let allowance = site.isByDuration ? allowed.get(durationFactor) : undefined;
    if (!allowance) {
      allowance = allowanceOf(site, response);
      if (site.isByDuration) allowed.set(durationFactor, allowance);
    }
    const { stopped, capacity } = allowance;
    if (stopped) {
      if (!worst || isWorse(stopped, worst.verdict)) worst = { index: i, verdict: stopped };
      continue;
    }
    const ratio = site.demand(response) / capacity;
    ratios[i] = ratio;
    if (Number.isNaN(ratio) || ratio > bestRatio) {
      bestRatio = Number.isNaN(ratio) ? Infinity : ratio;
      bestIndex = i;
    }
  }
  if (bestIndex >= 0) {
    const verdict = verdictAt(site, group.responses[bestIndex]!);
    if (!worst || isWorse(verdict, worst.verdict)) worst = { index: bestIndex, verdict };
  }
  if (!worst) return null;
  const response = group.responses[worst.index]!;
  const { verdict } = worst;
  const atIn = site.worstAt?.(response);
  return {
    ...verdict,
    key: siteKey(site),
    ruleId: site.ruleId,
    memberId: site.memberId,
    place: atIn === undefined ? site.place : { ...site.place, atIn },
    combinationId: response.combination.id,
    scenario: group.scenario?.(response) ?? '',
    clause: site.clause ?? RULES[site.ruleId].clause,
    ratios: {
      get labels() {
        return roll.labels();
      },
      values: ratios,
    },
    ...inWood(site, response, verdict.ratio),
    spareLb:
      verdict.demand && verdict.capacity && verdict.capacity.unit === 'lb'
        ? verdict.capacity.value - verdict.demand.value
        : null,
  };
}

interface Allowance {
  readonly stopped: Verdict | null;
  readonly capacity: number;
}

/** What a site allows in a response, or what stops it there. */
function allowanceOf<R extends Asked>(site: CheckSite<R>, response: R): Allowance {
  const stopped = site.stops?.(response) ?? null;
  return { stopped, capacity: stopped ? NaN : site.capacity(response) };
}

/**
 * Diameter to spare or missing with today's forces, and what thinning does to the ratio. Of what is cut only the depth left
 * is there to lose; where wood is missing the whole diameter grows. Where a power is known as a range, the one that leaves
 * less to spare and asks for more (safe side).
 */
function inWood<R extends Asked>(
  { grows }: CheckSite<R>,
  response: R,
  ratio: number | null,
): Pick<CheckRow, 'spareIn' | 'thins'> {
  if (!grows || ratio === null) return { spareIn: null, thins: null };
  const [least, most] = typeof grows.power === 'number' ? [grows.power, grows.power] : grows.power;
  const whole = grows.diameterAt(response);
  const left = whole - (grows.cutAt?.(response) ?? 0);
  return {
    spareIn: ratio <= 1 ? left * (1 - ratio ** (1 / most)) : whole * (1 - ratio ** (1 / least)),
    thins: { diameterIn: left, power: most },
  };
}

/** Rows of a group, in the order of its sites. */
export function rowsOf<R extends Asked>(group: CheckGroup<R>): readonly CheckRow[] {
  const roll: Roll = {
    combinations: group.responses.map((r) => r.combination),
    labels: once(() => group.responses.map((r) => `${r.combination.id}|${group.scenario?.(r) ?? ''}`)),
  };
  return group.sites.flatMap((site) => worstRow(site, group, roll) ?? []);
}

/** A row that no load decides: a value that is missing, a rule of size, a thing outside the method. */
export function plainRow(ruleId: RuleId, memberId: string, place: Place, verdict: Verdict): CheckRow {
  return {
    ...verdict,
    key: checkKey(ruleId, memberId, place),
    ruleId,
    memberId,
    place,
    combinationId: '',
    scenario: '',
    clause: RULES[ruleId].clause,
    ratios: { labels: [], values: new Float64Array(0) },
    spareIn: null,
    thins: null,
    spareLb: null,
  };
}
