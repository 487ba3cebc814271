import type { Box, Point, Segment } from './paper.ts';

const short = (n: number): string => String(Math.round(n * 100) / 100);

/** SVG path of a line through points. */
export function pathOf(points: readonly Point[], closed = false): string {
  const steps = points.map((p, i) => `${i === 0 ? 'M' : 'L'}${short(p.x)} ${short(p.y)}`).join('');
  return closed ? `${steps}Z` : steps;
}

/** SVG path of a circle. */
export function circlePath(centre: Point, radius: number): string {
  const r = short(radius);
  const across = short(2 * radius);
  return `M${short(centre.x - radius)} ${short(centre.y)}a${r} ${r} 0 1 0 ${across} 0a${r} ${r} 0 1 0 -${across} 0Z`;
}

export const circlePoints = (centre: Point, radius: number): readonly Point[] =>
  Array.from({ length: 12 }, (_, i) => ({
    x: centre.x + radius * Math.cos((i * Math.PI) / 6),
    y: centre.y + radius * Math.sin((i * Math.PI) / 6),
  }));

export function segmentsOf(points: readonly Point[], closed = false): readonly Segment[] {
  const sides = points.slice(1).map((p, i): Segment => [points[i]!, p]);
  const first = points[0];
  const last = points[points.length - 1];
  return closed && first && last ? [...sides, [last, first]] : sides;
}

/** Where two straight lines, run on as far as need be, meet; null when they are as good as parallel. */
export function meeting([a, b]: Segment, [c, d]: Segment): Point | null {
  const turn = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
  if (Math.abs(turn) < 1e-9) return null;
  const t = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / turn;
  return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
}

/** Does a straight piece touch the box? It is cut down side by side until nothing of it is left outside. */
export function touches([a, b]: Segment, box: Box): boolean {
  let from = 0;
  let to = 1;
  const sides = [
    [a.x - b.x, a.x - box.x],
    [b.x - a.x, box.x + box.width - a.x],
    [a.y - b.y, a.y - box.y],
    [b.y - a.y, box.y + box.height - a.y],
  ] as const;
  for (const [run, room] of sides) {
    if (run === 0) {
      if (room < 0) return false;
    } else if (run < 0) from = Math.max(from, room / run);
    else to = Math.min(to, room / run);
  }
  return from <= to;
}

export const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/**
 * Strokes rising to the right across a closed outline, `apart` from each other.
 * Each stroke line is cut by the outline's sides; it is ink between the first and second cut, third and fourth, and on.
 */
export function hatchStrokes(outline: readonly Point[], apart: number): readonly Segment[] {
  const sides = segmentsOf(outline, true);
  // x + y is the same all along a stroke that rises to the right on paper
  const level = (p: Point): number => p.x + p.y;
  const levels = outline.map(level);
  const step = apart * Math.SQRT2;
  const strokes: Segment[] = [];
  for (let at = Math.ceil(Math.min(...levels) / step) * step; at < Math.max(...levels); at += step) {
    const cuts = sides
      .flatMap(([a, b]) => {
        const la = level(a);
        const lb = level(b);
        if (la <= at === lb <= at) return [];
        const t = (at - la) / (lb - la);
        return [{ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) }];
      })
      .sort((p, q) => p.x - q.x);
    for (let i = 1; i < cuts.length; i += 2) strokes.push([cuts[i - 1]!, cuts[i]!]);
  }
  return strokes;
}
