import type { LineResponse } from '../../frame/line-frame.ts';
import { pinForce } from '../../frame/read-response.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { holderAt } from '../joints/holder.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';

/**
 * Where two beams meet on a post they need a tie, or the wind along the line draws them apart. The harder pulled end
 * counts, as if nothing went into the post (safe side). The joint is named by the beam that begins there.
 * @source OWN: a splice over a post has a tie for sway
 */
export function spliceSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  const { mesh } = context.frame;
  return mesh.posts.flatMap((post): CheckSite<LineResponse>[] => {
    const [before, after] = post.beamNodes;
    if (!before || !after) return [];
    const ends = [before, after].map((end) => pinForce(mesh, post, end.beamId));
    return [
      ratedSite({
        ruleId: 'beam.splice',
        memberId: after.beamId,
        place: { kind: 'joint', name: post.memberId },
        holder: holderAt(context, 'beamSplice', jointKey('beamSplice', after.beamId)),
        part: 'pull',
        force: fromFrame('pull of the beams away from each other', (r: LineResponse) =>
          Math.max(0, ...ends.map((end) => end.along(r.values))),
        ),
      }),
    ];
  });
}
