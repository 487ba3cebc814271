import type { Point } from '../drawing/paper.ts';
import type { Ink, Sketch } from '../drawing/sketch.ts';

/** An arrow from place to place; too short for a head it is a stroke. */
export function drawArrow(sketch: Sketch, from: Point, to: Point, ink: Ink): void {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  if (long < 1) return;
  const head = Math.min(sketch.view.paper.textSize * 0.5, long * 0.6);
  const back = { x: (from.x - to.x) / long, y: (from.y - to.y) / long };
  const side = (turn: 1 | -1): Point => ({
    x: to.x + head * (back.x - turn * 0.45 * back.y),
    y: to.y + head * (back.y + turn * 0.45 * back.x),
  });
  sketch.line([from, to], ink);
  sketch.line([side(1), to, side(-1)], ink);
}
