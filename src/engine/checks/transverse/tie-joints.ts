import { clause } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { Chain } from '../../frame/mesh-builder.ts';
import type { PostChain } from '../../frame/read-response.ts';
import type { BeamGeometry } from '../../geometry/shelter.ts';
import { put, type Note } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { quantity } from '../../units.ts';
import { beamStretches } from '../beam/beam-sections.ts';
import { twistOn } from '../beam/twist-shear.ts';
import { holderAt, type Holder } from '../joints/holder.ts';
import type { JointPart } from '../joints/rated.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
import { togetherSite } from '../joints/together-site.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { blownTie, type BlownTie } from './blown-along.ts';

/** What a tie log and a post do to one another where their axes meet. */
interface TieForce {
  /** along the tie, drawn apart + [lb]; where the log runs through, either way counts both ways */
  readonly pull: (values: Float64Array) => number;
  readonly push: (values: Float64Array) => number;
  /** up or down on the post, without sign [lb] */
  readonly plumb: (values: Float64Array) => number;
  readonly runsThrough: boolean;
}

/**
 * Joints of tie logs and posts: drawn apart, pressed together, up and down, and along the lines. Contact of a log's end on the
 * round of a post is not counted on: what presses needs a rating too (safe side).
 */
export function tieJointSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  const { mesh, members } = context.frame;
  return mesh.beams.flatMap((tie) => {
    const beam = members.beams.find((b) => b.id === tie.memberId)!;
    const blown = blownTie(context, beam);
    const turned = turnedAtEnds(context, beam);
    return mesh.posts.flatMap((post) => {
      const joined = post.beamNodes.find((n) => n.beamId === tie.memberId);
      return joined ? sitesOf(context, tie, post, forceAt(tie, joined.node), { blown, turned }) : [];
    });
  });
}

/** What comes to both ends of a tie log beside the forces in its own plane. */
interface Beside {
  readonly blown: BlownTie;
  readonly turned: ReturnType<typeof turnedAtEnds>;
}

function sitesOf(
  context: LineCheckContext,
  tie: Chain,
  post: PostChain,
  force: TieForce,
  { blown, turned }: Beside,
): readonly CheckSite<LineResponse>[] {
  const holder = holderAt(context, 'tiePost', jointKey('tiePost', tie.memberId, post.memberId));
  const at = { memberId: tie.memberId, place: { kind: 'joint', name: post.memberId } as const, holder };
  const of = (words: string, lb: (values: Float64Array) => number) =>
    fromFrame<LineResponse>(words, (r) => Math.max(0, lb(r.values)));
  const pull = { part: 'pull', force: of('pull of the tie log off its post', force.pull) } as const;
  const push = { part: 'push', force: of('push of the tie log on its post', force.push) } as const;
  const upOrDown = of('up or down between tie log and post', force.plumb);
  const plumb = {
    part: 'across',
    force: (r: LineResponse, note?: Note) => turned(r, upOrDown(r, note), note),
  } as const;
  const along = { part: 'along', force: (r: LineResponse, note?: Note) => pushAlong(blown, post, r, note) } as const;
  // what pulls one face of a log that runs through presses the other: one force, held by the weaker way
  const level = force.runsThrough ? [weakerOf(holder, pull, push)] : [pull, push];
  const together = togetherSite<LineResponse>({ ...at, ruleId: 'tie.together', parts: [...level, plumb, along] });
  return [
    ratedSite({ ...at, ruleId: 'tie.pulled', ...pull }),
    ratedSite({ ...at, ruleId: 'tie.pressed', ...push }),
    ratedSite({ ...at, ruleId: 'tie.hung', ...plumb }),
    ratedSite({ ...at, ruleId: 'tie.along', ...along }),
    ...(together ? [together] : []),
  ];
}

/** What a push along the lines brings to one end of a tie log [lb]. */
function pushAlong(blown: BlownTie, { memberId }: PostChain, { combination }: LineResponse, note?: Note): number {
  const p = blown.pushIn(combination, note);
  const P = p * blown.onPost(memberId);
  note?.({
    symbol: 'P',
    words: 'push along the lines between tie log and post, as a beam on its two posts',
    formula: 'p × l1',
    put: [
      put('p', p, 'lb/in', 'push on each inch of the tie log'),
      put('l1', blown.onPost(memberId), 'in', 'length that this post holds'),
    ],
    result: quantity(P, 'lb'),
    clause: clause('MECHANICS', 'beam on two supports'),
  });
  return P;
}

/**
 * What a bow turns a log between its posts, held by each joint as two forces half its least thickness apart (own rule), beside
 * what already is up or down there.
 */
function turnedAtEnds(
  context: LineCheckContext,
  tie: BeamGeometry,
): (r: LineResponse, plumbLb: number, note?: Note) => number {
  const twists = beamStretches(context)
    .filter((on) => on.beam.id === tie.id)
    .flatMap((on) => twistOn(context, on) ?? []);
  if (twists.length === 0) return (_, plumbLb) => plumbLb;
  const leverIn = Math.min(...tie.stations.map((s) => s.diameterIn)) / 2;
  return ({ values }, plumbLb, note) => {
    const T = Math.max(...twists.map(({ twist }) => twist(values)));
    const P = plumbLb + T / leverIn;
    note?.({
      symbol: 'P',
      words: 'up or down, with what keeps the bowed log from turning',
      formula: 'V + T / e',
      put: [
        put('V', plumbLb, 'lb', 'up or down between tie log and post'),
        put('T', T, 'lb·in', 'what its bow turns the log there'),
        put('e', leverIn, 'in', 'half its least thickness'),
      ],
      result: quantity(P, 'lb'),
      clause: clause('OWN', 'a couple at half the thickness of the log'),
    });
    return P;
  };
}

/** The way in which a joint holds less; one without a rating has a row that says so. */
function weakerOf<A extends { readonly part: JointPart }, B extends { readonly part: JointPart }>(
  holder: Holder,
  one: A,
  other: B,
): A | B {
  const holds = ({ part }: A | B): number => {
    const rated = holder.part(part, 1);
    return rated.ok ? rated.capacityLb : Infinity;
  };
  return holds(other) < holds(one) ? other : one;
}

/** From the faces of the log on both sides of the node; V = dM/ds. */
function forceAt(tie: Chain, node: number): TieForce {
  const i = tie.nodes.indexOf(node);
  const before = i > 0 ? (tie.firstElement + i - 1) * 6 + 3 : null;
  const after = i < tie.count ? (tie.firstElement + i) * 6 : null;
  const jump = (values: Float64Array, part: number): number =>
    (after === null ? 0 : values[after + part]!) - (before === null ? 0 : values[before + part]!);
  const plumb = (values: Float64Array): number => Math.abs(jump(values, 1));
  const along = (values: Float64Array): number => jump(values, 0);
  if (before === null) return { pull: along, push: (v) => -along(v), plumb, runsThrough: false };
  if (after === null) return { pull: (v) => -along(v), push: along, plumb, runsThrough: false };
  const either = (values: Float64Array): number => Math.abs(along(values));
  return { pull: either, push: either, plumb, runsThrough: true };
}
