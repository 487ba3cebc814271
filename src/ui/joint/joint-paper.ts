import { dot, plus } from '../../engine/checks/fasteners/space.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Capacity } from '../../engine/project/model.ts';
import { extentOf, type Extent, type Paper, type Point, type View } from '../drawing/paper.ts';
import type { Bodies } from './bodies-of.ts';
import { PIER_DEEP, sheetEnds, WALL_DEEP, wallOf } from './draw-around.ts';
import { ROSE_ROOM } from './draw-ways.ts';
import { seen, type Look } from './looks.ts';
import { seenBody } from './outline.ts';
import { onShank, type Shank } from './shanks.ts';

/** Everything that is drawn of a joint, whichever way it is looked at. */
export interface Scene {
  readonly setting: JointSetting;
  readonly capacity: Capacity;
  readonly bodies: Bodies;
  /** each row of its fasteners */
  readonly rows: readonly (readonly Shank[])[];
}

/** Paper around what is drawn, in text sizes; the rose of directions stands at the right. */
export const MARGIN = { left: 1, right: 2 * ROSE_ROOM + 0.5, top: 1.4, bottom: 1.4 } as const;
/** Room for the rose and its words, in text sizes. */
const LEAST_TALL = 10;
/** Of what lies under both pieces so much is seen [in]. */
const UNDER_IN = 1.5;
/** A line of words under the drawing, in text sizes. */
export const WORDS_HIGH = 1.6;

/** Paper units per inch with which an extent fills its paper; `foot` is the room below it in text sizes. */
export function scaleFor(
  { left, right, low, high }: Extent,
  { width, maxHeight, textSize }: Paper,
  foot: number,
): number {
  const roomX = width - (MARGIN.left + MARGIN.right) * textSize;
  const roomY = maxHeight - (MARGIN.top + foot) * textSize;
  return Math.max(1, Math.min(roomX / (right - left), roomY / (high - low)));
}

export function viewOf(extent: Extent, scale: number, paper: Paper, foot: number): View {
  const { textSize, width } = paper;
  const tall = (extent.high - extent.low) * scale;
  const roomX = width - (MARGIN.left + MARGIN.right) * textSize;
  const startX = MARGIN.left * textSize + (roomX - (extent.right - extent.left) * scale) / 2;
  const height = Math.max(tall + (MARGIN.top + foot) * textSize, LEAST_TALL * textSize);
  const startY = (height - tall + (MARGIN.top - foot) * textSize) / 2;
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

/** What of a scene has to be on the paper. */
export function extentOfScene({ setting, bodies, rows }: Scene, look: Look, shelter: Shelter): Extent {
  const { middle, reachIn } = bodies;
  const parts = [bodies.upper, bodies.lower].filter((b) => b !== null).flatMap((b) => seenBody(b, look).outline);
  const shanks = rows.flat().flatMap((s) => [onShank(s, -1.5 * s.size.nominalIn), onShank(s, s.size.lengthIn)]);
  const places: Point[] = [...parts, ...shanks.map((p) => seen(look, p)), seen(look, middle)];
  const at = seen(look, middle);
  if (parts.length === 0)
    places.push({ x: at.x - reachIn, y: at.y - reachIn }, { x: at.x + reachIn, y: at.y + reachIn });
  if (bodies.under) {
    const low = Math.min(...seenBody(bodies.under, look).outline.map(({ y }) => y));
    places.push({ x: at.x, y: Math.max(low, Math.min(...parts.map(({ y }) => y)) - UNDER_IN) });
  }
  const post = setting.lower.of === 'pier' ? shelter.posts.find(({ id }) => id === setting.lower.id) : undefined;
  if (post?.foot.kind === 'pier') {
    const { acrossIn } = post.foot.shaft;
    const low = post.woodFromZIn - post.foot.standOffIn - PIER_DEEP * acrossIn;
    places.push({ x: at.x - acrossIn / 2, y: low }, { x: at.x + acrossIn / 2, y: low });
  }
  const sheet = sheetEnds(setting, look, reachIn) ?? [];
  places.push(...sheet.map((p) => seen(look, plus(p, setting.ways.pull, 1 / 8))));
  const wall = wallOf(setting);
  if (wall && Math.abs(dot(wall.outward, look.toward)) < 0.5) {
    const back = seen(look, plus(wall.at, wall.outward, -reachIn * WALL_DEEP));
    places.push({ x: back.x, y: back.y - reachIn }, { x: back.x, y: back.y + reachIn });
  }
  return extentOf(places.map(({ x, y }) => ({ right: x, up: y })));
}
