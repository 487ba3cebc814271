import { between } from '../../engine/geometry/beam-shape.ts';
import type {
  BeamGeometry,
  LineGeometry,
  PlaneGeometry,
  RafterGeometry,
  Shelter,
} from '../../engine/geometry/shelter.ts';
import { coverZAt } from './roof-shape.ts';
import { drawForces, type ForceOverlay } from './force-diagram.ts';
import { drawFrontDimensions } from './front-dimensions.ts';
import { bottomOf, drawGround, drawPost, nameCentres, reachOfPost } from './ground.ts';
import { extentOf, fitView, type Extent, type Paper, type Point } from './paper.ts';
import { beginSketch, type Ink, type Picture, type Sketch } from './sketch.ts';
import { beamOutline, braceOutline, hasSize, postFace, thicknessAt, undersideNear } from './sticks.ts';
import { DRAWING_WORDS, frontDescription, frontTitle, postsOf, type ShowLength } from './words.ts';

export interface PictureOptions {
  readonly paper: Paper;
  readonly showLength: ShowLength;
  /** how diameters are written; as lengths where not given */
  readonly showDiameter?: ShowLength | undefined;
  readonly selectedMemberId?: string | null | undefined;
}
export interface FrontOptions extends PictureOptions {
  readonly overlay?: ForceOverlay | null | undefined;
}

/** Front view of a frame line, seen from the side of growing y with x to the right; null when there is no such frame line. */
export function frontPicture(shelter: Shelter, lineId: string, options: FrontOptions): Picture | null {
  const line = shelter.lines.find((l) => l.id === lineId);
  if (!line || line.kind !== 'frame') return null;
  const { paper, showLength } = options;
  const size = paper.textSize;
  const view = fitView(frontExtent(shelter, line), paper, {
    left: size * 2.4,
    right: size * 1.4,
    top: size * 1.6,
    bottom: size * 4,
  });
  const sketch = beginSketch(view);
  const posts = postsOf(shelter, line);
  const inkOf = (id: string): 'ink-heavy' | 'ink-line' => (id === options.selectedMemberId ? 'ink-heavy' : 'ink-line');

  drawGround(
    sketch,
    posts.map((p) => view.at(p.xIn, p.gradeZIn)),
    size * 1.8,
    view.width - size * 0.4,
  );
  for (const post of posts) drawPost(sketch, post, post.xIn, inkOf(post.id));
  drawBraces(sketch, shelter, line, inkOf);
  for (const beam of beamsOf(shelter, line)) drawBeam(sketch, beam, inkOf(beam.id));
  drawTieEnds(sketch, shelter, line);
  drawStrip(sketch, shelter, line);
  drawRoofAtLine(sketch, shelter, line, inkOf);
  if (options.overlay) drawForces(sketch, shelter, line, options.overlay);

  for (const post of posts) {
    sketch.text({ key: `name-${post.id}`, text: post.label, kind: 'name', centres: nameCentres(view, post, post.xIn) });
  }
  drawFrontDimensions(sketch, shelter, line, options);
  for (const beam of beamsOf(shelter, line)) nameBeamEnds(sketch, beam, options.showDiameter ?? showLength);
  nameWhatIsMissing(sketch, shelter, line);
  return sketch.finish(frontTitle(line), frontDescription(shelter, line, showLength));
}

const beamsOf = (shelter: Shelter, line: LineGeometry): readonly BeamGeometry[] =>
  shelter.beams.filter((b) => b.line === line.id);
const planesOn = (shelter: Shelter, line: LineGeometry): readonly PlaneGeometry[] =>
  shelter.planes.filter((p) => p.onLines.includes(line.id));

function frontExtent(shelter: Shelter, line: LineGeometry): Extent {
  const planes = planesOn(shelter, line);
  return extentOf([
    { right: line.fromXIn, up: line.bearingZIn },
    { right: line.toXIn, up: line.bearingZIn },
    ...postsOf(shelter, line).flatMap((p) => [...reachOfPost(p, p.xIn), { right: p.xIn, up: bottomOf(p) }]),
    ...planes.flatMap((p) => [
      { right: p.fromXIn, up: coverZAt(p, line.yIn) },
      { right: p.toXIn, up: coverZAt(p, line.yIn) },
    ]),
  ]);
}

