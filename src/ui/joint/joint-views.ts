import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Capacity } from '../../engine/project/model.ts';
import type { Extent, Paper } from '../drawing/paper.ts';
import { beginSketch, type Picture, type Sketch } from '../drawing/sketch.ts';
import { textWidth } from '../drawing/text-size.ts';
import type { ShowLength } from '../drawing/words.ts';
import { asItLies } from './as-it-lies.ts';
import { bodiesOf } from './bodies-of.ts';
import { jointDescription } from './description.ts';
import { drawAround, hardwareOf } from './draw-around.ts';
import { drawBodies, drawUnder } from './draw-bodies.ts';
import { drawMeasure } from './draw-measure.ts';
import { drawShank, reachOfShank } from './draw-shank.ts';
import { drawSteel } from './draw-steel.ts';
import { drawWays, ROSE_ROOM } from './draw-ways.ts';
import { extentOfScene, MARGIN, scaleFor, viewOf, WORDS_HIGH, type Scene } from './joint-paper.ts';
import { looksAt } from './looks.ts';
import { measuresOf } from './measures.ts';
import { penFor, type Pen } from './pen.ts';
import { onShank, shanksOf, type Shank } from './shanks.ts';
import { heldBy } from './words.ts';

export interface JointViewOptions {
  readonly shelter: Shelter;
  readonly paper: Paper;
  readonly showLength: ShowLength;
}

/** Two views of a joint at one scale: both pieces as they lie, and every fastener where it stands in them. */
export function jointViews(joint: JointSetting, capacity: Capacity, options: JointViewOptions): readonly Picture[] {
  const setting = asItLies(joint, options.shelter);
  const looks = looksAt(setting);
  const rows =
    capacity?.kind === 'fasteners' ? capacity.rows.map((row) => shanksOf(setting, row, looks[0].toward)) : [];
  const middle = setting.line?.at ?? setting.at;
  const reachIn = Math.max(0, ...rows.flat().map((shank) => reachOfShank(shank, middle)));
  const bodies = bodiesOf(setting, options.shelter, reachIn + 1, rows.flat());
  const scene: Scene = { setting, capacity, bodies, rows };
  const extents = looks.map((look) => extentOfScene(scene, look, options.shelter));
  const underneath = [heldBy(capacity), hardwareOf(setting, options.shelter)];
  const feet = underneath.map((words) => MARGIN.bottom + (words === null ? 0 : WORDS_HIGH));
  const scale = Math.min(...extents.map((extent, i) => scaleFor(extent, options.paper, feet[i]!)));
  const description = jointDescription(setting, underneath, rows, options.showLength);
  const told = new Set<string>();
  return looks.map((look, i) => {
    const view = viewOf(extents[i]!, scale, options.paper, feet[i]!);
    const pen = penFor(beginSketch(view), look);
    drawScene(pen, scene, extents[i]!, options.shelter, options.showLength);
    for (const [row, shanks] of rows.entries())
      for (const measure of measuresOf(shanks)) drawMeasure(pen, scene.bodies, measure, row, options.showLength, told);
    sayUnderneath(pen.sketch, underneath[i] ?? null);
    return pen.sketch.finish(`${setting.label}, ${look.words}`, description);
  });
}

function drawScene(pen: Pen, scene: Scene, extent: Extent, shelter: Shelter, showLength: ShowLength): void {
  const { setting, capacity, bodies, rows } = scene;
  const { sketch, look } = pen;
  const { width, height, paper } = sketch.view;
  if (bodies.under) drawUnder(pen, bodies.under, extent.low);
  drawAround(pen, { setting, shelter, capacity, reachIn: bodies.reachIn, showLength });
  drawBodies(pen, setting, bodies);
  for (const shanks of rows) {
    if (setting.upper.of !== 'sheet') drawSteel(pen, shanks, setting.at);
    for (const shank of onceEach(pen, shanks)) drawShank(pen, shank);
  }
  const roseX = width - ROSE_ROOM * paper.textSize;
  drawWays(sketch, look, setting.ways, { x: roseX, y: height / 2 });
  const low = { x: roseX, y: height - paper.textSize * 0.7 };
  sketch.text({ key: 'look', text: look.words, kind: 'note', centres: [low], about: low });
}

/** A line of words under a drawing; a label that somebody typed too long for the paper is left to the description. */
function sayUnderneath({ view, text }: Sketch, words: string | null): void {
  if (words === null) return;
  const { width, height, paper } = view;
  const size = paper.textSize;
  const isShort = textWidth(words, size) <= width - 2 * size;
  const said = isShort ? words : `${words.split(':')[0]}: see its sentence`;
  const at = { x: size + textWidth(said, size) / 2, y: height - size * (0.7 + WORDS_HIGH * 0.9) };
  text({ key: 'underneath', text: said, kind: 'note', centres: [at], about: at });
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
