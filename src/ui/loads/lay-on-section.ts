import type { LoadStrip } from '../../engine/load-pictures/picture.ts';
import type { PlaneGeometry } from '../../engine/geometry/shelter.ts';
import type { Point } from '../drawing/paper.ts';
import type { LaidOver } from '../drawing/picture-options.ts';
import { coverZAt } from '../drawing/roof-shape.ts';
import type { Sketch } from '../drawing/sketch.ts';
import { showQuantity } from '../units/show-quantity.ts';
import { drawArrow, drawWind } from './arrow.ts';
import { cutAtX, isEven, planeOf, pressureWords, strengthOf, yOnSlope, type LoadToDraw } from './load-room.ts';

/** Clear paper between the roof and the arrows, between arrows, and beyond them for the words, in text sizes. */
const GAP = 0.6;
const APART = 2;
const WORDS_ROOM = 3;

/** A load on the section: pressures over the roof to scale, what hangs on the lines, the push across. */
export function layOnSection(load: LoadToDraw, textSize: number): LaidOver {
  const { picture, shelter, pressures, title, description } = load;
  const x = cutAtX(picture, shelter);
  const strips = picture.strips.filter((s) => s.fromXIn <= x && x <= s.toXIn);
  const highest = Math.max(0, ...strips.map(strengthOf));
  const beside = picture.across ? PUSH_ROOM : 0;
  return {
    above: GAP + pressures.px(highest) / textSize + WORDS_ROOM,
    left: beside,
    right: beside,
    title,
    description,
    draw: (sketch) => {
      for (const strip of strips) {
        const plane = planeOf(shelter, strip);
        if (plane && strengthOf(strip) > 0) drawStrip(sketch, strip, plane, load, strips);
      }
      drawHung(sketch, load);
      drawAcross(sketch, load);
      if (picture.windToward === 'yPlus' || picture.windToward === 'yMinus') {
        const ys = shelter.planes.flatMap((p) => [p.highYIn, p.lowYIn]);
        drawWind(sketch, [Math.min(...ys), Math.max(...ys)], picture.windToward === 'yPlus' ? 1 : -1);
      }
    },
  };
}

const moved = (p: Point, by: Point, times: number): Point => ({ x: p.x + by.x * times, y: p.y + by.y * times });
const betweenPoints = (a: Point, b: Point, share: number): Point => moved(a, { x: b.x - a.x, y: b.y - a.y }, share);

function drawStrip(
  sketch: Sketch,
  strip: LoadStrip,
  plane: PlaneGeometry,
  { pressures, system }: LoadToDraw,
  all: readonly LoadStrip[],
): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const onRoof = (upSlopeIn: number): Point => {
    const y = yOnSlope(plane, upSlopeIn);
    return view.at(y, coverZAt(plane, y));
  };
  const low = onRoof(strip.fromIn);
  const high = onRoof(strip.toIn);
  const away = strip.acts === 'square' ? squareUp(low, high) : { x: 0, y: -1 };
  const foot = (share: number): Point => moved(betweenPoints(low, high, share), away, GAP * size);
  const psfAt = (share: number): number => strip.lowPsf + share * (strip.highPsf - strip.lowPsf);
  const end = (share: number): Point => moved(foot(share), away, pressures.px(psfAt(share)));

  sketch.line([foot(0), end(0), end(1), foot(1)], 'ink-thin');
  const count = Math.max(2, Math.round(Math.hypot(high.x - low.x, high.y - low.y) / (APART * size)));
  for (let i = 0; i < count; i++) {
    const share = (i + 0.5) / count;
    const [from, to] = psfAt(share) < 0 ? [foot(share), end(share)] : [end(share), foot(share)];
    drawArrow(sketch, from, to, 'ink-thin');
  }
  const name = (key: string, share: number): void =>
    sketch.text({
      key: `load-${key}-${strip.planeId}-${strip.fromIn}`,
      text: pressureWords(psfAt(share), strip.acts, system),
      kind: 'load',
      centres: [0.9, 1.6, 2.4].flatMap((up) =>
        [0, -3, 3].map((along) => {
          const p = moved(end(share), away, up * size);
          return { x: p.x + along * size, y: p.y };
        }),
      ),
      about: end(share),
    });
  if (isEven(strip)) name('middle', 0.5);
  else {
    // where the next strip goes on evenly its own label says the number
    const goesOn = (atIn: number, psf: number): boolean =>
      all.some((s) => s.planeId === strip.planeId && isEven(s) && isAt(s, atIn) && Math.abs(s.lowPsf - psf) < 1e-6);
    if (!goesOn(strip.fromIn, strip.lowPsf)) name('low', 0);
    if (!goesOn(strip.toIn, strip.highPsf)) name('high', 1);
  }
}

