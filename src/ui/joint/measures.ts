import { stretchIn } from '../../engine/checks/fasteners/round-geometry.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointPiece } from '../../engine/checks/joints/joint-setting.ts';
import { onShank, type Shank } from './shanks.ts';

/** A distance that a fastener has to keep, between two places of the joint. */
export interface Measure {
  readonly what: 'depth' | 'through' | 'edge' | 'end';
  readonly from: Vector;
  readonly to: Vector;
  readonly lengthIn: number;
  readonly piece: JointPiece;
}

/** What is measured of a row's fasteners in the piece that holds them: depth, and the least to its edge and its end. */
export function measuresOf(shanks: readonly Shank[]): readonly Measure[] {
  const [first] = shanks;
  if (!first) return [];
  return [depthOf(first), least(shanks.map(toEdge)), least(shanks.map(toEnd))].filter((m) => m !== null);
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

/** From where it enters the piece to its point, or to the nut. */
const depthOf = (shank: Shank): Measure | null =>
  shank.inMainIn > 0
    ? measure(
        shank.nutIn === null ? 'depth' : 'through',
        shank.main,
        onShank(shank, shank.entersIn),
        onShank(shank, shank.entersIn + shank.inMainIn),
      )
    : null;

const halfWay = (shank: Shank): Vector => onShank(shank, shank.entersIn + shank.inMainIn / 2);

/** Wood beside it half way in, square to it and to the grain; nothing of one that runs along the grain. */
function toEdge(shank: Shank): Measure | null {
  const { main, into, inMainIn } = shank;
  if (!main.shape || inMainIn <= 0) return null;
  const side = cross(main.shape.axis, into);
  if (lengthOf(side) < 1e-6) return null;
  const at = halfWay(shank);
  const way = unit(side);
  const wood = stretchIn(main.shape, { at, into: way });
  if (!wood || wood.fromIn > 0 || wood.toIn < 0) return null;
  return measure('edge', main, at, plus(at, way, wood.toIn < -wood.fromIn - 1e-9 ? wood.toIn : wood.fromIn));
}

/** Wood along the grain to the nearer end of a piece that is crossed. */
function toEnd(shank: Shank): Measure | null {
  const { main, into, inMainIn } = shank;
  if (!main.shape || !main.toEndsIn || inMainIn <= 0) return null;
  const { axis, axisAt } = main.shape;
  if (Math.abs(dot(axis, into)) > 0.7) return null;
  const at = halfWay(shank);
  const t = dot(plus(at, axisAt, -1), axis);
  const [start, end] = [main.toEndsIn[0] + t, main.toEndsIn[1] - t];
  const [roomIn, away] = start < end ? [start, -1] : [end, 1];
  return roomIn > 0 ? measure('end', main, at, plus(at, axis, away * roomIn)) : null;
}
