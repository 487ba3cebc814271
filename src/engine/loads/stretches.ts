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

/** Which stretch a place on the line belongs to; a post's own place counts to the one beyond it. */
export function stretchAt(stretches: readonly Stretch[], xIn: number): number {
  const i = stretches.findIndex((s) => xIn < s.toXIn - 1e-9);
  return i < 0 ? stretches.length - 1 : i;
}
