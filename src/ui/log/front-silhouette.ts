import './log.css';
import type { Evaluation } from '../../engine/evaluation.ts';
import { between } from '../../engine/geometry/beam-shape.ts';
import type { BeamGeometry, BraceGeometry, PostGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { radiansFromDegrees } from '../../engine/units.ts';
import type { View } from '../drawing/paper.ts';
import type { LaidOver } from '../drawing/picture-options.ts';
import { postsOf } from '../drawing/shelter-parts.ts';
import { thicknessAt } from '../drawing/sticks.ts';
import type { ShowLength } from '../drawing/words.ts';
import { missingWords, nameMissing } from './missing-words.ts';
import { neededBetween, neededOf } from './needed-of-member.ts';
import { drawNeeded, type Surface } from './silhouette.ts';

/** On a front view: in every log of the line the thinnest one that would do, and where wood is missing, how much. */
export function frontSilhouette(evaluation: Evaluation, lineId: string, showDiameter: ShowLength): LaidOver | null {
  const { shelter } = evaluation;
  const parts = [...beamsOn(shelter, lineId), ...postsOn(shelter, lineId), ...bracesOn(shelter, lineId)].map(
    (part) => ({ ...part, needed: neededBetween(neededOf(evaluation, part.id), ...part.seenIn) }),
  );
  const lacking = parts.flatMap((part) => {
    const most = part.needed.missing;
    return most ? [{ part, most }] : [];
  });
  return {
    above: 0,
    left: 0,
    right: 0,
    title: 'the thinnest logs that would do',
    description: lacking.map(({ part, most }) => `${part.label}: ${missingWords(most, showDiameter)}.`).join(' '),
    draw: (sketch) => {
      for (const { surface, needed } of parts) {
        drawNeeded(sketch, needed.bySection, surface(sketch.view), 'least-line');
        drawNeeded(sketch, needed.byWhole, surface(sketch.view), 'whole-line');
      }
      for (const { part, most } of lacking) {
        const about = part.surface(sketch.view)(most.atIn, part.namedAt, most.inches / 2);
        nameMissing(sketch, `missing-${part.id}`, about, missingWords(most, showDiameter));
      }
    },
  };
}

interface Part {
  readonly id: string;
  readonly label: string;
  readonly surface: (view: View) => Surface;
  /** the stretch of it that is seen, from its start [in] */
  readonly seenIn: readonly [fromIn: number, toIn: number];
  /** the side where its missing inches are written */
  readonly namedAt: 1 | -1;
}

const beamsOn = (shelter: Shelter, lineId: string): readonly Part[] =>
  shelter.beams
    .filter(({ line }) => line === lineId)
    .map((beam) => ({
      id: beam.id,
      label: beam.label,
      namedAt: -1,
      surface: (view) => onBeam(view, beam),
      seenIn: [0, beam.toXIn - beam.fromXIn],
    }));

const postsOn = (shelter: Shelter, lineId: string): readonly Part[] => {
  const line = shelter.lines.find(({ id }) => id === lineId);
  return (line ? postsOf(shelter, line) : []).map((post) => ({
    id: post.id,
    label: post.label,
    namedAt: 1,
    surface: (view) => onPost(view, post),
    seenIn: [0, post.seatZIn - post.woodFromZIn],
  }));
};

/** Braces in the plane of the line, as far as no other log lies over them. */
const bracesOn = (shelter: Shelter, lineId: string): readonly Part[] => {
  const postIds = new Set(shelter.posts.filter(({ line }) => line === lineId).map(({ id }) => id));
  return shelter.braces
    .filter(({ plane, postId }) => plane === 'along' && postIds.has(postId))
    .map((brace) => {
      const phi = radiansFromDegrees(brace.phiDeg);
      return {
        id: brace.id,
        label: brace.label,
        namedAt: -1,
        surface: (view) => onBrace(view, brace),
        seenIn: [brace.postDiameterIn / 2 / Math.sin(phi), brace.lengthIn - brace.topDiameterIn / 2 / Math.cos(phi)],
      };
    });
};

const onBeam =
  (view: View, beam: BeamGeometry): Surface =>
  (atIn, side, outIn) => {
    const x = beam.fromXIn + atIn;
    const z = between(beam.stations, x, (s) => (side > 0 ? s.topZIn : s.undersideZIn));
    return view.at(x, z + side * outIn);
  };

const onPost =
  (view: View, post: PostGeometry): Surface =>
  (atIn, side, outIn) => {
    const half = (thicknessAt(post.stick, atIn, 'breadth') ?? 0) / 2;
    return view.at(post.xIn + side * (half + outIn), Math.min(post.woodFromZIn + atIn, post.seatZIn));
  };

/** The upper side of a brace is above its axis, the lower one below. */
const onBrace =
  (view: View, { postPoint: foot, topPoint: top, stick, lengthIn }: BraceGeometry): Surface =>
  (atIn, side, outIn) => {
    const [x, z] = [(top.xIn - foot.xIn) / lengthIn, (top.zIn - foot.zIn) / lengthIn];
    const up = side * Math.sign(x) * ((thicknessAt(stick, atIn, 'depth') ?? 0) / 2 + outIn);
    return view.at(foot.xIn + x * atIn - z * up, foot.zIn + z * atIn + x * up);
  };
