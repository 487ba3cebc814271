import type { LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { drawForces, type ForceOverlay } from './force-diagram.ts';
import { drawFrontDimensions } from './front-dimensions.ts';
import { drawBeam, drawBraces, drawTieEnds } from './front-frame.ts';
import { nameBeamEnds, nameWhatIsMissing } from './front-notes.ts';
import { drawHardware } from './hardware-marks.ts';
import { drawRoofAtLine, drawStrip } from './front-roof.ts';
import { bottomOf, drawGround, drawPost, nameCentres, reachOfPost } from './ground.ts';
import { extentOf, fitView, type Extent } from './paper.ts';
import { finishWith, type PictureOptions } from './picture-options.ts';
import { coverZAt } from './roof-shape.ts';
import { beginSketch, type Picture } from './sketch.ts';
import { beamsOf, planesOn, postsOf } from './shelter-parts.ts';
import { frontDescription, frontTitle } from './words.ts';

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
    top: size * (options.overlay ? 3.4 : 1.6),
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
  const hardware = options.hardware?.filter((mark) => mark.lineId === lineId) ?? [];
  drawHardware(sketch, hardware, 'y');
  options.laidOver?.draw(sketch);
  if (options.overlay) drawForces(sketch, shelter, line, options.overlay);

  for (const post of posts) {
    sketch.text({ key: `name-${post.id}`, text: post.label, kind: 'name', centres: nameCentres(view, post, post.xIn) });
  }
  drawFrontDimensions(sketch, shelter, line, options);
  for (const beam of beamsOf(shelter, line)) nameBeamEnds(sketch, beam, options.showDiameter ?? showLength);
  nameWhatIsMissing(sketch, shelter, line);
  return finishWith(sketch, frontTitle(line), frontDescription(shelter, line, showLength), options.laidOver);
}

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
