import type { RuleId } from '../../data/rules.ts';
import type { CheckRow } from '../evaluation.ts';

type Thinning = Pick<CheckRow, 'ruleId' | 'status' | 'ratio' | 'thins' | 'spareIn'>;

/** What thinner wood makes worse too, but by no plain power of its diameter: contacts, net sections, push with bending. */
const OF_THE_WOOD: ReadonlySet<RuleId> = new Set<RuleId>([
  'beam.endNotch',
  'beam.cuts',
  'beam.seat',
  'beam.rolling',
  'rafter.seat',
  'brace.pull',
  'brace.slender',
  'brace.bearing',
  'brace.shoulder',
  'brace.shoulderShear',
  'post.slender',
  'post.endGrain',
  'post.bending',
  'post.tension',
  'post.housing',
]);

/** How well a log was measured, seen by the checks that hang on its diameter; each figure with the row that gives it. */
export interface Measured<Row> {
  /** greatest ratio with the diameter as typed */
  readonly asTyped: { readonly row: Row; readonly ratio: number };
  /** greatest ratio at the worst end of the error of measurement */
  readonly atWorst: { readonly row: Row; readonly ratio: number };
  /** diameter that may be lost before the first of them reaches 1; below zero where one is past it already [in] */
  readonly mayLose: { readonly row: Row; readonly inches: number };
  /** the worst judged row that hangs on the wood by no plain power of its diameter: none of the figures speaks for it */
  readonly leftOut: Row | null;
}

/**
 * Ratio of a check if the wood were thinner while its forces are held; where it is cut, by the depth that is left.
 * @param lessIn taken off the diameter [in]; not below zero
 * @returns the ratio; Infinity where nothing would be left; null where the check does not hang on a diameter
 * @source own rule: forces held; the power of the diameter is that of the capacity (area 2, section modulus 3, stiffness 4)
 */
export function ratioIfThinner({ ratio, thins }: Pick<CheckRow, 'ratio' | 'thins'>, lessIn: number): number | null {
  if (ratio === null || thins === null) return null;
  const left = thins.diameterIn - lessIn;
  return left > 0 ? ratio * (thins.diameterIn / left) ** thins.power : Infinity;
}

/**
 * What the error of measurement and a loss of wood (peeling, shaping, decay) do to the checks of one member.
 * @param rows checks of the member, judged or not: only passing and failing ones with a diameter count
 * @param errorIn stated error of its diameters [in]
 * @returns null where no check hangs on a diameter
 */
export function measuredBy<Row extends Thinning>(rows: readonly Row[], errorIn: number): Measured<Row> | null {
  const judged = rows.filter(({ status }) => status === 'pass' || status === 'fail');
  const thinning = judged.flatMap((row) => {
    const [ratio, worst] = [ratioIfThinner(row, 0), ratioIfThinner(row, errorIn)];
    return ratio === null || worst === null || row.spareIn === null ? [] : [{ row, ratio, worst, inches: row.spareIn }];
  });
  if (thinning.length === 0) return null;
  const asTyped = thinning.reduce((a, b) => (b.ratio > a.ratio ? b : a));
  const atWorst = thinning.reduce((a, b) => (b.worst > a.worst ? b : a));
  const mayLose = thinning.reduce((a, b) => (b.inches < a.inches ? b : a));
  const others = judged.filter((row) => row.thins === null && row.ratio !== null && OF_THE_WOOD.has(row.ruleId));
  return {
    asTyped: { row: asTyped.row, ratio: asTyped.ratio },
    atWorst: { row: atWorst.row, ratio: atWorst.worst },
    mayLose: { row: mayLose.row, inches: mayLose.inches },
    leftOut: others.length === 0 ? null : others.reduce((a, b) => ((b.ratio ?? 0) > (a.ratio ?? 0) ? b : a)),
  };
}
