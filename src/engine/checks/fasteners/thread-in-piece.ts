import { BOLT_THREAD, BOLTS } from '../../../data/fasteners/bolts.ts';
import type { FastenerKind } from '../../../data/fasteners/kind.ts';
import { LAG_SCREWS } from '../../../data/fasteners/lag-screws.ts';
import { WOOD_SCREWS } from '../../../data/fasteners/wood-screws.ts';
import { FASTENER_WORDS } from '../../../data/words/fasteners-pulled.ts';
import { notNegative, positive } from '../../errors.ts';
import { refused, type Refused } from './refused.ts';
import type { ThreadInPiece } from './shank.ts';

/** Listed sizes are printed to a few decimals; a diameter this near is that size. */
const SAME_SIZE_IN = 1e-3;

const THREADED = { lag: LAG_SCREWS.rows, screw: WOOD_SCREWS.rows, bolt: BOLTS.rows } as const;

export type RootDiameter = { readonly ok: true; readonly rootIn: number } | Refused;

/**
 * Diameter at the root of the thread; of a shank without thread its own.
 * @param nominalIn nominal diameter [in]
 * @returns root diameter [in], or that this size is not listed
 * @throws MisuseError if the diameter is not above zero
 * @source NDS Appendix L, Tables L1 to L3
 */
export function rootDiameterOf(kind: FastenerKind, nominalIn: number): RootDiameter {
  positive('nominalIn', nominalIn);
  if (kind !== 'lag' && kind !== 'screw' && kind !== 'bolt') return { ok: true, rootIn: nominalIn };
  const size = THREADED[kind].find((row) => Math.abs(row.nominalIn - nominalIn) < SAME_SIZE_IN);
  return size
    ? { ok: true, rootIn: size.rootIn }
    : refused('fastenerSizeNotListed', { fastener: FASTENER_WORDS[kind], diameterIn: nominalIn });
}

/**
 * Length of the thread of a bolt.
 * @returns length [in]
 * @throws MisuseError if a measure is not above zero
 * @source NDS Appendix L, Table L1, from memory
 */
export function boltThreadIn(nominalIn: number, lengthIn: number): number {
  const { diameters, moreIn, longerThanIn, moreOfLongIn } = BOLT_THREAD;
  return (
    diameters * positive('nominalIn', nominalIn) +
    (positive('lengthIn', lengthIn) > longerThanIn ? moreOfLongIn : moreIn)
  );
}

/**
 * Thread of a driven shank in the piece that holds its point, its tapered tip half counted as in the bearing length.
 * @param threadIn length of the thread with its tip [in]
 * @param tipIn length of the tip [in]
 * @param penetrationIn length of the shank in the piece, tip included [in]; longer than half of the tip
 * @throws MisuseError if a length is out of bounds
 * @source NDS 12.3.5, 12.3.7, from memory
 */
export function threadAtPoint(threadIn: number, tipIn: number, penetrationIn: number): ThreadInPiece {
  const lost = notNegative('tipIn', tipIn) / 2;
  const bearingIn = positive('penetrationIn', positive('penetrationIn', penetrationIn) - lost);
  return { threadIn: Math.max(0, Math.min(notNegative('threadIn', threadIn), penetrationIn) - lost), bearingIn };
}

/**
 * Thread of a bolt in the piece under its nut.
 * @param threadIn length of the thread [in]
 * @param beyondIn length of the bolt beyond that piece: washer, nut and what sticks out [in]
 * @param pieceIn length of the bolt in the piece [in]
 * @throws MisuseError if a length is out of bounds
 * @source NDS 12.3.7, from memory
 */
export function threadAtNut(threadIn: number, beyondIn: number, pieceIn: number): ThreadInPiece {
  const inside = Math.max(0, positive('threadIn', threadIn) - notNegative('beyondIn', beyondIn));
  const bearingIn = positive('pieceIn', pieceIn);
  return { threadIn: Math.min(inside, bearingIn), bearingIn };
}
