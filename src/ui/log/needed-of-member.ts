import { wholeMemberShare } from '../../engine/checks/whole-member.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import { shapedEnds } from '../../engine/cuts-of-member.ts';
import { diameterAt } from '../../engine/geometry/shelter.ts';
import { stickOfMember } from '../../engine/section-of-member.ts';
import { thinnestLogs } from '../../engine/thinnest.ts';
import { between, mostMissing, type Missing, type Needed } from './silhouette.ts';

/** How thick a member's log would have to be with today's forces, from the member's start. */
export interface NeededOfMember {
  /** by its sections, station by station; empty where the engine has no answer for such a piece */
  readonly bySection: readonly Needed[];
  /** by the checks of the whole member; empty where none was judged */
  readonly byWhole: readonly Needed[];
  /** the check that asks for the whole */
  readonly wholeRow: CheckRow | null;
  /** the most inches that are missing anywhere */
  readonly missing: Missing | null;
}

const NOTHING: NeededOfMember = { bySection: [], byWhole: [], wholeRow: null, missing: null };
/** No outline is drawn thicker than so many times the log: beyond that another log is meant. */
const THICKEST_SHARE = 1.5;

export function neededOf(evaluation: Evaluation, memberId: string): NeededOfMember {
  const stick = stickOfMember(evaluation.shelter, memberId);
  if (stick?.kind !== 'round') return NOTHING;
  const thinnest = thinnestLogs(evaluation).find((m) => m.memberId === memberId);
  const bySection = (thinnest?.atIn ?? []).flatMap((atIn, i): Needed[] => {
    const hasIn = diameterAt(stick, atIn);
    const needsIn = thinnest?.leastDiameterIn[i];
    return hasIn === null || needsIn === undefined ? [] : [drawable(atIn, hasIn, needsIn ?? NaN)];
  });
  const whole = wholeMemberShare(evaluation.checks.filter((row) => row.memberId === memberId));
  const byWhole = whole
    ? stick.profile.map(({ atIn, diameterIn }) => drawable(atIn, diameterIn, whole.share * diameterIn))
    : [];
  const lacks = [mostMissing(bySection), whole && missingOfWhole(whole.row, byWhole)].filter((m) => m !== null);
  const missing = lacks.length === 0 ? null : lacks.reduce((a, b) => (b.inches > a.inches ? b : a));
  const needed = { bySection, byWhole, wholeRow: whole?.row ?? null, missing };
  const [lower, upper] = shapedEnds(evaluation.shelter, memberId);
  return lower && upper ? neededBetween(needed, lower.atIn, upper.atIn) : needed;
}

/** The same of a stretch of it; what is missing beyond is told at the nearer end. */
export function neededBetween(needed: NeededOfMember, fromIn: number, toIn: number): NeededOfMember {
  const { bySection, byWhole, missing } = needed;
  return {
    ...needed,
    bySection: between(bySection, fromIn, toIn),
    byWhole: between(byWhole, fromIn, toIn),
    missing: missing && { ...missing, atIn: Math.min(Math.max(missing.atIn, fromIn), toIn) },
  };
}

const drawable = (atIn: number, hasIn: number, needsIn: number): Needed => {
  const mostIn = THICKEST_SHARE * hasIn;
  return Number.isFinite(needsIn) && needsIn > mostIn
    ? { atIn, hasIn, needsIn: mostIn, isMore: true }
    : { atIn, hasIn, needsIn };
};

/** As the check itself says it, where it says where. */
function missingOfWhole({ spareIn, place }: CheckRow, byWhole: readonly Needed[]): Missing | null {
  if (spareIn === null || place.atIn === undefined || byWhole.some(({ isMore }) => isMore)) return mostMissing(byWhole);
  return spareIn < 0 ? { atIn: place.atIn, inches: -spareIn, isMore: false } : null;
}
