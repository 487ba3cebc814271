import { TEMPORARY_BRACE_AT, type StageId } from '../../data/loads/raising.ts';
import { clause } from '../../data/sources.ts';
import type { PostGeometry } from '../geometry/shelter.ts';
import type { Givens } from '../givens.ts';
import { put, type Note } from '../note.ts';
import { quantity, radiansFromDegrees } from '../units.ts';
import type { Standing } from './standing.ts';
import { overturning, temporaryBrace, type TemporaryBrace } from './temporary-brace.ts';
import { weightOnPost } from './weight-on-post.ts';
import { windOnPost, type Way } from './wind-on-post.ts';

/** Dead load that helps. @source ASCE7 2.4.1, combination 7 */
const HELPING_WEIGHT = 0.6;

/** One post at a stage, held in one direction by temporary braces alone. */
export interface BracedPost extends TemporaryBrace {
  readonly postId: string;
  /** wind on all that the post must hold, allowable-stress level [lb] */
  readonly windLb: number;
  /** where a temporary brace meets it, above the ground at the post [in] */
  readonly braceAtIn: number;
  /** from the post to the stake, on level ground [in] */
  readonly stakeAwayIn: number;
  /** of a temporary brace [in] */
  readonly braceLengthIn: number;
}

/**
 * What a temporary brace of a post must hold at a stage, as if nothing else held the post that way.
 * @param angleDeg  of the brace with the ground [deg]
 * @throws MisuseError if the angle is not between 0 and 90 degrees
 */
export function bracedPost(
  standing: Standing,
  full: Givens,
  post: PostGeometry,
  way: Way,
  angleDeg: number,
  note?: Note,
): BracedPost {
  const { heavy, light } = weightOnPost(standing, post);
  const line = full.shelter.lines.find((l) => l.id === post.line)!;
  const parts = windOnPost(standing, full, post, way);
  const turning = overturning(parts, post.footZIn, topOf(standing.id, post, line.bearingZIn), heavy, note);
  const pressingLb = pressingOn(standing, post, light, note);
  const heightIn = TEMPORARY_BRACE_AT * (post.seatZIn - post.footZIn);
  const brace = temporaryBrace({ ...turning, pressingLb, heightIn, angleDeg }, note);
  const braceAtIn = post.footZIn + heightIn - post.gradeZIn;
  const a = radiansFromDegrees(angleDeg);
  return {
    ...brace,
    postId: post.id,
    windLb: turning.windLb,
    braceAtIn,
    stakeAwayIn: braceAtIn / Math.tan(a),
    braceLengthIn: braceAtIn / Math.sin(a),
  };
}

/**
 * What presses on a foot whatever comes: of the light weight six tenths, but all of what an overhang lifts; under the
 * finished roof the least of the frame analysis, since wind lifts it then.
 */
function pressingOn({ roof }: Standing, { id }: PostGeometry, lightLb: number, note?: Note): number {
  const found = roof?.leastOnFoot.get(id);
  const N = found ?? (lightLb > 0 ? HELPING_WEIGHT * lightLb : lightLb);
  note?.({
    symbol: 'N',
    words: 'what presses on the foot whatever comes',
    formula: found !== undefined ? 'N' : lightLb > 0 ? '0.6 × D' : 'D',
    put:
      found === undefined
        ? [put('D', lightLb, 'lb', 'light weight on the foot')]
        : [put('N', N, 'lb', 'from the frame analysis of the finished shelter, its least')],
    result: quantity(N, 'lb'),
    clause: clause('ASCE7', '2.4.1'),
  });
  return N;
}

/** Where people at work may lean: the top of a bare post, the beam's axis, the seat of the rafters. */
function topOf(id: StageId, post: PostGeometry, bearingZIn: number): number {
  if (id === 'posts') return post.seatZIn;
  return id === 'beams' || id === 'braces' ? post.axisZIn : Math.max(bearingZIn, post.axisZIn);
}
