import { BOLTS, CUT_WASHERS } from '../../data/fasteners/bolts.ts';
import { LAG_SCREWS } from '../../data/fasteners/lag-screws.ts';
import { stretchIn } from '../../engine/checks/fasteners/round-geometry.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';
import { flatWidth } from '../../engine/geometry/seats.ts';
import type { Point } from '../drawing/paper.ts';
import { seen } from './looks.ts';
import type { Pen } from './pen.ts';
import { onShank, type Shank } from './shanks.ts';

/** Shapes of what nobody measures: heights of heads and nuts and widths of heads without a listed one, in diameters. */
const DRAWN = { hexHigh: 0.65, nutHigh: 0.875, nailHeadHigh: 0.35, headWide: 2, washerThickIn: 1 / 8 } as const;
/** A shank thinner than this on paper is one line [px]. */
const THIN_PX = 3;
/** A shank seen shorter than this share of its length is seen end on. */
const END_ON = 0.3;
/** Wood that is cut away on each side of what lies on a flat [in]. */
const AROUND_IN = 1 / 8;

/** Hexagon of a lag screw, a bolt and its nut, across flats; null for all others [in]. */
function hexagonIn({ size }: Shank): number | null {
  if (size.kind !== 'lag' && size.kind !== 'bolt') return null;
  const rows = size.kind === 'lag' ? LAG_SCREWS.rows : BOLTS.rows;
  const listed = rows.find(({ nominalIn }) => Math.abs(nominalIn - size.nominalIn) < 1e-3);
  return listed?.headIn ?? 1.5 * size.nominalIn;
}

/** Outside and thickness of the washer that the row names; null without one. */
export function washerOf(shank: Shank): { readonly outsideIn: number; readonly thickIn: number } | null {
  const { row, size } = shank;
  if (row.washerIn === undefined || hexagonIn(shank) === null) return null;
  const listed = CUT_WASHERS.rows.find(({ nominalIn }) => Math.abs(nominalIn - size.nominalIn) < 1e-3);
  return { outsideIn: row.washerIn, thickIn: listed?.thickIn ?? DRAWN.washerThickIn };
}

const isSeenEndOn = ({ look }: Pen, { into }: Shank): boolean => {
  const { x, y } = seen(look, into);
  return Math.hypot(x, y) < END_ON;
};

/** A fastener as it stands in the wood: shank and point dashed, its head, washer and nut outside of it. */
export function drawShank(pen: Pen, shank: Shank): void {
  if (isSeenEndOn(pen, shank)) drawEndOn(pen, shank);
  else drawFromSide(pen, shank);
}

function drawEndOn(pen: Pen, shank: Shank): void {
  const { sketch, look, at } = pen;
  const { scale } = sketch.view;
  const isHeadNear = dot(shank.into, look.toward) < 0;
  const isNear = isHeadNear || shank.nutIn !== null;
  const centre = at(shank.headAt);
  const ink = isNear ? 'ink-line' : 'hidden-line';
  const washer = washerOf(shank);
  if (washer && isNear) sketch.circle(centre, (washer.outsideIn / 2) * scale, ink, { covers: true });
  const hexagon = hexagonIn(shank);
  if (hexagon !== null && isNear) sketch.outline(hexagonAround(centre, hexagon * scale), ink, { covers: true });
  else if (isNear) sketch.circle(centre, (headOf(shank) / 2) * scale, ink, { covers: true });
  else sketch.circle(centre, Math.max(1, (shank.size.nominalIn / 2) * scale), ink);
}

/** A hexagon standing on a corner, by its width across flats. */
const hexagonAround = (centre: Point, across: number): readonly Point[] =>
  Array.from({ length: 6 }, (_, i) => {
    const turn = (Math.PI * (2 * i + 1)) / 6;
    const radius = across / Math.sqrt(3);
    return { x: centre.x + radius * Math.cos(turn), y: centre.y + radius * Math.sin(turn) };
  });

/** A head that is no hexagon, across [in]. */
const headOf = ({ size }: Shank): number =>
  size.kind === 'driftPin' ? size.nominalIn : (size.headIn ?? DRAWN.headWide * size.nominalIn);

