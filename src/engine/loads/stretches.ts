import type { LineGeometry, PostGeometry } from '../geometry/shelter.ts';

/** A stretch of a line between posts or beyond the last one, with a stable name. */
export interface Stretch {
  readonly name: string;
  readonly kind: 'overhang' | 'span';
  readonly fromXIn: number;
  readonly toXIn: number;
}

export function stretchesOf(line: LineGeometry, posts: readonly PostGeometry[]): readonly Stretch[] {
  const marks = [
    { name: 'minus', xIn: line.fromXIn },
    ...posts.map((p) => ({ name: p.id, xIn: p.xIn })),
    { name: 'plus', xIn: line.toXIn },
  ];
  return marks.slice(1).flatMap((to, i): Stretch[] => {
    const from = marks[i]!;
    if (to.xIn - from.xIn < 1e-6) return [];
    const kind = from.name === 'minus' || to.name === 'plus' ? 'overhang' : 'span';
    return [{ name: `${from.name}~${to.name}`, kind, fromXIn: from.xIn, toXIn: to.xIn }];
  });
}

/** Share of a stretch in what comes down at a place: all of it inside, half on a post between two stretches. */
export function shareIn(stretches: readonly Stretch[], index: number, xIn: number): number {
  const last = stretches[stretches.length - 1];
  if (!last) return 0;
  const within = Math.min(Math.max(xIn, stretches[0]!.fromXIn), last.toXIn);
  const holding = stretches.filter((s) => within > s.fromXIn - 1e-9 && within < s.toXIn + 1e-9);
  return holding.includes(stretches[index]!) ? 1 / holding.length : 0;
}

/** How much of a load a pattern over stretches leaves at a place; a post between two of them has the mean of both. */
export const patternFactor = (stretches: readonly Stretch[], factors: readonly number[], xIn: number): number =>
  factors.reduce((sum, factor, i) => sum + factor * shareIn(stretches, i, xIn), 0);
