import type { Point } from './paper.ts';
import type { Sketch } from './sketch.ts';

type Place = readonly [x: number, y: number, z: number];

/** What holds a joint, as a line across it in the shelter [in], and which views show it. */
export interface HardwareMark {
  readonly lineId: string | null;
  readonly isInSection: boolean;
  readonly line: readonly [Place, Place];
  /** it begins with a head; a strap has none */
  readonly hasHead: boolean;
}

/** In a smaller view than this, marks are left out [paper units per inch]. */
const LEAST_SCALE = 1.2;
/** A line seen shorter than this is a dot of half of it [paper units]. */
const DOT = 3;

/** Marks of hardware on a view that looks across the paper along y (a front view) or along x (the section). */
export function drawHardware(sketch: Sketch, marks: readonly HardwareMark[], lookAlong: 'x' | 'y'): void {
  const { view } = sketch;
  if (view.scale < LEAST_SCALE) return;
  const at = ([x, y, z]: Place): Point => view.at(lookAlong === 'y' ? x : y, z);
  for (const { line, hasHead } of marks) {
    const [from, to] = [at(line[0]), at(line[1])];
    if (Math.hypot(to.x - from.x, to.y - from.y) < DOT) sketch.circle(from, DOT / 2, 'ink-thin');
    else {
      sketch.line([from, to], 'ink-line');
      if (hasHead) sketch.line(headAcross(from, to), 'ink-line');
    }
  }
}

/** A short stroke square to a line at its start, as the head of a fastener. */
function headAcross(from: Point, to: Point): readonly Point[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const off = { x: (-(to.y - from.y) / length) * DOT, y: ((to.x - from.x) / length) * DOT };
  return [
    { x: from.x + off.x, y: from.y + off.y },
    { x: from.x - off.x, y: from.y - off.y },
  ];
}
