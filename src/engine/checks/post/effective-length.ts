import { message, type Message } from '../../message.ts';
import { insteadOf } from '../../project/instead.ts';
import type { LateralBy, Project } from '../../project/model.ts';
import type { PostGeometry } from '../../geometry/shelter.ts';
import type { TaperedEnds } from '../wood/tapered-column.ts';

/** How long a post is for buckling in one direction, and why. */
export interface EffectiveLength {
  readonly lengthIn: number;
  readonly Ke: number | null;
  readonly reason: Message;
  /** which taper rule the ends of the post allow */
  readonly ends: TaperedEnds;
}

/** Ke by what holds the post sideways, until buckling of the whole frame is computed. @source NDS App. G, Table G1 */
const KE: Record<LateralBy, { readonly Ke: number; readonly words: string }> = {
  kneeBraces: { Ke: 2.4, words: 'foot taken to turn freely, top held straight but free to move' },
  transverseFrame: { Ke: 2.4, words: 'foot taken to turn freely, top held straight but free to move' },
  embeddedPosts: { Ke: 2.1, words: 'fixed in the ground, free at the top' },
  building: { Ke: 1, words: 'both ends turn freely, the building holds the top' },
  ratedWalls: { Ke: 1, words: 'both ends turn freely, rated walls hold the top' },
  none: { Ke: 2.4, words: 'nothing holds it: the longest of the table' },
};
const UNDECIDED = { Ke: 2.4, words: 'not decided what holds it: the longest of the table' };

/** What the person says holds this post in a direction; null while not decided. */
function heldBy(project: Project, post: PostGeometry, direction: 'along' | 'across'): LateralBy | null {
  const entries = project.lateral[direction].filter((e) => {
    if (e.posts && e.posts.length > 0) return e.posts.includes(post.id);
    if (e.lines && e.lines.length > 0) return e.lines.includes(post.line);
    return true;
  });
  return entries.find((e) => e.by !== null)?.by ?? null;
}

/**
 * Effective length of a post from pier top to seat.
 * @source NDS 3.7.1 and App. G
 */
export function effectiveLength(project: Project, post: PostGeometry, direction: 'along' | 'across'): EffectiveLength {
  const typed = insteadOf(
    project,
    direction === 'along' ? 'effectiveLengthAlongIn' : 'effectiveLengthAcrossIn',
    post.id,
  );
  if (typed)
    return {
      lengthIn: typed.value,
      Ke: null,
      reason: message('effectiveLengthTyped', { why: typed.why }),
      ends: 'general',
    };
  const by = heldBy(project, post, direction);
  const { Ke, words } = by === null ? UNDECIDED : KE[by];
  const buttAtFoot = post.stick?.kind === 'round' && post.stick.buttAt === 'start';
  const ends: TaperedEnds =
    Ke === 1
      ? 'bothPinnedOneTaper'
      : by === 'embeddedPosts'
        ? buttAtFoot
          ? 'largeEndFixed'
          : 'smallEndFixed'
        : 'general';
  return {
    lengthIn: Ke * (post.seatZIn - post.footZIn),
    Ke,
    reason: message('effectiveLengthAssumed', { ke: Ke, words }),
    ends,
  };
}
