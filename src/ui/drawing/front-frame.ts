import type { BeamGeometry, LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import type { Ink, Sketch } from './sketch.ts';
import { beamOutline, braceOutline, hasSize, postFace, thicknessAt, undersideNear } from './sticks.ts';
import { beamsOf } from './shelter-parts.ts';

export function drawBeam(sketch: Sketch, beam: BeamGeometry, ink: Ink): void {
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

export function drawBraces(sketch: Sketch, shelter: Shelter, line: LineGeometry, inkOf: (id: string) => Ink): void {
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
export function drawTieEnds(sketch: Sketch, shelter: Shelter, line: LineGeometry): void {
  for (const tie of shelter.ties) {
    const atStart = line.postIds.includes(tie.fromPostId);
    if (!atStart && !line.postIds.includes(tie.toPostId)) continue;
    const diameter = thicknessAt(tie.stick, atStart ? 0 : Math.abs(tie.toYIn - tie.fromYIn), 'depth');
    if (diameter === null) continue;
    sketch.circle(sketch.view.at(tie.xIn, tie.axisZIn), (diameter / 2) * sketch.view.scale, 'hidden-line');
  }
}
