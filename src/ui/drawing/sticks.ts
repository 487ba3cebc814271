import { between, roundDiameterWithin } from '../../engine/geometry/beam-shape.ts';
import type { BeamGeometry, BraceGeometry, PostGeometry, Stick } from '../../engine/geometry/shelter.ts';
import { meeting } from './outline.ts';
import type { Point, Segment } from './paper.ts';

/** Which way a stick is looked at: its thickness across the load or along it. */
export type Face = 'breadth' | 'depth';

/** Thickness of a stick at a distance from its start [in]; null when its size is not known (nothing given, or typed). */
export function thicknessAt(stick: Stick | null, atIn: number, face: Face): number | null {
  if (!stick || stick.kind === 'typed') return null;
  if (stick.kind === 'round') return roundDiameterWithin(stick, atIn);
  return face === 'breadth' ? stick.breadthIn : stick.depthIn;
}

/** Outline of a post, round its axis at `axisIn`, between two levels; places are (across the paper, up) in inches. */
export function postOutline(post: PostGeometry, axisIn: number, fromZIn: number, toZIn: number): readonly Point[] {
  const stick = post.stick;
  const stations =
    stick?.kind === 'round'
      ? stick.profile.map((p) => post.woodFromZIn + p.atIn).filter((z) => z > fromZIn && z < toZIn)
      : [];
  const levels = [fromZIn, ...stations, toZIn];
  const half = (z: number): number => (thicknessAt(stick, z - post.woodFromZIn, 'breadth') ?? 0) / 2;
  return [
    ...levels.map((z) => ({ x: axisIn - half(z), y: z })),
    ...levels.toReversed().map((z) => ({ x: axisIn + half(z), y: z })),
  ];
}

export const hasSize = (stick: Stick | null): boolean => stick !== null && stick.kind !== 'typed';

/** Outline of a beam from the side: tops, then undersides back. */
export const beamOutline = (beam: BeamGeometry): readonly Point[] => [
  ...beam.stations.map((s) => ({ x: s.xIn, y: s.topZIn })),
  ...beam.stations.toReversed().map((s) => ({ x: s.xIn, y: s.undersideZIn })),
];

/** Outline of a beam from above: a round log is as wide as it is thick, a sawn one has its breadth. */
export function beamFromAbove(beam: BeamGeometry, yIn: number): readonly Point[] {
  const half = (diameterIn: number): number => (beam.stick?.kind === 'sawn' ? beam.stick.breadthIn : diameterIn) / 2;
  return [
    ...beam.stations.map((s) => ({ x: s.xIn, y: yIn - half(s.diameterIn) })),
    ...beam.stations.toReversed().map((s) => ({ x: s.xIn, y: yIn + half(s.diameterIn) })),
  ];
}

/** Underside of a beam near a place, run on as a straight line. */
export function undersideNear(beam: BeamGeometry, xIn: number): Segment {
  const at = (x: number): Point => ({ x, y: between(beam.stations, x, (s) => s.undersideZIn) });
  return [at(xIn - 6), at(xIn + 6)];
}

/** Face of a post on the side of the brace, run on as a straight line. */
export function postFace(post: PostGeometry, axisIn: number, side: 1 | -1): Segment {
  const at = (z: number): Point => ({
    x: axisIn + (side * (thicknessAt(post.stick, z - post.woodFromZIn, 'breadth') ?? 0)) / 2,
    y: z,
  });
  return [at(post.woodFromZIn), at(post.seatZIn)];
}

/**
 * Outline of a knee brace between the surface of its post and the underside of what it carries. Working points are
 * where axes meet, so both edges of the brace are run on to the two surfaces.
 */
export function braceOutline(
  brace: BraceGeometry,
  post: Point,
  top: Point,
  face: Segment,
  underside: Segment,
): readonly Point[] | null {
  const atPost = thicknessAt(brace.stick, 0, 'depth');
  const atTop = thicknessAt(brace.stick, brace.lengthIn, 'depth');
  const length = Math.hypot(top.x - post.x, top.y - post.y);
  if (atPost === null || atTop === null || length === 0) return null;
  const square = { x: -(top.y - post.y) / length, y: (top.x - post.x) / length };
  const edge = (side: 1 | -1): Segment => [
    { x: post.x + (side * square.x * atPost) / 2, y: post.y + (side * square.y * atPost) / 2 },
    { x: top.x + (side * square.x * atTop) / 2, y: top.y + (side * square.y * atTop) / 2 },
  ];
  const corners = [
    meeting(edge(1), face),
    meeting(edge(1), underside),
    meeting(edge(-1), underside),
    meeting(edge(-1), face),
  ];
  return corners.every((c) => c !== null) ? corners : null;
}
