import { seatPushes } from '../checks/beam/seat-pushes.ts';
import type { SeatOnPost } from '../checks/transverse/rafter-on-post.ts';
import { isStrength } from '../checks/line-context.ts';
import type { LineFrame } from '../frame/line-frame.ts';
import { pinForce } from '../frame/read-response.ts';
import type { PostGeometry } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';

/** Rule of a combination by its id: 3 of 3+snow. */
export const ruleOf = (combinationId: string): string => combinationId.split('+')[0]!;

/**
 * What the lines press on the tops of posts under one beam, by combination, and by rule where a line has no combination of that
 * name: each part the hardest by itself (safe side). Worked out for a post when first asked.
 */
export function seatsOnPosts(
  project: Project,
  frames: readonly LineFrame[],
): (post: PostGeometry, combinationId: string) => SeatOnPost {
  const byPost = new Map<string, ReadonlyMap<string, SeatOnPost>>();
  return ({ id }, combinationId) => {
    const known = byPost.get(id) ?? seatOf(project, frames, id);
    byPost.set(id, known);
    return known.get(combinationId) ?? known.get(ruleOf(combinationId)) ?? NOTHING;
  };
}

const NOTHING: SeatOnPost = { leastLb: 0, mostLb: 0, alongLb: 0, twistLbIn: 0 };

function seatOf(project: Project, frames: readonly LineFrame[], postId: string): ReadonlyMap<string, SeatOnPost> {
  const found = new Map<string, SeatOnPost>();
  const keep = (id: string, seat: SeatOnPost): void => {
    for (const name of new Set([id, ruleOf(id)])) found.set(name, harder(found.get(name), seat));
  };
  for (const frame of frames) {
    const chain = frame.mesh.posts.find((p) => p.memberId === postId);
    if (!chain) continue;
    const pushes = seatPushes({ project, frame }).filter((seat) => seat.postId === postId);
    for (const { beamId, byCombination } of pushes) {
      const pin = pinForce(frame.mesh, chain, beamId);
      for (const { combination, values } of frame.responses.filter(isStrength)) {
        const { leastDownLb, twistLbIn, alongLb } = byCombination[combination.id]!;
        keep(combination.id, { leastLb: leastDownLb, mostLb: pin.down(values), alongLb, twistLbIn });
      }
    }
  }
  return found;
}

const harder = (a: SeatOnPost | undefined, b: SeatOnPost): SeatOnPost =>
  a
    ? {
        leastLb: Math.min(a.leastLb, b.leastLb),
        mostLb: Math.max(a.mostLb, b.mostLb),
        alongLb: Math.max(a.alongLb, b.alongLb),
        twistLbIn: Math.max(a.twistLbIn, b.twistLbIn),
      }
    : b;
