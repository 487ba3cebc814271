import { notGiven } from '../../check.ts';
import type { AcrossForce } from '../../loads/across.ts';
import { message } from '../../message.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { holderAt, type JointSource } from '../joints/holder.ts';
import { ratedSite } from '../joints/rated-site.ts';
import { plainRow, type Asked } from '../site-of-check.ts';
import { durationFactor } from '../wood/duration.ts';
import { placesOnPosts, pushAcross, type BeamOnPost } from './push-across.ts';

/** The push across is one greatest force of all combinations; it lasts as long as wind does. */
const WIND: Asked = { combination: { id: '', purpose: 'strength', durationFactor: durationFactor('tenMinutes') } };

/**
 * Beam to post across the line: every line that may hold the level part of the roof's wind is asked for the push across
 * of the whole shelter, any other for all of it but that part; a seat takes its share of the line's length (own rule).
 * While a line is not analysed, the push is not known.
 * @param analysed  ids of the frame lines of which all is known
 * @source ASCE7 27.3.2, 29.4 (7-16)
 */
export function beamAcrossChecks(source: JointSource, across: AcrossForce, analysed: ReadonlySet<string>): CheckSource {
  const { project, shelter } = source;
  const unknown = shelter.lines.find((line) => line.kind === 'frame' && !analysed.has(line.id));
  const seats = shelter.beams.filter((beam) => analysed.has(beam.line)).flatMap((beam) => placesOnPosts(shelter, beam));
  const at = ({ beam, post }: BeamOnPost) =>
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
        holder: holderAt(source, 'beamPost', jointKey('beamPost', seat.beam.id, seat.post.id)),
        part: 'across',
        force: (_, note) => pushAcross(project, shelter, across, seat, note),
      }),
    ),
  });
}
