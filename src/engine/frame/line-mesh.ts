import { between } from '../geometry/beam-shape.ts';
import type {
  BeamGeometry,
  BraceGeometry,
  CutGeometry,
  LineGeometry,
  PostGeometry,
  Shelter,
  Stick,
} from '../geometry/shelter.ts';
import { diameterAt } from '../geometry/shelter.ts';
import type { FrameModel } from '../solver/model.ts';
import { MeshBuilder, SAME_PLACE_IN, type Chain } from './mesh-builder.ts';

/** Longest element on a beam and on a post [in]: stations for checks are the element ends. */
const BEAM_STEP_IN = 12;
const POST_STEP_IN = 24;

/** A brace as an unknown force between two nodes; it is not an element of the mesh. */
export interface BraceLink {
  readonly brace: BraceGeometry;
  readonly postNode: number;
  readonly topNode: number;
  /** unit vector from post to beam */
  readonly du: number;
  readonly dw: number;
  /** shortening per pound of push [in/lb] */
  readonly flexibility: number;
}

export interface LineMesh {
  readonly line: LineGeometry;
  readonly model: FrameModel;
  readonly beams: readonly Chain[];
  readonly posts: readonly (Chain & {
    readonly post: PostGeometry;
    readonly support: number;
    readonly beamNodes: readonly { readonly beamId: string; readonly node: number }[];
  })[];
  readonly braces: readonly BraceLink[];
  readonly holdNode: number;
  readonly holdSupport: number;
}

export interface LineMembers {
  readonly line: LineGeometry;
  readonly beams: readonly BeamGeometry[];
  readonly posts: readonly PostGeometry[];
  readonly braces: readonly BraceGeometry[];
}

export function membersOfLine(shelter: Shelter, line: LineGeometry): LineMembers {
  const posts = shelter.posts.filter((p) => p.line === line.id).sort((a, b) => a.xIn - b.xIn);
  return {
    line,
    beams: shelter.beams.filter((b) => b.line === line.id).sort((a, b) => a.fromXIn - b.fromXIn),
    posts,
    braces: shelter.braces.filter((b) => b.plane === 'along' && posts.some((p) => p.id === b.postId)),
  };
}

/**
 * Meshes a frame line: continuous beams hinged on their post tops, posts continuous from foot to seat, braces left out
 * as unknown forces, the whole line held sideways in the middle of its length (a post alone at its top). Working points are where axes meet. A
 * beam whose axis passes under a post's top, as a tie log does, is hinged to the post at its own level there.
 *
 * @param elasticity mean E of each member [psi]
 * @param loadX      x of point loads, so that each lands on a node [in]
 * @param onPosts    the same for point loads on posts
 */
export function meshLine(
  members: LineMembers,
  elasticity: (memberId: string) => number,
  loadX: readonly number[],
  onPosts: readonly { readonly postId: string; readonly zIn: number }[] = [],
): LineMesh {
  const builder = new MeshBuilder();
  const { beams, posts, braces, line } = members;
  const middle = beams.length > 0 ? (beams[0]!.fromXIn + beams[beams.length - 1]!.toXIn) / 2 : NaN;

  const beamChains = beams.map((beam) => {
    const stops = [
      ...posts.map((p) => p.xIn),
      ...braces.filter((b) => b.toId === beam.id).map((b) => b.topPoint.xIn),
      ...loadX,
      ...beam.stations.map((s) => s.xIn),
      ...beam.cuts.flatMap((c) => (c.madeBy === 'seat' ? [] : cutPlaces(c))),
      middle,
    ].filter((x) => x > beam.fromXIn && x < beam.toXIn);
    const places = [beam.fromXIn, ...stops, beam.toXIn].map((x) => postAt(posts, x)?.xIn ?? x);
    const axisZ = ledToPosts(beam, posts);
    return builder.chain(
      beam.id,
      'beam',
      elasticity(beam.id),
      beam.stick,
      subdivided(places, BEAM_STEP_IN).map((x) => ({
        at: x - beam.fromXIn,
        u: x,
        w: axisZ(x),
        diameterIn: between(beam.stations, x, (s) => s.diameterIn),
      })),
    );
  });

  const postChains = posts.map((post) => {
    const pinned = beams.flatMap((beam, i) => {
      const node = builder.nodeAt(beamChains[i]!, post.xIn - beam.fromXIn);
      return node === null ? [] : [{ beamId: beam.id, node, zIn: pinLevel(beam, post) }];
    });
    const stops = [
      post.seatZIn,
      ...pinned.map((pin) => pin.zIn),
      ...braces.filter((b) => b.postId === post.id).map((b) => b.postPoint.zIn),
      ...onPosts.filter((load) => load.postId === post.id).map((load) => load.zIn),
    ].filter((z) => z > post.footZIn && z < post.axisZIn);
    const zs = subdivided([post.footZIn, ...stops, post.axisZIn], POST_STEP_IN);
    const chain = builder.chain(
      post.id,
      'post',
      elasticity(post.id),
      post.stick,
      zs.map((z) => ({
        at: z - post.woodFromZIn,
        u: post.xIn,
        w: z,
        diameterIn: postDiameter(post.stick, z - post.woodFromZIn, post.lengthIn),
      })),
    );
    const pins = pinned.map((pin) => ({ ...pin, onPost: builder.nodeAt(chain, pin.zIn - post.woodFromZIn)! }));
    for (const onPost of new Set(pins.map((pin) => pin.onPost))) {
      builder.hinge(
        onPost,
        pins.filter((pin) => pin.onPost === onPost).map((pin) => pin.node),
      );
    }
    const beamNodes = pins.map(({ beamId, node }) => ({ beamId, node }));
    return { ...chain, post, support: builder.support(chain.nodes[0]!, post), beamNodes };
  });

  const links = braces.map((brace) => {
    const post = postChains.find((p) => p.memberId === brace.postId)!;
    const beamIndex = beams.findIndex((b) => b.id === brace.toId);
    const postNode = builder.nodeAt(post, brace.postPoint.zIn - post.post.woodFromZIn)!;
    const topNode = builder.nodeAt(beamChains[beamIndex]!, brace.topPoint.xIn - beams[beamIndex]!.fromXIn)!;
    return {
      brace,
      postNode,
      topNode,
      // from node to node, which may lie a sixteenth beside the working points: else its two ends would not balance
      ...builder.direction(postNode, topNode),
      flexibility: axialFlexibility(brace.stick, brace.lengthIn, elasticity(brace.id)),
    };
  });
  const held = beamChains.map((chain, i) => builder.nodeAt(chain, middle - beams[i]!.fromXIn));
  // a post alone, without any beam, is held at its top
  const holdNode = held.find((node) => node !== null) ?? postChains[0]!.nodes[postChains[0]!.count]!;
  const holdSupport = builder.hold(holdNode);
  return { line, model: builder.model(), beams: beamChains, posts: postChains, braces: links, holdNode, holdSupport };
}

