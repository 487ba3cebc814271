import { plus } from '../../engine/checks/fasteners/space.ts';
import { drawDimension } from '../drawing/dimension.ts';
import type { Point } from '../drawing/paper.ts';
import type { ShowLength } from '../drawing/words.ts';
import type { Bodies } from './bodies-of.ts';
import { seen, type Look } from './looks.ts';
import type { Measure } from './measures.ts';
import { isInside, seenBody } from './outline.ts';
import type { Pen } from './pen.ts';
import { JOINT_DRAWING_WORDS } from './words.ts';

/** A length that is seen shorter than this share of itself is not written in a view. */
const TRUE_LENGTH = 0.97;
/** Share of a measure before its end where it is looked for in the wood. */
const SHORT_OF_END = 0.05;
/** How far beside its shank a depth is written, in text sizes. */
const DEPTH_OFF = 0.9;

/**
 * A measure in the first view that shows it in true length and has the wood up to both of its ends on the paper.
 * @param told  what is written already, to which it is added
 */
export function drawMeasure(
  pen: Pen,
  bodies: Bodies,
  measure: Measure,
  row: number,
  showLength: ShowLength,
  told: Set<string>,
): void {
  const { sketch, look, at } = pen;
  const { what, from, to, lengthIn } = measure;
  const key = `${what}-${row}`;
  const run = seen(look, plus(to, from, -1));
  if (Math.hypot(run.x, run.y) < TRUE_LENGTH * lengthIn || told.has(key)) return;
  if (!isDrawnUpTo(bodies, look, measure)) return;
  told.add(key);
  const [a, b] = [at(from), at(to)];
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

/** Just short of its end a measure still lies in wood that is drawn. */
function isDrawnUpTo({ upper, lower }: Bodies, look: Look, { from, to }: Measure): boolean {
  const last = seen(look, plus(to, plus(from, to, -1), SHORT_OF_END));
  return [upper, lower].some((body) => body !== null && isInside(last, seenBody(body, look).outline));
}

/** Square to a line on the paper, to its right or below it. */
function beside(a: Point, b: Point, off: number): Point {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const square = { x: -(b.y - a.y) / length, y: (b.x - a.x) / length };
  const way = square.x + 0.2 * square.y >= 0 ? off : -off;
  return { x: square.x * way, y: square.y * way };
}
