import type { LineGeometry, PostGeometry, Shelter } from '../../geometry/shelter.ts';
import { acrossFromPosts, braceWeight, stripWeight } from '../../loads/dead-pieces.ts';
import { surfaceWeight } from '../../loads/roof-weights.ts';
import { shareOfLine } from '../../loads/sway-areas.ts';
import { wholeWeight, type MemberWeights } from '../../loads/weights.ts';
import type { Project } from '../../project/model.ts';

/** Pieces that press a post down, from the roof to the pier's top. */
export type ChainPiece = 'covering' | 'purlins' | 'rafters' | 'strip' | 'beam' | 'post';

/** Light weight of each piece that falls to one post [lb]. Each piece of the shelter falls to one post or ledger once. */
export type PieceWeights = Readonly<Record<ChainPiece, number>>;

/** What is weighed. */
export interface Weighed {
  readonly project: Project;
  readonly shelter: Shelter;
  readonly weights: MemberWeights;
}

/** Length of a line nearer to a post than to its other posts, ends included. */
export interface PostReach {
  readonly fromXIn: number;
  readonly toXIn: number;
}

export function reachOf(shelter: Shelter, line: LineGeometry, post: PostGeometry): PostReach {
  const xs = shelter.posts.filter((p) => p.line === line.id).map((p) => p.xIn);
  const before = Math.max(...xs.filter((x) => x < post.xIn), -Infinity);
  const after = Math.min(...xs.filter((x) => x > post.xIn), Infinity);
  return {
    fromXIn: Number.isFinite(before) ? (before + post.xIn) / 2 : -Infinity,
    toXIn: Number.isFinite(after) ? (after + post.xIn) / 2 : Infinity,
  };
}

/** True within the reach; a place half way between two posts falls to the one before it. */
export const isWithinReach = ({ fromXIn, toXIn }: PostReach, xIn: number): boolean => xIn > fromXIn && xIn <= toXIn;

/**
 * Light weight that falls to a post by tributary lengths and widths; continuity of beam and rafters moves it about in the
 * frame analysis, not here (own rule).
 * @source OWN: each piece of dead load counted once
 */
export function weightsAt(weighed: Weighed, line: LineGeometry, post: PostGeometry): PieceWeights {
  const { shelter } = weighed;
  const reach = reachOf(shelter, line, post);
  const beams = shelter.beams.filter((b) => b.line === line.id);
  const along = (b: (typeof beams)[number]): readonly [number, number] => [
    Math.max(b.fromXIn, reach.fromXIn),
    Math.min(b.toXIn, reach.toXIn),
  ];
  const lengthIn = beams.reduce((sum, b) => sum + Math.max(0, along(b)[1] - along(b)[0]), 0);
  const braces = shelter.braces.filter((b) => b.plane === 'along' && b.postId === post.id);
  // half of a knee brace hangs on the beam, half stands on the post
  const halfBraces = sum(braces.map((b) => braceWeight(weighed.project, weighed.weights, b).light)) / 2;
  return {
    ...roofAt(weighed, line, reach),
    strip: stripWeight({ project: weighed.project, line }).light * lengthIn,
    beam: halfBraces + sum(beams.map((b) => beamBetween(weighed, b, along(b)))),
    post: halfBraces + uprightAt(weighed, post),
  };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

function roofAt(
  { project, shelter, weights }: Weighed,
  line: LineGeometry,
  reach: PostReach,
): Pick<PieceWeights, 'covering' | 'purlins' | 'rafters'> {
  const held = shelter.rafters.filter((r) => shareOfLine(r, line.id) > 0 && isWithinReach(reach, r.xIn));
  let [covering, purlins, rafters] = [0, 0, 0];
  for (const rafter of held) {
    const plane = shelter.planes.find((p) => p.id === rafter.plane)!;
    const { dead } = project.roofPlanes.find((p) => p.id === rafter.plane)!;
    const lengthIn = rafter.runIn / Math.cos((rafter.slopeDeg * Math.PI) / 180);
    const share = shareOfLine(rafter, line.id);
    const areaFt2 = (share * lengthIn * rafter.tributaryWidthIn) / 144;
    const bare = surfaceWeight(project, plane, [], weights).light;
    covering += bare * areaFt2;
    purlins += (surfaceWeight(project, plane, shelter.purlins, weights).light - bare) * areaFt2;
    const isIncluded = dead.by === 'total' && dead.includes.includes('rafters');
    if (!isIncluded) rafters += share * wholeWeight(weights.of(rafter.id), lengthIn).light;
  }
  return { covering, purlins, rafters };
}

function beamBetween(
  { weights }: Weighed,
  beam: Shelter['beams'][number],
  [fromXIn, toXIn]: readonly [number, number],
): number {
  const at = weights.of(beam.id);
  const startIn = fromXIn - beam.fromXIn;
  return toXIn > fromXIn ? wholeWeight((s) => at(startIn + s), toXIn - fromXIn).light : 0;
}

/** A post with what runs across from it. */
function uprightAt({ project, shelter, weights }: Weighed, post: PostGeometry): number {
  const across = acrossFromPosts({ project, shelter, weights, posts: [post] });
  return wholeWeight(weights.of(post.id), post.lengthIn).light + sum(across.map(({ down }) => down.light));
}
