import { ridgeOf } from '../../engine/geometry/ridge.ts';
import type { LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { drawString, type Stretch } from './dimension.ts';
import { finishWith, type PictureOptions } from './picture-options.ts';
import { hatchStrokes } from './outline.ts';
import { extentOf, fitView } from './paper.ts';
import { drawScaleBar } from './scale-bar.ts';
import { beginSketch, type Picture, type Sketch } from './sketch.ts';
import { beamFromAbove, hasSize, thicknessAt } from './sticks.ts';
import { byY, postsOf } from './shelter-parts.ts';
import { DRAWING_WORDS, PLAN_TITLE, planDescription } from './words.ts';

export interface PlanOptions extends PictureOptions {
  readonly units: 'feet' | 'metric';
}

/** Plan: x to the right, y down the paper, seen through the roof; the covering's edge is the dashed drip line. */
export function planPicture(shelter: Shelter, options: PlanOptions): Picture {
  const { paper, showLength } = options;
  const size = paper.textSize;
  const extent = extentOf([
    ...shelter.planes.flatMap((p) => [
      { right: p.fromXIn, up: -p.highYIn },
      { right: p.toXIn, up: -p.lowYIn },
    ]),
    ...shelter.lines.flatMap((l) => [
      { right: l.fromXIn, up: -l.yIn },
      { right: l.toXIn, up: -l.yIn },
    ]),
  ]);
  const { laidOver } = options;
  const view = fitView(extent, paper, {
    left: size * (2 + (laidOver?.left ?? 0)),
    right: size * (3.6 + (laidOver?.right ?? 0)),
    top: size * Math.max(0.8, laidOver?.above ?? 0),
    bottom: size * 6.4,
  });
  const sketch = beginSketch(view);
  for (const line of shelter.lines) if (line.kind === 'ledger') drawWall(sketch, shelter, line);
  if (laidOver) laidOver.drawUnder?.(sketch);
  else drawRafters(sketch, shelter, options.selectedMemberId ?? null);
  drawTies(sketch, shelter);
  for (const beam of shelter.beams) {
    const y = shelter.lines.find((l) => l.id === beam.line)?.yIn ?? 0;
    const ink = beam.id === options.selectedMemberId ? 'ink-heavy' : 'ink-line';
    const target = { covers: true, memberId: beam.id };
    if (hasSize(beam.stick)) {
      sketch.outline(
        beamFromAbove(beam, y).map((p) => view.at(p.x, -p.y)),
        ink,
        target,
      );
    } else sketch.line([view.at(beam.fromXIn, -y), view.at(beam.toXIn, -y)], 'hidden-line', target);
  }
  drawEdges(sketch, shelter);
  laidOver?.draw(sketch);
  drawPosts(sketch, shelter);
  nameLines(sketch, shelter);
  drawStrings(sketch, shelter, showLength);
  drawScaleBar(sketch, options.units, { x: view.at(extent.left, 0).x, y: view.height - size * 1.8 });
  nameDripLine(sketch, shelter);
  return finishWith(sketch, PLAN_TITLE, planDescription(shelter, showLength), laidOver);
}

/** Edges of the covering; where two slopes meet on a ridge there is none, but a line with its name. */
function drawEdges(sketch: Sketch, shelter: Shelter): void {
  const { view } = sketch;
  const ridge = ridgeOf(shelter.planes);
  const edges = ridge ? [{ ...ridge.planes[0], highYIn: ridge.planes[1].lowYIn }] : shelter.planes;
  for (const { fromXIn, toXIn, highYIn, lowYIn } of edges) {
    const corners = [
      view.at(fromXIn, -highYIn),
      view.at(toXIn, -highYIn),
      view.at(toXIn, -lowYIn),
      view.at(fromXIn, -lowYIn),
    ];
    sketch.outline(corners, 'hidden-line');
  }
  if (!ridge) return;
  const [plane] = ridge.planes;
  const size = view.paper.textSize;
  const from = view.at(plane.fromXIn, -plane.highYIn);
  const to = view.at(plane.toXIn, -plane.highYIn);
  sketch.line([from, to], 'dimension');
  const about = { x: (from.x + to.x) / 2, y: from.y };
  const centres = [1.4, -1.4, 2, -2, 2.6, -2.6].flatMap((up) =>
    [0, 0.5, -0.5, 1, -1, 1.5, -1.5].map((along) => ({ x: about.x + along * size, y: about.y + up * size })),
  );
  sketch.text({ key: 'ridge', text: DRAWING_WORDS.ridge, kind: 'note', centres, about, optional: true });
}

function drawWall(sketch: Sketch, shelter: Shelter, line: LineGeometry): void {
  const { view } = sketch;
  const ys = shelter.planes.flatMap((p) => [p.highYIn, p.lowYIn]);
  const middle = (Math.min(...ys) + Math.max(...ys)) / 2;
  const away = (line.yIn < middle ? -1 : 1) * view.paper.textSize * 0.6;
  const from = view.at(line.fromXIn, -line.yIn);
  const to = view.at(line.toXIn, -line.yIn);
  const band = [from, to, { x: to.x, y: to.y + away }, { x: from.x, y: from.y + away }];
  sketch.hatch(hatchStrokes(band, view.paper.textSize * 0.4));
  sketch.line([from, to], 'ink-line');
}

function drawRafters(sketch: Sketch, shelter: Shelter, selected: string | null): void {
  const { view } = sketch;
  for (const rafter of shelter.rafters) {
    const highY = rafter.eaveYIn - rafter.downY * rafter.runIn;
    sketch.line(
      [view.at(rafter.xIn, -rafter.eaveYIn), view.at(rafter.xIn, -highY)],
      rafter.id === selected ? 'ink-heavy' : 'dimension',
      { memberId: rafter.id },
    );
  }
}

function drawTies(sketch: Sketch, shelter: Shelter): void {
  const { view } = sketch;
  for (const tie of shelter.ties) {
    const start = (thicknessAt(tie.stick, 0, 'breadth') ?? 0) / 2;
    const end = (thicknessAt(tie.stick, Math.abs(tie.toYIn - tie.fromYIn), 'breadth') ?? 0) / 2;
    const corners = [
      view.at(tie.xIn - start, -tie.fromYIn),
      view.at(tie.xIn + start, -tie.fromYIn),
      view.at(tie.xIn + end, -tie.toYIn),
      view.at(tie.xIn - end, -tie.toYIn),
    ];
    sketch.outline(corners, 'ink-thin', { covers: true, memberId: tie.id });
  }
}

/** Where a post's name may stand along its line, in text sizes: between two rafters there is room somewhere. */
const BESIDE = Array.from({ length: 15 }, (_, i) => i * 0.2).flatMap((along) => [along, -along]);

/** Post tops under the beams, and the posts' names beside them. */
function drawPosts(sketch: Sketch, shelter: Shelter): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  for (const post of shelter.posts) {
    const diameter = thicknessAt(post.stick, post.lengthIn, 'breadth') ?? 0;
    const centre = view.at(post.xIn, -post.yIn);
    const radius = Math.max((diameter / 2) * view.scale, 2);
    sketch.circle(centre, radius, 'hidden-line', { memberId: post.id });
    const beam = shelter.beams.find((b) => b.line === post.line);
    const half = (Math.max(0, ...(beam?.stations.map((s) => s.diameterIn) ?? [])) / 2) * view.scale;
    const off = Math.max(radius, half) + size * 0.8;
    sketch.text({
      key: `name-${post.id}`,
      text: post.label,
      kind: 'name',
      centres: [off, -off].flatMap((down) =>
        BESIDE.map((along) => ({ x: centre.x + along * size, y: centre.y + down })),
      ),
      about: centre,
    });
  }
}

