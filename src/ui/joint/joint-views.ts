import { dot, lengthOf, plus, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Capacity } from '../../engine/project/model.ts';
import { drawDimension } from '../drawing/dimension.ts';
import { extentOf, type Extent, type Paper, type Point, type View } from '../drawing/paper.ts';
import { beginSketch, type Ink, type Picture } from '../drawing/sketch.ts';
import type { ShowLength } from '../drawing/words.ts';
import { bodiesOf, type Bodies } from './bodies-of.ts';
import type { Body } from './body.ts';
import { drawAround } from './draw-around.ts';
import { drawShank, reachOfShank } from './draw-shank.ts';
import { drawSteel } from './draw-steel.ts';
import { drawWays, ROSE_ROOM } from './draw-ways.ts';
import { jointDescription } from './description.ts';
import { looksAt, seen, type Look } from './looks.ts';
import { measuresOf, type Measure } from './measures.ts';
import { insideOf, nearRim, seenBody, type Seen } from './outline.ts';
import { penFor, type Pen } from './pen.ts';
import { onShank, shanksOf, type Shank } from './shanks.ts';
import { heldBy, JOINT_DRAWING_WORDS } from './words.ts';

export interface JointViewOptions {
  readonly shelter: Shelter;
  readonly paper: Paper;
  readonly showLength: ShowLength;
}

/** Everything that is drawn of a joint, whichever way it is looked at. */
interface Scene {
  readonly setting: JointSetting;
  readonly capacity: Capacity;
  readonly bodies: Bodies;
  readonly rows: readonly (readonly Shank[])[];
}

/** Two views of a joint at one scale: both pieces as they lie, and every fastener where it stands in them. */
export function jointViews(setting: JointSetting, capacity: Capacity, options: JointViewOptions): readonly Picture[] {
  const looks = looksAt(setting);
  const rows =
    capacity?.kind === 'fasteners' ? capacity.rows.map((row) => shanksOf(setting, row, looks[0].toward)) : [];
  const middle = setting.line?.at ?? setting.at;
  const reachIn = Math.max(0, ...rows.flat().map((shank) => reachOfShank(shank, middle)));
  const scene: Scene = { setting, capacity, bodies: bodiesOf(setting, options.shelter, reachIn + 1), rows };
  const extents = looks.map((look) => extentOfScene(scene, look, options.shelter));
  const scale = Math.min(...extents.map((extent) => scaleFor(extent, options.paper)));
  const told = new Set<string>();
  return looks.map((look, i) => {
    const view = viewOf(extents[i]!, scale, options.paper);
    return drawView(scene, look, view, options, told);
  });
}

/** Paper around what is drawn, in text sizes; the rose of directions stands at the right. */
const MARGIN = { left: 1, right: 2 * ROSE_ROOM + 0.5, top: 1, bottom: 1 } as const;

function scaleFor({ left, right, low, high }: Extent, { width, maxHeight, textSize }: Paper): number {
  const roomX = width - (MARGIN.left + MARGIN.right) * textSize;
  const roomY = maxHeight - (MARGIN.top + MARGIN.bottom) * textSize;
  return Math.max(1, Math.min(roomX / (right - left), roomY / (high - low)));
}

function viewOf(extent: Extent, scale: number, paper: Paper): View {
  const { textSize, width } = paper;
  const tall = (extent.high - extent.low) * scale;
  const roomX = width - (MARGIN.left + MARGIN.right) * textSize;
  const startX = MARGIN.left * textSize + (roomX - (extent.right - extent.left) * scale) / 2;
  const height = Math.max(tall + (MARGIN.top + MARGIN.bottom) * textSize, LEAST_TALL * textSize);
  const startY = (height - tall) / 2;
  return {
    paper,
    width,
    height,
    scale,
    at: (rightIn, upIn) => ({
      x: startX + (rightIn - extent.left) * scale,
      y: startY + (extent.high - upIn) * scale,
    }),
  };
}

/** Room for the rose and its words. */
const LEAST_TALL = 9;

