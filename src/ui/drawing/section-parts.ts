import { between } from '../../engine/geometry/beam-shape.ts';
import { ridgeOf } from '../../engine/geometry/ridge.ts';
import type { BraceGeometry, LineGeometry, PostGeometry, Shelter, TieGeometry } from '../../engine/geometry/shelter.ts';
import { hatchStrokes } from './outline.ts';
import type { Point, Segment } from './paper.ts';
import { coverZAt, purlinOutline, rafterOutline } from './roof-shape.ts';
import type { Ink, Sketch } from './sketch.ts';
import { braceOutline, hasSize, postFace, thicknessAt } from './sticks.ts';
import { postsOf } from './shelter-parts.ts';

/** What the section shows of a line beyond its place: sizes that belong to its stock, where they are known. */
export interface LineDetail {
  readonly lineId: string;
  readonly stripBreadthIn: number | null;
  readonly wallFaceYIn: number | null;
  readonly ledgerDepthIn: number | null;
}
/** The beam as it is cut at the first post, its strip on top. */
export function drawBeamEnd(
  sketch: Sketch,
  shelter: Shelter,
  line: LineGeometry,
  stripBreadthIn: number | null,
  inkOf: (id: string) => Ink,
): void {
  const { view } = sketch;
  const cutX = postsOf(shelter, line)[0]?.xIn ?? line.fromXIn;
  const beam = shelter.beams.find((b) => b.line === line.id && b.fromXIn <= cutX && cutX <= b.toXIn);
  if (!beam || !hasSize(beam.stick)) return;
  const topZ = between(beam.stations, cutX, (s) => s.topZIn);
  const undersideZ = between(beam.stations, cutX, (s) => s.undersideZIn);
  const options = { covers: true, memberId: beam.id };
  if (line.stripThicknessIn > 0 && stripBreadthIn !== null) {
    const half = stripBreadthIn / 2;
    const low = line.bearingZIn - line.stripThicknessIn;
    sketch.outline(
      boxAround(line.yIn, half, low, line.bearingZIn).map((p) => view.at(p.x, p.y)),
      'ink-thin',
      {
        covers: true,
      },
    );
  }
  if (beam.stick?.kind === 'round') {
    const centre = view.at(line.yIn, (topZ + undersideZ) / 2);
    sketch.circle(centre, ((topZ - undersideZ) / 2) * view.scale, inkOf(beam.id), options);
  } else {
    const half = (thicknessAt(beam.stick, 0, 'breadth') ?? 0) / 2;
    sketch.outline(
      boxAround(line.yIn, half, undersideZ, topZ).map((p) => view.at(p.x, p.y)),
      inkOf(beam.id),
      options,
    );
  }
}

const boxAround = (y: number, half: number, low: number, high: number): readonly Point[] => [
  { x: y - half, y: low },
  { x: y + half, y: low },
  { x: y + half, y: high },
  { x: y - half, y: high },
];

export function drawTie(sketch: Sketch, tie: TieGeometry, ink: Ink): void {
  const { view } = sketch;
  const start = thicknessAt(tie.stick, 0, 'depth');
  const end = thicknessAt(tie.stick, Math.abs(tie.toYIn - tie.fromYIn), 'depth');
  if (start === null || end === null) {
    sketch.line([view.at(tie.fromYIn, tie.axisZIn), view.at(tie.toYIn, tie.axisZIn)], 'hidden-line', {
      memberId: tie.id,
    });
    return;
  }
  const corners = [
    view.at(tie.fromYIn, tie.axisZIn + start / 2),
    view.at(tie.toYIn, tie.axisZIn + end / 2),
    view.at(tie.toYIn, tie.axisZIn - end / 2),
    view.at(tie.fromYIn, tie.axisZIn - start / 2),
  ];
  sketch.outline(corners, ink, { covers: true, memberId: tie.id });
}

export function drawAcrossBraces(
  sketch: Sketch,
  shelter: Shelter,
  posts: readonly PostGeometry[],
  inkOf: (id: string) => Ink,
): void {
  const { view } = sketch;
  for (const brace of shelter.braces) {
    const post = posts.find((p) => p.id === brace.postId);
    if (brace.plane !== 'across' || !post) continue;
    const foot = { x: brace.postPoint.yIn, y: brace.postPoint.zIn };
    const top = { x: brace.topPoint.yIn, y: brace.topPoint.zIn };
    const face = postFace(post, post.yIn, top.x > foot.x ? 1 : -1);
    const outline = braceOutline(brace, foot, top, face, undersideOfCarried(shelter, brace, top));
    if (outline) {
      sketch.outline(
        outline.map((p) => view.at(p.x, p.y)),
        inkOf(brace.id),
        { covers: true, memberId: brace.id },
      );
    } else sketch.line([view.at(foot.x, foot.y), view.at(top.x, top.y)], 'hidden-line', { memberId: brace.id });
  }
}

