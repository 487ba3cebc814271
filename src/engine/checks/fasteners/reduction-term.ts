import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { THICK_FROM_IN } from './dowel-bearing.ts';
import type { YieldMode } from './yield-modes.ts';

const TERMS = clause('NDS', 'Table 12.3.1B');
const THIN_TERMS = remembered('NDS', 'Table 12.3.1B');

/** Thin shanks: KD = 2.2 up to 0.17 in., then 10 D + 0.5. @source NDS Table 12.3.1B */
const THIN_KD = { least: 2.2, upToIn: 0.17, slope: 10, more: 0.5 } as const;
/** Thick shanks, times the factor for the angle. @source NDS Table 12.3.1B */
const THICK_TERM: Readonly<Record<YieldMode, number>> = { Im: 4, Is: 4, II: 3.6, IIIm: 3.2, IIIs: 3.2, IV: 3.2 };

export interface ReducedShank {
  readonly nominalIn: number;
  /** that bears and bends: full shank or root of the thread */
  readonly diameterIn: number;
  /** greatest angle between load and grain in either piece; a steel piece has none */
  readonly angleDeg: number;
}

/**
 * Reduction term Rd, by which the load at yield is divided.
 * @returns Rd
 * @throws MisuseError if a diameter is not above zero or the angle not from 0 to 90
 * @source NDS Table 12.3.1B and its note on threaded shanks of 1/4 in. and thicker whose root is thinner
 * @departs a screw thinner than 1/4 in. takes KD of its nominal diameter, which is the larger one (safe side): a published
 * example comes back only so.
 */
export function reductionTerm(mode: YieldMode, shank: ReducedShank, note?: Note): number {
  positive('nominalIn', shank.nominalIn);
  positive('diameterIn', shank.diameterIn);
  if (notNegative('angleDeg', shank.angleDeg) > 90) {
    throw new MisuseError('angleDeg', shank.angleDeg, 'an angle from 0 to 90');
  }
  if (shank.nominalIn < THICK_FROM_IN) return thinTerm(shank.nominalIn, note);
  const Ktheta = 1 + 0.25 * (shank.angleDeg / 90);
  const isThinAtRoot = shank.diameterIn < THICK_FROM_IN;
  const K = isThinAtRoot ? thinTerm(shank.diameterIn, note) : THICK_TERM[mode];
  const Rd = K * Ktheta;
  note?.({
    symbol: 'Rd',
    words: isThinAtRoot ? 'reduction term of a thread with a thin root' : `reduction term of mode ${mode}`,
    formula: 'K × (1 + 0.25 × θ / 90°)',
    put: [
      put('K', K, '1', isThinAtRoot ? 'KD of the root' : 'by mode'),
      put('θ', shank.angleDeg, 'deg', 'greatest angle between load and grain'),
      put('90°', 90, 'deg', 'square to the grain'),
    ],
    result: quantity(Rd, '1'),
    clause: TERMS,
  });
  return Rd;
}

function thinTerm(D: number, note?: Note): number {
  const KD = D <= THIN_KD.upToIn ? THIN_KD.least : THIN_KD.slope * D + THIN_KD.more;
  note?.({
    symbol: 'KD',
    words: 'reduction term of a thin shank',
    formula: D <= THIN_KD.upToIn ? '2.2' : '10 × D + 0.5',
    put: [put('D', D, 'in', 'diameter')],
    result: quantity(KD, '1'),
    clause: THIN_TERMS,
  });
  return KD;
}