function extentOfScene({ setting, bodies, rows }: Scene, look: Look, shelter: Shelter): Extent {
  const { middle, reachIn } = bodies;
  const parts = [bodies.upper, bodies.lower].filter((b) => b !== null).flatMap((b) => seenBody(b, look).outline);
  const shanks = rows.flat().flatMap((s) => [onShank(s, -1.5 * s.size.nominalIn), onShank(s, s.size.lengthIn)]);
  const places: Point[] = [...parts, ...shanks.map((p) => seen(look, p)), seen(look, middle)];
  const at = seen(look, middle);
  if (parts.length === 0)
    places.push({ x: at.x - reachIn, y: at.y - reachIn }, { x: at.x + reachIn, y: at.y + reachIn });
  const post = setting.lower.of === 'pier' ? shelter.posts.find(({ id }) => id === setting.lower.id) : undefined;
  if (post?.foot.kind === 'pier') {
    const { acrossIn } = post.foot.shaft;
    const low = post.woodFromZIn - post.foot.standOffIn - 0.6 * acrossIn;
    places.push({ x: at.x - acrossIn / 2, y: low }, { x: at.x + acrossIn / 2, y: low });
  }
  if (setting.lower.of === 'wall') {
    const wall = seen(look, plus(setting.at, setting.ways.pull, -reachIn / 3));
    places.push({ x: wall.x, y: wall.y - reachIn }, { x: wall.x, y: wall.y + reachIn });
  }
  return extentOf(places.map(({ x, y }) => ({ right: x, up: y })));
}

function drawView(scene: Scene, look: Look, view: View, options: JointViewOptions, told: Set<string>): Picture {
  const { setting, capacity, bodies, rows } = scene;
  const { showLength, shelter } = options;
  const sketch = beginSketch(view);
  const pen = penFor(sketch, look);
  const size = view.paper.textSize;
  if (bodies.under) drawBody(pen, bodies.under, 'ink-thin');
  drawAround(pen, { setting, shelter, capacity, reachIn: bodies.reachIn, showLength });
  const lower = bodies.lower && drawBody(pen, bodies.lower, 'ink-line');
  const upper = bodies.upper && drawBody(pen, bodies.upper, 'ink-line');
  if (lower && upper) drawHidden(pen, lower, upper);
  for (const shanks of rows) {
    if (setting.upper.of !== 'sheet')
      drawSteel(
        pen,
        shanks.filter(({ plate }) => plate),
        setting.at,
      );
    for (const shank of onceEach(pen, shanks)) drawShank(pen, shank);
  }
  const roseX = view.width - ROSE_ROOM * size;
  drawWays(sketch, look, setting.ways, { x: roseX, y: view.height / 2 });
  const low = { x: roseX, y: view.height - size * 0.7 };
  sketch.text({ key: 'look', text: look.words, kind: 'note', centres: [low], about: low });
  for (const [i, shanks] of rows.entries())
    for (const measure of measuresOf(shanks)) drawMeasure(pen, measure, i, showLength, told);
  namePieces(pen, scene);
  const words = heldBy(capacity);
  if (words !== null)
    sketch.text({
      key: 'held',
      text: words,
      kind: 'note',
      centres: [pen.at(bodies.middle)],
      about: pen.at(bodies.middle),
    });
  return sketch.finish(`${setting.label}, ${look.words}`, jointDescription(setting, capacity, rows, showLength));
}

/** Fasteners that stand behind one another are drawn once. */
function onceEach(pen: Pen, shanks: readonly Shank[]): readonly Shank[] {
  const places = new Set<string>();
  return shanks.filter((shank) => {
    const { x, y } = pen.at(shank.headAt);
    const tip = pen.at(onShank(shank, shank.size.lengthIn));
    const key = [x, y, tip.x, tip.y].map((v) => v.toFixed(1)).join(' ');
    if (places.has(key)) return false;
    places.add(key);
    return true;
  });
}

