import type { FastenerKind } from '../../../data/fasteners/kind.ts';
import { WET_CONNECTIONS, type Arrangement, type Moisture } from '../../../data/fasteners/moisture.ts';
import { remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { cited, givenStep } from '../../material/citation.ts';
import { put, type Note } from '../../note.ts';
import { quantity, radiansFromDegrees } from '../../units.ts';
import { THICK_FROM_IN } from './dowel-bearing.ts';
import { TEMPERATURE_AT_ONE } from './temperature-step.ts';
import type { Grain } from './withdrawal.ts';

const ADJUSTED = remembered('NDS', 'Table 11.3.1');
const END_GRAIN = remembered('NDS', '12.5.2.2');
const TOE_NAIL = remembered('NDS', '12.5.4');
/** @source NDS 12.5.2.2, 12.5.4.2, from memory */
const FACTOR = { endGrain: 0.67, toeNail: 0.83 } as const;
/** A toe-nail starts a third of its length from the joint and slants by this much. @source NDS 12.5.4.1, from memory */
const TOE = { startShare: 1 / 3, slantDeg: 30 } as const;

const TOED: readonly FastenerKind[] = ['nail', 'spike'];

/** What the joint does to the lateral value of each of its fasteners. */
export interface LateralSetting {
  readonly kind: FastenerKind;
  readonly nominalIn: number;
  readonly made: Moisture;
  readonly used: Moisture;
  readonly arrangement: Arrangement;
  /** of the piece that holds the point */
  readonly grain: Grain;
  /** driven slantwise: nails and spikes alone have a factor for it */
  readonly isToed: boolean;
}

/** Factors that are worked out elsewhere: duration, group action, geometry. */
export interface GroupFactors {
  readonly CD: number;
  readonly Cg: number;
  readonly Cdelta: number;
}

/**
 * Allowable lateral value of one fastener, every factor in.
 * @param ZLb reference lateral value [lb]
 * @returns Z' [lb]
 * @throws MisuseError if a value is not above zero, or for a slanted shank that is no nail or spike
 * @source NDS Table 11.3.1, from memory. Left out: Cdi, which is for diaphragms.
 */
export function adjustedLateral(ZLb: number, setting: LateralSetting, group: GroupFactors, note?: Note): number {
  const Z = positive('ZLb', ZLb);
  if (setting.isToed && !TOED.includes(setting.kind))
    throw new MisuseError('isToed', setting.kind, 'a nail or a spike');
  const CM = lateralWetFactor(setting, note);
  const Ceg = setting.grain === 'end' ? FACTOR.endGrain : 1;
  const Ctn = setting.isToed ? FACTOR.toeNail : 1;
  const { CD, Cg, Cdelta } = group;
  const allowable = Z * positive('CD', CD) * CM * positive('Cg', Cg) * positive('Cdelta', Cdelta) * Ceg * Ctn;
  note?.(TEMPERATURE_AT_ONE);
  if (Ceg < 1) note?.(givenStep('Ceg', 'driven into end grain', Ceg, '1', END_GRAIN));
  if (Ctn < 1) note?.(givenStep('Ctn', 'driven slantwise', Ctn, '1', TOE_NAIL));
  note?.({
    symbol: "Z'",
    words: 'allowable lateral value of one fastener',
    formula: 'Z × CD × CM × Ct × Cg × CΔ × Ceg × Ctn',
    put: [
      put('Z', Z, 'lb', 'lateral value of one fastener'),
      put('CD', CD, '1', 'load duration factor'),
      put('CM', CM, '1', 'wet service factor'),
      put('Ct', 1, '1', 'temperature factor'),
      put('Cg', Cg, '1', 'group action factor'),
      put('CΔ', Cdelta, '1', 'geometry factor'),
      put('Ceg', Ceg, '1', setting.grain === 'end' ? 'end grain factor' : 'not in end grain'),
      put('Ctn', Ctn, '1', setting.isToed ? 'toe-nail factor' : 'not driven slantwise'),
    ],
    result: quantity(allowable, 'lb'),
    clause: ADJUSTED,
  });
  return allowable;
}

/**
 * Wet service factor of a lateral load. Wood that is put together wet and dries under its roof shrinks between rows of
 * bolts and splits; one fastener, one row along the grain or a plate of its own for each row leave it free.
 * @source NDS Table 11.3.3 and its notes, from memory
 */
export function lateralWetFactor(
  { nominalIn, made, used, arrangement }: Pick<LateralSetting, 'nominalIn' | 'made' | 'used' | 'arrangement'>,
  note?: Note,
): number {
  const { lateralThick, lateralThin, source, where, seen } = WET_CONNECTIONS;
  const isThick = positive('nominalIn', nominalIn) >= THICK_FROM_IN;
  const { madeWet, usedWet } = isThick ? lateralThick : lateralThin;
  const isFree = isThick && arrangement !== 'rows';
  const ofMadeWet = isFree ? 1 : madeWet;
  const CM = used === 'wet' ? usedWet : made === 'wet' ? ofMadeWet : 1;
  const free = made === 'wet' && used === 'dry' && isFree ? ', rows that shrinking cannot split' : '';
  note?.(givenStep('CM', `wet service: made ${made}, used ${used}${free}`, CM, '1', cited(source, where, seen)));
  return CM;
}

/** Side piece and penetration of a nail that is driven slantwise. */
export interface ToeNail {
  readonly sideIn: number;
  readonly penetrationIn: number;
}

/**
 * Where a toe-nail bears.
 * @param lengthIn of the nail [in]
 * @returns bearing in the side piece and penetration in the main one [in]
 * @throws MisuseError if the length is not above zero
 * @source NDS 12.5.4.1, from memory: slant of 30 degrees, started a third of its length from the joint
 */
export function toeNail(lengthIn: number, note?: Note): ToeNail {
  const L = positive('lengthIn', lengthIn);
  const sideIn = L * TOE.startShare;
  const penetrationIn = L * Math.cos(radiansFromDegrees(TOE.slantDeg)) - sideIn;
  note?.({
    symbol: 'p',
    words: 'penetration of the toe-nail',
    formula: 'L × cos(α) - L / 3',
    put: [put('L', L, 'in', 'length of the nail'), put('α', TOE.slantDeg, 'deg', 'slant')],
    result: quantity(penetrationIn, 'in'),
    clause: TOE_NAIL,
  });
  return { sideIn, penetrationIn };
}
