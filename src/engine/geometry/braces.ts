import type { Fault } from '../message.ts';
import { message } from '../message.ts';
import type { MemberOf, Project } from '../project/model.ts';
import { traitsOf } from '../project/traits.ts';
import { degreesFromRadians, radiansFromDegrees } from '../units.ts';
import { between } from './beam-shape.ts';
import { depthOf, rafterAxisZ, runFromEave } from './rafter-axis.ts';
import type { BeamGeometry, BraceGeometry, PostGeometry, RafterGeometry, TieGeometry } from './shelter.ts';
import { stickOf } from './sticks.ts';

type Placed = { readonly brace: BraceGeometry | null; readonly faults: readonly Fault[] };

/**
 * A knee brace between working points: `run` along the beam (or tie) from the post axis, `drop` down the post from
 * where the axes meet. The angle is taken with the post axis from the true points, so a sloping axis is honoured.
 */
export function placeBrace(
  project: Project,
  member: MemberOf<'brace'>,
  posts: readonly PostGeometry[],
  beams: readonly BeamGeometry[],
  across: RunAcross,
): Placed {
  const post = posts.find((p) => p.id === member.post);
  if (!post) return { brace: null, faults: [] };
  const traits = traitsOf(project, member);
  const sign = member.side === 'plus' ? 1 : -1;
  const top =
    member.to === 'line'
      ? alongTarget(post, beams, sign * traits.runIn)
      : acrossTarget(post, across, member.to, sign * traits.runIn);
  const label = `brace ${post.label}${TOWARD[member.to === 'line' ? 'along' : 'across'][member.side]}`;
  if (!top) {
    return {
      brace: null,
      faults: [
        { path: `members[${member.id}].runIn`, ...message('braceMissesItsLog', { brace: label, runIn: traits.runIn }) },
      ],
    };
  }
  const postZ = top.meetsPostZIn - traits.dropIn;
  if (postZ <= post.footZIn + 1e-6) {
    return {
      brace: null,
      faults: [
        { path: `members[${member.id}].dropIn`, ...message('braceBelowFoot', { brace: label, dropIn: traits.dropIn }) },
      ],
    };
  }
  const horizontal = traits.runIn;
  const vertical = top.point.zIn - postZ;
  const lengthIn = Math.hypot(horizontal, vertical);
  const phi = Math.atan2(horizontal, vertical);
  const postDiameterIn = depthOf(post.stick, postZ - post.woodFromZIn);
  const visibleLengthIn = lengthIn - postDiameterIn / 2 / Math.sin(phi) - top.diameterIn / 2 / Math.cos(phi);
  if (!(vertical > 0) || !(visibleLengthIn > 0)) {
    return {
      brace: null,
      faults: [{ path: `members[${member.id}].runIn`, ...message('braceHasNoLength', { brace: label }) }],
    };
  }
  const tooDeep = (['post', 'top'] as const).flatMap((which): readonly Fault[] => {
    const { kind, depthIn } = traits.ends[which];
    const logIn = which === 'post' ? postDiameterIn : top.diameterIn;
    if (kind === 'coped' || logIn === 0 || depthIn < logIn / 2) return [];
    const path = `members[${member.id}].ends.${which}.depthIn`;
    return [{ path, ...message('braceLetInPastAxis', { brace: label, depthIn, limitIn: logIn / 2 }) }];
  });
  if (tooDeep.length > 0) return { brace: null, faults: tooDeep };
  return {
    brace: {
      id: member.id,
      label,
      postId: post.id,
      plane: member.to === 'line' ? 'along' : 'across',
      toId: top.id,
      side: member.side,
      runIn: traits.runIn,
      dropIn: traits.dropIn,
      phiDeg: degreesFromRadians(phi),
      lengthIn,
      visibleLengthIn,
      postPoint: { xIn: post.xIn, yIn: post.yIn, zIn: postZ },
      topPoint: top.point,
      postDiameterIn,
      topDiameterIn: top.diameterIn,
      stick: stickOf(project, traits.stock, lengthIn),
      ends: traits.ends,
    },
    faults: [],
  };
}