function nameLines(sketch: Sketch, shelter: Shelter): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const leftX = view.at(Math.min(...[...shelter.planes, ...shelter.lines].map((p) => p.fromXIn)), 0).x;
  for (const line of shelter.lines) {
    const y = view.at(0, -line.yIn).y;
    sketch.text({
      key: `line-${line.id}`,
      text: line.label,
      kind: 'name',
      centres: [0, -1, 1].map((n) => ({ x: leftX - size * 1.2, y: y + n * size })),
      about: { x: view.at(line.fromXIn, 0).x, y },
    });
  }
}

/** Post axes of the line with most posts under the plan, the lines' distances at its right. */
function drawStrings(sketch: Sketch, shelter: Shelter, showLength: (inches: number) => string): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const ys = shelter.planes.flatMap((p) => [p.highYIn, p.lowYIn]);
  const rightX = Math.max(...[...shelter.planes, ...shelter.lines].map((p) => p.toXIn));
  const lowestY = Math.max(...ys, ...shelter.lines.map((l) => l.yIn));
  const lines = byY(shelter);
  const busiest = lines.toSorted((a, b) => b.postIds.length - a.postIds.length)[0];
  if (busiest) {
    const posts = postsOf(shelter, busiest);
    const y = view.at(0, -lowestY).y + size * 2.2;
    const stops = posts.map((p) => ({ atIn: p.xIn, place: { x: view.at(p.xIn, 0).x, y } }));
    const leafOf = (i: number): Stretch => ({ path: `members[${posts[i + 1]!.id}].xIn`, sign: 1 });
    drawString(sketch, 'posts', stops, leafOf, showLength, -1);
  }
  const x = view.at(rightX, 0).x + size * 1.2;
  const stops = lines.map((l) => ({ atIn: l.yIn, place: { x, y: view.at(0, -l.yIn).y } }));
  const leafOf = (i: number): Stretch => ({ path: `supportLines[${lines[i + 1]!.id}].yIn`, sign: 1 });
  drawString(sketch, 'lines', stops, leafOf, showLength, 1);
}

function nameDripLine(sketch: Sketch, shelter: Shelter): void {
  const { view } = sketch;
  const plane = shelter.planes[0];
  if (!plane) return;
  const size = view.paper.textSize;
  const edge = view.at(plane.fromXIn, -plane.lowYIn);
  const down = plane.downY * size * 0.9;
  const centres = [2.4, 6, 10].flatMap((n) => [1, 2.6].map((m) => ({ x: edge.x + n * size, y: edge.y + m * down })));
  sketch.text({ key: 'drip', text: DRAWING_WORDS.dripLine, kind: 'note', centres, about: edge, optional: true });
}
