import { clause } from '../../../data/sources.ts';
import type { BeamGeometry, PostGeometry, Shelter } from '../../geometry/shelter.ts';
import { acrossPush, type AcrossForce } from '../../loads/across.ts';
import { mayHoldLevel } from '../../loads/rafter-reactions.ts';
import { put, type Note } from '../../note.ts';
import type { Project } from '../../project/model.ts';
import { quantity } from '../../units.ts';

/** A beam on one of its posts. */
export interface BeamOnPost {
  readonly beam: BeamGeometry;
  readonly post: PostGeometry;
  /** of the beam's length, half way to its next posts and out to its ends [in] */
  readonly tributaryIn: number;
}

/** Every place where a beam rests on a post, with the length of beam that is nearest to it. */
export function placesOnPosts(shelter: Shelter, beam: BeamGeometry): readonly BeamOnPost[] {
  const under = postsUnder(shelter, beam);
  return under.map((post, i) => {
    const [before, after] = [under[i - 1], under[i + 1]];
    const from = before ? (before.xIn + post.xIn) / 2 : beam.fromXIn;
    const to = after ? (post.xIn + after.xIn) / 2 : beam.toXIn;
    return { beam, post, tributaryIn: to - from };
  });
}

/** The posts that a beam rests on, in order along it. */
const postsUnder = ({ posts }: Shelter, beam: BeamGeometry): readonly PostGeometry[] =>
  posts.filter((p) => p.seats.some((s) => s.beamId === beam.id)).sort((a, b) => a.xIn - b.xIn);

/**
 * Push across at one seat: every line that may hold the level part of the roof's wind is asked for the push of the whole
 * shelter, any other for all of it but that part; a seat takes its share of the line's length (own rule).
 * @returns [lb]
 * @source ASCE7 27.3.2, 29.4 (7-16); OWN for the share
 */
export function pushAcross(
  project: Project,
  shelter: Shelter,
  across: AcrossForce,
  { beam, tributaryIn }: BeamOnPost,
  note?: Note,
): number {
  const line = shelter.lines.find((l) => l.id === beam.line)!;
  const holdsRoof = project.roofPlanes.some(
    (p) => p.onLines.includes(line.id) && mayHoldLevel(p.horizontalHeldBy, line.id),
  );
  const W = acrossPush({ ...across, roofLb: holdsRoof ? across.oneWayLb : 0 }, note);
  const lengthIn = line.toXIn - line.fromXIn;
  const push = (W * tributaryIn) / lengthIn;
  note?.({
    symbol: 'P',
    words: holdsRoof
      ? 'share of this seat, its line holding all of it'
      : 'share of this seat, another line holding what the roof pushes',
    formula: 'W × t / l',
    put: [
      put('W', W, 'lb', 'push across the lines'),
      put('t', tributaryIn, 'in', 'length of beam to half way between posts and out to its ends'),
      put('l', lengthIn, 'in', 'length of the line'),
    ],
    result: quantity(push, 'lb'),
    clause: clause('OWN', 'whole push on every line that may hold it, by length'),
  });
  return push;
}