/** As braces are told apart: along the line by its sense, across it by the side that they reach to. */
const TOWARD = {
  along: { plus: '+', minus: '−' },
  across: { plus: ' front', minus: ' back' },
} as const;

interface Target {
  readonly id: string;
  readonly point: BraceGeometry['topPoint'];
  readonly diameterIn: number;
  readonly meetsPostZIn: number;
}

function alongTarget(post: PostGeometry, beams: readonly BeamGeometry[], run: number): Target | null {
  const xIn = post.xIn + run;
  const beam = beams.find(
    (b) => b.line === post.line && b.fromXIn - 1e-6 <= xIn && xIn <= b.toXIn + 1e-6 && reaches(b, post.xIn),
  );
  if (!beam) return null;
  return {
    id: beam.id,
    point: { xIn, yIn: post.yIn, zIn: between(beam.stations, xIn, (s) => s.axisZIn) },
    diameterIn: between(beam.stations, xIn, (s) => s.diameterIn),
    meetsPostZIn: post.axisZIn,
  };
}

const reaches = (beam: BeamGeometry, xIn: number): boolean => beam.fromXIn - 1e-6 <= xIn && xIn <= beam.toXIn + 1e-6;

/** What runs across from the posts and may carry the top of a brace. */
export interface RunAcross {
  readonly ties: readonly TieGeometry[];
  readonly rafters: readonly RafterGeometry[];
}

function acrossTarget(post: PostGeometry, { ties, rafters }: RunAcross, toId: string, run: number): Target | null {
  const yIn = post.yIn + run;
  const rafter = rafters.find((r) => r.id === toId);
  if (rafter) return rafterTarget(post, rafter, yIn);
  const tie = ties.find((t) => t.id === toId && (t.fromPostId === post.id || t.toPostId === post.id));
  if (!tie) return null;
  if (yIn < Math.min(tie.fromYIn, tie.toYIn) || yIn > Math.max(tie.fromYIn, tie.toYIn)) return null;
  return {
    id: tie.id,
    point: { xIn: post.xIn, yIn, zIn: tie.axisZIn },
    diameterIn: depthOf(tie.stick, Math.abs(yIn - tie.fromYIn)),
    meetsPostZIn: tie.axisZIn,
  };
}

/** On the axis of a rafter that lies over the post. */
function rafterTarget(post: PostGeometry, rafter: RafterGeometry, yIn: number): Target | null {
  const [zIn, meetsPostZIn] = [rafterAxisZ(rafter, yIn), rafterAxisZ(rafter, post.yIn)];
  if (zIn === null || meetsPostZIn === null) return null;
  const alongIn = runFromEave(rafter, yIn) / Math.cos(radiansFromDegrees(rafter.slopeDeg));
  return {
    id: rafter.id,
    point: { xIn: post.xIn, yIn, zIn },
    diameterIn: depthOf(rafter.stick, alongIn),
    meetsPostZIn,
  };
}

/** A level log between two posts of different lines, its axis `downIn` below the lower of the two beam axes. */
export function placeTie(
  project: Project,
  member: MemberOf<'tie'>,
  posts: readonly PostGeometry[],
): TieGeometry | null {
  const from = posts.find((p) => p.id === member.fromPost);
  const to = posts.find((p) => p.id === member.toPost);
  if (!from || !to) return null;
  const traits = traitsOf(project, member);
  const [near, far] = from.yIn <= to.yIn ? [from, to] : [to, from];
  const [pastNearIn, pastFarIn] =
    near === from ? [member.pastFromIn, member.pastToIn] : [member.pastToIn, member.pastFromIn];
  return {
    id: member.id,
    label: `tie ${near.label} ${far.label}`,
    fromPostId: near.id,
    toPostId: far.id,
    xIn: from.xIn,
    fromYIn: near.yIn - pastNearIn,
    toYIn: far.yIn + pastFarIn,
    axisZIn: Math.min(from.axisZIn, to.axisZIn) - traits.downIn,
    ends: traits.ends,
    stick: stickOf(project, traits.stock, far.yIn - near.yIn + pastNearIn + pastFarIn),
  };
}
