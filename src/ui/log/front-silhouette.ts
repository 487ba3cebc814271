import './log.css';
import type { Evaluation } from '../../engine/evaluation.ts';
import { between } from '../../engine/geometry/beam-shape.ts';
import type { BeamGeometry, PostGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import type { View } from '../drawing/paper.ts';
import type { LaidOver } from '../drawing/picture-options.ts';
import { postsOf } from '../drawing/shelter-parts.ts';
import { thicknessAt } from '../drawing/sticks.ts';
import type { ShowLength } from '../drawing/words.ts';
import { missingWords, nameMissing } from './missing-words.ts';
import { neededOf } from './needed-of-member.ts';
import { drawNeeded, type Surface } from './silhouette.ts';

/** On a front view: in every log of the line the thinnest one that would do, and where wood is missing, how much. */
export function frontSilhouette(evaluation: Evaluation, lineId: string, showDiameter: ShowLength): LaidOver | null {
  const { shelter } = evaluation;
  const parts = [...beamsOn(shelter, lineId), ...postsOn(shelter, lineId)].map((part) => ({
    ...part,
    needed: neededOf(evaluation, part.id),
  }));
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
  /** the side where its missing inches are written */
  readonly namedAt: 1 | -1;
}

const beamsOn = (shelter: Shelter, lineId: string): readonly Part[] =>
  shelter.beams
    .filter(({ line }) => line === lineId)
    .map((beam) => ({ id: beam.id, label: beam.label, namedAt: -1, surface: (view) => onBeam(view, beam) }));

const postsOn = (shelter: Shelter, lineId: string): readonly Part[] => {
  const line = shelter.lines.find(({ id }) => id === lineId);
  return (line ? postsOf(shelter, line) : []).map((post) => ({
    id: post.id,
    label: post.label,
    namedAt: 1,
    surface: (view) => onPost(view, post),
  }));
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
