import { plus } from '../../engine/checks/fasteners/space.ts';
import { drawDimension } from '../drawing/dimension.ts';
import type { Point, View } from '../drawing/paper.ts';
import type { ShowLength } from '../drawing/words.ts';
import { seen } from './looks.ts';
import type { Measure } from './measures.ts';
import type { Pen } from './pen.ts';
import { JOINT_DRAWING_WORDS } from './words.ts';

/** A length that is seen shorter than this share of itself is not written in a view. */
const TRUE_LENGTH = 0.97;
/** How far beside its shank a depth is written, in text sizes. */
const DEPTH_OFF = 0.9;

/**
 * A measure in the first view that shows it in true length and has both of its ends on the paper.
 * @param told  what is written already, to which it is added
 */
export function drawMeasure(pen: Pen, measure: Measure, row: number, showLength: ShowLength, told: Set<string>): void {
  const { sketch, look, at } = pen;
  const { what, from, to, lengthIn } = measure;
  const key = `${what}-${row}`;
  const run = seen(look, plus(to, from, -1));
  if (Math.hypot(run.x, run.y) < TRUE_LENGTH * lengthIn || told.has(key)) return;
  const [a, b] = [at(from), at(to)];
  if (![a, b].every((p) => isOn(sketch.view, p))) return;
  told.add(key);
  const isAlongShank = what === 'depth' || what === 'through';
  const off = isAlongShank ? beside(a, b, DEPTH_OFF * sketch.view.paper.textSize) : { x: 0, y: 0 };
  const shift = (p: Point): Point => ({ x: p.x + off.x, y: p.y + off.y });
  drawDimension(sketch, {
    key,
    from: shift(a),
    to: shift(b),
    text: JOINT_DRAWING_WORDS.whatIs[what](showLength(lengthIn)),
    side: 1,
    level: true,
    beyond: !isAlongShank,
  });
}

const isOn = ({ width, height }: View, { x, y }: Point): boolean => x >= 0 && x <= width && y >= 0 && y <= height;

/** Square to a line on the paper, to its right or below it. */
function beside(a: Point, b: Point, off: number): Point {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const square = { x: -(b.y - a.y) / length, y: (b.x - a.x) / length };
  const way = square.x + 0.2 * square.y >= 0 ? off : -off;
  return { x: square.x * way, y: square.y * way };
}
