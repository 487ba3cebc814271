import { clause } from '../../../data/sources.ts';
import { notGiven } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity, radiansFromDegrees } from '../../units.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
import { overEdgeSite } from '../joints/over-edge.ts';
import { valuesIn, type LineCheckContext } from '../line-context.ts';
import { bearerOn } from '../roof/bearers.ts';
import { contactWidth, seatLength } from '../roof/rafter-seat.ts';
import type { OnSlope } from '../roof/rafter-stations.ts';
import type { CheckSite } from '../site-of-check.ts';
import { adjustedAcrossGrain, bearingAreaFactor, bearingStress } from '../wood/bearing.ts';
import { adjustedCompression } from '../wood/column.ts';
import { contactsUnder, type RafterContact } from './rafter-contacts.ts';
import { raftersOnPosts, type BracedRow, type RafterOnPost } from './rafter-on-post.ts';

/**
 * What a row whose braces run to a rafter asks of everything between that rafter and its posts: level force, lift, rolling
 * and bearing, face by face. Forces of the main frame; the rows of the rafter itself ask the same joints for the wind on
 * components. The frame takes rafter and post as hinged at the rafter's axis, so that each face answers for the push times
 * its distance below that axis.
 */
export function rafterJointSites(context: LineCheckContext, row: BracedRow): readonly CheckSite<LineResponse>[] {
  const slope = onSlope(context, row);
  return raftersOnPosts(context, row).flatMap((on) => [
    ...contactsUnder(context, on, slope).flatMap((contact) => contactSites(on, contact)),
    ...bearingSites(context, on, slope),
  ]);
}

function onSlope({ project }: LineCheckContext, { rafter }: BracedRow): OnSlope {
  const angle = radiansFromDegrees(rafter.slopeDeg);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const plane = project.roofPlanes.find((p) => p.id === rafter.plane)!;
  return { rafter, plane, run: { cos, sin, slopeLengthIn: rafter.runIn / cos } };
}

function contactSites({ post }: RafterOnPost, contact: RafterContact): readonly CheckSite<LineResponse>[] {
  const { memberId, joint, words } = contact;
  const at = { memberId, place: { kind: 'joint', name: post.id } as const };
  return [
    ratedSite({
      ...at,
      ruleId: 'rafter.frameLevel',
      holder: joint,
      part: 'across',
      force: fromFrame(`level force of the frame across, ${words}`, contact.levelLb),
    }),
    ratedSite({
      ...at,
      ruleId: 'rafter.frameLift',
      holder: joint,
      part: 'pull',
      force: fromFrame(`lift by the frame across, ${words}`, (r: LineResponse) => Math.max(0, -contact.downLb(r))),
    }),
    overEdgeSite<LineResponse>({
      ...at,
      ruleId: 'rafter.rolling',
      joint,
      lever: contact.lever,
      turning: (r, note) => tellTurning(contact, r, note),
      downLb: contact.downLb,
      acrossLb: contact.levelLb,
      alongLb: contact.alongLb,
      downWords: `push, ${words}; a lift is less than zero`,
      rollsOff: message('rafterRollsOff'),
    }),
  ];
}

function tellTurning({ words, turnsLbIn, levelLb }: RafterContact, r: LineResponse, note?: Note): number {
  const M = turnsLbIn(r);
  note?.({
    symbol: 'M',
    words: `what rolls it about its edge, ${words}`,
    formula: 'M',
    put: [
      put('M', M, 'lb·in', 'moment that the frame hands on there, its hinge at the axis of the rafter'),
      put('H', levelLb(r), 'lb', 'level force there'),
    ],
    result: quantity(M, 'lb·in'),
    clause: clause('MECHANICS', 'plane frame, first order'),
  });
  return M;
}

/** Bearing of the rafter on its line, and of the beam on the post: the weaker wood of each. */
function bearingSites(context: LineCheckContext, on: RafterOnPost, slope: OnSlope): readonly CheckSite<LineResponse>[] {
  const { rafter, post, line, seat, beam } = on;
  const bearer = bearerOn(context, line.id);
  const atIn = rafter.supports.find((s) => s.line === line.id)!.atIn / slope.run.cos;
  const areaIn2 =
    rafter.stick && rafter.stick.kind !== 'typed'
      ? seatLength(slope, bearer, atIn) * contactWidth(slope, rafter.stick, atIn)
      : 0;
  const [ofRafter, ofBeam, ofPost] = [rafter.id, beam.id, post.id].map((id) => valuesIn(context, id));
  const site = (
    memberId: string,
    contactIn2: number,
    isKnown: boolean,
    pressLb: (r: LineResponse) => number,
    capacity: (r: LineResponse, note?: Note) => number,
  ): CheckSite<LineResponse> => ({
    ruleId: 'rafter.frameSeat',
    memberId,
    place: { kind: 'joint', name: post.id },
    unit: 'psi',
    purpose: 'strength',
    applies: (r) => pressLb(r) > 0,
    stops: () => (isKnown && contactIn2 > 0 ? null : notGiven(message('seatLengthUnknown'))),
    demand: (r, note) => bearingStress(Math.max(0, pressLb(r)), contactIn2, note),
    capacity,
  });
  return [
    site(rafter.id, areaIn2, ofRafter !== null && !bearer.isMissing, on.downLb, (_, note) => {
      // no help from the wood beside the bearing is counted (safe side)
      const FcPerpPsi = Math.min(ofRafter!.FcPerpPsi, bearer.values?.FcPerpPsi ?? Infinity);
      return adjustedAcrossGrain(FcPerpPsi, 1, note);
    }),
    site(beam.id, seat.areaIn2, ofBeam !== null && ofPost !== null, on.mostOnSeatLb, (r, note) => {
      const Cb = bearingAreaFactor(seat.lengthIn, seat.toBeamEndIn, note);
      const across = adjustedAcrossGrain(ofBeam!.FcPerpPsi, Cb, note);
      return Math.min(across, adjustedCompression(ofPost!.FcPsi, r.combination.durationFactor, note));
    }),
  ];
}
