import { insteadOf } from '../project/instead.ts';
import type { Fault } from '../message.ts';
import { message } from '../message.ts';
import type { MemberOf, Project } from '../project/model.ts';
import { membersOf, traitsOf } from '../project/traits.ts';
import { between, roundDiameterWithin } from './beam-shape.ts';
import { besidePost, bowOfBeam } from './bow.ts';
import { flatWidth, seatArea, seatOffset } from './seats.ts';
import type { BeamGeometry, PostGeometry, SeatGeometry, Stick } from './shelter.ts';
import { stickOf, woodEndsAt } from './sticks.ts';

/**
 * A post from its foot to the beam axis. It is cut at the seat; the frame reads the diameter of the cut end between
 * seat and axis, where the beam lies.
 */
export function placePost(
  project: Project,
  member: MemberOf<'post'>,
  at: { readonly yIn: number; readonly label: string },
  beams: readonly BeamGeometry[],
): { readonly post: PostGeometry | null; readonly faults: readonly Fault[] } {
  const traits = traitsOf(project, member);
  const over = beams.filter((b) => b.fromXIn - 1e-6 <= member.xIn && member.xIn <= b.toXIn + 1e-6);
  if (over.length === 0) {
    return {
      post: null,
      faults: [{ path: `members[${member.id}].xIn`, ...message('postWithoutBeam', { post: at.label }) }],
    };
  }
  const undersideZ = Math.min(...over.map((b) => between(b.stations, member.xIn, (s) => s.undersideZIn)));
  const axisZIn = Math.min(...over.map((b) => between(b.stations, member.xIn, (s) => s.axisZIn)));
  const seat = traitsOf(project, beamMember(project, over[0]!.id)).seat;
  const seatZIn = undersideZ + seat.depthIn;

  const foot = traits.foot;
  const pierTop = member.pierTopZIn ?? member.gradeZIn;
  const woodFromZIn = foot.kind === 'pier' ? pierTop + foot.standOffIn : member.gradeZIn - foot.depthIn;
  const footZIn = foot.kind === 'pier' ? woodFromZIn : member.gradeZIn - foot.fixedBelowGradeIn;
  const lengthIn = seatZIn - traits.capIn - traits.allowanceIn - woodFromZIn;
  if (!(lengthIn > 0)) {
    return {
      post: null,
      faults: [
        { path: `members[${member.id}].pierTopZIn`, ...message('postHasNoLength', { post: at.label, lengthIn }) },
      ],
    };
  }
  const stick = stickOf(project, traits.stock, lengthIn);
  const faults: Fault[] = [];
  if (stick?.kind === 'round' && woodEndsAt(stick) < lengthIn - 1e-6) {
    faults.push({
      path: `members[${member.id}]`,
      ...message('postLogTooShort', { post: at.label, needIn: lengthIn, haveIn: woodEndsAt(stick) }),
    });
  }
  const postTop = topDiameter(stick, lengthIn);
  const seats = over.map((b) => placeSeat(project, b, member.xIn, postTop));
  return {
    post: {
      id: member.id,
      label: at.label,
      line: member.line,
      xIn: member.xIn,
      yIn: at.yIn,
      gradeZIn: member.gradeZIn,
      foot,
      footZIn,
      woodFromZIn,
      pierTopZIn: foot.kind === 'pier' ? member.pierTopZIn : null,
      seatZIn,
      axisZIn,
      lengthIn,
      stick,
      seats,
    },
    faults,
  };
}

/** Round: the cut end's diameter; sawn: the smaller side; nothing given: zero, so that no seat passes. */
function topDiameter(stick: Stick | null, lengthIn: number): number {
  if (!stick || stick.kind === 'typed') return 0;
  return stick.kind === 'round' ? roundDiameterWithin(stick, lengthIn) : Math.min(stick.breadthIn, stick.depthIn);
}

function beamMember(project: Project, beamId: string): MemberOf<'beam'> {
  return project.members.find((m): m is MemberOf<'beam'> => m.role === 'beam' && m.id === beamId)!;
}

function placeSeat(project: Project, beam: BeamGeometry, xIn: number, postDiameterIn: number): SeatGeometry {
  const { seat } = traitsOf(project, beamMember(project, beam.id));
  const beamDiameterIn = between(beam.stations, xIn, (s) => s.diameterIn);
  const lengthIn = seat.lengthIn ?? postDiameterIn;
  const beforeIn = Math.min(lengthIn / 2, xIn - beam.fromXIn);
  const beyondIn = Math.min(lengthIn / 2, beam.toXIn - xIn);
  const widthIn =
    beam.stick?.kind === 'round'
      ? flatWidth(beamDiameterIn, seat.depthIn)
      : beam.stick?.kind === 'sawn'
        ? beam.stick.breadthIn
        : 0;
  const besideIn = besidePost(beam, bowOfBeam(project, beam), postXsUnder(project, beam), xIn);
  const typed = insteadOf(project, 'seatAreaIn2', beam.id);
  return {
    beamId: beam.id,
    xIn,
    depthIn: seat.depthIn,
    lengthIn: beforeIn + beyondIn,
    widthIn,
    beamDiameterIn,
    postDiameterIn,
    areaIn2: typed ? typed.value : seatArea(widthIn, beforeIn, beyondIn, postDiameterIn, besideIn),
    offsetIn: seatOffset(widthIn, beforeIn, beyondIn, postDiameterIn, besideIn),
    besideIn,
    toBeamEndIn: Math.max(0, Math.min(xIn - beforeIn - beam.fromXIn, beam.toXIn - xIn - beyondIn)),
  };
}

/** Where posts stand under a beam [in]. */
const postXsUnder = (project: Project, { line, fromXIn, toXIn }: BeamGeometry): readonly number[] =>
  membersOf(project, 'post')
    .filter((p) => p.line === line && fromXIn - 1e-6 <= p.xIn && p.xIn <= toXIn + 1e-6)
    .map((p) => p.xIn);