/** Underside of the level tie or sloping rafter that an across brace runs to. */
function undersideOfCarried(shelter: Shelter, brace: BraceGeometry, top: Point): Segment {
  const rafter = shelter.rafters.find((r) => r.id === brace.toId);
  const steep = rafter ? -rafter.downY * Math.tan((rafter.slopeDeg * Math.PI) / 180) : 0;
  const under = top.y - (brace.topDiameterIn / 2) * Math.hypot(1, steep);
  return [
    { x: top.x, y: under },
    { x: top.x + 1, y: under + steep },
  ];
}

/** Wall cut and hatched on the far side of its face from the shelter, the ledger against it. */
export function drawLedger(
  sketch: Sketch,
  line: LineGeometry,
  known: LineDetail | undefined,
  away: 1 | -1,
  groundZIn: number,
): void {
  const { view } = sketch;
  const faceX = view.at(known?.wallFaceYIn ?? line.yIn, 0).x;
  const lineX = view.at(line.yIn, 0).x;
  const bottom = view.at(0, groundZIn).y + view.paper.textSize * 2;
  const thick = view.paper.textSize * 0.8;
  const top = view.paper.textSize * 0.8;
  const wall = [
    { x: faceX, y: top },
    { x: faceX + away * thick, y: top },
    { x: faceX + away * thick, y: bottom },
    { x: faceX, y: bottom },
  ];
  sketch.hatch(hatchStrokes(wall, view.paper.textSize * 0.5));
  sketch.line([wall[0]!, wall[3]!], 'ink-line');
  const seatY = view.at(0, line.bearingZIn).y;
  const reach = Math.max(Math.abs(lineX - faceX), 2);
  const depth = (known?.ledgerDepthIn ?? 0) * view.scale;
  if (depth > 0) {
    const corners = [
      { x: faceX, y: seatY },
      { x: faceX - away * reach, y: seatY },
      { x: faceX - away * reach, y: seatY + depth },
      { x: faceX, y: seatY + depth },
    ];
    sketch.outline(corners, 'ink-line', { covers: true });
  }
  const about = { x: lineX, y: seatY + depth };
  const beside = { x: faceX - away * view.paper.textSize * 1.6, y: about.y + view.paper.textSize * 1.4 };
  sketch.text({ key: `name-${line.id}`, text: line.label, kind: 'name', centres: [beside], about });
}

export function drawRoof(sketch: Sketch, shelter: Shelter, inkOf: (id: string) => Ink): void {
  const { view } = sketch;
  const onPaper = (points: readonly Point[]): readonly Point[] => points.map((p) => view.at(p.x, p.y));
  for (const plane of shelter.planes) {
    const rafter = shelter.rafters.find((r) => r.plane === plane.id);
    const side = rafter ? rafterOutline(rafter) : null;
    if (rafter && side) sketch.outline(onPaper(side), inkOf(rafter.id), { covers: true, memberId: rafter.id });
    for (const purlin of shelter.purlins.filter((p) => p.plane === plane.id)) {
      const cut = purlinOutline(purlin, plane);
      if (cut) sketch.outline(onPaper(cut), inkOf(purlin.id), { covers: true, memberId: purlin.id });
    }
    sketch.line([view.at(plane.highYIn, plane.highZIn), view.at(plane.lowYIn, plane.lowZIn)], 'cover-line');
  }
}

/** Arrows that come down on the covering; only their words carry a number. */
export function drawSnow(sketch: Sketch, shelter: Shelter, words: string): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const long = size * 1.8;
  const head = size * 0.28;
  for (const plane of shelter.planes) {
    const count = Math.max(3, Math.round((plane.runIn * view.scale) / (size * 2)));
    for (let i = 0; i < count; i++) {
      const y = plane.highYIn + ((i + 0.5) / count) * (plane.lowYIn - plane.highYIn);
      const end = view.at(y, coverZAt(plane, y));
      const tip = { x: end.x, y: end.y - size * 0.4 };
      sketch.line([{ x: tip.x, y: tip.y - long }, tip], 'ink-thin');
      sketch.line(
        [{ x: tip.x - head, y: tip.y - 2 * head }, tip, { x: tip.x + head, y: tip.y - 2 * head }],
        'ink-thin',
      );
    }
  }
  const plane = shelter.planes[0];
  if (!plane) return;
  const y = ridgeOf(shelter.planes) ? plane.highYIn : (plane.highYIn + plane.lowYIn) / 2;
  const about = view.at(y, coverZAt(plane, y));
  const centres = [3.2, 3.8, 4.6].flatMap((up) =>
    [0, 3, 6].map((along) => ({ x: about.x + plane.downY * along * size, y: about.y - up * size })),
  );
  sketch.text({ key: 'snow', text: words, kind: 'note', centres, about: { x: about.x, y: about.y - size } });
}
