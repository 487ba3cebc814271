import { dot, plus, type Vector } from '../../engine/checks/fasteners/space.ts';
import { stretchIn, type Face } from '../../engine/checks/fasteners/round-geometry.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { UP } from '../../engine/checks/joints/stick-shape.ts';
import type { PostGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import type { Capacity, FastenerRow } from '../../engine/project/model.ts';
import { drawDimension } from '../drawing/dimension.ts';
import { hatchStrokes } from '../drawing/outline.ts';
import type { Point } from '../drawing/paper.ts';
import type { ShowLength } from '../drawing/words.ts';
import { seen, type Look } from './looks.ts';
import type { Pen } from './pen.ts';
import { JOINT_DRAWING_WORDS } from './words.ts';

/** What is no stick and lies at a joint. */
export interface Around {
  readonly setting: JointSetting;
  readonly shelter: Shelter;
  readonly capacity: Capacity;
  readonly reachIn: number;
  readonly showLength: ShowLength;
}

export function drawAround(pen: Pen, around: Around): void {
  const { lower } = around.setting;
  drawWall(pen, around);
  if (lower.of === 'pier') drawPier(pen, around);
  drawSheet(pen, around);
}

/** A wall is cut where it is seen from its end; from the front it is what everything lies on. */
function drawWall({ sketch, look, at }: Pen, { setting, reachIn }: Around): void {
  const wall = wallOf(setting);
  if (!wall || Math.abs(dot(wall.outward, look.toward)) > 0.5) return;
  const deepIn = reachIn * WALL_DEEP;
  const face = [-1, 1].map((way) => plus(wall.at, UP, way * reachIn));
  const back = face.toReversed().map((p) => plus(p, wall.outward, -deepIn));
  sketch.hatch(hatchStrokes([...face, ...back].map(at), sketch.view.paper.textSize * 0.5));
  sketch.line(face.map(at), 'ink-line');
  const foot = at(face[0]!);
  const beside = at(plus(face[0]!, wall.outward, 1.5));
  sketch.text({ key: 'wall', text: JOINT_DRAWING_WORDS.wall, kind: 'note', centres: [beside], about: foot });
}

/** Thickness of the wall that is drawn, as a share of what is drawn of the pieces. */
export const WALL_DEEP = 1 / 3;

/** The face of the wall at a ledger, with what lies on the ledger or without; null where there is none. */
export function wallOf({ kind, upper, lower, at, ways }: JointSetting): Face | null {
  if (kind === 'ledgerWall') return { at, outward: ways.pull };
  if (kind !== 'rafterLedger' || !lower.shape || !upper.shape || lower.stick?.kind !== 'sawn') return null;
  const { axis } = upper.shape;
  const [toEave, toHigh] = upper.toEndsIn ?? [1, 0];
  const outward: Vector = [0, Math.sign(toEave > toHigh ? -axis[1] : axis[1]) || 1, 0];
  return { at: plus(lower.shape.axisAt, outward, -lower.stick.breadthIn / 2), outward };
}

/** How thick a sheet is drawn where nobody said it [in]. */
const SHEET_IN = 1 / 32;

/** The sheet where its fasteners go through it: a line, as thick as it is. */
function drawSheet({ sketch, at, look }: Pen, { setting, capacity, reachIn }: Around): void {
  const ends = sheetEnds(setting, look, reachIn);
  if (!ends) return;
  const up = (sheetThickness(capacity) ?? SHEET_IN) / 2;
  sketch.line(
    ends.map((end) => at(plus(end, setting.ways.pull, up))),
    'cover-line',
  );
  const about = at(plus(ends[0], plus(ends[1], ends[0], -1), 0.1));
  const size = sketch.view.paper.textSize;
  const centres = [-1, 1].flatMap((side) => [1, 1.6].map((off) => ({ x: about.x, y: about.y + side * off * size })));
  sketch.text({ key: 'sheet', text: JOINT_DRAWING_WORDS.sheet, kind: 'note', centres, about });
}

/** Both ends of the sheet that is drawn, where it lies on its wood; null where it is looked down on. */
export function sheetEnds(
  { upper, lower, line, ways }: JointSetting,
  look: Look,
  reachIn: number,
): readonly [Vector, Vector] | null {
  const wood = upper.of === 'sheet' && lower.shape && line && stretchIn(lower.shape, line);
  if (!wood || Math.abs(dot(ways.pull, look.toward)) > 0.5) return null;
  const way = Math.abs(dot(ways.along, look.toward)) > 0.5 ? ways.across : ways.along;
  const on = plus(line.at, line.into, wood.fromIn);
  return [plus(on, way, -reachIn), plus(on, way, reachIn)];
}

const sheetThickness = (capacity: Capacity): number | null =>
  (capacity?.kind === 'fasteners' ? capacity.rows.find((row: FastenerRow) => row.plate)?.plate?.thicknessIn : null) ??
  null;

/** How far down the pier is drawn, in its widths. */
export const PIER_DEEP = 0.6;

/** The pier under a post with what stands between them: stand-off, moisture barrier, rated anchor. */
function drawPier(pen: Pen, { setting, shelter, capacity, showLength }: Around): void {
  const post = shelter.posts.find(({ id }) => id === setting.lower.id);
  if (post?.foot.kind !== 'pier') return;
  const { sketch, look } = pen;
  const { standOffIn, shaft, barrier } = post.foot;
  const { x } = seen(look, setting.at);
  const topZ = post.woodFromZIn - standOffIn;
  const half = shaft.acrossIn / 2;
  const low = topZ - PIER_DEEP * shaft.acrossIn;
  const box = [
    sketch.view.at(x - half, topZ),
    sketch.view.at(x + half, topZ),
    sketch.view.at(x + half, low),
    sketch.view.at(x - half, low),
  ];
  for (const side of [-1, 1])
    sketch.hatch(hatchStrokes(besideEdge(pen, x + side * half, topZ, low, side), sketch.view.paper.textSize * 0.5));
  sketch.line([box[3]!, box[0]!, box[1]!, box[2]!], 'ink-line');
  const size = sketch.view.paper.textSize;
  const note = (key: string, text: string, about: { x: number; y: number }, way: 1 | -1): void =>
    sketch.text({ key, text, kind: 'note', centres: [{ x: about.x + way * size * 4, y: about.y }], about });
  const inPier = [0.3, 0.5, 0.2].map((up) => sketch.view.at(x - half * 0.5, low + (topZ - low) * up));
  sketch.text({ key: 'pier', text: JOINT_DRAWING_WORDS.pier, kind: 'note', centres: inPier, about: inPier[0]! });
  if (standOffIn > 0) {
    const off = halfOf(post) + 1;
    drawDimension(sketch, {
      key: 'standOff',
      from: sketch.view.at(x + off, topZ),
      to: sketch.view.at(x + off, post.woodFromZIn),
      text: JOINT_DRAWING_WORDS.standOff(showLength(standOffIn)),
      side: 1,
      level: true,
    });
  }
  if (barrier === true) {
    const z = topZ + 1.5 / sketch.view.scale;
    sketch.line([sketch.view.at(x - half * 0.9, z), sketch.view.at(x + half * 0.9, z)], 'cover-line');
    note('barrier', JOINT_DRAWING_WORDS.barrier, sketch.view.at(x - half * 0.8, topZ), -1);
  }
  if (capacity?.kind !== 'fasteners' || !capacity.alsoRated) return;
  const deep = topZ - 0.8 * PIER_DEEP * shaft.acrossIn;
  const hook = sketch.view.at(x, deep);
  sketch.line([sketch.view.at(x, post.woodFromZIn), hook, { x: hook.x + size * 0.6, y: hook.y }], 'hidden-line');
  note('anchor', JOINT_DRAWING_WORDS.anchor, sketch.view.at(x, (topZ + deep) / 2), 1);
}

/** What somebody calls the steel between a post and its pier; null where nobody said, or where it is no such joint. */
export function hardwareOf({ lower }: JointSetting, shelter: Shelter): string | null {
  const post = lower.of === 'pier' ? shelter.posts.find(({ id }) => id === lower.id) : undefined;
  const hardware = post?.foot.kind === 'pier' ? post.foot.hardware : null;
  return hardware === null ? null : JOINT_DRAWING_WORDS.betweenThem(hardware);
}

/** Concrete is hatched beside its edges alone, so that words have room between. */
function besideEdge({ sketch }: Pen, x: number, topZ: number, low: number, side: number): readonly Point[] {
  const [edge, foot] = [sketch.view.at(x, topZ), sketch.view.at(x, low)];
  const inner = edge.x - side * sketch.view.paper.textSize * 0.6;
  return [edge, { x: inner, y: edge.y }, { x: inner, y: foot.y }, foot];
}

const halfOf = ({ stick }: PostGeometry): number =>
  stick?.kind === 'round' ? (stick.profile[0]?.diameterIn ?? 0) / 2 : stick?.kind === 'sawn' ? stick.breadthIn / 2 : 3;
