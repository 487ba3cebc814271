import { BENDING_YIELD } from '../../../data/fasteners/bending-yield.ts';
import type { FastenerKind } from '../../../data/fasteners/kind.ts';
import { remembered } from '../../../data/sources.ts';
import { notNegative, positive } from '../../errors.ts';
import { cited, givenStep } from '../../material/citation.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { refused, type Refused } from './refused.ts';

const WHICH_DIAMETER = remembered('NDS', '12.3.7');
/** Share of the bearing length that may be threaded while the full shank still counts. @source NDS 12.3.7.2, from memory */
const THREADED_SHARE = 0.25;

export type BendingYield = { readonly ok: true; readonly FybPsi: number } | Refused;

/**
 * Bending yield strength of a shank, by its nominal diameter.
 * @returns Fyb [psi], or why none is printed
 * @throws MisuseError if the diameter is not above zero
 * @source NDS Appendix I, Table I1
 */
export function bendingYieldOf(kind: FastenerKind, nominalIn: number, note?: Note): BendingYield {
  positive('nominalIn', nominalIn);
  const { fromIn, bands, source, where, seen } = BENDING_YIELD[kind];
  const band = nominalIn < fromIn ? undefined : bands.find(({ upToIn }) => nominalIn <= upToIn);
  if (band === undefined) return refused('fastenerYieldNotListed', { diameterIn: nominalIn });
  note?.(givenStep('Fyb', 'bending yield strength of the shank', band.FybPsi, 'psi', cited(source, where, seen)));
  return { ok: true, FybPsi: band.FybPsi };
}

/** Where the thread of a shank bears: how much of it in the piece that holds it, and how long the shank bears there. */
export interface ThreadInPiece {
  readonly threadIn: number;
  readonly bearingIn: number;
}

/**
 * Diameter that bears and bends: the full shank while at most a quarter of the piece that holds the thread is threaded,
 * else the root of the thread.
 * @param nominalIn, rootIn diameters [in]
 * @param inPiece of the piece that holds the thread; where it crosses the shear plane, give its whole length there
 * @returns diameter [in]
 * @throws MisuseError if a value is out of bounds
 * @source NDS 12.3.7, from memory
 */
export function bearingDiameter(nominalIn: number, rootIn: number, inPiece: ThreadInPiece, note?: Note): number {
  const D = positive('nominalIn', nominalIn);
  const Dr = positive('rootIn', rootIn);
  const threadIn = notNegative('threadIn', inPiece.threadIn);
  const bearingIn = positive('bearingIn', inPiece.bearingIn);
  const isFull = threadIn <= THREADED_SHARE * bearingIn;
  const d = isFull ? D : Dr;
  note?.({
    symbol: 'D',
    words: isFull ? 'full shank: at most a quarter of its bearing is thread' : 'root of the thread',
    formula: isFull ? 'Ds' : 'Dr',
    put: [
      put('Ds', D, 'in', 'full shank'),
      put('Dr', Dr, 'in', 'root of the thread'),
      put('t', threadIn, 'in', 'thread in the piece that holds it'),
      put('l', bearingIn, 'in', 'bearing length there'),
    ],
    result: quantity(d, 'in'),
    clause: WHICH_DIAMETER,
  });
  return d;
}
