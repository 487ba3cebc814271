import { overlap, touches } from './outline.ts';
import type { Box, Point, Segment } from './paper.ts';

export interface LabelWish {
  readonly key: string;
  readonly width: number;
  readonly height: number;
  /** centres, best first */
  readonly centres: readonly Point[];
  /** what the label is about: where a leader would point */
  readonly about: Point;
  /** left out rather than led to from afar */
  readonly optional: boolean;
}
export interface PlacedLabel {
  readonly key: string;
  readonly box: Box;
  readonly leader: Segment | null;
}

/** Clear paper round a label. */
const CLEAR = 1.5;
const DIRECTIONS = 24;

/**
 * Finds room for every label, in the order of the wishes: first the places it asked for; then rings round what it is
 * about, with a leader; then, where the drawing is too full, a place that lies on a line but on no other label.
 * A label with no place left, or an optional one that would need a leader, is not in the answer.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  lines: readonly Segment[],
  sheet: Box,
): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  for (const wish of wishes) {
    const found =
      atWishedPlace(wish, placed, lines, sheet) ??
      (wish.optional ? null : (onRing(wish, placed, lines, sheet) ?? onRing(wish, placed, [], sheet)));
    if (found) placed.push(found);
  }
  return placed;
}

const boxAt = (wish: LabelWish, centre: Point): Box => ({
  x: centre.x - wish.width / 2,
  y: centre.y - wish.height / 2,
  width: wish.width,
  height: wish.height,
});
const widened = (box: Box): Box => ({
  x: box.x - CLEAR,
  y: box.y - CLEAR,
  width: box.width + 2 * CLEAR,
  height: box.height + 2 * CLEAR,
});
const within = (box: Box, sheet: Box): boolean =>
  box.x >= sheet.x &&
  box.y >= sheet.y &&
  box.x + box.width <= sheet.x + sheet.width &&
  box.y + box.height <= sheet.y + sheet.height;

function isFree(box: Box, placed: readonly PlacedLabel[], lines: readonly Segment[], sheet: Box): boolean {
  const room = widened(box);
  return (
    within(box, sheet) &&
    placed.every((p) => !overlap(room, p.box) && !(p.leader && touches(p.leader, room))) &&
    lines.every((s) => !touches(s, room))
  );
}

function atWishedPlace(
  wish: LabelWish,
  placed: readonly PlacedLabel[],
  lines: readonly Segment[],
  sheet: Box,
): PlacedLabel | null {
  for (const centre of wish.centres) {
    const box = boxAt(wish, centre);
    if (isFree(box, placed, lines, sheet)) return { key: wish.key, box, leader: null };
  }
  return null;
}

function onRing(
  wish: LabelWish,
  placed: readonly PlacedLabel[],
  lines: readonly Segment[],
  sheet: Box,
): PlacedLabel | null {
  const step = wish.height * 0.75;
  const farthest = Math.hypot(sheet.width, sheet.height);
  for (let radius = wish.height; radius < farthest; radius += step) {
    for (let i = 0; i < DIRECTIONS; i++) {
      const angle = (2 * Math.PI * i) / DIRECTIONS;
      const centre = {
        x: wish.about.x + (radius + wish.width / 2) * Math.cos(angle),
        y: wish.about.y + radius * Math.sin(angle),
      };
      const box = boxAt(wish, centre);
      if (!isFree(box, placed, lines, sheet)) continue;
      const leader: Segment = [nearestOn(box, wish.about), wish.about];
      if (placed.every((p) => !touches(leader, p.box))) return { key: wish.key, box, leader };
    }
  }
  return null;
}

const nearestOn = (box: Box, p: Point): Point => ({
  x: Math.min(Math.max(p.x, box.x), box.x + box.width),
  y: Math.min(Math.max(p.y, box.y), box.y + box.height),
});