function drawBeam(sketch: Sketch, beam: BeamGeometry, ink: Ink): void {
  const { view } = sketch;
  if (!hasSize(beam.stick)) {
    const axis = beam.stations.map((s) => view.at(s.xIn, s.axisZIn));
    sketch.line(axis, 'hidden-line', { memberId: beam.id });
    return;
  }
  sketch.outline(
    beamOutline(beam).map((p) => view.at(p.x, p.y)),
    ink,
    { covers: true, memberId: beam.id },
  );
}

function drawBraces(sketch: Sketch, shelter: Shelter, line: LineGeometry, inkOf: (id: string) => Ink): void {
  const { view } = sketch;
  for (const brace of shelter.braces) {
    const post = shelter.posts.find((p) => p.id === brace.postId);
    if (brace.plane !== 'along' || post?.line !== line.id) continue;
    const foot = { x: brace.postPoint.xIn, y: brace.postPoint.zIn };
    const top = { x: brace.topPoint.xIn, y: brace.topPoint.zIn };
    const beam = beamsOf(shelter, line).find((b) => b.fromXIn <= top.x && top.x <= b.toXIn && hasSize(b.stick));
    const outline =
      beam &&
      braceOutline(brace, foot, top, postFace(post, post.xIn, top.x > foot.x ? 1 : -1), undersideNear(beam, top.x));
    if (outline) {
      sketch.outline(
        outline.map((p) => view.at(p.x, p.y)),
        inkOf(brace.id),
        { covers: true, memberId: brace.id },
      );
    } else sketch.line([view.at(foot.x, foot.y), view.at(top.x, top.y)], 'hidden-line', { memberId: brace.id });
  }
}

/** Tie logs run away from the viewer: their round ends, hidden by the posts. */
function drawTieEnds(sketch: Sketch, shelter: Shelter, line: LineGeometry): void {
  for (const tie of shelter.ties) {
    const atStart = line.postIds.includes(tie.fromPostId);
    if (!atStart && !line.postIds.includes(tie.toPostId)) continue;
    const diameter = thicknessAt(tie.stick, atStart ? 0 : Math.abs(tie.toYIn - tie.fromYIn), 'depth');
    if (diameter === null) continue;
    sketch.circle(sketch.view.at(tie.xIn, tie.axisZIn), (diameter / 2) * sketch.view.scale, 'hidden-line');
  }
}

/** A shim thinner than this does not show [in]. */
const LEAST_SHIM_IN = 1 / 16;

function drawStrip(sketch: Sketch, shelter: Shelter, line: LineGeometry): void {
  const { view } = sketch;
  const rafters = raftersOver(shelter, line);
  const underStrip = line.bearingZIn - line.stripThicknessIn;
  for (const beam of beamsOf(shelter, line)) {
    if (!hasSize(beam.stick)) continue;
    for (const { rafter } of rafters) {
      const half = (thicknessAt(rafter.stick, 0, 'breadth') ?? 0) / 2;
      if (half === 0 || rafter.xIn < beam.fromXIn || rafter.xIn > beam.toXIn) continue;
      const topZ = between(beam.stations, rafter.xIn, (s) => s.topZIn);
      if (underStrip - topZ < LEAST_SHIM_IN) continue;
      sketch.outline(
        boxOf(rafter.xIn - half, rafter.xIn + half, topZ, underStrip).map((p) => view.at(p.x, p.y)),
        'ink-thin',
      );
    }
  }
  if (line.stripThicknessIn > 0) {
    sketch.outline(
      boxOf(line.fromXIn, line.toXIn, underStrip, line.bearingZIn).map((p) => view.at(p.x, p.y)),
      'ink-thin',
      { covers: true },
    );
  }
}

const boxOf = (left: number, right: number, low: number, high: number): readonly Point[] => [
  { x: left, y: low },
  { x: right, y: low },
  { x: right, y: high },
  { x: left, y: high },
];

function raftersOver(
  shelter: Shelter,
  line: LineGeometry,
): readonly { readonly rafter: RafterGeometry; readonly seatZIn: number }[] {
  return shelter.rafters.flatMap((rafter) => {
    const support = rafter.supports.find((s) => s.line === line.id);
    return support ? [{ rafter, seatZIn: support.zIn }] : [];
  });
}

