import { clause, remembered } from '../../../data/sources.ts';
import { notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import type { PierFoot } from '../../project/model.ts';
import { CUBIC_INCHES_PER_CUBIC_FOOT, feetFromInches, quantity, SQUARE_INCHES_PER_SQUARE_FOOT } from '../../units.ts';
import type { Base } from './soil-pressure.ts';

/** Concrete of a pier: a round or square shaft, and a square pad under it or none. */
export type Pier = Pick<PierFoot, 'shaft' | 'pad' | 'concretePcf'>;

const WEIGHT = clause('MECHANICS', 'volume and unit weight');
const UPLIFT = clause('ASCE7', '2.4.1');
const SIX_TENTHS = clause('OWN', 'six tenths of the dead load rub');
const PLAIN = clause('OWN', 'plain concrete projects no farther than it is thick');
const ROUND_AS_SQUARE = remembered('OWN', 'round shaft as the square of equal area');

/** Share of dead load that counts against uplift. @source ASCE 7-16 2.4.1, combination 7 */
export const DEAD_AGAINST_UPLIFT = 0.6;

/** What presses on the soil: the pad, or the shaft where there is none. */
export function baseOfPier(pier: Pier): Base {
  return pier.pad ? { shape: 'square', acrossIn: pier.pad.acrossIn } : pier.shaft;
}

export const shaftAreaIn2 = ({ shape, acrossIn }: Pier['shaft']): number =>
  shape === 'round' ? (Math.PI * acrossIn * acrossIn) / 4 : acrossIn * acrossIn;

/** A pad that is not tied to its shaft stays in the ground when the shaft is lifted. */
export const padVolumeIn3 = ({ pad }: Pier, whichPad: 'any' | 'tied'): number =>
  pad && (whichPad === 'any' || pad.tied) ? pad.acrossIn * pad.acrossIn * pad.thickIn : 0;

/**
 * Weight of a pier.
 * @param pier shaft, pad, unit weight of its concrete
 * @param whichPad `any` for bearing on the soil, `tied` for what hangs together under uplift
 * @returns weight [lb]
 * @throws MisuseError if a size or the unit weight is not above zero
 * @source MECHANICS: volume times unit weight
 */
export function pierWeight(pier: Pier, whichPad: 'any' | 'tied', note?: Note): number {
  positive('shaft.acrossIn', pier.shaft.acrossIn);
  const shaft = shaftAreaIn2(pier.shaft) * positive('shaft.lengthIn', pier.shaft.lengthIn);
  const pad = padVolumeIn3(pier, whichPad);
  const volume = (shaft + pad) / CUBIC_INCHES_PER_CUBIC_FOOT;
  const weight = volume * positive('concretePcf', pier.concretePcf);
  note?.({
    symbol: 'W',
    words: whichPad === 'tied' ? 'weight of the pier that hangs together' : 'weight of the pier',
    formula: '(Vs + Vp) × γc',
    put: [
      put('Vs', shaft / CUBIC_INCHES_PER_CUBIC_FOOT, 'ft3', 'volume of the shaft'),
      put(
        'Vp',
        pad / CUBIC_INCHES_PER_CUBIC_FOOT,
        'ft3',
        whichPad === 'tied' ? 'volume of a tied pad' : 'volume of the pad',
      ),
      put('γc', pier.concretePcf, 'pcf', 'unit weight of the concrete'),
    ],
    result: quantity(weight, 'lb'),
    clause: WEIGHT,
  });
  return weight;
}

/**
 * Weight of the soil whose place the pier took: allowable bearing is counted above what the ground bore before.
 * @param buriedIn length of the shaft below finished ground [in]; at most the shaft's length is counted
 * @param soilPcf unit weight of the soil, the lower of what it may be
 * @returns weight [lb]
 * @throws MisuseError if a value is out of bounds
 * @source MECHANICS: volume times unit weight; net bearing is common practice
 */
export function soilReplaced(pier: Pier, buriedIn: number, soilPcf: number, note?: Note): number {
  const buried = Math.min(notNegative('buriedIn', buriedIn), positive('shaft.lengthIn', pier.shaft.lengthIn));
  const shaft = (shaftAreaIn2(pier.shaft) * buried) / CUBIC_INCHES_PER_CUBIC_FOOT;
  const pad = padVolumeIn3(pier, 'any') / CUBIC_INCHES_PER_CUBIC_FOOT;
  const weight = (shaft + pad) * positive('soilPcf', soilPcf);
  note?.({
    symbol: 'Ws',
    words: 'weight of the soil that the pier replaces',
    formula: '(Vs + Vp) × γs',
    put: [
      put('Vs', shaft, 'ft3', 'volume of the shaft below the ground'),
      put('Vp', pad, 'ft3', 'volume of the pad'),
      put('γs', soilPcf, 'pcf', 'unit weight of the soil'),
    ],
    result: quantity(weight, 'lb'),
    clause: WEIGHT,
  });
  return weight;
}

/**
 * Weight of the soil that stands straight above a tied pad, without a cone.
 * @param buriedIn length of the shaft below finished ground [in]
 * @param soilPcf unit weight of the soil, the lower of what it may be
 * @returns weight [lb]; 0 without a pad or with one that is not tied
 * @throws MisuseError if a value is out of bounds
 * @source MECHANICS: area of the pad less the shaft, times depth and unit weight
 */
export function soilAbovePad(pier: Pier, buriedIn: number, soilPcf: number, note?: Note): number {
  if (!pier.pad?.tied) return 0;
  const depth = feetFromInches(Math.min(notNegative('buriedIn', buriedIn), pier.shaft.lengthIn));
  const area = Math.max(0, pier.pad.acrossIn ** 2 - shaftAreaIn2(pier.shaft)) / SQUARE_INCHES_PER_SQUARE_FOOT;
  const weight = area * depth * positive('soilPcf', soilPcf);
  note?.({
    symbol: 'Wa',
    words: 'weight of the soil straight above the pad',
    formula: 'A × z × γs',
    put: [
      put('A', area, 'ft2', 'area of the pad less the shaft'),
      put('z', depth, 'ft', 'depth of the pad below the ground'),
      put('γs', soilPcf, 'pcf', 'unit weight of the soil'),
    ],
    result: quantity(weight, 'lb'),
    clause: WEIGHT,
  });
  return weight;
}

/**
 * Uplift that a pier holds down by its weight.
 * The weight of the shelter is not in it: that is already taken off the uplift that arrives.
 * @param pierLb weight of the pier that hangs together [lb]
 * @param soilLb soil straight above, where chosen; else 0 [lb]
 * @returns resistance [lb]
 * @throws MisuseError if a weight is below zero
 * @source ASCE 7-16 2.4.1, combination 7: 0.6 D
 */
export function upliftResistance(pierLb: number, soilLb: number, note?: Note): number {
  const W = notNegative('pierLb', pierLb);
  const Wa = notNegative('soilLb', soilLb);
  const resistance = DEAD_AGAINST_UPLIFT * (W + Wa);
  note?.({
    symbol: 'R',
    words: 'uplift that the pier holds by its weight',
    formula: '0.6 × (W + Wa)',
    put: [put('W', W, 'lb', 'weight of the pier that hangs together'), put('Wa', Wa, 'lb', 'soil straight above')],
    result: quantity(resistance, 'lb'),
    clause: UPLIFT,
  });
  return resistance;
}

/**
 * How far a pad reaches beyond its shaft. Without steel it may reach no farther than it is thick.
 * @returns projection [in]; 0 without a pad, or where the shaft is wider
 * @throws MisuseError if a size is not above zero
 * @source OWN: 45-degree spread of plain concrete, common practice. A round shaft counts as the square of equal area.
 */
export function padProjection(pier: Pier, note?: Note): number {
  if (!pier.pad) return 0;
  const side = Math.sqrt(shaftAreaIn2({ ...pier.shaft, acrossIn: positive('shaft.acrossIn', pier.shaft.acrossIn) }));
  const reach = Math.max(0, (positive('pad.acrossIn', pier.pad.acrossIn) - side) / 2);
  note?.({
    symbol: 'c',
    words: 'reach of the pad beyond the shaft, at most its thickness without steel',
    formula: '(B - s) / 2',
    put: [
      put('B', pier.pad.acrossIn, 'in', 'side of the pad'),
      put('s', side, 'in', 'side of the shaft, round: of the square of equal area'),
    ],
    result: quantity(reach, 'in'),
    clause: pier.shaft.shape === 'round' ? ROUND_AS_SQUARE : PLAIN,
  });
  return reach;
}

/**
 * Dead load on the base that rubbing may count with: six tenths of it, and never more of the post than it presses with.
 * @param postDeadLb push of the post on the pier under dead load alone [lb]
 * @param postDownLb push of the post in the combination, a lift below zero [lb]
 * @param pierLb weight of the pier that hangs together [lb]
 * @returns force [lb], not below zero
 * @throws MisuseError if a weight is below zero
 * @source IBC Table 1806.2: friction by the dead load; OWN: 0.6 of it, as where dead load helps in ASCE 7-16 2.4.1
 */
export function deadThatRubs(postDeadLb: number, postDownLb: number, pierLb: number, note?: Note): number {
  const D = notNegative('postDeadLb', postDeadLb);
  const W = notNegative('pierLb', pierLb);
  const dead = Math.max(0, Math.min(DEAD_AGAINST_UPLIFT * D, postDownLb) + DEAD_AGAINST_UPLIFT * W);
  note?.({
    symbol: 'N',
    words: 'dead load on the base that counts',
    formula: 'max(0, min(0.6 × D, Np) + 0.6 × W)',
    put: [
      put('D', D, 'lb', 'push of the post under dead load alone, the least'),
      put('Np', postDownLb, 'lb', 'push of the post in this combination, a lift below zero'),
      put('W', W, 'lb', 'weight of the pier that hangs together'),
    ],
    result: quantity(dead, 'lb'),
    clause: SIX_TENTHS,
  });
  return dead;
}
