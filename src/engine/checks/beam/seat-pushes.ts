import { pinForce } from '../../frame/read-response.ts';
import { bowOfBeam } from '../../geometry/bow.ts';
import type { SeatPushes } from '../../evaluation.ts';
import { isStrength, type LineCheckContext } from '../line-context.ts';
import { twistAtPost } from './twist.ts';

/**
 * What the frame analysis puts on every seat of a line, for what only all lines together can ask: in each combination the
 * least push down, the greatest turning and push along of its brace models, each on its own (safe side).
 */
export function seatPushes({ frame, project }: Pick<LineCheckContext, 'frame' | 'project'>): readonly SeatPushes[] {
  const strength = frame.responses.filter(isStrength);
  return frame.members.beams.flatMap((beam) => {
    const bow = bowOfBeam(project, beam);
    const chains = frame.mesh.posts.filter(({ post }) => post.seats.some((s) => s.beamId === beam.id));
    const posts = chains.map(({ post }) => post);
    return chains.map((chain): SeatPushes => {
      const pin = pinForce(frame.mesh, chain, beam.id);
      const twist = twistAtPost(frame.mesh, beam, bow, posts, chain.post);
      const byCombination: Record<string, { leastDownLb: number; twistLbIn: number; alongLb: number }> = {};
      for (const { combination, values } of strength) {
        const known = byCombination[combination.id];
        byCombination[combination.id] = {
          leastDownLb: Math.min(known?.leastDownLb ?? Infinity, pin.down(values)),
          twistLbIn: Math.max(known?.twistLbIn ?? 0, Math.abs(twist(values))),
          alongLb: Math.max(known?.alongLb ?? 0, Math.abs(pin.along(values))),
        };
      }
      return { beamId: beam.id, postId: chain.memberId, byCombination };
    });
  });
}
