import type { LoadStrip } from '../../engine/load-pictures/picture.ts';
import type { PlaneGeometry } from '../../engine/geometry/shelter.ts';
import { hatchStrokes } from '../drawing/outline.ts';
import type { Point, Segment } from '../drawing/paper.ts';
import type { LaidOver } from '../drawing/picture-options.ts';
import type { Sketch } from '../drawing/sketch.ts';
import { textWidth } from '../drawing/text-size.ts';
import { showQuantity } from '../units/show-quantity.ts';
import { drawArrow, drawWind } from './arrow.ts';
import { LONGEST_PUSH } from './lay-on-section.ts';
import { isEven, planeOf, pressureNumber, pressureWords, strengthOf, yOnSlope, type LoadToDraw } from './load-room.ts';

/** Room beside the plan for the names of lines and lengths, then the arrow, in text sizes. */
const BESIDE_NAMES = 1.6;
/** Room above for the arrow of the wind, clear of a wall. */
const WIND_ROOM = 3;
const PUSH_ROOM = LONGEST_PUSH + BESIDE_NAMES;

/** A load on the plan: strips hatched the closer the harder they are pressed, weights, what hangs, pushes on the lines. */
export function layOnPlan(load: LoadToDraw): LaidOver {
  const { picture, shelter, title, description } = load;
  return {
    above: picture.windToward?.startsWith('x') ? WIND_ROOM : 1.6,
    left: picture.pushes.some((p) => p.alongLb > 0) ? PUSH_ROOM : 0,
    right: picture.pushes.some((p) => p.alongLb < 0) ? PUSH_ROOM : 0,
    title,
    description,
    drawUnder: (sketch) => {
      for (const [i, strip] of picture.strips.entries()) {
        const plane = planeOf(shelter, strip);
        if (plane && strengthOf(strip) > 0) drawStrip(sketch, strip, plane, load, i);
      }
    },
    draw: (sketch) => {
      writeWeights(sketch, load);
      drawHung(sketch, load);
      drawPushes(sketch, load);
      if (picture.windToward === 'xPlus' || picture.windToward === 'xMinus') {
        const xs = shelter.planes.flatMap((p) => [p.fromXIn, p.toXIn]);
        drawWind(sketch, [Math.min(...xs), Math.max(...xs)], picture.windToward === 'xPlus' ? 1 : -1);
      }
    },
  };
}

/** Strokes at the greatest pressure, and the widest that still reads as a hatch [px]. */
const CLOSEST = 4;
const WIDEST = 48;
/** A pressure that changes up the slope is hatched in so many steps. */
const STEPS = 8;

function drawStrip(sketch: Sketch, strip: LoadStrip, plane: PlaneGeometry, load: LoadToDraw, number: number): void {
  const { view } = sketch;
  const corners = (fromIn: number, toIn: number): readonly Point[] => [
    view.at(strip.fromXIn, -yOnSlope(plane, fromIn)),
    view.at(strip.toXIn, -yOnSlope(plane, fromIn)),
    view.at(strip.toXIn, -yOnSlope(plane, toIn)),
    view.at(strip.fromXIn, -yOnSlope(plane, toIn)),
  ];
  sketch.outline(corners(strip.fromIn, strip.toIn), 'dimension');
  const steps = isEven(strip) ? 1 : STEPS;
  const at = (share: number): number => strip.fromIn + share * (strip.toIn - strip.fromIn);
  const psfAt = (share: number): number => strip.lowPsf + share * (strip.highPsf - strip.lowPsf);
  for (let i = 0; i < steps; i++) {
    const psf = psfAt((i + 0.5) / steps);
    const apart = Math.min(WIDEST, (CLOSEST * load.greatestPsf) / Math.max(Math.abs(psf), 1e-9));
    sketch.hatch(strokesOver(corners(at(i / steps), at((i + 1) / steps)), apart, psf < 0), { givesWay: true });
  }
  const write = (key: string, psf: number, share: number): void =>
    writePressure(sketch, strip, plane, { key: `load-${number}-${key}`, psf, share }, load);
  if (isEven(strip)) write('even', strip.lowPsf, 0.5);
  else {
    write('low', strip.lowPsf, 0.08);
    write('high', strip.highPsf, 0.92);
  }
}

/** Rising to the right where it presses, falling to the right where it lifts. */
function strokesOver(outline: readonly Point[], apart: number, lifts: boolean): readonly Segment[] {
  if (!lifts) return hatchStrokes(outline, apart);
  const turned = (p: Point): Point => ({ x: -p.x, y: p.y });
  return hatchStrokes(outline.map(turned), apart).map(([a, b]): Segment => [turned(a), turned(b)]);
}