/** Rafters cut across over the line, the purlin edge seen behind the cut, and the covering. */
function drawRoofAtLine(sketch: Sketch, shelter: Shelter, line: LineGeometry, inkOf: (id: string) => Ink): void {
  const { view } = sketch;
  for (const { rafter, seatZIn } of raftersOver(shelter, line)) {
    const bottomZ = seatZIn - rafter.seatCutIn;
    const steep = 1 / Math.cos((rafter.slopeDeg * Math.PI) / 180);
    const breadth = thicknessAt(rafter.stick, 0, 'breadth');
    const depth = thicknessAt(rafter.stick, 0, 'depth');
    const options = { covers: true, memberId: rafter.id };
    if (breadth === null || depth === null) continue;
    if (rafter.stick?.kind === 'round') {
      sketch.circle(view.at(rafter.xIn, bottomZ + depth / 2), (depth / 2) * view.scale, inkOf(rafter.id), options);
      continue;
    }
    const box = boxOf(rafter.xIn - breadth / 2, rafter.xIn + breadth / 2, bottomZ, bottomZ + depth * steep);
    sketch.outline(
      box.map((p) => view.at(p.x, p.y)),
      inkOf(rafter.id),
      options,
    );
  }
  for (const plane of planesOn(shelter, line)) {
    const topZ = coverZAt(plane, line.yIn);
    const purlin = shelter.purlins.find((p) => p.plane === plane.id);
    const under = purlin ? thicknessAt(purlin.stick, 0, 'depth') : null;
    if (under !== null) {
      const z = topZ - under / Math.cos((plane.slopeDeg * Math.PI) / 180);
      sketch.line([view.at(plane.fromXIn, z), view.at(plane.toXIn, z)], 'ink-thin');
    }
    sketch.line([view.at(plane.fromXIn, topZ), view.at(plane.toXIn, topZ)], 'cover-line');
  }
}

/** Diameters at both ends, below the beam's underside. */
function nameBeamEnds(sketch: Sketch, beam: BeamGeometry, show: ShowLength): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const ends = [
    { station: beam.stations[0], inward: 1 },
    { station: beam.stations[beam.stations.length - 1], inward: -1 },
  ];
  if (beam.stick?.kind !== 'round') return;
  for (const { station, inward } of ends) {
    if (!station) continue;
    const corner = view.at(station.xIn, station.undersideZIn);
    const centres = [1, 1.6, 2.6].flatMap((down) =>
      [1.7, 2.2, 1, 3].map((along) => ({ x: corner.x + inward * along * size, y: corner.y + down * size })),
    );
    sketch.text({
      key: `end-${station.xIn}-${beam.id}`,
      text: show(station.diameterIn),
      kind: 'note',
      centres,
      about: corner,
      optional: true,
    });
  }
}

/** What the drawing cannot show because nobody has given it is said where it would stand. */
function nameWhatIsMissing(sketch: Sketch, shelter: Shelter, line: LineGeometry): void {
  const { view } = sketch;
  for (const beam of beamsOf(shelter, line).filter((b) => !hasSize(b.stick))) {
    const at = view.at((beam.fromXIn + beam.toXIn) / 2, line.bearingZIn - line.stripThicknessIn);
    sketch.text({ key: `missing-${beam.id}`, text: DRAWING_WORDS.noBeamLog, kind: 'note', centres: [at], about: at });
  }
  for (const post of postsOf(shelter, line)) {
    if (!hasSize(post.stick)) {
      const at = view.at(post.xIn, (post.woodFromZIn + post.seatZIn) / 2);
      sketch.text({
        key: `missing-${post.id}`,
        text: DRAWING_WORDS.noPostLog(post.label),
        kind: 'note',
        centres: [at],
        about: at,
      });
    }
    if (post.foot.kind === 'pier' && post.pierTopZIn === null) {
      const at = view.at(post.xIn, post.woodFromZIn);
      sketch.text({
        key: `pier-${post.id}`,
        text: DRAWING_WORDS.noPierTop(post.label),
        kind: 'note',
        centres: [at],
        about: at,
      });
    }
  }
}