/** True where a strip begins or ends at a place up the slope. */
const isAt = ({ fromIn, toIn }: LoadStrip, atIn: number): boolean =>
  Math.abs(fromIn - atIn) < 1e-6 || Math.abs(toIn - atIn) < 1e-6;

/** Square to a line on the paper, upward. */
function squareUp(a: Point, b: Point): Point {
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const square = { x: (b.y - a.y) / long, y: (a.x - b.x) / long };
  return square.y < 0 ? square : { x: -square.x, y: -square.y };
}

/** What hangs on each line, all of it as one arrow beside the post. */
function drawHung(sketch: Sketch, { picture, shelter, forces, system }: LoadToDraw): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  for (const line of shelter.lines) {
    const lb = picture.points.filter((p) => p.lineId === line.id).reduce((sum, p) => sum + p.downLb, 0);
    if (lb === 0) continue;
    const at = view.at(line.yIn, line.bearingZIn);
    const high = { x: at.x + size * 1.8, y: at.y + size * 1.6 };
    const low = { x: high.x, y: high.y + Math.max(size, forces.px(lb)) };
    drawArrow(sketch, lb > 0 ? high : low, lb > 0 ? low : high, 'ink-line');
    const beside = [3, -5].map((along) => ({ x: high.x + along * size, y: (high.y + low.y) / 2 }));
    const text = showQuantity({ value: Math.abs(lb), unit: 'lb' }, system);
    sketch.text({ key: `hung-${line.id}`, text, kind: 'load', centres: beside, about: low });
  }
}

/** Longest arrow of a push, and the room that it takes beside the view, in text sizes. */
export const LONGEST_PUSH = 4.5;
const PUSH_ROOM = LONGEST_PUSH + 1.5;

/** The push across, from either side, at the height of the roof. */
function drawAcross(sketch: Sketch, { picture, shelter, forces, system }: LoadToDraw): void {
  const lb = picture.across?.asdLb ?? 0;
  if (lb === 0) return;
  const { view } = sketch;
  const size = view.paper.textSize;
  const ys = shelter.planes.flatMap((p) => [p.highYIn, p.lowYIn]);
  const zs = shelter.planes.flatMap((p) => [p.highZIn, p.lowZIn]);
  const z = (Math.min(...zs) + Math.max(...zs)) / 2;
  const ends = [
    { y: Math.min(...ys), toward: 1 },
    { y: Math.max(...ys), toward: -1 },
  ];
  for (const { y, toward } of ends) {
    const tip = moved(view.at(y, z), { x: -toward, y: 0 }, size);
    const start = moved(tip, { x: -toward, y: 0 }, Math.max(size, forces.px(lb)));
    drawArrow(sketch, start, tip, 'ink-line');
    const text = showQuantity({ value: lb, unit: 'lb' }, system);
    const middle = betweenPoints(start, tip, 0.5);
    const centres = [-0.9, 0.9, -1.8].map((down) => ({ x: middle.x, y: middle.y + down * size }));
    sketch.text({ key: `push-across-${toward}`, text, kind: 'load', centres, about: middle });
  }
}
