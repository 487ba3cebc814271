import type { Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointWays } from '../../engine/checks/joints/joint-setting.ts';
import { opposite } from '../../engine/checks/joints/stick-shape.ts';
import type { Point } from '../drawing/paper.ts';
import type { Sketch } from '../drawing/sketch.ts';
import { textHeight, textWidth } from '../drawing/text-size.ts';
import { seen, type Look } from './looks.ts';
import { JOINT_DRAWING_WORDS } from './words.ts';

/** Half an arrow of the rose, in text sizes; room that the whole rose takes on each side of its middle. */
const ARM = 1.7;
export const ROSE_ROOM = 4.6;
/** A direction seen shorter than this share of itself is not shown in a view. */
const LEAST_SHOWN = 0.5;

/** Which way the demands of a joint act, as a small rose of arrows: pull is what takes the upper piece off the lower one. */
export function drawWays(sketch: Sketch, look: Look, ways: JointWays, middle: Point): void {
  const { pull, push, along, across } = JOINT_DRAWING_WORDS.ways;
  const size = sketch.view.paper.textSize;
  const arms: readonly (readonly [key: string, text: string, way: Vector, isNamed: boolean])[] = [
    ['pull', pull, ways.pull, true],
    ['push', push, opposite(ways.pull), true],
    ['along', along, ways.along, true],
    ['along-back', along, opposite(ways.along), false],
    ['across', across, ways.across, true],
    ['across-back', across, opposite(ways.across), false],
  ];
  for (const [key, text, way, isNamed] of arms) {
    const { x, y } = seen(look, way);
    const shown = Math.hypot(x, y);
    if (shown < LEAST_SHOWN) continue;
    const dir = { x: x / shown, y: -y / shown };
    const tip = drawArrow(sketch, middle, dir, size);
    if (!isNamed) continue;
    const off = { x: textWidth(text, size) / 2 + size * 0.35, y: textHeight(size) / 2 + size * 0.3 };
    const centres = [1, 1.25, 1.6].map((far) => ({ x: tip.x + dir.x * off.x * far, y: tip.y + dir.y * off.y * far }));
    sketch.text({ key: `way-${key}`, text, kind: 'note', centres, about: tip });
  }
}

function drawArrow(sketch: Sketch, from: Point, dir: Point, size: number): Point {
  const tip = { x: from.x + dir.x * ARM * size, y: from.y + dir.y * ARM * size };
  const barb = (side: 1 | -1): Point => ({
    x: tip.x - size * (0.5 * dir.x + side * 0.25 * dir.y),
    y: tip.y - size * (0.5 * dir.y - side * 0.25 * dir.x),
  });
  sketch.line([from, tip], 'ink-thin');
  sketch.line([barb(1), tip, barb(-1)], 'ink-thin');
  return tip;
}
