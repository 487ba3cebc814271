import type { Point } from './paper.ts';
import type { Leaf, Sketch } from './sketch.ts';
import { textHeight, textWidth } from './text-size.ts';

export interface DimensionWish {
  readonly key: string;
  readonly from: Point;
  readonly to: Point;
  readonly text: string;
  /** on which side of the line the text would rather stand: up or down beside a level line, left or right of an upright one */
  readonly side: -1 | 1;
  /** text of an upright line stays level */
  readonly level?: boolean;
  /** the text may stand past the second end, in the run of the line */
  readonly beyond?: boolean;
  readonly leaf?: Leaf;
}

/** A hairline between two places, a slanted tick at each end, its length beside it. */
export function drawDimension(sketch: Sketch, wish: DimensionWish): void {
  const { from, to } = wish;
  sketch.line([from, to], 'dimension');
  for (const end of [from, to]) drawTick(sketch, end);
  const size = sketch.view.paper.textSize;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const isUpright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
  const turned = isUpright && !wish.level;
  sketch.text({
    key: wish.key,
    text: wish.text,
    kind: 'length',
    centres: [
      ...(isUpright ? besideUpright(middle, wish, size, turned) : besideLevel(middle, wish, size)),
      ...(wish.beyond ? [pastEnd(wish, size)] : []),
    ],
    about: middle,
    rotated: turned,
    ...(wish.leaf ? { leaf: wish.leaf } : {}),
  });
}

/** A tick's half width, in text sizes. */
const TICK = 0.28;

function drawTick(sketch: Sketch, at: Point): void {
  const reach = sketch.view.paper.textSize * TICK;
  sketch.line(
    [
      { x: at.x - reach, y: at.y + reach },
      { x: at.x + reach, y: at.y - reach },
    ],
    'ink-thin',
  );
}

/** A little air between a text and its line; an upright text may be longer than its line and must clear the ticks too. */
const GAP = 3;
const clearOfTicks = (size: number): number => size * TICK + 2;

function besideLevel(middle: Point, wish: DimensionWish, size: number): readonly Point[] {
  const off = textHeight(size) / 2 + GAP;
  const slide = Math.abs(wish.to.x - wish.from.x) / 4;
  return [wish.side, -wish.side].flatMap((side) =>
    [0, slide, -slide].map((along) => ({ x: middle.x + along, y: middle.y + side * off })),
  );
}

function besideUpright(middle: Point, wish: DimensionWish, size: number, turned: boolean): readonly Point[] {
  const off = (turned ? textHeight(size) : textWidth(wish.text, size)) / 2 + clearOfTicks(size);
  const slide = Math.abs(wish.to.y - wish.from.y) / 4;
  return [wish.side, -wish.side].flatMap((side) =>
    [0, slide, -slide].map((along) => ({ x: middle.x + side * off, y: middle.y + along })),
  );
}

function pastEnd({ from, to, text }: DimensionWish, size: number): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const way = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const off = clearOfTicks(size) + (Math.abs(way.x) * textWidth(text, size) + Math.abs(way.y) * textHeight(size)) / 2;
  return { x: to.x + way.x * off, y: to.y + way.y * off };
}

export interface Stop {
  /** where the stop lies along the string [in] */
  readonly atIn: number;
  readonly place: Point;
}
export interface Stretch {
  readonly path: string;
  readonly sign: 1 | -1;
}

/**
 * A string of dimensions from stop to stop; a stretch of no length is left out. Where neighbours are too narrow for
 * their texts these change sides, or get a leader.
 */
export function drawString(
  sketch: Sketch,
  key: string,
  stops: readonly Stop[],
  leafOf: (index: number) => Stretch | null,
  showLength: (inches: number) => string,
  side: -1 | 1,
): void {
  stops.slice(1).forEach((stop, i) => {
    const before = stops[i]!;
    const valueIn = stop.atIn - before.atIn;
    if (valueIn < 0.01) return;
    const leaf = leafOf(i);
    drawDimension(sketch, {
      key: `${key}-${i}`,
      from: before.place,
      to: stop.place,
      text: showLength(valueIn),
      side,
      ...(leaf ? { leaf: { ...leaf, valueIn } } : {}),
    });
  });
}
