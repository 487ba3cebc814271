import type { LineResponse } from '../../frame/line-frame.ts';
import { footIndex, pushIndex, sectionsOf, type PostChain } from '../../frame/read-response.ts';
import type { BeamGeometry, LineGeometry, PostGeometry, RafterGeometry, SeatGeometry } from '../../geometry/shelter.ts';
import type { LineCheckContext } from '../line-context.ts';

/** A rafter with its row, as the posts under it meet it. */
export interface BracedRow {
  readonly rafter: RafterGeometry;
  /** as they stand in their lines */
  readonly posts: readonly PostGeometry[];
  readonly seatOn: (post: PostGeometry, combinationId: string) => SeatOnPost;
  /** id of the load case of the push across in a response; null where nothing pushes */
  readonly pushIdOf: (response: LineResponse) => string | null;
}

/** What the beam of a line does to the post under it in one combination, each part the hardest by itself. */
export interface SeatOnPost {
  /** push on the top of the post, least and most; a lift is less than zero [lb] */
  readonly leastLb: number;
  readonly mostLb: number;
  /** push along the line [lb], and how the bow of the beam turns it [lb·in]; without sign */
  readonly alongLb: number;
  readonly twistLbIn: number;
}

/** What comes together over one post of a row: its rafter, the beam of its line and what lies between, with their forces. */
export interface RafterOnPost {
  readonly rafter: RafterGeometry;
  readonly post: PostGeometry;
  readonly seat: SeatGeometry;
  readonly beam: BeamGeometry;
  readonly line: LineGeometry;
  /** level of the rafter's axis over the post [in] */
  readonly axisZIn: number;
  /** push of the rafter on what lies under it, a lift less than zero; level force between them, without sign [lb] */
  readonly downLb: (r: LineResponse) => number;
  readonly levelLb: (r: LineResponse) => number;
  /** of all that the post bears on its top: least and greatest push, level force, along the line [lb], turning [lb·in] */
  readonly leastOnSeatLb: (r: LineResponse) => number;
  readonly mostOnSeatLb: (r: LineResponse) => number;
  readonly levelOnSeatLb: (r: LineResponse) => number;
  readonly alongOnSeatLb: (r: LineResponse) => number;
  readonly turnsSeatLbIn: (r: LineResponse) => number;
}

/**
 * Every place where the rafter of a row comes over a post. The push on the seat is what the line brings there, with what the
 * push across adds in the foot, less what the braces under the rafter take past the seat. What thrust shifts between
 * feet of unlike levels is counted against either (safe side).
 * @source MECHANICS equilibrium of a post
 */
export function raftersOnPosts(context: LineCheckContext, row: BracedRow): readonly RafterOnPost[] {
  const { mesh } = context.frame;
  return mesh.posts.flatMap((chain): RafterOnPost[] => {
    const post = row.posts.find((p) => p.id === chain.memberId);
    const seat = post?.seats[0];
    if (!post || !seat) return [];
    return [
      {
        rafter: row.rafter,
        post,
        seat,
        beam: context.shelter.beams.find((b) => b.id === seat.beamId)!,
        line: context.shelter.lines.find((l) => l.id === post.line)!,
        axisZIn: chain.post.axisZIn,
        ...forcesOver(context, row, chain, post),
      },
    ];
  });
}

type Forces = Omit<RafterOnPost, 'rafter' | 'post' | 'seat' | 'beam' | 'line' | 'axisZIn'>;

function forcesOver({ frame }: LineCheckContext, row: BracedRow, chain: PostChain, post: PostGeometry): Forces {
  const { mesh, layout } = frame;
  const faces = sectionsOf(chain, layout);
  const top = faces.at(-1)!;
  const seatAtIn = post.seatZIn - post.woodFromZIn;
  // of both faces of the node of the seat the one that belongs to the wood of the post
  const seat = faces.find((face, i) => i % 2 === 1 && Math.abs(face.atIn - seatAtIn) < 1e-6)!;
  const braces = mesh.braces.flatMap((link, j) =>
    link.brace.postId === post.id ? [{ at: pushIndex(layout, j), up: link.dw }] : [],
  );
  const footAt = footIndex(layout, chain);
  const ofPush = (r: LineResponse, index: number): number => {
    const pushId = row.pushIdOf(r);
    return pushId === null ? 0 : layout.partOf(r, pushId)(index);
  };
  const addedLb = (r: LineResponse): number =>
    braces.reduce((sum, { at, up }) => sum - r.values[at]! * up, ofPush(r, footAt + 1));
  const slope = slopeOfFeet(mesh);
  const shiftedLb = (r: LineResponse): number =>
    slope === 0 ? 0 : slope * Math.abs(r.values[footAt]! - ofPush(r, footAt));
  return {
    downLb: ({ values }) => -values[top.axial]!,
    levelLb: ({ values }) => Math.abs(values[top.shear]!),
    leastOnSeatLb: (r) => row.seatOn(post, r.combination.id).leastLb + addedLb(r) - shiftedLb(r),
    mostOnSeatLb: (r) => row.seatOn(post, r.combination.id).mostLb + addedLb(r) + shiftedLb(r),
    levelOnSeatLb: ({ values }) => Math.abs(values[seat.shear]!),
    alongOnSeatLb: (r) => row.seatOn(post, r.combination.id).alongLb,
    turnsSeatLbIn: (r) => Math.abs(r.values[seat.moment]!) + row.seatOn(post, r.combination.id).twistLbIn,
  };
}

/** How far the feet of two posts rise over the way between them, without sign. */
function slopeOfFeet({ posts }: LineCheckContext['frame']['mesh']): number {
  const [from, to] = [posts[0]!.post, posts.at(-1)!.post];
  return Math.abs((to.footZIn - from.footZIn) / (to.xIn - from.xIn));
}
