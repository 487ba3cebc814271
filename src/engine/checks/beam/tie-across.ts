import { clause } from '../../../data/sources.ts';
import { notGiven } from '../../check.ts';
import type { BeamGeometry, PostGeometry, Shelter } from '../../geometry/shelter.ts';
import { acrossPush, type AcrossForce } from '../../loads/across.ts';
import { mayHoldLevel } from '../../loads/rafter-reactions.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { capacityOf, jointKey } from '../../project/joint-capacity.ts';
import type { Project } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { ratedSite } from '../joints/rated-site.ts';
import { plainRow, type Asked } from '../site-of-check.ts';
import { durationFactor } from '../wood/duration.ts';

/** The push across is one greatest force of all combinations; it lasts as long as wind does. */
const WIND: Asked = { combination: { id: '', purpose: 'strength', durationFactor: durationFactor('tenMinutes') } };

/** A beam on one of its posts. */
interface Seat {
  readonly beam: BeamGeometry;
  readonly post: PostGeometry;
  /** of the beam's length, half way to its next posts and out to its ends [in] */
  readonly tributaryIn: number;
}

/**
 * Beam to post across the line: every line that may hold the level part of the roof's wind is asked for the push across
 * of the whole shelter, any other for all of it but that part; a seat takes its share of the line's length (own rule).
 * While a line is not analysed, the push is not known.
 * @param analysed  ids of the frame lines of which all is known
 * @source ASCE7 27.3.2, 29.4 (7-16)
 */
export function beamAcrossChecks(
  project: Project,
  shelter: Shelter,
  across: AcrossForce,
  analysed: ReadonlySet<string>,
): CheckSource {
  const unknown = shelter.lines.find((line) => line.kind === 'frame' && !analysed.has(line.id));
  const seats = shelter.beams.filter((beam) => analysed.has(beam.line)).flatMap((beam) => seatsOf(shelter, beam));
  const at = ({ beam, post }: Seat) =>
    ({ ruleId: 'beam.tieAcross', memberId: beam.id, place: { kind: 'joint', name: post.id } }) as const;
  if (unknown) {
    const verdict = notGiven(message('acrossNotKnown', { line: unknown.label }));
    return plainSource(seats.map(at).map(({ ruleId, memberId, place }) => plainRow(ruleId, memberId, place, verdict)));
  }
  return checkSource({
    responses: [WIND],
    sites: seats.map((seat) =>
      ratedSite<Asked>({
        ...at(seat),
        capacity: capacityOf(project, 'beamPost', jointKey('beamPost', seat.beam.id, seat.post.id)),
        part: 'across',
        force: (_, note) => pushOn(project, shelter, across, seat, note),
      }),
    ),
  });
}

function seatsOf(shelter: Shelter, beam: BeamGeometry): readonly Seat[] {
  const under = shelter.posts.filter((p) => p.seats.some((s) => s.beamId === beam.id)).sort((a, b) => a.xIn - b.xIn);
  return under.map((post, i) => {
    const [before, after] = [under[i - 1], under[i + 1]];
    const from = before ? (before.xIn + post.xIn) / 2 : beam.fromXIn;
    const to = after ? (post.xIn + after.xIn) / 2 : beam.toXIn;
    return { beam, post, tributaryIn: to - from };
  });
}

function pushOn(project: Project, shelter: Shelter, across: AcrossForce, seat: Seat, note?: Note): number {
  const { beam, tributaryIn } = seat;
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
