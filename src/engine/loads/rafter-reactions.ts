import { even, type AtEnds, type RafterPart, type RafterRun } from './rafter-run.ts';

/** A pressure on a part: a number where it is even [psf]. */
export type Pressure = number | AtEnds;

/** Pressures on a part of the roof: plumb on the level projection, and square to the slope [psf]. */
export interface PartPressure {
  readonly plumbPsf: Pressure;
  readonly squarePsf: Pressure;
}

/** A pressure at both ends of a part [psf]. */
export const atEnds = (pressure: Pressure): AtEnds => (typeof pressure === 'number' ? even(pressure) : pressure);

/** Per-inch load square to the slope on each part, for a width of roof [lb/in]. */
export function squareLoads(
  run: RafterRun,
  widthIn: number,
  pressure: (part: number) => PartPressure,
  kind: keyof PartPressure,
): readonly AtEnds[] {
  const perPsf = kind === 'plumbPsf' ? (run.cos * run.cos * widthIn) / 144 : widthIn / 144;
  return run.parts.map((_, i) => {
    const { low, high } = atEnds(pressure(i)[kind]);
    return { low: low * perPsf, high: high * perPsf };
  });
}

/** Sum of a load on a part [lb]. */
const wholeLoad = (part: RafterPart, load: AtEnds): number => ((load.low + load.high) / 2) * (part.toIn - part.fromIn);

const sumOn = (run: RafterRun, loads: readonly AtEnds[]): number =>
  run.parts.reduce((sum, part, i) => sum + wholeLoad(part, loads[i]!), 0);

/** Reactions square to the slope at each support, low to high, for a load on each part [lb]. */
function squareReactions(run: RafterRun, loads: readonly AtEnds[]): readonly number[] {
  return run.reactions.map((perPart) =>
    perPart.reduce((sum, r, i) => sum + r.low * loads[i]!.low + r.high * loads[i]!.high, 0),
  );
}

export interface LineReaction {
  readonly line: string;
  readonly downLb: number;
}

/** Plumb loads rest on plumb supports: nothing pushes sideways, the part along the slope is in the rafter itself. */
export function plumbReactions(run: RafterRun, loads: readonly AtEnds[]): readonly LineReaction[] {
  return squareReactions(run, loads).map((r, i) => ({ line: run.supportLines[i]!, downLb: r / run.cos }));
}

/**
 * Wind is square to the slope, so some support must hold its level part; that changes the plumb reactions too
 * (a quarter at 6 in 12).
 * @param heldBy a line, every support square to the slope, or for each line the worse of the possible ones
 * @source MECHANICS equilibrium of a straight member whose far supports are plumb
 */
export function windReactions(run: RafterRun, loads: readonly AtEnds[], heldBy: string): readonly LineReaction[] {
  const square = squareReactions(run, loads);
  const total = sumOn(run, loads);
  const plumbElsewhere = square.map((r) => r / run.cos);
  const ownSquare = square.map((r) => r * run.cos);
  const heldHere = square.map(
    (_, i) => total * run.cos - plumbElsewhere.reduce((sum, v, j) => (j === i ? sum : sum + v), 0),
  );
  return square.map((_, i) => {
    const line = run.supportLines[i]!;
    if (heldBy === 'each-square') return { line, downLb: ownSquare[i]! };
    if (heldBy === line) return { line, downLb: heldHere[i]! };
    if (heldBy !== 'worse') return { line, downLb: plumbElsewhere[i]! };
    return { line, downLb: strongest([ownSquare[i]!, heldHere[i]!, plumbElsewhere[i]!]) };
  });
}

const strongest = (values: readonly number[]): number =>
  values.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);

/** A reaction this small beside the worst one is zero but for rounding. */
const ROUNDING = 1e-9;

/**
 * What `worse` leaves out on steep roofs: the strongest reaction of the other sign that some way of holding gives a line;
 * zero where every way presses, or every way lifts.
 */
export function opposedWindReactions(run: RafterRun, loads: readonly AtEnds[]): readonly LineReaction[] {
  const ways = ['each-square', ...run.supportLines].map((way) => windReactions(run, loads, way));
  return windReactions(run, loads, 'worse').map(({ line, downLb: worst }, i) => {
    const opposed = ways.map((way) => way[i]!.downLb).filter((v) => v * worst < -ROUNDING * worst * worst);
    return { line, downLb: strongest(opposed) };
  });
}

/** True where a line is said to hold the level part of the wind on a plane, or may have to. */
export const mayHoldLevel = (heldBy: string, line: string): boolean =>
  heldBy === 'worse' || heldBy === 'each-square' || heldBy === line;

/**
 * Level force on each support, low to high, toward the high side +: the whole level part on the line that holds it, or
 * its own square share on each.
 * @param heldBy a line, or every support square to the slope
 * @returns forces [lb]
 * @source MECHANICS level part of a force square to the slope
 */
export function levelReactions(run: RafterRun, loads: readonly AtEnds[], heldBy: string): readonly number[] {
  if (heldBy === 'each-square') return squareReactions(run, loads).map((r) => r * run.sin);
  const whole = levelPart(run, loads);
  return run.supportLines.map((line) => (line === heldBy ? whole : 0));
}

/** Level part of a load square to the slope: what presses on a roof pushes it toward its high side [lb]. */
export function levelPart(run: RafterRun, loads: readonly AtEnds[]): number {
  return run.sin * sumOn(run, loads);
}
