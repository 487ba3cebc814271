import { notGiven } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { pinForce, type PinForce, type PostChain } from '../../frame/read-response.ts';
import type { SeatGeometry } from '../../geometry/shelter.ts';
import { jointKey, capacityOf } from '../../project/joint-capacity.ts';
import { put, type Note } from '../../note.ts';
import { clause } from '../../../data/sources.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { isStrength, valuesIn, type LineCheckContext } from '../line-context.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
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

/** Beam across the grain on the post top. @source NDS 3.10.2, 3.10.4 */
function acrossGrainSite(
  context: LineCheckContext,
  post: PostChain,
  seat: SeatGeometry,
  pin: PinForce,
): CheckSite<LineResponse> {
  const values = valuesIn(context, seat.beamId);
  return {
    ruleId: 'beam.seat',
    memberId: seat.beamId,
    place: { kind: 'support', name: post.memberId },
    unit: 'psi',
    applies: (r) => isStrength(r) && pin.down(r.values) > 0,
    stops: () =>
      values && seat.areaIn2 > 0
        ? null
        : notGiven({ code: seat.areaIn2 > 0 ? 'memberNotGiven' : 'seatHasNoFlat', values: { member: seat.beamId } }),
    demand: (r, note) => {
      if (note) tellPush(r, pin, note);
      return bearingStress(Math.max(0, pin.down(r.values)), seat.areaIn2, note);
    },
    capacity: (_, note) => {
      for (const step of note ? values!.steps.Fcp : []) note?.(step);
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
  return {
    ruleId: 'post.endGrain',
    memberId: post.memberId,
    place: { kind: 'support', name: seat.beamId },
    unit: 'psi',
    applies: (r) => isStrength(r) && pin.down(r.values) > 0,
    stops: () =>
      values && seat.areaIn2 > 0
        ? null
        : notGiven({ code: seat.areaIn2 > 0 ? 'memberNotGiven' : 'seatHasNoFlat', values: { member: seat.beamId } }),
    demand: (r, note) => {
      if (note) tellPush(r, pin, note);
      return bearingStress(Math.max(0, pin.down(r.values)), seat.areaIn2, note);
    },
    capacity: (r, note) => {
      for (const step of note ? values!.steps.Fc : []) note?.(step);
      return adjustedCompression(values!.FcPsi, r.combination.durationFactor, note);
    },
    reason: (r) => {
      const fc = Math.max(0, pin.down(r.values)) / seat.areaIn2;
      return needsEndPlate(fc, values!.FcPsi * r.combination.durationFactor)
        ? { code: 'endPlateNeeded', values: {} }
        : null;
    },
  };
}

/** Pull of the beam off its post in every combination that pulls, and the hinge's push along the line. */
function tieSites(
  context: LineCheckContext,
  post: PostChain,
  seat: SeatGeometry,
  pin: PinForce,
): readonly CheckSite<LineResponse>[] {
  const capacity = capacityOf(context.project, 'beamPost', jointKey('beamPost', seat.beamId, post.memberId));
  const at = { memberId: seat.beamId, place: { kind: 'joint', name: post.memberId } as const };
  return [
    ratedSite({
      ...at,
      ruleId: 'beam.tie',
      capacity,
      part: 'pull',
      force: fromFrame('pull of the beam off its post', (r: LineResponse) => Math.max(0, -pin.down(r.values))),
    }),
    ratedSite({
      ...at,
      ruleId: 'beam.tieAlong',
      capacity,
      part: 'along',
      force: fromFrame('push along the line at the seat', (r: LineResponse) => Math.abs(pin.along(r.values))),
    }),
  ];
}
