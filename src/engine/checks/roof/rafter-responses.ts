import type { Combination } from '../../loads/combination.ts';
import { combine, serviceCombinations } from '../../loads/combine.ts';
import type { AtEnds, RafterRun } from '../../loads/rafter-run.ts';
import type { TwoWeights } from '../../loads/weights.ts';
import { evenBrings, sumOf, type Brings, type Influence } from './rafter-influence.ts';
import type { RafterCase, RafterLoading, Segment } from './rafter-loading.ts';
import { shakenPush } from './rafter-shaken.ts';

/** What one combination does to a rafter. Arrays run over the stations of its run, lists over its supports, low to high. */
export interface RafterResponse {
  readonly combination: Combination;
  /** loads of the combination without dead load, on each part [lb/in] */
  readonly plumbLoads: readonly AtEnds[];
  readonly windLoads: readonly AtEnds[];
  /** sagging + [lb·in] */
  readonly moments: Float64Array;
  /** on the eave's and on the ridge's side of each station [lb] */
  readonly shearsBefore: Float64Array;
  readonly shearsAfter: Float64Array;
  /** down + [in] */
  readonly sags: Float64Array;
  /** least and greatest that a support can have to hold, down + [lb] */
  readonly least: readonly number[];
  readonly greatest: readonly number[];
  /** greatest level force that a support can have to hold, either way [lb] */
  readonly level: readonly number[];
}

/**
 * All combinations of a rafter. In uplift each part's dead load counts light x 0.6 where it helps and heavy where it
 * adds to the harm, effect by effect (own rule).
 */
export function rafterResponses(loading: RafterLoading, influence: Influence, kcr: number): readonly RafterResponse[] {
  const { run, cases } = loading;
  const loadCases = cases.map((c) => c.loadCase);
  const stations = run.stationsIn.length;
  const nothing = new Float64Array(stations);
  const moments = alongRafter(loading, influence.moments);
  const shearsBefore = alongRafter(loading, influence.shearsBefore);
  const shearsAfter = alongRafter(loading, influence.shearsAfter);
  const sags = alongRafter(loading, influence.sags);
  return [...combine(loadCases), ...serviceCombinations(loadCases, kcr)].map((combination): RafterResponse => {
    const isStrength = combination.purpose === 'strength';
    const plumbLoads = combined(loading, combination, false);
    const windLoads = combined(loading, combination, true);
    const downAt = (support: number): readonly number[] =>
      influence.wind.map((way) => {
        const others = sumOf(plumbLoads, influence.plumb, support) + sumOf(windLoads, way, support);
        return withDead(combination, loading.dead, influence.plumb, support, others);
      });
    const levelAt = (support: number): number =>
      Math.max(
        shakenPush(loading.shaken, combination),
        ...influence.level.map((way) => Math.abs(sumOf(windLoads, way, support))),
      );
    const downs = isStrength ? run.supportLines.map((_, i) => downAt(i)) : [];
    return {
      combination,
      plumbLoads,
      windLoads,
      moments: isStrength ? moments(combination) : nothing,
      shearsBefore: isStrength ? shearsBefore(combination) : nothing,
      shearsAfter: isStrength ? shearsAfter(combination) : nothing,
      sags: isStrength ? nothing : sags(combination),
      least: downs.map((ways) => Math.min(...ways)),
      greatest: downs.map((ways) => Math.max(...ways)),
      level: isStrength ? run.supportLines.map((_, i) => levelAt(i)) : [],
    };
  });
}

/** Loads of a combination on each part, without dead load: its wind, or all else. */
function combined({ run, cases }: RafterLoading, { factors }: Combination, isWind: boolean): readonly AtEnds[] {
  const loads = run.parts.map(() => ({ low: 0, high: 0 }));
  for (const { caseId, factor } of factors) {
    const found = cases.find((c) => c.loadCase.id === caseId)!;
    if (found.isWind === isWind)
      found.loads.forEach(({ low, high }, part) => {
        loads[part]!.low += factor * low;
        loads[part]!.high += factor * high;
      });
  }
  return loads;
}

/** One effect along the rafter in any combination: what each case and each part's dead load bring is worked out once. */
function alongRafter({ run, cases, dead }: RafterLoading, of: Brings): (combination: Combination) => Float64Array {
  const places = run.stationsIn;
  const brought = new Map(
    cases.map(({ loadCase, loads }: RafterCase) => [
      loadCase.id,
      Float64Array.from(places, (_, at) => sumOf(loads, of, at)),
    ]),
  );
  const heavy = Float64Array.from(places, (_, at) =>
    dead.reduce((sum, d, part) => sum + d.heavy * evenBrings(of, part, at), 0),
  );
  return (combination) => {
    const out = new Float64Array(places.length);
    for (const { caseId, factor } of combination.factors) {
      const one = brought.get(caseId)!;
      for (let at = 0; at < out.length; at++) out[at]! += factor * one[at]!;
    }
    const { dead: rule } = combination;
    for (let at = 0; at < out.length; at++) {
      out[at] =
        rule.weight === 'heavy' ? out[at]! + rule.factor * heavy[at]! : withDead(combination, dead, of, at, out[at]!);
    }
    return out;
  };
}

function withDead(
  { dead: rule }: Combination,
  dead: readonly TwoWeights[],
  of: Brings,
  at: number,
  others: number,
): number {
  let sum = others;
  for (let p = 0; p < dead.length; p++) {
    const brings = evenBrings(of, p, at);
    sum += deadShare(rule, dead[p]!, brings, others) * brings;
  }
  return sum;
}

/** Dead load that counts on a part for one effect [lb/in]. */
export function deadShare(rule: Combination['dead'], dead: TwoWeights, influence: number, others: number): number {
  if (rule.weight === 'heavy') return rule.factor * dead.heavy;
  return influence * others > 0 ? dead.heavy : rule.factor * dead.light;
}

const SAME_PLACE_IN = 1e-6;

/** Places of the stations of a segment in the arrays of a response, both its ends taken. */
export function stationsOf(run: RafterRun, segment: Segment): readonly number[] {
  return run.stationsIn.flatMap((atIn, i) =>
    atIn < segment.fromIn - SAME_PLACE_IN || atIn > segment.toIn + SAME_PLACE_IN ? [] : [i],
  );
}

/** The place where a measure is greatest. */
export function worstIndex(indices: readonly number[], measure: (index: number) => number): number {
  let worst = indices[0]!;
  let most = -Infinity;
  for (const i of indices) {
    const m = measure(i);
    if (m > most) {
      most = m;
      worst = i;
    }
  }
  return worst;
}
