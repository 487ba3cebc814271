import type { RuleId } from '../../data/rules.ts';
import type { CheckRow } from '../evaluation.ts';
import type { AskedSection } from './asked-section.ts';

type Thinning = Pick<CheckRow, 'ruleId' | 'status' | 'ratio' | 'thins' | 'spareIn'>;

/** What thinner wood makes worse by no plain power of its diameter, and no section of it is asked: contacts, slenderness. */
const OF_THE_WOOD: ReadonlySet<RuleId> = new Set<RuleId>([
  'beam.seat',
  'beam.rolling',
  'rafter.seat',
  'purlin.seat',
  'brace.slender',
  'brace.bearing',
  'brace.shoulder',
  'brace.shoulderShear',
  'post.slender',
  'post.endGrain',
  'tie.slender',
  'tie.push',
]);

interface AtRatio {
  readonly ruleId: RuleId;
  readonly ratio: number;
}

/** How well a log was measured, seen by the checks that hang on its diameter; each figure with the rule that gives it. */
export interface Measured {
  /** greatest ratio with the diameter as typed */
  readonly asTyped: AtRatio;
  /** greatest ratio at the worst end of the error of measurement */
  readonly atWorst: AtRatio;
  /** diameter that may be lost before the first of them reaches 1; below zero where one is past it already [in] */
  readonly mayLose: { readonly ruleId: RuleId; readonly inches: number };
  /** the worst judged row that hangs on the wood and that none of the figures speaks for */
  readonly leftOut: AtRatio | null;
  /** rules that break it without a ratio, whatever its diameter, each once */
  readonly broken: readonly RuleId[];
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
 * What the error of measurement and a loss of wood (peeling, shaping, decay) do to the checks of one member: of its
 * sections by the sums that judge them, of the whole of it by the power of the diameter of each check.
 * @param rows checks of the member, judged or not: only passing and failing ones with a diameter count
 * @param sections what its sections are asked, place by place
 * @param errorIn stated error of its diameters [in]
 * @returns null where no section of it was asked
 * @source own rule: forces held
 */
export function measuredBy(
  rows: readonly Thinning[],
  sections: readonly (AskedSection | null)[],
  errorIn: number,
): Measured | null {
  const asked = sections.filter((section) => section !== null);
  if (asked.length === 0) return null;
  const judged = rows.filter(({ status }) => status === 'pass' || status === 'fail');
  const hardest = (lessIn: number): AtRatio =>
    most([
      ...judged.flatMap((row) => {
        const ratio = ratioIfThinner(row, lessIn);
        return ratio === null ? [] : [{ ruleId: row.ruleId, ratio }];
      }),
      ...asked.map((section) => section.hardestAt(section.hasIn - lessIn)),
    ]);
  const ofRows = judged.flatMap(({ ruleId, spareIn }) => (spareIn === null ? [] : [{ ruleId, inches: spareIn }]));
  const others = judged.flatMap(({ ruleId, ratio, thins }) =>
    thins === null && ratio !== null && OF_THE_WOOD.has(ruleId) ? [{ ruleId, ratio }] : [],
  );
  return {
    asTyped: hardest(0),
    atWorst: hardest(errorIn),
    mayLose: asked.reduce<Spare>(
      (least, section) => spareOf(section, least),
      ofRows.reduce((a, b) => (b.inches < a.inches ? b : a), ALL_OF_IT),
    ),
    leftOut: others.length === 0 ? null : most(others),
    broken: [...new Set(judged.flatMap(({ ruleId, ratio }) => (ratio === null ? [ruleId] : [])))],
  };
}

const most = (figures: readonly AtRatio[]): AtRatio =>
  figures.reduce((a, b) => (Number.isNaN(b.ratio) || b.ratio > a.ratio ? b : a));

type Spare = Measured['mayLose'];

/** Before anything is asked; the first section that is puts its own in its place. */
const ALL_OF_IT: Spare = { ruleId: 'log.limits', inches: Infinity };

/**
 * What one place may lose where that is less than what others may; nothing where a rule refuses it or no thickness would
 * do. The search for the least diameter is left out where the place passes with what the others may lose.
 */
function spareOf({ refusedBy, hasIn, hardestAt, leastIn }: AskedSection, least: Spare): Spare {
  if (refusedBy) return { ruleId: refusedBy, inches: -Infinity };
  if (least.inches === -Infinity || hardestAt(hasIn - least.inches).ratio <= 1) return least;
  const needsIn = leastIn();
  return { ruleId: hardestAt(Math.min(needsIn, hasIn)).ruleId, inches: hasIn - needsIn };
}
