import { levelReactions, windReactions } from '../../loads/rafter-reactions.ts';
import { even, type AtEnds, type RafterPart } from '../../loads/rafter-run.ts';
import type { RafterLoading } from './rafter-loading.ts';

/** What one pound per inch at an end of each part, falling to nothing at its other end, does at stations or supports. */
export type Brings = readonly AtEnds<ArrayLike<number>>[];

/** What the parts of a run bring of all that is asked of the rafter. */
export interface Influence {
  readonly moments: Brings;
  readonly shearsBefore: Brings;
  readonly shearsAfter: Brings;
  readonly sags: Brings;
  readonly plumb: Brings;
  /** one set for each way in which the level part of the wind may be held */
  readonly wind: readonly Brings[];
  /** the level part itself, in the same ways, toward the high side + */
  readonly level: readonly Brings[];
}

const SAME_PLACE_IN = 1e-6;
const NOTHING = even(0);
const UNIT: AtEnds<AtEnds> = { low: { low: 1, high: 0 }, high: { low: 0, high: 1 } };

/** Influence of every part of a rafter's run on all that is asked of it. */
export function influenceOf(loading: RafterLoading): Influence {
  const { run, plane } = loading;
  const { horizontalHeldBy: heldBy } = plane;
  const ways = heldBy === 'worse' ? ['each-square', ...run.supportLines] : [heldBy];
  const unit = (part: number, end: keyof AtEnds): AtEnds[] =>
    run.parts.map((_, i) => (i === part ? UNIT[end] : NOTHING));
  const perEnd = (of: (part: number, end: keyof AtEnds) => readonly number[]): Brings =>
    run.parts.map((_, part) => ({ low: of(part, 'low'), high: of(part, 'high') }));
  return {
    moments: run.moments,
    ...shearsOf(loading),
    sags: run.sags,
    plumb: perEnd((part, end) => run.reactions.map((perPart) => perPart[part]![end] / run.cos)),
    wind: ways.map((way) => perEnd((part, end) => windReactions(run, unit(part, end), way).map((r) => r.downLb))),
    level: ways.map((way) => perEnd((part, end) => levelReactions(run, unit(part, end), way))),
  };
}

/** Shear on both sides of every station by statics from the eave: reactions passed less load passed. */
function shearsOf({ run, supportsAtIn }: RafterLoading): Pick<Influence, 'shearsBefore' | 'shearsAfter'> {
  const shears = (isPassed: (supportIn: number, station: number) => boolean): Brings => {
    const along = (part: number, end: keyof AtEnds): Float64Array =>
      Float64Array.from(run.stationsIn, (station) => {
        const held = supportsAtIn.reduce(
          (sum, at, i) => (isPassed(at, station) ? sum + run.reactions[i]![part]![end] : sum),
          0,
        );
        return held - loadBefore(run.parts[part]!, end, station);
      });
    return run.parts.map((_, part) => ({ low: along(part, 'low'), high: along(part, 'high') }));
  };
  return {
    shearsBefore: shears((at, station) => at < station - SAME_PLACE_IN),
    shearsAfter: shears((at, station) => at < station + SAME_PLACE_IN),
  };
}

/** How much of one pound per inch at an end of a part lies on the eave's side of a station [lb]. */
function loadBefore({ fromIn, toIn }: RafterPart, end: keyof AtEnds, station: number): number {
  const lengthIn = toIn - fromIn;
  const passedIn = Math.min(Math.max(station - fromIn, 0), lengthIn);
  const rising = passedIn ** 2 / (2 * lengthIn);
  return end === 'high' ? rising : passedIn - rising;
}

/** Sum of what loads on the parts bring to one place. */
export function sumOf(loads: readonly AtEnds[], of: Brings, at: number): number {
  let sum = 0;
  for (let p = 0; p < loads.length; p++) sum += loads[p]!.low * of[p]!.low[at]! + loads[p]!.high * of[p]!.high[at]!;
  return sum;
}

/** What an even load on a part brings to one place. */
export const evenBrings = (of: Brings, part: number, at: number): number => of[part]!.low[at]! + of[part]!.high[at]!;
