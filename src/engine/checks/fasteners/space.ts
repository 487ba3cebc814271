/** A point or a direction: along the stick that holds, across it, out of it. */
export type Vector = readonly [x: number, y: number, z: number];

export const plus = (a: Vector, b: Vector, times = 1): Vector => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
];
export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const lengthOf = (a: Vector): number => Math.hypot(...a);
/** Of length one; the vector must have a length. */
export const unit = (a: Vector): Vector => {
  const length = lengthOf(a);
  return [a[0] / length, a[1] / length, a[2] / length];
};
