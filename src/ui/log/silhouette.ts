import { hatchStrokes } from '../drawing/outline.ts';
import type { Point } from '../drawing/paper.ts';
import type { Sketch } from '../drawing/sketch.ts';

/** A place along a log: how thick it is there and how thick it would have to be [in]. */
export interface Needed {
  readonly atIn: number;
  readonly hasIn: number;
  readonly needsIn: number;
  /** the drawn outline is cut off: still more is needed */
  readonly isMore?: boolean;
}

/** The inches of wood that are missing at a place. */
export interface Missing {
  readonly atIn: number;
  readonly inches: number;
  readonly isMore: boolean;
}

/** A log on the paper: its surface on either side, moved outward by some inches. */
export type Surface = (atIn: number, side: 1 | -1, outIn: number) => Point;

/** What is needed at a place between two others, straight between them. */
function at(a: Needed, b: Needed, atIn: number): Needed {
  const t = (atIn - a.atIn) / (b.atIn - a.atIn);
  return { atIn, hasIn: a.hasIn + t * (b.hasIn - a.hasIn), needsIn: a.needsIn + t * (b.needsIn - a.needsIn) };
}

/** The places of a stretch, with its two ends put in where they fall between places. */
export function between(places: readonly Needed[], fromIn: number, toIn: number): readonly Needed[] {
  return places.flatMap((place, i) => {
    const before = places[i - 1];
    const ends = before ? [fromIn, toIn].filter((end) => before.atIn < end && end < place.atIn) : [];
    const cut = before ? ends.map((end) => at(before, place, end)) : [];
    return place.atIn >= fromIn && place.atIn <= toIn ? [...cut, place] : cut;
  });
}

/** Places where what is needed can be drawn, in unbroken runs: a place with no answer breaks the line. */
export function runsOf(places: readonly Needed[]): readonly (readonly Needed[])[] {
  const runs: Needed[][] = [];
  let open: Needed[] | null = null;
  for (const place of places) {
    if (!Number.isFinite(place.needsIn)) {
      open = null;
    } else if (open) {
      open.push(place);
    } else {
      open = [place];
      runs.push(open);
    }
  }
  return runs.filter((run) => run.length > 1);
}

/** Where more is needed than is there, with the places where it begins and ends. */
export function missingRuns(run: readonly Needed[]): readonly (readonly Needed[])[] {
  const lacks = ({ hasIn, needsIn }: Needed): number => needsIn - hasIn;
  const found: Needed[][] = [];
  let open: Needed[] | null = null;
  run.forEach((place, i) => {
    const before = run[i - 1];
    if (before && lacks(before) > 0 !== lacks(place) > 0) {
      const t = lacks(before) / (lacks(before) - lacks(place));
      const hasIn = before.hasIn + t * (place.hasIn - before.hasIn);
      const edge = { atIn: before.atIn + t * (place.atIn - before.atIn), hasIn, needsIn: hasIn };
      if (open) {
        open.push(edge);
        open = null;
      } else {
        open = [edge];
        found.push(open);
      }
    }
    if (lacks(place) <= 0) return;
    if (open) open.push(place);
    else found.push((open = [place]));
  });
  return found;
}

/** The place with the most inches missing; null where nothing is. */
export function mostMissing(places: readonly Needed[]): Missing | null {
  let worst: Missing | null = null;
  for (const { atIn, hasIn, needsIn, isMore = false } of places) {
    const inches = needsIn - hasIn;
    if (Number.isFinite(inches) && inches > (worst?.inches ?? 0)) worst = { atIn, inches, isMore };
  }
  return worst;
}

const SIDES = [1, -1] as const;
/** Distance between strokes of what is missing, in text sizes. */
const APART = 0.28;

/** Draws what is needed inside the log's outline; where it pokes out, the wood that is missing is hatched. */
export function drawNeeded(
  sketch: Sketch,
  places: readonly Needed[],
  surface: Surface,
  ink: 'least-line' | 'whole-line',
): void {
  for (const run of runsOf(places)) {
    for (const side of SIDES) {
      const edge = (p: Needed): Point => surface(p.atIn, side, (p.needsIn - p.hasIn) / 2);
      sketch.line(run.map(edge), ink);
      for (const missing of missingRuns(run)) {
        const lobe = [...missing.map(edge), ...missing.toReversed().map((p) => surface(p.atIn, side, 0))];
        for (const stroke of hatchStrokes(lobe, APART * sketch.view.paper.textSize)) {
          sketch.line(stroke, 'missing');
        }
      }
    }
  }
}
