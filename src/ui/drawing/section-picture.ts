import { ridgeOf } from '../../engine/geometry/ridge.ts';
import type { LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { drawDimension, drawString, type Stretch } from './dimension.ts';
import { finishWith, type PictureOptions } from './picture-options.ts';
import { drawHardware } from './hardware-marks.ts';
import { drawGround, drawPost, nameCentres, reachOfPost } from './ground.ts';
import { extentOf, fitView, type Extent } from './paper.ts';
import { coverZAt } from './roof-shape.ts';
import {
  drawAcrossBraces,
  drawBeamEnd,
  drawLedger,
  drawRoof,
  drawSnow,
  drawTie,
  type LineDetail,
} from './section-parts.ts';
import { beginSketch, type Ink, type Picture, type Sketch } from './sketch.ts';
import { byY, postsOf } from './shelter-parts.ts';
import { textWidth } from './text-size.ts';
import { DRAWING_WORDS, sectionDescription, SECTION_TITLE } from './words.ts';

export interface SectionOptions extends PictureOptions {
  readonly lineDetails?: readonly LineDetail[] | undefined;
  /** what the snow arrows stand for, in words: `snow 46 psf`; no arrows without it */
  readonly snow?: string | null | undefined;
}

/** Section across the frame lines at the first posts, looking the way x grows: y to the right, z up. */
export function sectionPicture(shelter: Shelter, options: SectionOptions): Picture {
  const { paper } = options;
  const size = paper.textSize;
  const { laidOver } = options;
  const view = fitView(sectionExtent(shelter, options), paper, {
    left: size * (1.2 + (laidOver?.left ?? 0)),
    right: size * ((ridgeOf(shelter.planes) ? 2.6 : 1.2) + (laidOver?.right ?? 0)),
    top: size * Math.max(options.snow ? 5.2 : 2.6, laidOver?.above ?? 0),
    bottom: size * 4,
  });
  const sketch = beginSketch(view);
  const lines = byY(shelter);
  const posts = lines.flatMap((l) => postsOf(shelter, l).slice(0, 1));
  const inkOf = (id: string, otherwise: Ink): Ink => (id === options.selectedMemberId ? 'ink-heavy' : otherwise);

  const walls = lines.flatMap((line) => (line.kind === 'ledger' ? [wallOf(shelter, line, options)] : []));
  drawGround(
    sketch,
    posts.map((p) => view.at(p.yIn, p.gradeZIn)),
    Math.max(size * 0.3, ...walls.filter((w) => w.away === -1).map((w) => view.at(w.faceYIn, 0).x)),
    Math.min(view.width - size * 0.3, ...walls.filter((w) => w.away === 1).map((w) => view.at(w.faceYIn, 0).x)),
  );
  const ties = shelter.ties.filter((t) => posts.some((p) => p.id === t.fromPostId));
  // a tie between its posts ends at their sides: they are drawn over its ends
  for (const tie of ties.filter(({ ends }) => ends === 'between')) drawTie(sketch, tie, inkOf(tie.id, 'ink-thin'));
  for (const post of posts) {
    drawPost(sketch, post, post.yIn, post.id === options.selectedMemberId ? 'ink-heavy' : 'ink-thin');
  }
  for (const tie of ties.filter(({ ends }) => ends === 'beside')) drawTie(sketch, tie, inkOf(tie.id, 'ink-thin'));
  drawAcrossBraces(sketch, shelter, posts, (id) => inkOf(id, 'ink-thin'));
  for (const line of lines) {
    const detail = options.lineDetails?.find((d) => d.lineId === line.id);
    const wall = walls.find((w) => w.lineId === line.id);
    if (wall) drawLedger(sketch, line, detail, wall.away, shelter.lowestGradeZIn);
    else drawBeamEnd(sketch, shelter, line, detail?.stripBreadthIn ?? null, (id) => inkOf(id, 'ink-line'));
  }
  drawRoof(sketch, shelter, (id) => inkOf(id, 'ink-thin'));
  drawHardware(sketch, options.hardware?.filter(({ isInSection }) => isInSection) ?? [], 'x');
  if (options.snow) drawSnow(sketch, shelter, options.snow);
  laidOver?.draw(sketch);

  for (const post of posts) {
    const label = lines.find((l) => l.id === post.line)?.label ?? post.label;
    sketch.text({ key: `name-${post.id}`, text: label, kind: 'name', centres: nameCentres(view, post, post.yIn) });
  }
  drawAcrossString(sketch, shelter, options);
  drawRidgeHeight(sketch, shelter, options);
  namePitches(sketch, shelter);
  return finishWith(sketch, SECTION_TITLE, sectionDescription(shelter, options.showLength), laidOver);
}

/** A wall's face, and on which side of it the building stands: away from the middle of the roof. */
function wallOf(
  shelter: Shelter,
  line: LineGeometry,
  options: SectionOptions,
): { readonly lineId: string; readonly faceYIn: number; readonly away: 1 | -1 } {
  const ys = shelter.planes.flatMap((p) => [p.highYIn, p.lowYIn]);
  const middle = (Math.min(...ys) + Math.max(...ys)) / 2;
  const faceYIn = options.lineDetails?.find((d) => d.lineId === line.id)?.wallFaceYIn ?? line.yIn;
  return { lineId: line.id, faceYIn, away: line.yIn < middle ? -1 : 1 };
}

function sectionExtent(shelter: Shelter, options: SectionOptions): Extent {
  const lines = byY(shelter);
  return extentOf([
    ...lines.flatMap((l) => postsOf(shelter, l).slice(0, 1)).flatMap((p) => reachOfPost(p, p.yIn)),
    ...lines.map((l) => ({ right: l.yIn, up: l.bearingZIn })),
    ...shelter.planes.flatMap((p) => [
      { right: p.highYIn, up: p.highZIn },
      { right: p.lowYIn, up: p.lowZIn },
    ]),
    ...(options.lineDetails ?? []).flatMap((l) =>
      l.wallFaceYIn === null ? [] : [{ right: l.wallFaceYIn, up: shelter.lowestGradeZIn }],
    ),
  ]);
}

function drawAcrossString(sketch: Sketch, shelter: Shelter, options: SectionOptions): void {
  const { view } = sketch;
  const y = view.height - view.paper.textSize * 1.7;
  const marks: { readonly atIn: number; readonly after: Stretch | null; readonly before: Stretch | null }[] = [
    ...shelter.lines.map((l) => ({
      atIn: l.yIn,
      before: { path: `supportLines[${l.id}].yIn`, sign: 1 as const },
      after: null,
    })),
    ...shelter.planes.flatMap((p) => edgesOf(shelter, p.id)),
  ];
  const inOrder = marks.toSorted((a, b) => a.atIn - b.atIn);
  const stops = inOrder.map((m) => ({ atIn: m.atIn, place: { x: view.at(m.atIn, 0).x, y } }));
  drawString(sketch, 'across', stops, (i) => inOrder[i]!.after ?? inOrder[i + 1]!.before, options.showLength, -1);
}

/** From the ground at the ridge post up to where the coverings meet; left out where it would be shorter than its text. */
function drawRidgeHeight(sketch: Sketch, shelter: Shelter, options: SectionOptions): void {
  const ridge = ridgeOf(shelter.planes);
  const post = shelter.posts.find((p) => p.line === ridge?.lineId);
  if (!ridge || !post) return;
  const { view } = sketch;
  const size = view.paper.textSize;
  const x = view.width - size * 1.9;
  const topZIn = Math.max(...ridge.planes.map((p) => p.highZIn));
  const text = DRAWING_WORDS.toRidge(options.showLength(topZIn - post.gradeZIn));
  const from = { x, y: view.at(0, post.gradeZIn).y };
  const to = { x, y: view.at(0, topZIn).y };
  if (from.y - to.y < textWidth(text, size)) return;
  drawDimension(sketch, { key: 'ridge', from, to, text, side: 1 });
}

/** The two edges of a covering: what lies between an edge and its line is an overhang. One that ends on its line has none. */
function edgesOf(
  shelter: Shelter,
  planeId: string,
): readonly { readonly atIn: number; readonly after: Stretch | null; readonly before: Stretch | null }[] {
  const plane = shelter.planes.find((p) => p.id === planeId);
  if (!plane) return [];
  const edge = (atIn: number, leaf: string, outward: 1 | -1) => {
    const stretch: Stretch = { path: `roofPlanes[${planeId}].${leaf}`, sign: 1 };
    return outward === 1 ? { atIn, before: stretch, after: null } : { atIn, before: null, after: stretch };
  };
  return [
    edge(plane.highYIn, 'highOverhangIn', plane.downY === 1 ? -1 : 1),
    edge(plane.lowYIn, 'lowOverhangIn', plane.downY),
  ].filter(({ atIn }) => !plane.lineYIn.includes(atIn));
}

function namePitches(sketch: Sketch, shelter: Shelter): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  for (const plane of shelter.planes) {
    const centres = [0.75, 0.85, 0.6, 0.4].flatMap((share) => {
      const y = plane.highYIn + share * (plane.lowYIn - plane.highYIn);
      const on = view.at(y, coverZAt(plane, y));
      return [1.6, 2.4, 4].map((up) => ({ x: on.x + plane.downY * size, y: on.y - up * size }));
    });
    const y = plane.highYIn + 0.75 * (plane.lowYIn - plane.highYIn);
    sketch.text({
      key: `pitch-${plane.id}`,
      text: DRAWING_WORDS.pitch(plane.risePer12),
      kind: 'note',
      centres,
      about: view.at(y, coverZAt(plane, y)),
    });
  }
}
