import { positive } from '../../errors.ts';
import { degreesFromRadians } from '../../units.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from './space.ts';

/** A plane cut: flat, dap, housing, sawn face. The wood lies behind it. */
export interface Face {
  readonly at: Vector;
  /** out of the wood, of length one */
  readonly outward: Vector;
}

/**
 * A stick as a fastener meets it: a cylinder of the log's diameter at that place with its flats, or a sawn stick that is
 * faces alone. Taper over the thickness of a joint is left out.
 */
export interface StickShape {
  readonly axisAt: Vector;
  /** along the grain, of length one */
  readonly axis: Vector;
  /** null: sawn, its faces say all */
  readonly diameterIn: number | null;
  readonly faces: readonly Face[];
}

/** The axis of a fastener: a point on it and the way it goes in, of length one. */
export interface ShankLine {
  readonly at: Vector;
  readonly into: Vector;
}

/** Where a line is inside a stick, measured along it from its point [in]. */
export interface Stretch {
  readonly fromIn: number;
  readonly toIn: number;
}

/** Two directions count as parallel, and a stretch as nothing, under this. */
const NOTHING = 1e-9;

/**
 * The stretch of a line that lies in a stick.
 * @returns distances along the line from its point, or null where it passes beside the wood
 * @throws MisuseError if a diameter is not above zero
 * @source MECHANICS: line and cylinder, line and plane
 */
export function stretchIn(stick: StickShape, line: ShankLine): Stretch | null {
  const round = stick.diameterIn === null ? EVERYWHERE : inCylinder(stick, stick.diameterIn, line);
  const stretch = stick.faces.reduce<Stretch | null>((left, face) => left && behind(face, line, left), round);
  return stretch && stretch.toIn - stretch.fromIn > NOTHING ? stretch : null;
}

const EVERYWHERE: Stretch = { fromIn: -Infinity, toIn: Infinity };

function inCylinder({ axisAt, axis }: StickShape, diameterIn: number, { at, into }: ShankLine): Stretch | null {
  const r = positive('diameterIn', diameterIn) / 2;
  const square = (v: Vector): Vector => plus(v, axis, -dot(v, axis));
  const m = square(plus(at, axisAt, -1));
  const d = square(into);
  const a = dot(d, d);
  const b = dot(m, d);
  const c = dot(m, m) - r * r;
  if (a < NOTHING * NOTHING) return c < 0 ? EVERYWHERE : null;
  const root = b * b - a * c;
  if (root <= 0) return null;
  return { fromIn: (-b - Math.sqrt(root)) / a, toIn: (-b + Math.sqrt(root)) / a };
}

function behind({ at, outward }: Face, line: ShankLine, { fromIn, toIn }: Stretch): Stretch | null {
  const slope = dot(line.into, outward);
  const outside = dot(plus(line.at, at, -1), outward);
  if (Math.abs(slope) < NOTHING) return outside <= NOTHING ? { fromIn, toIn } : null;
  const meets = -outside / slope;
  return slope > 0 ? { fromIn, toIn: Math.min(toIn, meets) } : { fromIn: Math.max(fromIn, meets), toIn };
}

/**
 * Angle between a fastener and the grain of a stick.
 * @returns 0 along the grain to 90 square to it [deg]
 */
export const angleToGrainDeg = ({ axis }: StickShape, { into }: ShankLine): number =>
  degreesFromRadians(Math.atan2(lengthOf(cross(axis, into)), Math.abs(dot(axis, into))));

/**
 * Wood beside a fastener, square to it and to the grain, on the side that has less: the edge distance, along the chord at
 * that depth and not along the diameter.
 * @param depthIn along the line from its point; a place inside the stick
 * @returns distance to the surface [in], 0 where the place lies on it; null where the fastener runs along the grain and
 *          no such side exists
 * @throws MisuseError if a diameter is not above zero
 * @source MECHANICS: line and cylinder, line and plane
 */
export function edgeBeside(stick: StickShape, line: ShankLine, depthIn: number): number | null {
  const side = cross(stick.axis, line.into);
  if (lengthOf(side) < NOTHING) return null;
  const stretch = stretchIn(stick, { at: plus(line.at, line.into, depthIn), into: unit(side) });
  return stretch ? Math.max(0, Math.min(stretch.toIn, -stretch.fromIn)) : 0;
}
