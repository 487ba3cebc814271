import type {
  BeamGeometry,
  BraceGeometry,
  PostGeometry,
  SeatGeometry,
  Shelter,
  TieGeometry,
} from '../../geometry/shelter.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { radiansFromDegrees } from '../../units.ts';
import { dot, plus, unit, type Vector } from '../fasteners/space.ts';
import { beamPiece, bracePiece, letIn, pointOf, postPiece, tiePiece } from './frame-pieces.ts';
import type { JointPiece, JointSetting } from './joint-setting.ts';
import { rafterPiece, slopeOf } from './roof-pieces.ts';
import { ACROSS_Y, ALONG_X, DOWN, opposite, UP } from './stick-shape.ts';

/** Every joint of the frame: beams on posts and end to end, braces and ties at their logs, posts on their piers. */
export function frameJoints(shelter: Shelter): readonly JointSetting[] {
  return [
    ...shelter.posts.flatMap((post) => [...seatJoints(shelter, post), ...spliceJoints(shelter, post)]),
    ...shelter.braces.flatMap((brace) => braceJoints(shelter, brace)),
    ...shelter.ties.flatMap((tie) => tieJoints(shelter, tie)),
    ...shelter.posts.flatMap((post) => footJoints(post)),
  ];
}

const beamOf = (shelter: Shelter, id: string): BeamGeometry => shelter.beams.find((b) => b.id === id)!;

const seatAt = (post: PostGeometry): Vector => [post.xIn, post.yIn, post.seatZIn];

/** A beam as it is cut for its seat on a post. */
const seatedBeam = (shelter: Shelter, post: PostGeometry, { beamId }: SeatGeometry): JointPiece =>
  beamPiece(beamOf(shelter, beamId), post.xIn, post.yIn, [{ at: seatAt(post), outward: DOWN }]);

function seatJoints(shelter: Shelter, post: PostGeometry): readonly JointSetting[] {
  return post.seats.map((seat) => {
    const upper = seatedBeam(shelter, post, seat);
    const lower = postPiece(post, post.seatZIn, [{ at: seatAt(post), outward: UP }]);
    const id = jointKey('beamPost', seat.beamId, post.id);
    return {
      id,
      key: id,
      kind: 'beamPost',
      label: `${upper.label} on ${lower.label}`,
      place: post.id,
      lineId: post.line,
      upper,
      lower,
      at: seatAt(post),
      ways: { pull: UP, along: ALONG_X, across: ACROSS_Y },
      line: { at: seatAt(post), into: DOWN },
      shoulderIn: 0,
    };
  });
}

/** Where two beams meet end to end on a post; named by the one that begins there. */
function spliceJoints(shelter: Shelter, post: PostGeometry): readonly JointSetting[] {
  const [before, after] = post.seats.toSorted(
    (a, b) => beamOf(shelter, a.beamId).fromXIn - beamOf(shelter, b.beamId).fromXIn,
  );
  if (!before || !after) return [];
  const upper = seatedBeam(shelter, post, after);
  const lower = seatedBeam(shelter, post, before);
  const id = jointKey('beamSplice', after.beamId);
  return [
    {
      id,
      key: id,
      kind: 'beamSplice',
      label: `${upper.label} at ${lower.label}`,
      place: post.id,
      lineId: post.line,
      upper,
      lower,
      at: [post.xIn, post.yIn, post.axisZIn],
      ways: { pull: ALONG_X, along: UP, across: ACROSS_Y },
      line: null,
      shoulderIn: 0,
    },
  ];
}

/** Both ends of a brace on their logs. */
function braceJoints(shelter: Shelter, brace: BraceGeometry): readonly JointSetting[] {
  const post = shelter.posts.find((p) => p.id === brace.postId)!;
  const toward = plus(pointOf(brace.topPoint), pointOf(brace.postPoint), -1);
  const sideways: Vector = brace.plane === 'along' ? [Math.sign(toward[0]), 0, 0] : [0, Math.sign(toward[1]), 0];
  const aside = brace.plane === 'along' ? ACROSS_Y : ALONG_X;
  const phi = radiansFromDegrees(brace.phiDeg);
  const top = receiver(shelter, brace);
  const ends = [
    {
      kind: 'bracePost',
      which: 'post',
      at: pointOf(brace.postPoint),
      lower: (cuts) => postPiece(post, brace.postPoint.zIn, cuts),
      logDiameterIn: brace.postDiameterIn,
      outward: sideways,
      // along the log, from where the axes meet to the middle of the contact, for each inch off its axis
      along: [0, 0, 1 / Math.tan(phi)],
    },
    {
      kind: 'braceTop',
      which: 'top',
      at: pointOf(brace.topPoint),
      lower: top,
      logDiameterIn: brace.topDiameterIn,
      ...underLog(shelter, brace, sideways, unit(toward)),
    },
  ] as const satisfies readonly End[];
  return ends.map((end) => braceJoint(brace, end, aside, post.line));
}

