import type { Stick } from '../../geometry/shelter.ts';
import type { Face, StickShape } from '../fasteners/round-geometry.ts';
import { cross, plus, type Vector } from '../fasteners/space.ts';

/** A stick as it lies: a point on its axis, the way its grain runs and the way its depth stands, both of length one. */
export interface Lying {
  readonly axisAt: Vector;
  readonly axis: Vector;
  readonly up: Vector;
}

/**
 * The wood of a stick at one place.
 * @param diameterIn of a round one there [in]
 * @param cuts flats, seats and housings that are cut there
 * @returns null for a typed section, which has no shape, and where nothing is given
 */
export function shapeOf(
  stick: Stick | null,
  lying: Lying,
  diameterIn: number,
  cuts: readonly Face[] = [],
): StickShape | null {
  if (!stick || stick.kind === 'typed') return null;
  const { axisAt, axis } = lying;
  if (stick.kind === 'sawn')
    return { axisAt, axis, diameterIn: null, faces: [...boxFaces(lying, stick.breadthIn, stick.depthIn), ...cuts] };
  return diameterIn > 0 ? { axisAt, axis, diameterIn, faces: cuts } : null;
}

/** Top, bottom and sides of a sawn stick. */
function boxFaces({ axisAt, axis, up }: Lying, breadthIn: number, depthIn: number): readonly Face[] {
  const aside = cross(axis, up);
  return [faceAt(axisAt, up, depthIn / 2), faceAt(axisAt, aside, breadthIn / 2)].flat();
}

/** Two faces on both sides of a point. */
const faceAt = (from: Vector, out: Vector, offIn: number): readonly Face[] =>
  ([1, -1] as const).map((way) => ({ at: plus(from, out, way * offIn), outward: reversed(out, way) }));

const reversed = (v: Vector, way: 1 | -1): Vector => [way * v[0], way * v[1], way * v[2]];
export const opposite = (v: Vector): Vector => reversed(v, -1);

export const ALONG_X: Vector = [1, 0, 0];
export const ACROSS_Y: Vector = [0, 1, 0];
export const UP: Vector = [0, 0, 1];
export const DOWN: Vector = [0, 0, -1];
