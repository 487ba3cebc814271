import { refused, type Refused } from '../../fasteners/refused.ts';
import { stretchIn, type StickShape } from '../../fasteners/round-geometry.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../fasteners/space.ts';
import { DEEPEST_HOUSING } from '../../post/housing.ts';
import type { JointPiece, JointSetting } from '../joint-setting.ts';
import { opposite, UP } from '../stick-shape.ts';

/** How plates lie beside both pieces of a joint. */
export interface PlateSeat {
  readonly ok: true;
  /** the piece that stands out farther, and how deep flats for the plates are cut in it on both sides; null: as wide */
  readonly wider: JointPiece | null;
  readonly flatIn: number;
  /** air between plate and the other piece [in] */
  readonly gapIn: number;
}

/** Air under a plate that does not matter [in]; common practice. */
const FLUSH_WITHIN_IN = 1 / 16;
/** Cosine under which a direction counts as square to another, and above which as the same. */
const SQUARE = 1e-6;
const SAME_WAY = 0.99;

/**
 * A straight plate lies on both pieces only where they are as wide, or the wider one has flats for it. Where it does not,
 * its fasteners would be bent over the step, which no equation reaches.
 * @param flatIn depth of the flats for plates on each side of the wider piece [in]
 * @returns how the plates lie, or why they do not
 * @source MECHANICS: line and cylinder, line and plane; OWN: a plate lies within 1/16 in. of both pieces, and its flats
 *         are no deeper than a housing
 */
export function plateSeat(setting: JointSetting, flatIn: number): PlateSeat | Refused {
  const { upper, lower } = setting;
  const steps = stepsOf(setting);
  if (!steps) return { ok: true, wider: null, flatIn: 0, gapIn: 0 };
  const isUpper = steps[0] + steps[1] > 0;
  const wider = isUpper ? upper : lower;
  const left = steps.map((step) => (isUpper ? step : -step) - flatIn);
  const gapIn = Math.max(...left.map(Math.abs));
  if (!Number.isFinite(gapIn)) return refused('shankMissesStick', { stick: wider.label });
  const diameterIn = wider.shape?.diameterIn;
  if (diameterIn && flatIn > diameterIn * DEEPEST_HOUSING)
    return refused('headFlatTooDeep', { flatIn, thicknessIn: diameterIn });
  if (gapIn > FLUSH_WITHIN_IN) return refused('plateNotFlush', { piece: wider.label, stepIn: gapIn });
  return { ok: true, wider, flatIn, gapIn };
}

/** How far the wider piece stands out beyond the other on a side, the mean of both [in]. */
export function widerByIn(setting: JointSetting): number {
  const [one, other] = stepsOf(setting) ?? [0, 0];
  return Math.abs(one + other) / 2;
}

/** How far the upper piece stands out beyond the lower one on both sides; null where plates lie on each for itself [in]. */
function stepsOf(setting: JointSetting): readonly [number, number] | null {
  const [upper, lower] = [setting.upper.shape, setting.lower.shape];
  const [out, other] = [upper && besideGrain(setting, upper), lower && besideGrain(setting, lower)];
  // a strap that is twisted from one piece to the other touches each by itself
  if (!upper || !lower || !out || !other || Math.abs(dot(out, other)) < SAME_WAY) return null;
  const step = (way: Vector): number => surfaceAt(setting, upper, way) - surfaceAt(setting, lower, way);
  return [step(out), step(opposite(out))];
}

/** How far out the wood of a stick reaches at the joint [in]; NaN where it is not there. */
function surfaceAt(setting: JointSetting, shape: StickShape, way: Vector): number {
  const at = onAxis(setting, shape);
  return dot(at, way) + (stretchIn(shape, { at, into: way })?.toIn ?? NaN);
}

/** The place on the axis of a stick beside the joint. */
export const onAxis = ({ at }: JointSetting, { axisAt, axis }: StickShape): Vector =>
  plus(axisAt, axis, dot(plus(at, axisAt, -1), axis));

/**
 * Level and square to the grain of a lying piece. Of a plumb one every level way is: across the line, or along it where the
 * other way is plumb itself (a tie log's joint).
 */
export function besideGrain({ ways }: JointSetting, { axis }: StickShape): Vector | null {
  const normals = [cross(axis, UP), ...[ways.across, ways.along].map((way) => plus(way, axis, -dot(way, axis)))];
  const found = normals.find((normal) => lengthOf(normal) > SQUARE);
  return found ? unit(found) : null;
}

/** A stick with flats for plates on both of its sides. */
export function withFlats(setting: JointSetting, shape: StickShape, into: Vector, flatIn: number): StickShape {
  if (flatIn === 0) return shape;
  const at = onAxis(setting, shape);
  const faces = [into, opposite(into)].map((outward) => {
    const reachIn = stretchIn(shape, { at, into: outward })?.toIn ?? 0;
    return { at: plus(at, outward, reachIn - flatIn), outward };
  });
  return { ...shape, faces: [...shape.faces, ...faces] };
}
