import type { Combination } from '../../loads/combination.ts';
import { combine, serviceCombinations } from '../../loads/combine.ts';
import { levelReactions, windReactions } from '../../loads/rafter-reactions.ts';
import type { RafterRun } from '../../loads/rafter-run.ts';
import type { TwoWeights } from '../../loads/weights.ts';
import type { RafterLoading, Segment } from './rafter-loading.ts';

/** What one combination does to a rafter. Arrays run over the stations of its run, lists over its supports, low to high. */
export interface RafterResponse {
  readonly combination: Combination;
  /** loads of the combination without dead load, on each part [lb/in] */
  readonly plumbLoads: readonly number[];
  readonly windLoads: readonly number[];
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

/** What one pound per inch on each part does: [part][station] or [part][support]. */
export interface Influence {
  readonly moments: readonly ArrayLike<number>[];
  readonly shearsBefore: readonly ArrayLike<number>[];
  readonly shearsAfter: readonly ArrayLike<number>[];
  readonly sags: readonly ArrayLike<number>[];
  readonly plumb: readonly ArrayLike<number>[];
  /** one set for each way in which the level part of the wind may be held */
  readonly wind: readonly (readonly ArrayLike<number>[])[];
  /** the level part itself, in the same ways, toward the high side + */
  readonly level: readonly (readonly ArrayLike<number>[])[];
}

/** Influence of every part of a rafter's run on all that is asked of it. */
export function influenceOf(loading: RafterLoading): Influence {
  const { run, plane } = loading;
  const unit = (part: number): number[] => run.parts.map((_, i) => (i === part ? 1 : 0));
  const { horizontalHeldBy: heldBy } = plane;
  const ways = heldBy === 'worse' ? ['each-square', ...run.supportLines] : [heldBy];
  return {
    moments: run.moments,
    ...shearsOf(loading),
    sags: run.sags,
    plumb: run.parts.map((_, p) => run.reactions.map((perPart) => perPart[p]! / run.cos)),
    wind: ways.map((way) => run.parts.map((_, p) => windReactions(run, unit(p), way).map((r) => r.downLb))),
    level: ways.map((way) => run.parts.map((_, p) => levelReactions(run, unit(p), way))),
  };
}

/** Shear on both sides of every station by statics from the eave: reactions passed less load passed. */
function shearsOf({ run, supportsAtIn }: RafterLoading): Pick<Influence, 'shearsBefore' | 'shearsAfter'> {
  const passed = (part: number, station: number, isReached: (supportIn: number) => boolean): number => {
    const { fromIn, toIn } = run.parts[part]!;
    const load = Math.min(Math.max(station - fromIn, 0), toIn - fromIn);
    const held = supportsAtIn.reduce((sum, at, i) => (isReached(at) ? sum + run.reactions[i]![part]! : sum), 0);
    return held - load;
  };
  const perPart = (side: (part: number, station: number) => number): readonly Float64Array[] =>
    run.parts.map((_, part) => Float64Array.from(run.stationsIn, (s) => side(part, s)));
  return {
    shearsBefore: perPart((part, s) => passed(part, s, (at) => at < s - SAME_PLACE_IN)),
    shearsAfter: perPart((part, s) => passed(part, s, (at) => at < s + SAME_PLACE_IN)),
  };
}

const SAME_PLACE_IN = 1e-6;

/**
 * All combinations of a rafter. In uplift each part's dead load counts light x 0.6 where it helps and heavy where it
 * adds to the harm, effect by effect (own rule).
 */
export function rafterResponses(loading: RafterLoading, influence: Influence, kcr: number): readonly RafterResponse[] {
  const { run, cases, dead } = loading;
  const loadCases = cases.map((c) => c.loadCase);
  const byId = new Map(cases.map((c) => [c.loadCase.id, c]));
  const stations = run.stationsIn.length;
  const nothing = new Float64Array(stations);
  return [...combine(loadCases), ...serviceCombinations(loadCases, kcr)].map((combination): RafterResponse => {
    const plumbLoads = run.parts.map(() => 0);
    const windLoads = run.parts.map(() => 0);
    for (const { caseId, factor } of combination.factors) {
      const found = byId.get(caseId)!;
      const into = found.isWind ? windLoads : plumbLoads;
      found.loads.forEach((load, part) => (into[part]! += factor * load));
    }
    const loads = plumbLoads.map((load, part) => load + windLoads[part]!);
    const along = (of: readonly ArrayLike<number>[]): Float64Array => {
      const out = new Float64Array(stations);
      for (let s = 0; s < stations; s++) out[s] = withDead(combination, dead, of, s, sumOf(loads, of, s));
      return out;
    };
    const isStrength = combination.purpose === 'strength';
    const downAt = (support: number): readonly number[] =>
      influence.wind.map((way) => {
        const others = sumOf(plumbLoads, influence.plumb, support) + sumOf(windLoads, way, support);
        return withDead(combination, dead, influence.plumb, support, others);
      });
    const levelAt = (support: number): number =>
      Math.max(...influence.level.map((way) => Math.abs(sumOf(windLoads, way, support))));
    const downs = isStrength ? run.supportLines.map((_, i) => downAt(i)) : [];
    return {
      combination,
      plumbLoads,
      windLoads,
      moments: isStrength ? along(influence.moments) : nothing,
      shearsBefore: isStrength ? along(influence.shearsBefore) : nothing,
      shearsAfter: isStrength ? along(influence.shearsAfter) : nothing,
      sags: isStrength ? nothing : along(influence.sags),
      least: downs.map((ways) => Math.min(...ways)),
      greatest: downs.map((ways) => Math.max(...ways)),
      level: isStrength ? run.supportLines.map((_, i) => levelAt(i)) : [],
    };
  });
}

export function sumOf(loads: readonly number[], of: readonly ArrayLike<number>[], at: number): number {
  let sum = 0;
  for (let p = 0; p < loads.length; p++) sum += loads[p]! * of[p]![at]!;
  return sum;
}

function withDead(
  { dead: rule }: Combination,
  dead: readonly TwoWeights[],
  of: readonly ArrayLike<number>[],
  at: number,
  others: number,
): number {
  let sum = others;
  for (let p = 0; p < dead.length; p++) sum += deadShare(rule, dead[p]!, of[p]![at]!, others) * of[p]![at]!;
  return sum;
}

/** Dead load that counts on a part for one effect [lb/in]. */
export function deadShare(rule: Combination['dead'], dead: TwoWeights, influence: number, others: number): number {
  if (rule.weight === 'heavy') return rule.factor * dead.heavy;
  return influence * others > 0 ? dead.heavy : rule.factor * dead.light;
}

export const isStrength = (r: RafterResponse): boolean => r.combination.purpose === 'strength';

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
