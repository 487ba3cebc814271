import type { PostGeometry } from '../../engine/geometry/shelter.ts';
import { hatchStrokes } from './outline.ts';
import type { Point, View } from './paper.ts';
import type { Ink, Sketch } from './sketch.ts';
import { hasSize, postOutline } from './sticks.ts';

/** Ground line through the grade at each post, level beyond the outer ones, hatched below. */
export function drawGround(sketch: Sketch, grades: readonly Point[], leftX: number, rightX: number): void {
  const first = grades[0];
  const last = grades[grades.length - 1];
  if (!first || !last) return;
  const surface = [{ x: leftX, y: first.y }, ...grades, { x: rightX, y: last.y }];
  const depth = sketch.view.paper.textSize * 0.7;
  const band = [...surface, ...surface.toReversed().map((p) => ({ x: p.x, y: p.y + depth }))];
  sketch.hatch(hatchStrokes(band, depth * 0.5));
  sketch.line(surface, 'ink-line');
}

/** A post from its foot to its seat and what it stands on; wood and concrete below ground are dashed. */
export function drawPost(sketch: Sketch, post: PostGeometry, axisIn: number, ink: Ink): void {
  const { view } = sketch;
  const onPaper = (points: readonly Point[]): readonly Point[] => points.map((p) => view.at(p.x, p.y));
  if (post.foot.kind === 'pier') drawPier(sketch, post, axisIn, ink);
  const aboveFrom = Math.max(post.woodFromZIn, post.gradeZIn);
  if (!hasSize(post.stick)) {
    sketch.line(
      onPaper([
        { x: axisIn, y: post.woodFromZIn },
        { x: axisIn, y: post.seatZIn },
      ]),
      'hidden-line',
    );
    return;
  }
  if (post.foot.kind === 'embedded') {
    const { holeIn, depthIn } = post.foot;
    sketch.line(onPaper(cupOf(axisIn, holeIn, post.gradeZIn, post.gradeZIn - depthIn)), 'hidden-line');
  }
  if (post.woodFromZIn < post.gradeZIn) {
    sketch.outline(onPaper(postOutline(post, axisIn, post.woodFromZIn, post.gradeZIn)), 'hidden-line');
  }
  sketch.outline(onPaper(postOutline(post, axisIn, aboveFrom, post.seatZIn)), ink, {
    covers: true,
    memberId: post.id,
  });
}

function drawPier(sketch: Sketch, post: PostGeometry, axisIn: number, ink: Ink): void {
  if (post.foot.kind !== 'pier') return;
  const { view } = sketch;
  const { shaft, pad, standOffIn } = post.foot;
  const topZ = post.woodFromZIn - standOffIn;
  const bottomZ = topZ - shaft.lengthIn;
  const half = shaft.acrossIn / 2;
  if (topZ > post.gradeZIn) {
    const above = [
      view.at(axisIn - half, post.gradeZIn),
      view.at(axisIn - half, topZ),
      view.at(axisIn + half, topZ),
      view.at(axisIn + half, post.gradeZIn),
    ];
    sketch.outline(above, post.pierTopZIn === null ? 'hidden-line' : ink, { covers: true });
  }
  const below = Math.min(topZ, post.gradeZIn);
  sketch.line(
    cupOf(axisIn, shaft.acrossIn, below, bottomZ).map((p) => view.at(p.x, p.y)),
    'hidden-line',
  );
  if (!pad) return;
  const corners = [
    view.at(axisIn - pad.acrossIn / 2, bottomZ),
    view.at(axisIn + pad.acrossIn / 2, bottomZ),
    view.at(axisIn + pad.acrossIn / 2, bottomZ - pad.thickIn),
    view.at(axisIn - pad.acrossIn / 2, bottomZ - pad.thickIn),
  ];
  sketch.outline(corners, 'hidden-line');
}

const cupOf = (axisIn: number, acrossIn: number, fromZIn: number, toZIn: number): readonly Point[] => [
  { x: axisIn - acrossIn / 2, y: fromZIn },
  { x: axisIn - acrossIn / 2, y: toZIn },
  { x: axisIn + acrossIn / 2, y: toZIn },
  { x: axisIn + acrossIn / 2, y: fromZIn },
];

/** Everything of a post that the paper must have room for, as places in inches. */
export function reachOfPost(post: PostGeometry, axisIn: number): readonly { right: number; up: number }[] {
  const wide =
    post.foot.kind === 'pier' ? Math.max(post.foot.shaft.acrossIn, post.foot.pad?.acrossIn ?? 0) : post.foot.holeIn;
  return [
    { right: axisIn - wide / 2, up: bottomOf(post) },
    { right: axisIn + wide / 2, up: post.seatZIn },
  ];
}

export function bottomOf(post: PostGeometry): number {
  if (post.foot.kind === 'embedded') return Math.min(post.woodFromZIn, post.gradeZIn - post.foot.depthIn);
  const { standOffIn, shaft, pad } = post.foot;
  return post.woodFromZIn - standOffIn - shaft.lengthIn - (pad?.thickIn ?? 0);
}

/** Name of a post: inside it where the post is wide enough, else beside it. */
export function nameCentres(view: View, post: PostGeometry, axisIn: number): readonly Point[] {
  const size = view.paper.textSize;
  const beside = size * 1.6;
  return [0.4, 0.3, 0.55, 0.2].flatMap((share) => {
    const p = view.at(axisIn, heightOn(post, share));
    const offset = Math.max(beside, size * 0.7 + 4 + halfWide(post, view.scale));
    return [p, { x: p.x + offset, y: p.y }, { x: p.x - offset, y: p.y }];
  });
}

/** Level at a share of what is seen of a post, from the ground or its foot up to the seat [in]. */
export function heightOn(post: PostGeometry, share: number): number {
  const from = Math.max(post.woodFromZIn, post.gradeZIn);
  return from + share * (post.seatZIn - from);
}

const halfWide = (post: PostGeometry, scale: number): number =>
  post.stick?.kind === 'round'
    ? (scale * Math.max(...post.stick.profile.map((p) => p.diameterIn))) / 2
    : post.stick?.kind === 'sawn'
      ? (scale * post.stick.breadthIn) / 2
      : 0;
