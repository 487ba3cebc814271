import { remembered } from '../../../data/sources.ts';
import type { RoundStick, SawnStick, TypedStick } from '../../geometry/shelter.ts';
import { breaks } from '../../check.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import type { Note } from '../../note.ts';
import type { CheckSite } from '../site-of-check.ts';
import { durationFactor } from '../wood/duration.ts';
import { flattenedShearStress, shearArea } from '../wood/flat-shear.ts';
import { roundArea } from '../wood/round-section.ts';
import {
  adjustedShear,
  rectangularEndNotchShear,
  rectangularShearStress,
  roundEndNotchShear,
  roundShearStress,
} from '../wood/shear.ts';
import type { RafterLoading, Segment } from './rafter-loading.ts';
import type { Influence } from './rafter-influence.ts';
import { stationsOf, worstIndex, type RafterResponse } from './rafter-responses.ts';
import { tellEffect } from './rafter-telling.ts';
import { squareSeatCut, type RafterStation } from './rafter-stations.ts';
import { typedCapacity } from './rafter-typed.ts';

type Side = 'before' | 'after';

const shearOn = (r: RafterResponse, index: number, side: Side): number =>
  side === 'before' ? r.shearsBefore[index]! : r.shearsAfter[index]!;

/** The side of a station that lies in a segment and carries more. */
function worseSide(r: RafterResponse, index: number, atIn: number, segment: Segment): Side {
  if (atIn < segment.fromIn + 1e-6) return 'after';
  if (atIn > segment.toIn - 1e-6) return 'before';
  return Math.abs(shearOn(r, index, 'before')) > Math.abs(shearOn(r, index, 'after')) ? 'before' : 'after';
}

/** Where a segment has its greatest shear, weighed by what the section there can take. */
function worstShear(loading: RafterLoading, segment: Segment, weigh: (index: number) => number) {
  const within = stationsOf(loading.run, segment);
  const side = (r: RafterResponse, i: number): Side => worseSide(r, i, loading.run.stationsIn[i]!, segment);
  return (r: RafterResponse): { readonly index: number; readonly side: Side } => {
    const index = worstIndex(within, (i) => Math.abs(shearOn(r, i, side(r, i))) / weigh(i));
    return { index, side: side(r, index) };
  };
}

function tellShear(
  loading: RafterLoading,
  influence: Influence,
  r: RafterResponse,
  index: number,
  side: Side,
  note: Note,
): void {
  const of = side === 'before' ? influence.shearsBefore : influence.shearsAfter;
  tellEffect(loading, r, { symbol: 'V', words: 'shear', unit: 'lb', perLoadUnit: 'in', of, at: index }, note);
}

/**
 * Shear of one segment of a rafter, whole section, at every station up to the axis of the support.
 * @source NDS 3.4.2. Loads within one depth of the support are not left out (safe side).
 */
export function rafterShearSite(
  loading: RafterLoading,
  influence: Influence,
  stations: readonly RafterStation[],
  stick: RoundStick | SawnStick,
  values: DesignValues,
  segment: Segment,
): CheckSite<RafterResponse> {
  const areas = stations.map((s) => wholeShearArea(stick, s.depthIn));
  const worst = worstShear(loading, segment, (i) => areas[i]!);
  return {
    ruleId: 'rafter.shear',
    memberId: loading.rafter.id,
    place: { kind: segment.kind, name: segment.name },
    unit: 'psi',
    purpose: 'strength',
    demand: (r, note) => {
      const { index, side } = worst(r);
      if (note) tellShear(loading, influence, r, index, side, note);
      return shearStress(stick, stations[index]!.depthIn, shearOn(r, index, side), areas[index]!, note);
    },
    capacity: (r, note) => allowableShear(values, r, note),
    worstAt: (r) => stations[worst(r).index]!.atIn,
    ...(stick.kind === 'round'
      ? { grows: { power: 2 as const, diameterAt: (r: RafterResponse) => stations[worst(r).index]!.depthIn } }
      : {}),
  };
}

