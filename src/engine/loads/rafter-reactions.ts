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

/** Load square to the slope that a pound per square foot makes on a width of roof [lb/in]. */
export const loadPerPsf = (run: RafterRun, widthIn: number, kind: keyof PartPressure): number =>
  kind === 'plumbPsf' ? (run.cos * run.cos * widthIn) / 144 : widthIn / 144;

/** Per-inch load square to the slope on each part, for a width of roof [lb/in]. */
export function squareLoads(
  run: RafterRun,
  widthIn: number,
  pressure: (part: number) => PartPressure,
  kind: keyof PartPressure,
): readonly AtEnds[] {
  const perPsf = loadPerPsf(run, widthIn, kind);
  return run.parts.map((_, i) => {
    const { low, high } = atEnds(pressure(i)[kind]);
    return { low: low * perPsf, high: high * perPsf };
  });
}

/** What a load brings to a rafter's supports square to the slope, from which every reaction of one of them follows [lb]. */
export interface SupportSums {
  /** to this support */
  readonly own: number;
  /** to all others */
  readonly others: number;
  /** the load itself */
  readonly whole: number;
}

/** Sums of a load given at both ends of each part [lb/in], for one support. */
export function sumsAt(
  run: RafterRun,
  support: number,
  low: (part: number) => number,
  high: (part: number) => number,
): SupportSums {
  let own = 0;
  let others = 0;
  let whole = 0;
  for (let part = 0; part < run.parts.length; part++) {
    const { fromIn, toIn } = run.parts[part]!;
    const atLow = low(part);
    const atHigh = high(part);
    if (atLow === 0 && atHigh === 0) continue;
    whole += ((atLow + atHigh) / 2) * (toIn - fromIn);
    for (let i = 0; i < run.reactions.length; i++) {
      const shares = run.reactions[i]![part]!;
      const lb = shares.low * atLow + shares.high * atHigh;
      if (i === support) own += lb;
      else others += lb;
    }
  }
  return { own, others, whole };
}

/** Sums for every support of loads listed part by part. */
const listedSums = (run: RafterRun, loads: readonly AtEnds[]): readonly SupportSums[] =>
  run.supportLines.map((_, support) =>
    sumsAt(
      run,
      support,
      (part) => loads[part]!.low,
      (part) => loads[part]!.high,
    ),
  );

export interface LineReaction {
  readonly line: string;
  readonly downLb: number;
}

/** Plumb reaction of a plumb load: nothing pushes sideways, the part along the slope is in the rafter itself [lb]. */
export const plumbAt = (run: RafterRun, { own }: SupportSums): number => own / run.cos;

/** Plumb loads rest on plumb supports. */
export const plumbReactions = (run: RafterRun, loads: readonly AtEnds[]): readonly LineReaction[] =>
  listedSums(run, loads).map((sums, i) => ({ line: run.supportLines[i]!, downLb: plumbAt(run, sums) }));

/** Plumb reaction of wind at a support: each square to the slope, the level part held here, or held elsewhere [lb]. */
const waysAt = (run: RafterRun, { own, others, whole }: SupportSums): readonly [number, number, number] => [
  own * run.cos,
  whole * run.cos - others / run.cos,
  own / run.cos,
];

/**
 * Wind is square to the slope, so some support must hold its level part; that changes the plumb reactions too
 * (a quarter at 6 in 12).
 * @param line   of the support that the sums are of
 * @param heldBy a line, every support square to the slope, or for each line the worse of the possible ones
 * @returns plumb reaction, down + [lb]
 * @source MECHANICS equilibrium of a straight member whose far supports are plumb
 */
export function windAt(run: RafterRun, sums: SupportSums, line: string, heldBy: string): number {
  const [square, here, elsewhere] = waysAt(run, sums);
  if (heldBy === 'each-square') return square;
  if (heldBy === line) return here;
  if (heldBy !== 'worse') return elsewhere;
  return stronger(stronger(square, here), elsewhere);
}

export const windReactions = (run: RafterRun, loads: readonly AtEnds[], heldBy: string): readonly LineReaction[] =>
  listedSums(run, loads).map((sums, i) => {
    const line = run.supportLines[i]!;
    return { line, downLb: windAt(run, sums, line, heldBy) };
  });

/** The one farther from zero, the first where both are as far. */
const stronger = (a: number, b: number): number => (Math.abs(b) > Math.abs(a) ? b : a);

/** A reaction this small beside the worst one is zero but for rounding. */
const ROUNDING = 1e-9;

/**
 * What `worse` leaves out on steep roofs: the strongest reaction of the other sign that some way of holding gives a line;
 * zero where every way presses, or every way lifts [lb].
 */
export function opposedWindAt(run: RafterRun, sums: SupportSums): number {
  const ways = waysAt(run, sums);
  const worst = ways.reduce(stronger);
  return ways.reduce((found, v) => (v * worst < -ROUNDING * worst * worst ? stronger(found, v) : found), 0);
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
  if (heldBy === 'each-square') return listedSums(run, loads).map(({ own }) => own * run.sin);
  const whole = levelPart(run, loads);
  return run.supportLines.map((line) => (line === heldBy ? whole : 0));
}

/** Level part of a load square to the slope: what presses on a roof pushes it toward its high side [lb]. */
export function levelPart(run: RafterRun, loads: readonly AtEnds[]): number {
  const whole = (part: RafterPart, { low, high }: AtEnds): number => ((low + high) / 2) * (part.toIn - part.fromIn);
  return run.sin * run.parts.reduce((sum, part, i) => sum + whole(part, loads[i]!), 0);
}
