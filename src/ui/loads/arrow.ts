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

/** Where the wind comes from: an arrow above the view, from the end that it meets, and a word. */
export function drawWind(sketch: Sketch, [from, to]: readonly [from: number, to: number], toward: 1 | -1): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const start = { x: view.at(toward > 0 ? from : to, 0).x, y: size * 0.8 };
  const tip = { x: start.x + toward * size * 3, y: start.y };
  drawArrow(sketch, start, tip, 'ink-line');
  const centres = [1.8, 2.8].map((on) => ({ x: tip.x + toward * on * size, y: start.y }));
  sketch.text({ key: 'wind', text: 'wind', kind: 'note', centres, about: tip });
}