function drawBody({ sketch, look }: Pen, body: Body, ink: Ink): Seen {
  const shown = seenBody(body, look);
  const onPaper = (points: readonly Point[]): readonly Point[] => points.map((p) => sketch.view.at(p.x, p.y));
  sketch.outline(onPaper(shown.outline), 'ink-thin', { covers: true });
  if (ink !== 'ink-thin') for (const edge of shown.edges) sketch.line(onPaper(edge), ink);
  if (shown.isEndOn) {
    const whole = [...body.uncut, ...body.uncut.slice(0, 1)].map((p) => seen(look, p));
    for (const part of beyond(whole, shown.outline)) sketch.line(onPaper(part), 'hidden-line');
  } else if (body.atJoint === body.uncut)
    for (const run of nearRim(body.atJoint, body, look)) sketch.line(onPaper(run), 'ink-thin');
  return shown;
}

/** What was cut off: parts of a whole section outside of what is left of it. */
const beyond = (whole: readonly Point[], left: readonly Point[]): readonly (readonly Point[])[] =>
  whole.slice(1).flatMap((to, i) => {
    const from = whole[i]!;
    const isLeft = left.some((p) => Math.hypot(p.x - to.x, p.y - to.y) < 1e-6);
    return isLeft ? [] : [[from, to]];
  });

function drawHidden({ sketch }: Pen, behind: Seen, before: Seen): void {
  for (const edge of behind.edges)
    for (const part of insideOf(edge, before.outline))
      sketch.line(
        part.map((p) => sketch.view.at(p.x, p.y)),
        'hidden-line',
      );
}

/** A length that is seen shorter than this share of itself is not written in a view. */
const TRUE_LENGTH = 0.97;
const DEPTH_OFF = 0.9;

function drawMeasure(pen: Pen, measure: Measure, row: number, showLength: ShowLength, told: Set<string>): void {
  const { sketch, look, at } = pen;
  const { what, from, to, lengthIn } = measure;
  const key = `${what}-${row}`;
  const run = seen(look, plus(to, from, -1));
  if (Math.hypot(run.x, run.y) < TRUE_LENGTH * lengthIn || told.has(key)) return;
  if (Math.abs(dot(plus(to, from, -1), look.toward)) > 0.5 * lengthIn) return;
  const [a, b] = [at(from), at(to)];
  if (![a, b].every((p) => isOn(sketch.view, p))) return;
  told.add(key);
  const off = what === 'depth' ? beside(a, b, DEPTH_OFF * sketch.view.paper.textSize) : { x: 0, y: 0 };
  const shift = (p: Point): Point => ({ x: p.x + off.x, y: p.y + off.y });
  drawDimension(sketch, {
    key,
    from: shift(a),
    to: shift(b),
    text: JOINT_DRAWING_WORDS.whatIs[what](showLength(lengthIn)),
    side: 1,
    level: true,
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

function namePieces({ sketch, at }: Pen, { setting, bodies }: Scene): void {
  const parts = [
    { piece: setting.upper, body: bodies.upper, key: 'upper' },
    { piece: setting.lower, body: bodies.lower, key: 'lower' },
  ];
  for (const { piece, body, key } of parts) {
    if (piece.of !== 'wood') continue;
    if (!body) {
      const about = at(bodies.middle);
      const text = JOINT_DRAWING_WORDS.sizeNotGiven(piece.label);
      sketch.text({ key: `name-${key}`, text, kind: 'note', centres: [about], about });
      continue;
    }
    const centres = namePlaces(body, bodies.middle).map(at);
    sketch.text({ key: `name-${key}`, text: piece.label, kind: 'note', centres, about: centres[0]! });
  }
}

/** Along the middle of a piece, from its far ends toward the joint. */
function namePlaces({ rings }: Body, middle: Vector): readonly Vector[] {
  const centre = (ring: readonly Vector[]): Vector =>
    ring.reduce<Vector>((sum, p) => plus(sum, p, 1 / ring.length), [0, 0, 0]);
  const ends = [centre(rings[0]!), centre(rings.at(-1)!)].toSorted(
    (a, b) => lengthOf(plus(b, middle, -1)) - lengthOf(plus(a, middle, -1)),
  );
  const [far, near] = [ends[0]!, ends[1]!];
  return [0.2, 0.3, 0.8, 0.7, 0.1, 0.4, 0.6].map((share) => plus(far, plus(near, far, -1), share));
}