/** Out of the underside of what a brace carries, and along it toward the post; a rafter lies on a slope. */
function underLog(
  shelter: Shelter,
  brace: BraceGeometry,
  sideways: Vector,
  into: Vector,
): Pick<End, 'outward' | 'along'> {
  const rafter = shelter.rafters.find((r) => r.id === brace.toId);
  if (!rafter) {
    const off = Math.tan(radiansFromDegrees(brace.phiDeg));
    return { outward: DOWN, along: [-sideways[0] * off, -sideways[1] * off, 0] };
  }
  const { up, out } = slopeOf(rafter);
  const off = dot(into, up) / dot(into, out);
  return { outward: opposite(out), along: [-up[0] * off, -up[1] * off, -up[2] * off] };
}

interface End {
  readonly kind: 'bracePost' | 'braceTop';
  readonly which: 'post' | 'top';
  readonly at: Vector;
  readonly lower: (cuts: ReturnType<typeof letIn>) => JointPiece;
  readonly logDiameterIn: number;
  readonly outward: Vector;
  readonly along: Vector;
}

/** The fastener stands square to the log, in the middle of the contact. */
function braceJoint(brace: BraceGeometry, end: End, across: Vector, lineId: string): JointSetting {
  const { kind, which, at, outward } = end;
  const cut = brace.ends[which];
  const depthIn = cut.kind === 'coped' ? 0 : cut.depthIn;
  const upper = bracePiece(brace, which);
  const lower = end.lower(letIn(at, outward, end.logDiameterIn, depthIn));
  const offIn = end.logDiameterIn / 2 - depthIn;
  const id = jointKey(kind, brace.id);
  return {
    id,
    key: id,
    kind,
    label: `${upper.label} at ${lower.label}`,
    place: which,
    lineId,
    upper,
    lower,
    at,
    ways: { pull: outOf(upper, which), along: which === 'post' ? UP : sidewaysOf(end.along), across },
    line: { at: plus(plus(at, outward, offIn), end.along, offIn), into: opposite(outward) },
    shoulderIn: cut.kind === 'housed' ? cut.depthIn : 0,
  };
}

/** A brace that is pulled leaves its log along its own axis. */
const outOf = ({ shape }: JointPiece, which: End['which']): Vector => {
  const axis = shape?.axis ?? UP;
  return which === 'post' ? axis : opposite(axis);
};

const sidewaysOf = (v: Vector): Vector => (v[2] === 0 ? [Math.sign(v[0]), Math.sign(v[1]), 0] : unit(v));

/** The beam, tie or rafter that a brace runs to; what is cut into a rafter there is not looked at. */
function receiver(shelter: Shelter, brace: BraceGeometry): End['lower'] {
  const { xIn, yIn } = brace.topPoint;
  const tie = shelter.ties.find((t) => t.id === brace.toId);
  const rafter = shelter.rafters.find((r) => r.id === brace.toId);
  if (rafter) return () => rafterPiece(rafter, rafter.downY * (rafter.eaveYIn - yIn));
  return tie ? (cuts) => tiePiece(tie, yIn, cuts) : (cuts) => beamPiece(beamOf(shelter, brace.toId), xIn, yIn, cuts);
}

/** A tie log at both of its posts. */
function tieJoints(shelter: Shelter, tie: TieGeometry): readonly JointSetting[] {
  return [tie.fromPostId, tie.toPostId].map((postId, i) => {
    const post = shelter.posts.find((p) => p.id === postId)!;
    const upper = tiePiece(tie, post.yIn);
    const lower = postPiece(post, tie.axisZIn);
    const id = jointKey('tiePost', tie.id, postId);
    const inward: Vector = i === 0 ? ACROSS_Y : [0, -1, 0];
    return {
      id,
      key: id,
      kind: 'tiePost',
      label: `${upper.label} at ${lower.label}`,
      place: postId,
      lineId: post.line,
      upper,
      lower,
      at: [post.xIn, post.yIn, tie.axisZIn],
      ways: { pull: inward, along: ALONG_X, across: UP },
      line: null,
      shoulderIn: 0,
    };
  });
}

/** A post on the hardware of its pier; one that stands in the ground has none. */
function footJoints(post: PostGeometry): readonly JointSetting[] {
  if (post.foot.kind === 'embedded') return [];
  const upper = postPiece(post, post.woodFromZIn);
  const id = jointKey('postFoot', post.id);
  return [
    {
      id,
      key: id,
      kind: 'postFoot',
      label: `${upper.label} on its pier`,
      place: 'foot',
      lineId: post.line,
      upper,
      lower: { id: post.id, label: 'pier', of: 'pier', stick: null, shape: null, toEndsIn: null },
      at: [post.xIn, post.yIn, post.woodFromZIn],
      ways: { pull: UP, along: ALONG_X, across: ACROSS_Y },
      line: null,
      shoulderIn: 0,
      standOffIn: post.foot.standOffIn,
    },
  ];
}
