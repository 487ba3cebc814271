import { clause } from '../../../data/sources.ts';
import type { RoundStick, SawnStick } from '../../geometry/shelter.ts';
import { outside, type Verdict } from '../../check.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { bendingStress } from '../wood/bending.ts';
import { durationFactor } from '../wood/duration.ts';
import type { RoofCheckContext } from './context.ts';
import { SegmentBending, type PressedEdge } from './rafter-allowable.ts';
import type { RafterLoading, Segment } from './rafter-loading.ts';
import type { Influence } from './rafter-influence.ts';
import type { RafterResponse } from './rafter-responses.ts';
import { tellEffect } from './rafter-telling.ts';
import type { RafterStation } from './rafter-stations.ts';

/** Moments under this are rounding, not bending [lb·in]. */
const NO_MOMENT_LBIN = 1;
/** Net section of a stretched seat cut counts with twice the bending stress (own rule). */
export const STRETCHED_SEAT = 2;
/** Deepest seat cut of a thin rafter that may be stretched away from an end, as a share of the depth (own rule). */
const STRETCHED_SEAT_SHARE = 1 / 8;
/** From this thickness on no cut may be stretched away from an end. @source NDS 4.4.3.2, from memory */
const THICK_IN = 3.5;
/** Deeper than this over breadth, a sawn rafter is held against rolling at its supports. @source NDS 4.4.1 */
const NEEDS_BLOCKING_ABOVE = 2;

interface Worst {
  readonly station: RafterStation;
  readonly edge: PressedEdge;
  readonly moment: number;
  readonly isStretchedSeat: boolean;
}

/**
 * Bending of one segment of a rafter, both ways: under the loads its top edge is pressed, while the wind lifts its
 * bottom edge. The top edge is held by the purlins (all along by a sheet on the rafters); the bottom edge by nothing
 * between supports.
 * @source NDS 3.3, 3.3.3; Table 3.3.3 last line for spans, cantilever under even load for overhangs
 */
export function rafterBendingSite(
  context: RoofCheckContext,
  loading: RafterLoading,
  influence: Influence,
  stations: readonly RafterStation[],
  stick: RoundStick | SawnStick,
  values: DesignValues,
  segment: Segment,
): CheckSite<RafterResponse> {
  const within = stations.filter((s) => s.atIn > segment.fromIn - 1e-6 && s.atIn < segment.toIn + 1e-6);
  const bending = new SegmentBending(context, loading, stick, values, segment);
  const found = new Map<RafterResponse, Worst>();
  const worst = (r: RafterResponse): Worst => {
    const known = found.get(r);
    if (known) return known;
    const answer = worstOf(r, within, bending);
    found.set(r, answer);
    return answer;
  };
  const stops = (r: RafterResponse): Verdict | null => {
    if (stick.kind === 'sawn' && !loading.rafter.blocked && stick.depthIn / stick.breadthIn > NEEDS_BLOCKING_ABOVE)
      return outside(message('needsBlocking'));
    const share = stretchedShare(stick);
    const deep = within.find((s) => isStretchedSeat(s, r) && !s.isAtEnd && s.cutIn > share * s.depthIn);
    if (deep) {
      const limitIn = share * deep.depthIn;
      return outside(message('seatStretchedDeep', { depthIn: deep.cutIn, limitIn }));
    }
    return bending.rollsOver(worst(r).edge, r.combination.durationFactor) ? outside(message('rollsOver')) : null;
  };
  const demand = (r: RafterResponse, note?: Note): number => {
    const { station, moment, isStretchedSeat: twice } = worst(r);
    if (note) {
      station.section.tell(note);
      const words = 'moment at the worst section';
      const told = { symbol: 'M', words, unit: 'lb·in', perLoadUnit: 'in2', of: influence.moments } as const;
      tellEffect(loading, r, { ...told, at: station.index }, note);
      if (twice) tellTwice(moment, note);
    }
    return bendingStress(twice ? STRETCHED_SEAT * moment : moment, station.section.modulusIn3, note);
  };
  const capacity = (r: RafterResponse, note?: Note): number => {
    if (note) {
      for (const step of values.steps('Fb')) note(step);
      durationFactor(r.combination.duration, note);
    }
    return bending.allowable(worst(r).edge, r.combination.durationFactor, note);
  };
  return {
    ruleId: 'rafter.bending',
    memberId: loading.rafter.id,
    place: { kind: segment.kind, name: segment.name },
    unit: 'psi',
    purpose: 'strength',
    stops,
    demand,
    capacity,
    worstAt: (r) => worst(r).station.atIn,
    reason: (r) => (worst(r).isStretchedSeat ? message('seatStretched') : null),
    ...(stick.kind === 'round'
      ? { grows: { power: 3 as const, diameterAt: (r: RafterResponse) => worst(r).station.depthIn } }
      : {}),
  };
}

/** A bird's mouth is square-ended: only a thin sawn rafter may have it stretched, a log or a thick stick may not. */
const stretchedShare = (stick: RoundStick | SawnStick): number =>
  stick.kind === 'sawn' && stick.breadthIn / stick.plies < THICK_IN ? STRETCHED_SEAT_SHARE : 0;

/** A seat cut lies in the bottom of the rafter: stretched where the moment sags. */
export const isStretchedSeat = (s: RafterStation, r: RafterResponse): boolean =>
  s.cutIn > 0 && r.moments[s.index]! > NO_MOMENT_LBIN;

function worstOf(r: RafterResponse, stations: readonly RafterStation[], bending: SegmentBending): Worst {
  let worst: Worst | null = null;
  let most = -1;
  for (const station of stations) {
    const moment = r.moments[station.index]!;
    const edge = moment >= 0 ? 'top' : 'bottom';
    const stretched = isStretchedSeat(station, r);
    const stress = ((stretched ? STRETCHED_SEAT : 1) * Math.abs(moment)) / station.section.modulusIn3;
    const ratio = stress / bending.allowable(edge, r.combination.durationFactor);
    if (ratio > most) {
      most = ratio;
      worst = { station, edge, moment, isStretchedSeat: stretched };
    }
  }
  return worst!;
}

function tellTwice(moment: number, note: Note): void {
  note({
    symbol: 'M',
    words: 'moment at a stretched seat cut, counted twice',
    formula: '2 × M',
    put: [put('M', moment, 'lb·in', 'moment at the seat')],
    result: quantity(STRETCHED_SEAT * moment, 'lb·in'),
    clause: clause('OWN', 'a stretched seat cut counts with twice the bending stress'),
  });
}