/** A cut is judged at its middle and both ends, so each needs a node; on a seat the moment peaks in the middle anyway. */
const cutPlaces = (cut: CutGeometry): readonly number[] =>
  [-1, 0, 1].map((side) => cut.atXIn + (side * cut.lengthIn) / 2);

/** The post that stands here, near enough to share a node. */
const postAt = (posts: readonly PostGeometry[], xIn: number): PostGeometry | undefined =>
  posts.find((p) => Math.abs(p.xIn - xIn) <= SAME_PLACE_IN);

const ownAxis = (beam: BeamGeometry, xIn: number): number => between(beam.stations, xIn, (s) => s.axisZIn);

/** Where a beam is hinged to a post: at the post's working point, or at its own axis where the post runs on above it. */
const pinLevel = (beam: BeamGeometry, post: PostGeometry): number => Math.min(post.axisZIn, ownAxis(beam, post.xIn));

/**
 * Level of a beam's axis in the frame. Beams of unlike thickness that meet on a post share its working point, though
 * their axes lie at different levels there: each is led to it in a straight line from its next post.
 */
function ledToPosts(beam: BeamGeometry, posts: readonly PostGeometry[]): (xIn: number) => number {
  const offsets = posts
    .filter((p) => p.xIn > beam.fromXIn - SAME_PLACE_IN && p.xIn < beam.toXIn + SAME_PLACE_IN)
    .map((p) => ({ xIn: p.xIn, byIn: pinLevel(beam, p) - ownAxis(beam, p.xIn) }));
  return (xIn) => ownAxis(beam, xIn) + (offsets.length > 0 ? between(offsets, xIn, (o) => o.byIn) : 0);
}

/** Between seat and axis the post's cut end stands for the wood of the beam on it. */
function postDiameter(stick: Stick | null, atIn: number, lengthIn: number): number {
  if (!stick || stick.kind === 'typed') return 0;
  return stick.kind === 'round' ? (diameterAt(stick, Math.min(atIn, lengthIn)) ?? 0) : stick.depthIn;
}

/** Sum of ds / EA over a tapering bar [in/lb]; for a cone between two diameters it is L / (E pi d1 d2 / 4) exactly. */
function axialFlexibility(stick: Stick | null, lengthIn: number, E: number): number {
  if (!stick || stick.kind === 'typed') return 0;
  if (stick.kind === 'sawn') return lengthIn / (E * stick.breadthIn * stick.depthIn);
  let sum = 0;
  for (let i = 1; i < stick.profile.length; i++) {
    const a = stick.profile[i - 1]!;
    const b = stick.profile[i]!;
    sum += (b.atIn - a.atIn) / ((E * Math.PI * a.diameterIn * b.diameterIn) / 4);
  }
  return sum;
}

/**
 * Sorted, near places merged into one (the ends stay where they are), and every gap cut into equal parts no longer than
 * `step`.
 */
function subdivided(stops: readonly number[], step: number): readonly number[] {
  const sorted = [...stops].sort((a, b) => a - b);
  const last = sorted[sorted.length - 1]!;
  return cutGaps([...withoutNear(sorted.filter((x) => last - x > SAME_PLACE_IN)), last], step);
}

/** Drops what lies near an earlier kept place: a chain of near places must not survive one by one. */
function withoutNear(sorted: readonly number[]): readonly number[] {
  return sorted.reduce<number[]>(
    (kept, x) => (kept.length === 0 || x - kept[kept.length - 1]! > SAME_PLACE_IN ? [...kept, x] : kept),
    [],
  );
}

function cutGaps(sorted: readonly number[], step: number): readonly number[] {
  const result: number[] = [sorted[0]!];
  for (let i = 1; i < sorted.length; i++) {
    const from = sorted[i - 1]!;
    const gap = sorted[i]! - from;
    const parts = Math.ceil(gap / step - 1e-9);
    for (let k = 1; k < parts; k++) result.push(from + (gap * k) / parts);
    result.push(sorted[i]!);
  }
  return result;
}
