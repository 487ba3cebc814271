import type { BraceGeometry, LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { drawDimension, drawString, type Stretch } from './dimension.ts';
import type { PictureOptions } from './picture-options.ts';
import type { Sketch } from './sketch.ts';
import { postsOf } from './shelter-parts.ts';
import { DRAWING_WORDS } from './words.ts';

/**
 * Overhangs and post axes on a string under the ground, the first seat's height beside the first post, run and drop on
 * the two legs of a knee brace's triangle.
 */
export function drawFrontDimensions(
  sketch: Sketch,
  shelter: Shelter,
  line: LineGeometry,
  options: PictureOptions,
): void {
  drawAlongString(sketch, shelter, line, options);
  drawSeatHeight(sketch, shelter, line, options);
  for (const brace of bracesToMeasure(shelter, line, options.selectedMemberId ?? null))
    drawBraceLegs(sketch, brace, options);
}

function drawAlongString(sketch: Sketch, shelter: Shelter, line: LineGeometry, options: PictureOptions): void {
  const { view } = sketch;
  const y = view.height - view.paper.textSize * 1.7;
  const posts = postsOf(shelter, line);
  const beams = shelter.beams.filter((b) => b.line === line.id).toSorted((a, b) => a.fromXIn - b.fromXIn);
  const xs = [line.fromXIn, ...posts.map((p) => p.xIn), line.toXIn];
  const leafOf = (i: number): Stretch | null => {
    const firstBeam = beams[0];
    const lastBeam = beams[beams.length - 1];
    if (i === 0) return firstBeam ? { path: `members[${firstBeam.id}].fromXIn`, sign: -1 } : null;
    if (i === posts.length) return lastBeam ? { path: `members[${lastBeam.id}].toXIn`, sign: 1 } : null;
    return { path: `members[${posts[i]!.id}].xIn`, sign: 1 };
  };
  const stops = xs.map((atIn) => ({ atIn, place: { x: view.at(atIn, 0).x, y } }));
  drawString(sketch, 'along', stops, leafOf, options.showLength, -1);
}

function drawSeatHeight(sketch: Sketch, shelter: Shelter, line: LineGeometry, options: PictureOptions): void {
  const { view } = sketch;
  const post = postsOf(shelter, line)[0];
  if (!post) return;
  const x = view.paper.textSize * 1.9;
  const valueIn = post.seatZIn - post.gradeZIn;
  drawDimension(sketch, {
    key: 'seat',
    from: { x, y: view.at(0, post.gradeZIn).y },
    to: { x, y: view.at(0, post.seatZIn).y },
    text: DRAWING_WORDS.toSeat(options.showLength(valueIn)),
    side: -1,
    leaf: { path: `supportLines[${line.id}].height.zIn`, valueIn, sign: 1 },
  });
}

/** The chosen brace, else one of each shape: alike braces are measured once. */
function bracesToMeasure(shelter: Shelter, line: LineGeometry, selected: string | null): readonly BraceGeometry[] {
  const braces = shelter.braces.filter((b) => b.plane === 'along' && line.postIds.includes(b.postId));
  const chosen = braces.find((b) => b.id === selected);
  if (chosen) return [chosen];
  return braces.filter(
    (b, i) => braces.findIndex((other) => other.runIn === b.runIn && other.dropIn === b.dropIn) === i,
  );
}

function drawBraceLegs(sketch: Sketch, brace: BraceGeometry, options: PictureOptions): void {
  const { view } = sketch;
  const foot = view.at(brace.postPoint.xIn, brace.postPoint.zIn);
  const top = view.at(brace.topPoint.xIn, brace.topPoint.zIn);
  const corner = { x: top.x, y: foot.y };
  drawDimension(sketch, {
    key: `run-${brace.id}`,
    from: foot,
    to: corner,
    text: options.showLength(brace.runIn),
    side: 1,
    leaf: { path: `members[${brace.id}].runIn`, valueIn: brace.runIn, sign: 1 },
  });
  drawDimension(sketch, {
    key: `drop-${brace.id}`,
    from: corner,
    to: top,
    text: options.showLength(brace.dropIn),
    side: brace.topPoint.xIn > brace.postPoint.xIn ? 1 : -1,
    level: true,
    leaf: { path: `members[${brace.id}].dropIn`, valueIn: brace.dropIn, sign: 1 },
  });
}
