import { cross, dot, lengthOf, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { Point } from '../drawing/paper.ts';
import { DRAWN, flatsOf, headOf, hexagonIn, washerOf } from './heads.ts';
import { seen } from './looks.ts';
import type { Pen } from './pen.ts';
import { onShank, type Shank } from './shanks.ts';

/** A shank thinner than this on paper is one line [px]. */
const THIN_PX = 3;
/** A shank seen shorter than this share of its length is seen end on. */
const END_ON = 0.3;

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
  for (const flat of flatsOf(shank, pen.look)) sketch.line(flat.map(at), 'ink-line');
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

/** How far a fastener reaches from a place, head and nut with it [in]. */
export function reachOfShank(shank: Shank, from: Vector): number {
  const over = 1.5 * shank.size.nominalIn;
  const ends = [onShank(shank, -over), onShank(shank, Math.max(shank.size.lengthIn, (shank.nutIn ?? 0) + over))];
  return Math.max(...ends.map((p) => lengthOf(plus(p, from, -1))));
}
