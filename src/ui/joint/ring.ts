import type { Face } from '../../engine/checks/fasteners/round-geometry.ts';
import { cross, dot, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';

/** The edge of a section of a stick, point after point; it bulges everywhere outward. */
export type Ring = readonly Vector[];

const AROUND = 64;

/** Two directions square to a grain and to each other; the second one as upright as it can be. */
function besideGrain(axis: Vector): readonly [Vector, Vector] {
  const aside = unit(cross(axis, Math.abs(axis[2]) > 0.9 ? [1, 0, 0] : [0, 0, 1]));
  return [aside, cross(aside, axis)];
}

/** A circle square to a grain. */
export function circleRing(centre: Vector, axis: Vector, diameterIn: number): Ring {
  const [aside, upright] = besideGrain(axis);
  return Array.from({ length: AROUND }, (_, i) => {
    const turn = (2 * Math.PI * i) / AROUND;
    return plus(plus(centre, aside, (Math.cos(turn) * diameterIn) / 2), upright, (Math.sin(turn) * diameterIn) / 2);
  });
}

/** A square that the faces of a sawn stick are cut out of. */
export function squareRing(centre: Vector, axis: Vector, sideIn: number): Ring {
  const [aside, upright] = besideGrain(axis);
  return (
    [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ] as const
  ).map(([a, b]) => plus(plus(centre, aside, (a * sideIn) / 2), upright, (b * sideIn) / 2));
}

/** What a plane cut leaves of a ring. */
export function behindFace(ring: Ring, { at, outward }: Face): Ring {
  const past = (p: Vector): number => dot(plus(p, at, -1), outward);
  return ring.flatMap((p, i) => {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    const [a, b] = [past(before), past(p)];
    if (a > 0 === b > 0) return b > 0 ? [] : [p];
    const edge = plus(before, plus(p, before, -1), a / (a - b));
    return b > 0 ? [edge] : [edge, p];
  });
}

/** The same ring with more points between its corners. */
export function withPoints(ring: Ring, between: number): Ring {
  return ring.flatMap((p, i) => {
    const next = ring[(i + 1) % ring.length]!;
    return Array.from({ length: between }, (_, k) => plus(p, plus(next, p, -1), k / between));
  });
}

/** From where to where a ring reaches along a direction, from a place [in]. */
export function reachOf(ring: Ring, from: Vector, along: Vector): readonly [fromIn: number, toIn: number] {
  const places = ring.map((p) => dot(plus(p, from, -1), along));
  return [Math.min(...places), Math.max(...places)];
}