export function wholeShearArea(stick: RoundStick | SawnStick, depthIn: number): number {
  if (stick.kind === 'sawn') return (2 / 3) * stick.breadthIn * depthIn;
  return stick.flatIn > 0 ? shearArea(depthIn, stick.flatIn, 0) : 0.75 * roundArea(depthIn);
}

function shearStress(stick: RoundStick | SawnStick, depthIn: number, V: number, area: number, note?: Note): number {
  if (stick.kind === 'sawn') return rectangularShearStress(V, stick.breadthIn, depthIn, note);
  if (stick.flatIn <= 0) return roundShearStress(V, roundArea(depthIn, note), note);
  return flattenedShearStress(V, note ? shearArea(depthIn, stick.flatIn, 0, note) : area, note);
}

function allowableShear(values: DesignValues, r: RafterResponse, note?: Note): number {
  if (note) {
    for (const step of values.steps('Fv')) note(step);
    durationFactor(r.combination.duration, note);
  }
  return adjustedShear(values.FvPsi, r.combination.durationFactor, note);
}

/** Share of the depth that a seat cut may take: at an end of the rafter, and away from one. */
export const seatCutShare = ({ isAtEnd }: RafterStation): number => (isAtEnd ? 1 / 4 : 1 / 6);

/**
 * Shear over a seat cut, by the rule of an end notch wherever the support is (safe side away from an end).
 * @source NDS 3.4.3.2 and 4.4.3, from memory
 */
export function rafterSeatShearSites(
  loading: RafterLoading,
  influence: Influence,
  stations: readonly RafterStation[],
  stick: RoundStick | SawnStick,
  values: DesignValues,
): readonly CheckSite<RafterResponse>[] {
  const cutIn = squareSeatCut(loading);
  if (cutIn <= 0) return [];
  return loading.supportsAtIn.map((atIn, i): CheckSite<RafterResponse> => {
    const station = stations.find((s) => Math.abs(s.atIn - atIn) < 1e-6)!;
    const limitIn = seatCutShare(station) * station.depthIn;
    const sideOf = (r: RafterResponse): Side =>
      Math.abs(r.shearsBefore[station.index]!) > Math.abs(r.shearsAfter[station.index]!) ? 'before' : 'after';
    return {
      ruleId: 'rafter.shear',
      memberId: loading.rafter.id,
      place: { kind: 'support', name: loading.run.supportLines[i]! },
      unit: 'lb',
      clause: remembered('NDS', '3.4.3.2, 4.4.3'),
      purpose: 'strength',
      stops: () => (cutIn > limitIn ? breaks(message('cutTooDeep', { depthIn: cutIn, limitIn })) : null),
      demand: (r, note) => {
        if (note) tellShear(loading, influence, r, station.index, sideOf(r), note);
        return Math.abs(shearOn(r, station.index, sideOf(r)));
      },
      capacity: (r, note) => {
        const Fv = allowableShear(values, r, note);
        return stick.kind === 'sawn'
          ? rectangularEndNotchShear(Fv, stick.breadthIn, stick.depthIn, cutIn, note)
          : roundEndNotchShear(Fv, station.depthIn, cutIn, note);
      },
      worstAt: () => atIn,
    };
  });
}

/** A typed section is judged by force against what its maker allows. */
export function typedRafterShearSite(
  loading: RafterLoading,
  influence: Influence,
  stick: TypedStick,
  segment: Segment,
): CheckSite<RafterResponse> {
  const worst = worstShear(loading, segment, () => 1);
  return {
    ruleId: 'rafter.shear',
    memberId: loading.rafter.id,
    place: { kind: segment.kind, name: segment.name },
    unit: 'lb',
    purpose: 'strength',
    demand: (r, note) => {
      const { index, side } = worst(r);
      if (note) tellShear(loading, influence, r, index, side, note);
      return Math.abs(shearOn(r, index, side));
    },
    capacity: (r, note) => typedCapacity('V', stick.VallowLb, 'lb', r, note),
    worstAt: (r) => loading.run.stationsIn[worst(r).index]!,
    reason: () => message('typedSection', { name: stick.name }),
  };
}
