import type { LineResponse } from '../../frame/line-frame.ts';
import type { Chain } from '../../frame/mesh-builder.ts';
import type { PostChain } from '../../frame/read-response.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { holderAt, type Holder } from '../joints/holder.ts';
import type { JointPart } from '../joints/rated.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
import { togetherSite } from '../joints/together-site.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';

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
 * Joints of tie logs and posts: drawn apart, pressed together, up and down. Contact of a log's end on the round of a post is
 * not counted on: what presses needs a rating too (safe side).
 */
export function tieJointSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  const { mesh } = context.frame;
  return mesh.posts.flatMap((post) =>
    post.beamNodes.flatMap(({ beamId, node }) => {
      const tie = mesh.beams.find((b) => b.memberId === beamId)!;
      return sitesOf(context, tie, post, forceAt(tie, node));
    }),
  );
}

function sitesOf(
  context: LineCheckContext,
  tie: Chain,
  post: PostChain,
  force: TieForce,
): readonly CheckSite<LineResponse>[] {
  const holder = holderAt(context, 'tiePost', jointKey('tiePost', tie.memberId, post.memberId));
  const at = { memberId: tie.memberId, place: { kind: 'joint', name: post.memberId } as const, holder };
  const of = (words: string, lb: (values: Float64Array) => number) =>
    fromFrame<LineResponse>(words, (r) => Math.max(0, lb(r.values)));
  const pull = { part: 'pull', force: of('pull of the tie log off its post', force.pull) } as const;
  const push = { part: 'push', force: of('push of the tie log on its post', force.push) } as const;
  const plumb = { part: 'across', force: of('up or down between tie log and post', force.plumb) } as const;
  // what pulls one face of a log that runs through presses the other: one force, held by the weaker way
  const level = force.runsThrough ? [weakerOf(holder, pull, push)] : [pull, push];
  const together = togetherSite<LineResponse>({ ...at, ruleId: 'tie.together', parts: [...level, plumb] });
  return [
    ratedSite({ ...at, ruleId: 'tie.pulled', ...pull }),
    ratedSite({ ...at, ruleId: 'tie.pressed', ...push }),
    ratedSite({ ...at, ruleId: 'tie.hung', ...plumb }),
    ...(together ? [together] : []),
  ];
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
