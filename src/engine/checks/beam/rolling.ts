import { clause } from '../../../data/sources.ts';
import { breaks, notGiven, outside } from '../../check.ts';
import type { LineReport } from '../../evaluation.ts';
import type { AcrossForce } from '../../loads/across.ts';
import type { Combination } from '../../loads/combination.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import type { Project } from '../../project/model.ts';
import { membersOf, traitsOf } from '../../project/traits.ts';
import { quantity } from '../../units.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { holderAt, type JointSource } from '../joints/holder.ts';
import { overEdgeSite, type Lever } from '../joints/over-edge.ts';
import { plainRow, type CheckSite } from '../site-of-check.ts';
import { placesOnPosts, pushAcross, type BeamOnPost } from './push-across.ts';

/** A line of which all is known. */
interface KnownLine {
  readonly report: Pick<LineReport, 'lineId' | 'seats'>;
  readonly combinations: readonly Combination[];
}

/** One combination as one seat meets it. */
interface OnSeat {
  readonly combination: Combination;
  /** least push of the beam on its post, down + [lb] */
  readonly downLb: number;
  /** how its bow turns the beam there [lb·in] */
  readonly twistLbIn: number;
  /** greatest push along the line at the seat [lb] */
  readonly alongLb: number;
}

/**
 * A beam rolling off its posts: the push across, taken at the level of the rafter seats, and the turning of a log that
 * bows to the side, against what presses the seat and what its tie may pull, times half the width of the seat. Wind across
 * counts whole in every combination that holds any (safe side). The push itself is asked of the joint by `beam.tieAcross`; what
 * share of the tie it takes is not free to pull.
 * @param known  the frame lines that are analysed; while one is not, the push is not known
 * @source OWN: moments about the edge of the seat; gravity light x 0.6 where wind lifts (ASCE7 2.4.1)
 */
export function beamRollingChecks(
  source: JointSource,
  across: AcrossForce,
  known: readonly KnownLine[],
): readonly CheckSource[] {
  const { shelter } = source;
  const unknown = shelter.lines.find((l) => l.kind === 'frame' && !known.some(({ report }) => report.lineId === l.id));
  return known.flatMap(({ report, combinations }) =>
    (report.seats ?? []).map(({ beamId, postId, byCombination }): CheckSource => {
      const beam = shelter.beams.find((b) => b.id === beamId)!;
      const place = placesOnPosts(shelter, beam).find(({ post }) => post.id === postId)!;
      if (unknown) {
        const verdict = notGiven(message('acrossNotKnown', { line: unknown.label }));
        return plainSource([plainRow('beam.rolling', beamId, { kind: 'support', name: postId }, verdict)]);
      }
      const responses = combinations.flatMap((combination): OnSeat[] => {
        const found = byCombination[combination.id];
        return found
          ? [{ combination, downLb: found.leastDownLb, twistLbIn: found.twistLbIn, alongLb: found.alongLb }]
          : [];
      });
      return checkSource({ responses, sites: [rollingSite(source, across, place)] });
    }),
  );
}

function rollingSite(source: JointSource, across: AcrossForce, place: BeamOnPost): CheckSite<OnSeat> {
  const { project, shelter } = source;
  const { beam, post } = place;
  const armIn = shelter.lines.find((l) => l.id === beam.line)!.bearingZIn - post.seatZIn;
  const still: AcrossForce = { ...across, roofLb: 0, oneWayLb: 0, dragLb: 0, leastLb: 0 };
  const pushes = [across, still].map((force) => pushAcross(project, shelter, force, place));
  const pushOn = (r: OnSeat, note?: Note): number => {
    const isInWind = hasWindAcross(r.combination);
    return note ? pushAcross(project, shelter, isInWind ? across : still, place, note) : pushes[isInWind ? 0 : 1]!;
  };
  const turning = (r: OnSeat, note?: Note): number => {
    const P = pushOn(r, note);
    const M = P * armIn + r.twistLbIn;
    note?.({
      symbol: 'M',
      words: 'what rolls the beam about the edge of its seat',
      formula: 'P × h + T',
      put: [
        put('P', P, 'lb', 'push across at this seat'),
        put('h', armIn, 'in', 'from the seat up to the level of the rafter seats'),
        put('T', r.twistLbIn, 'lb·in', 'turning of the log by its bow to the side, from the moments along it'),
      ],
      result: quantity(M, 'lb·in'),
      clause: clause('MECHANICS', 'moments about an edge; bar curved in plan'),
    });
    return M;
  };
  return overEdgeSite<OnSeat>({
    ruleId: 'beam.rolling',
    memberId: beam.id,
    place: { kind: 'support', name: post.id },
    joint: holderAt(source, 'beamPost', jointKey('beamPost', beam.id, post.id)),
    lever: leverOf(project, place),
    turning,
    downLb: (r) => r.downLb,
    acrossLb: pushOn,
    alongLb: (r) => r.alongLb,
    downWords: 'push of the beam on the seat, from the frame analysis; a lift is less than zero',
    rollsOff: message('beamRollsOff'),
  });
}

/** Half the width on which a seat resists rolling, on the side where it is less; or why there is none. */
export function leverOf(project: Project, { beam, post }: Pick<BeamOnPost, 'beam' | 'post'>): Lever {
  const { widthIn, postDiameterIn, besideIn } = post.seats.find((s) => s.beamId === beam.id)!;
  const halfIn = Math.min(widthIn / 2, postDiameterIn / 2 - besideIn);
  const { seat } = traitsOf(
    project,
    membersOf(project, 'beam').find((m) => m.id === beam.id)!,
  );
  const refused =
    !(widthIn > 0) || !(postDiameterIn > 0)
      ? notGiven(message('seatHasNoFlat', { member: beam.id }))
      : beam.stick?.kind === 'round' && seat.kind === 'saddle'
        ? outside(message('beamTurnsInSaddle'))
        : halfIn > 0
          ? null
          : breaks(message('beamBesidePost'));
  return {
    refused,
    halfIn,
    tell: (note) =>
      note({
        symbol: 'a',
        words: 'from the middle of the seat to the edge that it would roll over',
        formula: 'min(w / 2, D / 2 - y)',
        put: [
          put('w', widthIn, 'in', 'width of the flat'),
          put('D', postDiameterIn, 'in', 'width of the post top'),
          put('y', besideIn, 'in', 'bow of the beam beside this post'),
        ],
        result: quantity(halfIn, 'in'),
        clause: clause('OWN', 'seat and post top overlap'),
      }),
  };
}

const hasWindAcross = ({ factors }: Combination): boolean =>
  factors.some(({ caseId }) => caseId.startsWith('wind-') && !caseId.startsWith('wind-along'));
