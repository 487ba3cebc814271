import { notGiven } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { pinForce, type PinForce, type PostChain } from '../../frame/read-response.ts';
import type { SeatGeometry } from '../../geometry/shelter.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { put, type Note } from '../../note.ts';
import { clause } from '../../../data/sources.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { valuesIn, type LineCheckContext } from '../line-context.ts';
import { holderAt } from '../joints/holder.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
import { togetherSite } from '../joints/together-site.ts';
import { adjustedAcrossGrain, bearingAreaFactor, bearingStress, needsEndPlate } from '../wood/bearing.ts';
import { adjustedCompression } from '../wood/column.ts';

/** What happens where a beam rests on a post: bearing of both woods, and what ties them together. */
export function seatSites(
  context: LineCheckContext,
  post: PostChain,
  seat: SeatGeometry,
): readonly CheckSite<LineResponse>[] {
  const pin = pinForce(context.frame.mesh, post, seat.beamId);
  return [
    acrossGrainSite(context, post, seat, pin),
    endGrainSite(context, post, seat, pin),
    ...tieSites(context, post, seat, pin),
  ];
}

const tellPush = (r: LineResponse, pin: PinForce, note: Note): void =>
  note({
    symbol: 'P',
    words: 'push of the beam on the post, from the frame analysis',
    formula: 'P',
    put: [put('P', pin.down(r.values), 'lb', 'pin of the frame')],
    result: quantity(Math.max(0, pin.down(r.values)), 'lb'),
    clause: clause('MECHANICS', 'plane frame, first order'),
  });

/** What both woods of a seat have in common: the push over the contact, in every combination that presses. */
function pressed(seat: SeatGeometry, pin: PinForce, isKnown: boolean) {
  const isCut = seat.areaIn2 > 0;
  const down = (r: LineResponse): number => Math.max(0, pin.down(r.values));
  return {
    unit: 'psi',
    purpose: 'strength',
    isByDuration: true,
    applies: (r: LineResponse) => pin.down(r.values) > 0,
    stops: () =>
      isKnown && isCut
        ? null
        : notGiven({ code: isCut ? 'memberNotGiven' : 'seatHasNoFlat', values: { member: seat.beamId } }),
    demand: (r: LineResponse, note?: Note) => {
      if (note) tellPush(r, pin, note);
      return bearingStress(down(r), seat.areaIn2, note);
    },
  } as const;
}

/** Beam across the grain on the post top. @source NDS 3.10.2, 3.10.4 */
function acrossGrainSite(
  context: LineCheckContext,
  post: PostChain,
  seat: SeatGeometry,
  pin: PinForce,
): CheckSite<LineResponse> {
  const values = valuesIn(context, seat.beamId);
  return {
    ...pressed(seat, pin, values !== null),
    ruleId: 'beam.seat',
    memberId: seat.beamId,
    place: { kind: 'support', name: post.memberId },
    capacity: (_, note) => {
      for (const step of note ? values!.steps('Fcp') : []) note?.(step);
      return adjustedAcrossGrain(values!.FcPerpPsi, bearingAreaFactor(seat.lengthIn, seat.toBeamEndIn, note), note);
    },
  };
}

/** End grain of the post under the beam. @source NDS 3.10.1 */
function endGrainSite(
  context: LineCheckContext,
  post: PostChain,
  seat: SeatGeometry,
  pin: PinForce,
): CheckSite<LineResponse> {
  const values = valuesIn(context, post.memberId);
  const seatPressed = pressed(seat, pin, values !== null);
  return {
    ...seatPressed,
    ruleId: 'post.endGrain',
    memberId: post.memberId,
    place: { kind: 'support', name: seat.beamId },
    capacity: (r, note) => {
      for (const step of note ? values!.steps('Fc') : []) note?.(step);
      return adjustedCompression(values!.FcPsi, r.combination.durationFactor, note);
    },
    reason: (r) =>
      needsEndPlate(seatPressed.demand(r), values!.FcPsi * r.combination.durationFactor)
        ? { code: 'endPlateNeeded', values: {} }
        : null,
  };
}

/** Pull of the beam off its post in every combination that pulls, and the hinge's push along the line. */
function tieSites(
  context: LineCheckContext,
  post: PostChain,
  seat: SeatGeometry,
  pin: PinForce,
): readonly CheckSite<LineResponse>[] {
  const holder = holderAt(context, 'beamPost', jointKey('beamPost', seat.beamId, post.memberId));
  const at = { memberId: seat.beamId, place: { kind: 'joint', name: post.memberId } as const, holder };
  const pulls = {
    part: 'pull',
    force: fromFrame('pull of the beam off its post', (r: LineResponse) => Math.max(0, -pin.down(r.values))),
  } as const;
  const pushes = {
    part: 'along',
    force: fromFrame('push along the line at the seat', (r: LineResponse) => Math.abs(pin.along(r.values))),
  } as const;
  const both = togetherSite<LineResponse>({ ...at, ruleId: 'beam.tieTogether', parts: [pulls, pushes] });
  return [
    ratedSite({ ...at, ruleId: 'beam.tie', ...pulls }),
    ratedSite({ ...at, ruleId: 'beam.tieAlong', ...pushes }),
    ...(both ? [both] : []),
  ];
}
