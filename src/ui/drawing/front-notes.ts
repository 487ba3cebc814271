import type { BeamGeometry, LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import type { Sketch } from './sketch.ts';
import { hasSize } from './sticks.ts';
import { beamsOf, postsOf } from './shelter-parts.ts';
import { DRAWING_WORDS, type ShowLength } from './words.ts';

/** Diameters at both ends, below the beam's underside. */
export function nameBeamEnds(sketch: Sketch, beam: BeamGeometry, show: ShowLength): void {
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
export function nameWhatIsMissing(sketch: Sketch, shelter: Shelter, line: LineGeometry): void {
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