interface Written {
  readonly key: string;
  readonly psf: number;
  /** where up the strip */
  readonly share: number;
}

/** Words where they fit between the sides of the strip, else the number, else the number running up the paper. */
function writePressure(
  sketch: Sketch,
  strip: LoadStrip,
  plane: PlaneGeometry,
  { key, psf, share }: Written,
  { system }: LoadToDraw,
): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const wide = (strip.toXIn - strip.fromXIn) * view.scale - 6;
  const words = pressureWords(psf, strip.acts, system);
  const number = pressureNumber(psf, system);
  const text = textWidth(words, size) <= wide ? words : number;
  const rotated = textWidth(text, size) > wide;
  // the middle first, then up and down the strip and along it, past beams and post names
  const up = isEven(strip) ? [0, 0.2, -0.2, 0.35, -0.35] : [0];
  const centres = up.flatMap((more) =>
    [0.5, 0.3, 0.7].map((along) =>
      view.at(
        strip.fromXIn + along * (strip.toXIn - strip.fromXIn),
        -yOnSlope(plane, strip.fromIn + (share + more) * (strip.toIn - strip.fromIn)),
      ),
    ),
  );
  sketch.text({
    key,
    text,
    kind: 'load',
    rotated,
    centres,
    ...(centres[0] ? { about: centres[0] } : {}),
  });
}

/** Weight of beams with what lies on them, least and greatest along the line. */
function writeWeights(sketch: Sketch, { picture, shelter, system }: LoadToDraw): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  for (const { lineId, stations } of picture.along) {
    const line = shelter.lines.find(({ id }) => id === lineId);
    if (!line) continue;
    const each = stations.map((s) => s.downLbPerFt);
    const [least, most] = [Math.min(...each), Math.max(...each)].map((value) =>
      showQuantity({ value, unit: 'lb/ft' }, system),
    );
    const middle = view.at((line.fromXIn + line.toXIn) / 2, -line.yIn);
    const centres = [-1.6, 1.6, -2.6, 2.6].map((down) => ({ x: middle.x, y: middle.y + down * size }));
    const text = `beam ${line.label}: ${least === most ? least : `${least} to ${most}`}`;
    sketch.text({ key: `weight-${lineId}`, text, kind: 'load', centres, about: middle });
  }
}

function drawHung(sketch: Sketch, { picture, shelter, system }: LoadToDraw): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  for (const line of shelter.lines) {
    const on = picture.points.filter((p) => p.lineId === line.id);
    if (on.length === 0) continue;
    const places = on.map((p) => view.at(p.xIn, -line.yIn));
    for (const place of places) sketch.circle(place, size * 0.25, 'ink-line', { covers: true });
    const lb = on.reduce((sum, p) => sum + p.downLb, 0);
    const amount = showQuantity({ value: Math.abs(lb), unit: 'lb' }, system);
    const middle = {
      x: places.reduce((sum, p) => sum + p.x, 0) / places.length,
      y: view.at(0, -line.yIn).y,
    };
    const centres = [1.8, -1.8, 2.8, -2.8].map((down) => ({ x: middle.x, y: middle.y + down * size }));
    const text = on.length === 1 ? amount : `${amount} in all`;
    sketch.text({
      key: `hung-${line.id}`,
      text: lb < 0 ? `lifts ${text}` : text,
      kind: 'load',
      centres,
      about: middle,
    });
  }
}

/** The push along each line, from the end on which it acts. */
function drawPushes(sketch: Sketch, { picture, shelter, forces, system }: LoadToDraw): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const parts = [...shelter.planes, ...shelter.lines];
  const left = Math.min(...parts.map((p) => p.fromXIn));
  const right = Math.max(...parts.map((p) => p.toXIn));
  for (const { lineId, alongLb } of picture.pushes) {
    const line = shelter.lines.find(({ id }) => id === lineId);
    if (!line) continue;
    const toward = Math.sign(alongLb);
    const edge = view.at(toward > 0 ? left : right, -line.yIn);
    const names = toward > 0 ? BESIDE_NAMES + 0.4 : BESIDE_NAMES + 2;
    const tip = { x: edge.x - toward * names * size, y: edge.y };
    const start = { x: tip.x - toward * Math.max(size, forces.px(alongLb)), y: edge.y };
    drawArrow(sketch, start, tip, 'ink-line');
    const middle = { x: (start.x + tip.x) / 2, y: edge.y };
    const centres = [-0.9, 0.9, -1.8, 1.8].map((down) => ({ x: middle.x, y: middle.y + down * size }));
    const text = showQuantity({ value: Math.abs(alongLb), unit: 'lb' }, system);
    sketch.text({ key: `push-${lineId}`, text, kind: 'load', centres, about: middle });
  }
}
