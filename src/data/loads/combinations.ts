import { clause, remembered, type ClauseRef } from '../sources.ts';
import type { LOAD_MESSAGES } from '../words/loads.ts';

/** Kinds of load that a combination can carry a factor on, beside the dead load. */
export type VariableKind = 'ownLive' | 'roofLive' | 'snow' | 'wind' | 'notional' | 'seismic';
/** How long the shortest load of a combination lasts. */
export type LoadDuration = 'permanent' | 'tenYears' | 'twoMonths' | 'sevenDays' | 'tenMinutes';

export interface AsdCombination {
  readonly id: string;
  readonly words: keyof typeof LOAD_MESSAGES;
  /** `light`: uplift and overturning, piece by piece light times this factor where it helps, heavy in full where it hurts */
  readonly dead: { readonly factor: number; readonly weight: 'heavy' | 'light' };
  readonly factors: Readonly<Partial<Record<VariableKind, number>>>;
  /** on the vertical effect of an earthquake, which is a share of the dead load: + presses, - lifts */
  readonly vertical: number;
  /** of the kinds as such; an own load of another duration is for whoever puts the cases together */
  readonly duration: LoadDuration;
  readonly clause: ClauseRef;
}

const basic = clause('ASCE7', '2.4.1');
const integrity = clause('ASCE7_10', '1.4.1');
const earthquake = remembered('ASCE7', '2.4.5');
const heavy = { factor: 1, weight: 'heavy' } as const;
const light = { factor: 0.6, weight: 'light' } as const;

const combination = (
  id: string,
  words: keyof typeof LOAD_MESSAGES,
  dead: AsdCombination['dead'],
  factors: AsdCombination['factors'],
  duration: LoadDuration,
  where: ClauseRef,
  vertical = 0,
): AsdCombination => ({ id, words, dead, factors, vertical, duration, clause: where });

/**
 * Allowable-stress combinations of ASCE 7-16, and the three with the notional load that stand in for the earthquake
 * where none is run. Roof live and snow never act together. In 4, 6 and 9 snow is the balanced load only. The vertical
 * effect is taken each way: pressing where the dead load is heavy, lifting where it is light.
 */
export const ASD_COMBINATIONS: readonly AsdCombination[] = [
  combination('1', 'combinationDead', heavy, {}, 'permanent', basic),
  combination('2', 'combinationOwnLive', heavy, { ownLive: 1 }, 'tenYears', basic),
  combination('3-roofLive', 'combinationRoofLive', heavy, { roofLive: 1 }, 'sevenDays', basic),
  combination('3-snow', 'combinationSnow', heavy, { snow: 1 }, 'twoMonths', basic),
  combination('4-roofLive', 'combinationOwnAndRoofLive', heavy, { ownLive: 0.75, roofLive: 0.75 }, 'sevenDays', basic),
  combination('4-snow', 'combinationOwnLiveAndSnow', heavy, { ownLive: 0.75, snow: 0.75 }, 'twoMonths', basic),
  combination('5', 'combinationWind', heavy, { wind: 0.6 }, 'tenMinutes', basic),
  combination(
    '6-roofLive',
    'combinationWindAndRoofLive',
    heavy,
    { ownLive: 0.75, roofLive: 0.75, wind: 0.45 },
    'tenMinutes',
    basic,
  ),
  combination(
    '6-snow',
    'combinationWindAndSnow',
    heavy,
    { ownLive: 0.75, snow: 0.75, wind: 0.45 },
    'tenMinutes',
    basic,
  ),
  combination('7', 'combinationUplift', light, { wind: 0.6 }, 'tenMinutes', basic),
  combination('N1', 'combinationNotional', heavy, { notional: 0.7 }, 'tenMinutes', integrity),
  combination(
    'N2-roofLive',
    'combinationNotionalAndRoofLive',
    heavy,
    { ownLive: 0.75, roofLive: 0.75, notional: 0.525 },
    'tenMinutes',
    integrity,
  ),
  combination(
    'N2-snow',
    'combinationNotionalAndSnow',
    heavy,
    { ownLive: 0.75, snow: 0.75, notional: 0.525 },
    'tenMinutes',
    integrity,
  ),
  combination('N3', 'combinationNotionalLight', light, { notional: 0.7 }, 'tenMinutes', integrity),
  combination('8', 'combinationEarthquake', heavy, { seismic: 0.7 }, 'tenMinutes', earthquake, 0.7),
  combination(
    '9',
    'combinationEarthquakeAndSnow',
    heavy,
    { ownLive: 0.75, snow: 0.75, seismic: 0.525 },
    'tenMinutes',
    earthquake,
    0.525,
  ),
  combination('10', 'combinationEarthquakeLight', light, { seismic: 0.7 }, 'tenMinutes', earthquake, -0.7),
];
