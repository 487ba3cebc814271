import type { SectionHere } from '../../engine/section-of-member.ts';
import { hatchStrokes } from '../drawing/outline.ts';
import type { Paper, Point, View } from '../drawing/paper.ts';
import { beginSketch, type Picture } from '../drawing/sketch.ts';

/** A straight cut across a circle: everything past the line is gone. */
interface Chord {
  readonly angleDeg: number;
  readonly depthIn: number;
}

const ROUND = 96;

/** What is left of a circle below its chords, as a polygon about its middle; up is +y, the angle turns to the right [in]. */
export function leftOfCircle(diameterIn: number, chords: readonly Chord[]): readonly Point[] {
  const R = diameterIn / 2;
  const circle = Array.from({ length: ROUND }, (_, i) => {
    const turn = (2 * Math.PI * i) / ROUND;
    return { x: R * Math.sin(turn), y: R * Math.cos(turn) };
  });
  return chords.reduce<readonly Point[]>((left, { angleDeg, depthIn }) => {
    const turn = (angleDeg * Math.PI) / 180;
    const past = (p: Point): number => p.x * Math.sin(turn) + p.y * Math.cos(turn) - (R - depthIn);
    return left.flatMap((p, i) => {
      const before = left[(i + left.length - 1) % left.length]!;
      const [a, b] = [past(before), past(p)];
      const t = a / (a - b);
      const edge = { x: before.x + t * (p.x - before.x), y: before.y + t * (p.y - before.y) };
      if (a > 0 !== b > 0) return b > 0 ? [edge] : [edge, p];
      return b > 0 ? [] : [p];
    });
  }, circle);
}

/** The section of a log at a place: the round it was, and what flat and cuts leave of it. */
export function sectionPicture({ diameterIn, flatIn, cuts }: SectionHere, paper: Paper, title: string): Picture {
  const side = Math.min(paper.width, paper.maxHeight);
  const scale = (side - 16) / diameterIn;
  const at = (right: number, up: number): Point => ({ x: side / 2 + right * scale, y: side / 2 - up * scale });
  const view: View = { paper, width: side, height: side, scale, at };
  const sketch = beginSketch(view);
  const chords = [...(flatIn > 0 ? [{ angleDeg: 0, depthIn: flatIn }] : []), ...cuts];
  sketch.circle(at(0, 0), (diameterIn / 2) * scale, 'hidden-line');
  const left = leftOfCircle(diameterIn, chords).map((p) => at(p.x, p.y));
  if (left.length > 2) {
    sketch.outline(left, 'ink-heavy', { covers: true });
    sketch.hatch(hatchStrokes(left, 9));
  }
  const words = chords.length === 0 ? 'A whole circle.' : `${chords.length} cuts taken off.`;
  return sketch.finish(title, words);
}
