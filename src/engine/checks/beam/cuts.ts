import { breaks, outside } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { CutGeometry } from '../../geometry/shelter.ts';
import { put } from '../../note.ts';
import { remembered } from '../../../data/sources.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { isStrength, type LineCheckContext } from '../line-context.ts';
import { cutIsStretched, type BeamStation, type BeamStretch } from './beam-sections.ts';
import { endSeatCut, type EndCut } from './shear.ts';

/**
 * Cuts have a side and a station, judged combination by combination: none on the stretched side away from an end, none
 * in the middle third, at most d/6 on the pressed side of the outer thirds. One exception (own rule): a sloped seat flat
 * at most d/8 deep that is pressed under every gravity combination and stretched only by uplift or sway. Less than one
 * diameter from the end of the log any cut may be a quarter deep and is judged by the shear that it leaves.
 * @source NDS 3.2.3 and 4.4.3 (from memory), read for round logs; own rule as said
 */
export function cutSites(context: LineCheckContext, on: BeamStretch): readonly CheckSite<LineResponse>[] {
  return placedCuts(on).flatMap(({ cut, nearest, isAtEnd }) => (isAtEnd ? [] : [cutSite(context, on, cut, nearest)]));
}

/** Cuts near an end of the log, whose shear is asked: seats of posts, and what is let in or cut by hand. */
export function endCutsOf(context: LineCheckContext, on: BeamStretch): readonly EndCut[] {
  const cuts = placedCuts(on).filter(({ cut, isAtEnd }) => isAtEnd && cut.madeBy !== 'seat');
  const seats = context.frame.mesh.posts.flatMap((p) =>
    p.post.seats.filter((s) => s.beamId === on.beam.id).flatMap((s) => endSeatCut(s, p.memberId) ?? []),
  );
  return [
    ...cuts.map(({ cut, nearest: { diameterIn } }) => {
      const { id, atXIn, lengthIn, depthIn } = cut;
      return { name: id, xIn: atXIn, reachIn: lengthIn / 2 + 1e-6, depthIn, diameterIn };
    }),
    ...seats,
  ];
}

/** No cut may lie in the middle third of a span. */
export function isInMiddleThird({ stretch }: BeamStretch, cut: CutGeometry): boolean {
  const share = (cut.atXIn - stretch.fromXIn) / (stretch.toXIn - stretch.fromXIn);
  return stretch.kind === 'span' && share > 1 / 3 && share < 2 / 3;
}

/** A sloped seat that only uplift or sway stretches. */
export function isSeatPressedByGravity(context: LineCheckContext, cut: CutGeometry, station: BeamStation): boolean {
  const gravity = context.frame.responses.filter((r) => isStrength(r) && r.combination.gravityOnly);
  const isSeat = cut.madeBy === 'seat' && cut.kind === 'flat';
  return isSeat && gravity.every((r) => !cutIsStretched(cut, r.values[station.moment]!));
}

/** Cuts of the beam whose middle lies on this stretch, each with the station nearest to it. */
export function placedCuts(
  on: BeamStretch,
): readonly { readonly cut: CutGeometry; readonly nearest: BeamStation; readonly isAtEnd: boolean }[] {
  return on.beam.cuts.flatMap((cut) => {
    const inside = cut.atXIn > on.stretch.fromXIn - 1e-6 && cut.atXIn < on.stretch.toXIn - 1e-6;
    const last = cut.atXIn >= on.stretch.toXIn - 1e-6 && Math.abs(cut.atXIn - on.beam.toXIn) < 1e-6;
    if (!inside && !last) return [];
    const stations = on.stations.filter((s) => Math.abs(s.xIn - cut.atXIn) <= cut.lengthIn / 2 + 12);
    if (stations.length === 0) return [];
    const nearest = stations.reduce((a, b) => (Math.abs(b.xIn - cut.atXIn) < Math.abs(a.xIn - cut.atXIn) ? b : a));
    return [{ cut, nearest, isAtEnd: toEnd(on, cut) <= nearest.diameterIn }];
  });
}

const toEnd = (on: BeamStretch, cut: CutGeometry): number =>
  Math.min(cut.atXIn - on.beam.fromXIn, on.beam.toXIn - cut.atXIn) - cut.lengthIn / 2;

function cutSite(
  context: LineCheckContext,
  on: BeamStretch,
  cut: CutGeometry,
  station: BeamStation,
): CheckSite<LineResponse> {
  const d = station.diameterIn;
  const mayTurn = cut.depthIn <= d / 8 + 1e-9 && isSeatPressedByGravity(context, cut, station);
  const limit = d / 6;
  return {
    ruleId: 'beam.cuts',
    memberId: on.beam.id,
    place: { kind: 'joint', name: cut.id },
    unit: 'in',
    purpose: 'strength',
    stops: (r) => {
      if (cutIsStretched(cut, r.values[station.moment]!) && !mayTurn)
        return outside({ code: 'cutInTension', values: {} }, quantity(cut.depthIn, 'in'));
      if (isInMiddleThird(on, cut)) return breaks({ code: 'cutInMiddleThird', values: {} });
      return null;
    },
    demand: (_, note) => {
      note?.({
        symbol: 't',
        words: 'depth of the cut',
        formula: 't',
        put: [put('t', cut.depthIn, 'in', 'as drawn')],
        result: quantity(cut.depthIn, 'in'),
        clause: remembered('NDS', '4.4.3'),
      });
      return cut.depthIn;
    },
    capacity: (_, note) => {
      note?.({
        symbol: 't max',
        words: 'greatest cut on the pressed side, outer thirds',
        formula: 'd / 6',
        put: [put('d', d, 'in', 'diameter there')],
        result: quantity(limit, 'in'),
        clause: remembered('NDS', '4.4.3'),
      });
      return limit;
    },
    reason: (r) => (cutIsStretched(cut, r.values[station.moment]!) ? { code: 'seatTurnsTension', values: {} } : null),
  };
}
