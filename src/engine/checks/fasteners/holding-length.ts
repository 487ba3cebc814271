import type { PulledKind } from '../../../data/fasteners/kind.ts';
import { LAG_THREADS, LAG_TIPS } from '../../../data/fasteners/lag-screws.ts';
import { LEAST_HOLD, SCREW_POINT } from '../../../data/fasteners/withdrawal.ts';
import { SCREW_THREAD } from '../../../data/fasteners/wood-screws.ts';
import { notNegative, positive } from '../../errors.ts';
import { cited } from '../../material/citation.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { refused, type Refused } from './refused.ts';

export interface DrivenShank {
  readonly kind: PulledKind;
  /** nominal */
  readonly diameterIn: number;
  /** from under the head to the tip */
  readonly lengthIn: number;
  /** from the surface of the stick that holds it to its tip, along the shank */
  readonly penetrationIn: number;
}

/** Lengths that are worked out from a joint's geometry may miss a limit by this. */
const ROUNDING_IN = 1e-9;

export type HoldingLength = { readonly ok: true; readonly lengthIn: number } | Refused;

/**
 * What of a driven fastener holds against pull: of a lag screw and a wood screw the thread in the stick that holds it,
 * without the tip; of a nail and a spike all that is in it.
 * @param shank the fastener and how far it reaches in [in]
 * @returns length that holds [in], or a refusal: a lag screw that is not listed, too little in the wood
 * @throws MisuseError if diameter or length is not above zero or the penetration below zero
 * @source NDS 12.2.1.1 (tip of lag screws left out), Appendix L
 * @departs the tip of a wood screw is left out too, as two diameters; the least penetrations of shanks that are pushed
 *          sideways are asked of pulled ones (own rules, safe side)
 */
export function holdingLength(shank: DrivenShank, note?: Note): HoldingLength {
  const { kind, penetrationIn: p } = shank;
  const D = positive('diameterIn', shank.diameterIn);
  positive('lengthIn', shank.lengthIn);
  notNegative('penetrationIn', p);
  const thread = threadOf(shank);
  if (!thread) {
    return refused('pulledLagNotListed', {
      diameterIn: D,
      lengthIn: shank.lengthIn,
      listed: LAG_TIPS.rows.map(({ nominalIn }) => nominalIn).join(', '),
      leastIn: LAG_THREADS.rows[0]?.lengthIn ?? 0,
    });
  }
  const { threadIn: T, tipIn: E, where } = thread;
  const diameters = LEAST_HOLD[kind];
  const leastIn = diameters * D + (kind === 'lag' ? E : 0);
  if (p < leastIn - ROUNDING_IN) return refused('fastenerTooShort', { reachIn: p, leastIn, diameters });
  const isAllIn = T <= p;
  const holds = (isAllIn ? T : p) - E;
  note?.({
    symbol: 'pt',
    words: isThreaded(kind) ? 'thread that holds, tip left out' : 'length in the stick that holds it',
    formula: `${isAllIn ? 'T' : 'p'} - E`,
    put: [
      isAllIn
        ? put('T', T, 'in', 'length of the thread with its tip')
        : put('p', p, 'in', 'length in the stick that holds it'),
      put('E', E, 'in', isThreaded(kind) ? 'length of the tip' : 'the point counts'),
    ],
    result: quantity(holds, 'in'),
    clause: where,
  });
  return { ok: true, lengthIn: holds };
}

const isThreaded = (kind: PulledKind): boolean => kind === 'lag' || kind === 'screw';

/** Thread with its tip, and the tip; of a plain shank all of it and no tip. Null: not listed. */
export function threadOf({ kind, diameterIn, lengthIn }: Pick<DrivenShank, 'kind' | 'diameterIn' | 'lengthIn'>) {
  if (kind === 'screw') {
    return {
      threadIn: SCREW_THREAD.share * lengthIn,
      tipIn: SCREW_POINT.diameters * diameterIn,
      where: cited(SCREW_THREAD.source, SCREW_THREAD.where, SCREW_THREAD.seen),
    };
  }
  if (kind !== 'lag') return { threadIn: lengthIn, tipIn: 0, where: cited('NDS', '12.2.3', 'memory') };
  const tip = LAG_TIPS.rows.find(({ nominalIn }) => Math.abs(nominalIn - diameterIn) < 1e-6);
  const thread = LAG_THREADS.rows.findLast((row) => row.lengthIn <= lengthIn);
  if (!tip || !thread) return null;
  return {
    threadIn: thread.threadIn,
    tipIn: tip.tipIn,
    where: cited(LAG_THREADS.source, LAG_THREADS.where, LAG_THREADS.seen),
  };
}
