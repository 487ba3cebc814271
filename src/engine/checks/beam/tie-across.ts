import { notGiven } from '../../check.ts';
import type { Shelter } from '../../geometry/shelter.ts';
import type { AcrossForce } from '../../loads/across.ts';
import { message } from '../../message.ts';
import { capacityOf, jointKey } from '../../project/joint-capacity.ts';
import type { Project } from '../../project/model.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
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
export function beamAcrossChecks(
  project: Project,
  shelter: Shelter,
  across: AcrossForce,
  analysed: ReadonlySet<string>,
): CheckSource {
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
        capacity: capacityOf(project, 'beamPost', jointKey('beamPost', seat.beam.id, seat.post.id)),
        part: 'across',
        force: (_, note) => pushAcross(project, shelter, across, seat, note),
      }),
    ),
  });
}
