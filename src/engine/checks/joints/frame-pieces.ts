import { between, roundDiameterWithin } from '../../geometry/beam-shape.ts';
import type { BeamGeometry, BraceGeometry, PostGeometry, Stick, TieGeometry } from '../../geometry/shelter.ts';
import type { Face } from '../fasteners/round-geometry.ts';
import { radiansFromDegrees } from '../../units.ts';
import { cross, plus, unit, type Vector } from '../fasteners/space.ts';
import type { JointPiece } from './joint-setting.ts';
import { ACROSS_Y, ALONG_X, shapeOf, UP } from './stick-shape.ts';

/** A beam at a place of its line: it lies where its crown puts it, and its planed top is a flat. */
export function beamPiece(beam: BeamGeometry, xIn: number, yIn: number, cuts: readonly Face[] = []): JointPiece {
  const at = (of: (s: BeamGeometry['stations'][number]) => number): number => between(beam.stations, xIn, of);
  const diameterIn = at((s) => s.diameterIn);
  const middleZIn = at((s) => s.undersideZIn) + diameterIn / 2;
  const top: Face = { at: [xIn, yIn, at((s) => s.topZIn)], outward: UP };
  return {
    id: beam.id,
    label: beam.label,
    of: 'wood',
    stick: beam.stick,
    shape: shapeOf(beam.stick, { axisAt: [xIn, yIn, middleZIn], axis: ALONG_X, up: UP }, diameterIn, [top, ...cuts]),
    toEndsIn: [xIn - beam.fromXIn, beam.toXIn - xIn],
  };
}

/** A post at a height; its ends are its foot and its seat. */
export function postPiece(post: PostGeometry, zIn: number, cuts: readonly Face[] = []): JointPiece {
  const axisAt: Vector = [post.xIn, post.yIn, zIn];
  return {
    id: post.id,
    label: `post ${post.label}`,
    of: 'wood',
    stick: post.stick,
    shape: shapeOf(
      post.stick,
      { axisAt, axis: UP, up: ALONG_X },
      diameterAlong(post.stick, zIn - post.woodFromZIn),
      cuts,
    ),
    toEndsIn: [zIn - post.woodFromZIn, post.seatZIn - zIn],
  };
}

/** A brace near one of its ends. Its wood begins where the log's does, not where the axes meet. */
export function bracePiece(brace: BraceGeometry, end: 'post' | 'top'): JointPiece {
  const [from, to] = [pointOf(brace.postPoint), pointOf(brace.topPoint)];
  const axis = unit(plus(to, from, -1));
  const atIn = end === 'post' ? 0 : brace.lengthIn;
  const phi = radiansFromDegrees(brace.phiDeg);
  const fromIn = letInTo(brace.postDiameterIn, brace.ends.post) / Math.sin(phi);
  const toIn = brace.lengthIn - letInTo(brace.topDiameterIn, brace.ends.top) / Math.cos(phi);
  const aside = brace.plane === 'along' ? ACROSS_Y : ALONG_X;
  return {
    id: brace.id,
    label: brace.label,
    of: 'wood',
    stick: brace.stick,
    shape: shapeOf(
      brace.stick,
      { axisAt: end === 'post' ? from : to, axis, up: cross(aside, axis) },
      diameterAlong(brace.stick, atIn),
    ),
    toEndsIn: [atIn - fromIn, toIn - atIn],
    endSlope: end === 'post' ? 1 / Math.tan(phi) : Math.tan(phi),
  };
}

/** From the axis of a log to where a brace ends on it. */
const letInTo = (diameterIn: number, { kind, depthIn }: BraceGeometry['ends']['post']): number =>
  diameterIn / 2 - (kind === 'coped' ? 0 : depthIn);

/** A tie log where it meets a post. */
export function tiePiece(tie: TieGeometry, yIn: number, cuts: readonly Face[] = []): JointPiece {
  const axisAt: Vector = [tie.xIn, yIn, tie.axisZIn];
  return {
    id: tie.id,
    label: tie.label,
    of: 'wood',
    stick: tie.stick,
    shape: shapeOf(tie.stick, { axisAt, axis: ACROSS_Y, up: UP }, diameterAlong(tie.stick, yIn - tie.fromYIn), cuts),
    toEndsIn: [yIn - tie.fromYIn, tie.toYIn - yIn],
  };
}

/** A flat or housing on a log, let in from its surface on one side. */
export const letIn = (axisAt: Vector, outward: Vector, diameterIn: number, depthIn: number): readonly Face[] =>
  depthIn > 0 ? [{ at: plus(axisAt, outward, diameterIn / 2 - depthIn), outward }] : [];

const diameterAlong = (stick: Stick | null, atIn: number): number =>
  stick?.kind === 'round' ? roundDiameterWithin(stick, atIn) : 0;

export const pointOf = ({ xIn, yIn, zIn }: BraceGeometry['postPoint']): Vector => [xIn, yIn, zIn];
