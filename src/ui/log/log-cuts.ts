import type { CutHere, ShapedEnd } from '../../engine/cuts-of-member.ts';
import { flatWidth } from '../../engine/geometry/seats.ts';
import type { Sketch } from '../drawing/sketch.ts';
import { diameterOn, type LogShown } from './log-shown.ts';

/** From which side a cut is seen: above, below, or towards the viewer. */
export function sideOfCut({ angleDeg }: Pick<CutHere, 'angleDeg'>): 'top' | 'bottom' | 'face' {
  const turned = ((angleDeg % 360) + 360) % 360;
  if (turned < 60 || turned > 300) return 'top';
  return turned > 120 && turned < 240 ? 'bottom' : 'face';
}

/** A cut toward the viewer or away, as its edges lie on the face of the log; cuts above and below are in the outline. */
export function drawCutOnFace(sketch: Sketch, shown: LogShown, cut: CutHere): void {
  if (sideOfCut(cut) !== 'face') return;
  const { view } = sketch;
  const middle = shown.fromButt(cut.atIn);
  const [from, to] = [middle - cut.lengthIn / 2, middle + cut.lengthIn / 2];
  // the floor of a cut t deep is a strip 2 sqrt(d t - t2) wide
  const half = flatWidth(diameterOn(shown, middle), cut.depthIn) / 2;
  const box = [view.at(from, half), view.at(to, half), view.at(to, -half), view.at(from, -half)];
  sketch.outline(box, 'hidden-line', { givesWay: true });
}

/** Points across a saddle. */
const ACROSS = 12;

/** The end of a brace as it is cut: a plane across it, or a saddle whose ears reach round its log. */
export function drawEnd(sketch: Sketch, shown: LogShown, end: ShapedEnd): void {
  const { view } = sketch;
  const half = diameterOn(shown, shown.fromButt(end.atIn)) / 2;
  const ups = Array.from({ length: ACROSS + 1 }, (_, i) => half * ((2 * i) / ACROSS - 1));
  const place = (up: number, beyondIn = 0) => view.at(shown.fromButt(end.atIn + up * end.lean + beyondIn), up);
  sketch.line([place(-half), place(half)], 'ink-line', { givesWay: true });
  if (end.roundIn === null) return;
  const R = end.roundIn / 2;
  // the lower end of a brace leans toward its upper side: what is beyond it lies toward the start
  const toEnd = -Math.sign(end.lean) * Math.hypot(1, end.lean);
  const ear = (up: number): number => R - Math.sqrt(Math.max(0, R * R - Math.max(0, half * half - up * up)));
  sketch.line(
    ups.map((up) => place(up, toEnd * ear(up))),
    'hidden-line',
    { givesWay: true },
  );
}
