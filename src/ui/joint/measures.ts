import { stretchIn } from '../../engine/checks/fasteners/round-geometry.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointPiece } from '../../engine/checks/joints/joint-setting.ts';
import { opposite } from '../../engine/checks/joints/stick-shape.ts';
import { onShank, type Shank } from './shanks.ts';

/** A distance that a fastener has to keep, between two places of the joint. */
export interface Measure {
  readonly what: 'depth' | 'through' | 'edge' | 'end' | 'sideEnd';
  readonly from: Vector;
  readonly to: Vector;
  readonly lengthIn: number;
  readonly piece: JointPiece;
}

/**
 * What is measured of a row's fasteners: in the piece that holds them depth, and the least to its edge and its end; in the
 * piece under their heads the least to its end.
 */
export function measuresOf(shanks: readonly Shank[]): readonly Measure[] {
  const [first] = shanks;
  if (!first || first.inMainIn <= 0) return [];
  const found = [
    depthOf(first),
    least(shanks.map(toEdge)),
    least(shanks.map((shank) => toEnd('end', shank.main, shank.into, halfWay(shank)))),
    least(shanks.map(sideToEnd)),
  ];
  return found.filter((m) => m !== null);
}

const measure = (what: Measure['what'], piece: JointPiece, from: Vector, to: Vector): Measure => ({
  what,
  piece,
  from,
  to,
  lengthIn: lengthOf(plus(to, from, -1)),
});

const least = (measures: readonly (Measure | null)[]): Measure | null =>
  measures.reduce((a, b) => (b && (!a || b.lengthIn < a.lengthIn - 1e-9) ? b : a), null);

/** From where it enters the piece straight down to its point, or to the nut. */
function depthOf(shank: Shank): Measure {
  const { main, into, square, nutIn, entersIn, inMainIn } = shank;
  const end = onShank(shank, entersIn + inMainIn);
  return measure(nutIn === null ? 'depth' : 'through', main, plus(end, square, -inMainIn * dot(into, square)), end);
}

const halfWay = (shank: Shank): Vector => onShank(shank, shank.entersIn + shank.inMainIn / 2);

/** Wood beside it half way in, square to it and to the grain; nothing of one that runs along the grain. */
function toEdge(shank: Shank): Measure | null {
  const { main, into } = shank;
  if (!main.shape) return null;
  const side = cross(main.shape.axis, into);
  if (lengthOf(side) < 1e-6) return null;
  const at = halfWay(shank);
  const way = unit(side);
  const wood = stretchIn(main.shape, { at, into: way });
  if (!wood || wood.fromIn > 0 || wood.toIn < 0) return null;
  return measure('edge', main, at, plus(at, way, wood.toIn < -wood.fromIn - 1e-9 ? wood.toIn : wood.fromIn));
}

/** Cosine with the grain from which on a shank counts as running along it. */
const ALONG = 0.95;

/** Wood along the grain to the nearer end of a piece that is crossed. */
function toEnd(what: 'end' | 'sideEnd', piece: JointPiece, into: Vector, at: Vector): Measure | null {
  if (!piece.shape || !piece.toEndsIn) return null;
  const { axis, axisAt } = piece.shape;
  if (Math.abs(dot(axis, into)) > ALONG) return null;
  const t = dot(plus(at, axisAt, -1), axis);
  const [start, end] = [piece.toEndsIn[0] + t, piece.toEndsIn[1] - t];
  const [roomIn, away] = start < end ? [start, -1] : [end, 1];
  return roomIn > 0 ? measure(what, piece, at, plus(at, axis, away * roomIn)) : null;
}

/** A piece whose end is this near to where the axes meet lies on the other one [in]. */
const ENDS_THERE = 1e-6;

/** The same half way through the piece under the head, whose fibres may end where it lies on the other one. */
function sideToEnd({ side, main, into, entersIn, headAt }: Shank): Measure | null {
  if (!side?.shape || !side.toEndsIn || !main.shape) return null;
  const at = plus(headAt, into, entersIn / 2);
  if (Math.min(...side.toEndsIn) > ENDS_THERE) return toEnd('sideEnd', side, into, at);
  const { axis } = side.shape;
  const toward = side.toEndsIn[0] < side.toEndsIn[1] ? opposite(axis) : axis;
  const meets = stretchIn(main.shape, { at, into: toward });
  return meets && meets.fromIn > 0 ? measure('sideEnd', side, at, plus(at, toward, meets.fromIn)) : null;
}
