import { clause, remembered } from '../../../data/sources.ts';
import { finite, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

const LIMITS = clause('IBC', 'Table 1604.3');
const CREEP = remembered('NDS', '3.5.2');

/** Which sag is limited: under live or snow load, under wind, or what comes after years with live or snow on top. */
export type SagKind = 'live' | 'snowOrWind' | 'longTerm';

/** Share of the span, roof member without a ceiling. @source IBC Table 1604.3 */
const SPANS_PER_SAG: Readonly<Record<SagKind, number>> = { live: 180, snowOrWind: 180, longTerm: 120 };

/**
 * Greatest sag of a roof member without a ceiling.
 * @param lengthIn span between supports, or length of the overhang [in]
 * @param isOverhang an overhang counts with twice its length
 * @returns limit [in]
 * @throws MisuseError if the length is not above zero
 * @source IBC Table 1604.3 and its footnote on cantilevers
 */
export function sagLimit(lengthIn: number, kind: SagKind, isOverhang: boolean, note?: Note): number {
  const L = positive('lengthIn', lengthIn) * (isOverhang ? 2 : 1);
  const limit = L / SPANS_PER_SAG[kind];
  note?.({
    symbol: 'limit',
    words: 'greatest sag of a roof member without a ceiling',
    formula: `L / ${SPANS_PER_SAG[kind]}`,
    put: [put('L', L, 'in', isOverhang ? 'twice the overhang' : 'span')],
    result: quantity(limit, 'in'),
    clause: LIMITS,
  });
  return limit;
}

/**
 * Sag that comes after the roof is on: creep of the dead load, and live or snow load on top.
 * @param deadSagIn sag at once under the dead load, down positive [in]
 * @param shortSagIn sag under live or snow load at the same place, down positive [in]
 * @param creep Kcr, whole sag over sag at once: 2.0 green or wet wood, 1.5 seasoned wood in dry use
 * @returns sag [in], to be judged against the long-term limit
 * @throws MisuseError if a sag is not finite or creep under 1
 * @source NDS 3.5.2, equation 3.5-1 less the immediate dead sag (IBC Table 1604.3 footnote on creep)
 */
export function sagAfterYears(deadSagIn: number, shortSagIn: number, creep: number, note?: Note): number {
  const dead = finite('deadSagIn', deadSagIn);
  const short = finite('shortSagIn', shortSagIn);
  const sag = notNegative('creep - 1', creep - 1) * dead + short;
  note?.({
    symbol: 'Δ',
    words: 'sag that comes after the roof is on',
    formula: '(Kcr - 1) × ΔD + ΔS',
    put: deadShortCreep(dead, short, creep),
    result: quantity(sag, 'in'),
    clause: CREEP,
  });
  return sag;
}

/**
 * Whole sag after years, what the eye sees and the water runs over.
 * @returns sag [in]
 * @throws MisuseError as `sagAfterYears`
 * @source NDS 3.5.2, equation 3.5-1
 */
export function wholeSag(deadSagIn: number, shortSagIn: number, creep: number, note?: Note): number {
  const dead = finite('deadSagIn', deadSagIn);
  const short = finite('shortSagIn', shortSagIn);
  const sag = (1 + notNegative('creep - 1', creep - 1)) * dead + short;
  note?.({
    symbol: 'ΔT',
    words: 'whole sag after years',
    formula: 'Kcr × ΔD + ΔS',
    put: deadShortCreep(dead, short, creep),
    result: quantity(sag, 'in'),
    clause: CREEP,
  });
  return sag;
}

const deadShortCreep = (dead: number, short: number, creep: number) => [
  put('Kcr', creep, '1', 'creep factor: 2.0 green or wet wood, 1.5 seasoned'),
  put('ΔD', dead, 'in', 'sag at once under the dead load'),
  put('ΔS', short, 'in', 'sag under live or snow load'),
];