function drawFromSide(pen: Pen, shank: Shank): void {
  const { sketch, at } = pen;
  const { size, nutIn } = shank;
  const aside = unit(cross(shank.into, pen.look.toward));
  const place = (alongIn: number, asideIn: number): Point => at(plus(onShank(shank, alongIn), aside, asideIn));
  const box = (fromIn: number, toIn: number, wideIn: number): readonly Point[] => [
    place(fromIn, -wideIn / 2),
    place(fromIn, wideIn / 2),
    place(toIn, wideIn / 2),
    place(toIn, -wideIn / 2),
  ];
  drawFlats(pen, shank, aside);
  const r = size.nominalIn / 2;
  const { lengthIn, tipIn, threadIn } = size;
  if (size.nominalIn * sketch.view.scale < THIN_PX) sketch.line([place(0, 0), place(lengthIn, 0)], 'ink-line');
  else {
    const point = tipIn > 0 ? [place(lengthIn, 0)] : [];
    const edges = [place(0, -r), place(lengthIn - tipIn, -r), ...point, place(lengthIn - tipIn, r), place(0, r)];
    sketch.line(edges, 'hidden-line');
    const pitchIn = Math.max(size.nominalIn / 4, 2.5 / sketch.view.scale);
    for (let t = lengthIn - threadIn; t < lengthIn - tipIn - pitchIn; t += pitchIn)
      sketch.line([place(t, -r), place(t + pitchIn, r)], 'ink-thin');
  }
  const washer = washerOf(shank);
  const under = washer?.thickIn ?? 0;
  if (washer) sketch.outline(box(-under, 0, washer.outsideIn), 'ink-line', { covers: true });
  const hexagon = hexagonIn(shank);
  const high = hexagon !== null ? DRAWN.hexHigh : DRAWN.nailHeadHigh;
  if (size.kind !== 'driftPin')
    sketch.outline(box(-under - high * size.nominalIn, -under, hexagon ?? headOf(shank)), 'ink-line', { covers: true });
  // one that is too short for its nut has none
  if (nutIn === null || lengthIn < nutIn + size.nominalIn) return;
  if (washer) sketch.outline(box(nutIn, nutIn + under, washer.outsideIn), 'ink-line', { covers: true });
  const nut = box(nutIn + under, nutIn + under + DRAWN.nutHigh * size.nominalIn, hexagon ?? headOf(shank));
  sketch.outline(nut, 'ink-line', { covers: true });
}

/** Flats cut under a head and under the nut of a bolt, as wide as the round wood makes them or as what lies on them needs. */
function drawFlats(pen: Pen, shank: Shank, aside: Vector): void {
  const { row, side, main, nutIn, into } = shank;
  const depthIn = row.headFlatIn ?? 0;
  if (depthIn <= 0 || !side) return;
  const laid = Math.max(washerOf(shank)?.outsideIn ?? 0, hexagonIn(shank) ?? headOf(shank)) + 2 * AROUND_IN;
  const ends = [
    { piece: side, atIn: 0, way: 1 },
    ...(nutIn === null ? [] : [{ piece: main, atIn: nutIn, way: -1 }]),
  ] as const;
  for (const { piece, atIn, way } of ends) {
    if (!piece.shape) continue;
    const isEndOn = Math.abs(dot(piece.shape.axis, pen.look.toward)) > 0.7;
    const { diameterIn } = piece.shape;
    const wide = isEndOn && diameterIn !== null ? flatWidth(diameterIn, depthIn) : laid;
    const floor = [-wide / 2, wide / 2].map((off) => plus(onShank(shank, atIn), aside, off));
    const walls = floor.map((foot) => {
      const wood = piece.shape && stretchIn(piece.shape, { at: foot, into });
      const out = wood ? (way > 0 ? wood.fromIn : wood.toIn) : 0;
      return out * way < 0 ? plus(foot, into, out) : foot;
    });
    pen.sketch.line([walls[0]!, ...floor, walls[1]!].map(pen.at), 'ink-line');
  }
}

/** How far a fastener reaches from a place, head and nut with it [in]. */
export function reachOfShank(shank: Shank, from: Vector): number {
  const over = 1.5 * shank.size.nominalIn;
  const ends = [onShank(shank, -over), onShank(shank, Math.max(shank.size.lengthIn, (shank.nutIn ?? 0) + over))];
  return Math.max(...ends.map((p) => lengthOf(plus(p, from, -1))));
}
