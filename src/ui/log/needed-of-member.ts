import { wholeMemberShare } from '../../engine/checks/whole-member.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import { diameterAt } from '../../engine/geometry/shelter.ts';
import { stickOfMember } from '../../engine/section-of-member.ts';
import type { Needed } from './silhouette.ts';

/** How thick a member's log would have to be with today's forces, from the member's start. */
export interface NeededOfMember {
  /** by its sections, station by station; empty where the engine has no answer for such a piece */
  readonly bySection: readonly Needed[];
  /** by the checks of the whole member; empty where none was judged */
  readonly byWhole: readonly Needed[];
  /** the check that asks for the whole */
  readonly wholeRow: CheckRow | null;
}

const NOTHING: NeededOfMember = { bySection: [], byWhole: [], wholeRow: null };

export function neededOf(evaluation: Evaluation, memberId: string): NeededOfMember {
  const stick = stickOfMember(evaluation.shelter, memberId);
  if (stick?.kind !== 'round') return NOTHING;
  const envelope = evaluation.lines.flatMap(({ members }) => members).find((m) => m.memberId === memberId);
  const least = envelope?.leastDiameterIn ?? [];
  const bySection = (envelope?.atIn ?? []).flatMap((atIn, i): Needed[] => {
    const hasIn = diameterAt(stick, atIn);
    const needsIn = least[i];
    return hasIn === null || needsIn === undefined ? [] : [{ atIn, hasIn, needsIn }];
  });
  const whole = wholeMemberShare(evaluation.checks.filter((row) => row.memberId === memberId));
  const byWhole = whole
    ? stick.profile.map(({ atIn, diameterIn }) => ({ atIn, hasIn: diameterIn, needsIn: whole.share * diameterIn }))
    : [];
  return { bySection, byWhole, wholeRow: whole?.row ?? null };
}
