import { breaks, outside } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { CutGeometry } from '../../geometry/shelter.ts';
import { put } from '../../note.ts';
import { remembered } from '../../../data/sources.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { isStrength, type LineCheckContext } from '../line-context.ts';
import { cutIsStretched, type BeamStation, type BeamStretch } from './beam-sections.ts';
import { endNotchSite } from './shear.ts';

/**
 * Cuts have a side and a station, judged combination by combination: none on the stretched side away from an end, none
 * in the middle third, at most d/6 on the pressed side of the outer thirds. One exception (own rule): a sloped seat flat
 * at most d/8 deep that is pressed under every gravity combination and stretched only by uplift or sway. Less than one
 * diameter from the end of the log any cut may be a quarter deep and is judged by the shear that it leaves.
 * @source NDS 3.2.3 and 4.4.3 (from memory), read for round logs; own rule as said
 */
export function cutSites(context: LineCheckContext, on: BeamStretch): readonly CheckSite<LineResponse>[] {
  return placedCuts(on).flatMap(({ cut, nearest, isAtEnd }) => {
    if (!isAtEnd) return [cutSite(context, on, cut, nearest)];
    // the seat of a post near the end is asked where its post is
    if (cut.madeBy === 'seat') return [];
    const { diameterIn } = nearest;
    const end = { name: cut.id, xIn: cut.atXIn, reachIn: cut.lengthIn / 2 + 1e-6, depthIn: cut.depthIn, diameterIn };
    return endNotchSite(context, on, end) ?? [];
  });
}

/** Cuts of the beam whose middle lies on this stretch, each with the station nearest to it. */
function placedCuts(
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
  const gravity = context.frame.responses.filter((r) => isStrength(r) && r.combination.gravityOnly);
  const pressedByGravity = gravity.every((r) => !cutIsStretched(cut, r.values[station.moment]!));
  const slopedSeat = cut.madeBy === 'seat' && cut.kind === 'flat' && cut.depthIn <= d / 8 + 1e-9;
  const mayTurn = slopedSeat && pressedByGravity;
  const share = (cut.atXIn - on.stretch.fromXIn) / (on.stretch.toXIn - on.stretch.fromXIn);
  const middle = on.stretch.kind === 'span' && share > 1 / 3 && share < 2 / 3;
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
      if (middle) return breaks({ code: 'cutInMiddleThird', values: {} });
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
