import { dot, plus, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { Point, Segment } from '../drawing/paper.ts';
import type { Body } from './body.ts';
import { seen, type Look } from './looks.ts';
import type { Ring } from './ring.ts';

/** A piece as it is seen, in inches: its whole outline, which parts of it are edges of wood, where it is broken off. */
export interface Seen {
  readonly outline: readonly Point[];
  readonly edges: readonly (readonly Point[])[];
  readonly isEndOn: boolean;
}

/** Grain that is seen shorter than this share of its length is seen end on. */
const END_ON = 0.05;

/** The outline of a piece: its section where it is seen end on, else the edges along its grain with both ends. */
export function seenBody(body: Body, look: Look): Seen {
  const grain = seen(look, body.axis);
  const length = Math.hypot(grain.x, grain.y);
  if (length < END_ON) {
    const outline = body.atJoint.map((p) => seen(look, p));
    return { outline, edges: [[...outline, ...outline.slice(0, 1)]], isEndOn: true };
  }
  const along: Point = { x: grain.x / length, y: grain.y / length };
  const across: Point = { x: -along.y, y: along.x };
  const rings = body.rings.filter((ring) => ring.length > 0).map((ring) => ring.map((p) => seen(look, p)));
  const [first, last] = [rings[0] ?? [], rings.at(-1) ?? []];
  const left = rings.map((ring) => farthest(ring, across));
  const right = rings.map((ring) => farthest(ring, { x: -across.x, y: -across.y }));
  const start = body.goesOn[0]
    ? brokenOff(right[0]!, left[0]!, along)
    : capOf(first, across, { x: -along.x, y: -along.y });
  const end = body.goesOn[1] ? brokenOff(right.at(-1)!, left.at(-1)!, along) : capOf(last, across, along);
  return {
    outline: [...left, ...end.toReversed(), ...right.toReversed(), ...start],
    edges: [
      left,
      right,
      ...(body.goesOn[0] ? [] : [[right[0]!, ...start, left[0]!]]),
      ...(body.goesOn[1] ? [] : [[right.at(-1)!, ...end, left.at(-1)!]]),
    ],
    isEndOn: false,
  };
}

const product = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

function farthest(ring: readonly Point[], way: Point): Point {
  return ring.reduce((a, b) => (product(b, way) > product(a, way) + 1e-9 ? b : a));
}

/** Points of a ring that bulge out past the straight line between its sides, from right to left. */
function capOf(ring: readonly Point[], across: Point, out: Point): readonly Point[] {
  const points = ring
    .map((p) => ({ p, x: product(p, across), y: product(p, out) }))
    .toSorted((a, b) => a.x - b.x || b.y - a.y);
  const hull: typeof points = [];
  for (const next of points) {
    while (hull.length > 1 && turns(hull.at(-2)!, hull.at(-1)!, next) >= -1e-9) hull.pop();
    hull.push(next);
  }
  return hull.map(({ p }) => p);
}

const turns = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Half of the zigzag of a broken end, in shares of its width. */
const ZIG = 0.09;

function brokenOff(from: Point, to: Point, along: Point): readonly Point[] {
  const wide = Math.hypot(to.x - from.x, to.y - from.y);
  const at = (share: number, out: number): Point => ({
    x: from.x + share * (to.x - from.x) + out * wide * along.x,
    y: from.y + share * (to.y - from.y) + out * wide * along.y,
  });
  return [from, at(0.5 - ZIG, 0), at(0.5 - ZIG / 3, ZIG), at(0.5 + ZIG / 3, -ZIG), at(0.5 + ZIG, 0), to];
}

/** The near half of an end that is cut to fit, as the line where it meets the other piece. */
export function nearRim(ends: Ring, { axisAt, axis }: Body, look: Look): readonly (readonly Point[])[] {
  const isNear = (p: Vector): boolean => {
    const off = plus(p, axisAt, -1);
    return dot(plus(off, axis, -dot(off, axis)), look.toward) >= -1e-6;
  };
  const runs: Point[][] = [];
  ends.forEach((p, i) => {
    const next = ends[(i + 1) % ends.length]!;
    if (isNear(p) && isNear(next)) runs.push([seen(look, p), seen(look, next)]);
  });
  return runs;
}

/** Parts of a line that lie inside an outline. */
export function insideOf(line: readonly Point[], outline: readonly Point[]): readonly Segment[] {
  return line.slice(1).flatMap((to, i) => {
    const from = line[i]!;
    const at = (t: number): Point => ({ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) });
    const cuts = [0, 1, ...crossings(from, to, outline)].toSorted((a, b) => a - b);
    return cuts.slice(1).flatMap((t, k): readonly Segment[] => {
      const before = cuts[k]!;
      return t - before > 1e-6 && isInside(at((t + before) / 2), outline) ? [[at(before), at(t)]] : [];
    });
  });
}

function crossings(from: Point, to: Point, outline: readonly Point[]): readonly number[] {
  const run = { x: to.x - from.x, y: to.y - from.y };
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const turn = run.x * (b.y - a.y) - run.y * (b.x - a.x);
    if (Math.abs(turn) < 1e-9) return [];
    const t = ((a.x - from.x) * (b.y - a.y) - (a.y - from.y) * (b.x - a.x)) / turn;
    const u = ((a.x - from.x) * run.y - (a.y - from.y) * run.x) / turn;
    return t > 0 && t < 1 && u >= 0 && u <= 1 ? [t] : [];
  });
}

/** A line that runs along an outline lies on it and not inside. */
const ON_IT = 0.02;

export function isInside(p: Point, outline: readonly Point[]): boolean {
  let inside = false;
  for (const [i, a] of outline.entries()) {
    const b = outline[(i + 1) % outline.length]!;
    if (distance(p, a, b) < ON_IT) return false;
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}

function distance(p: Point, a: Point, b: Point): number {
  const run = { x: b.x - a.x, y: b.y - a.y };
  const length = product(run, run);
  const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * run.x + (p.y - a.y) * run.y) / length));
  return Math.hypot(p.x - a.x - t * run.x, p.y - a.y - t * run.y);
}
