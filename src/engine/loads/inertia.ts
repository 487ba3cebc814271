import type { PostGeometry } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import { emptyLineCase, type LineArrival } from './cases.ts';

/** Notional push: one per cent of the dead load at the roof, each way. Load duration ten minutes. */
export const NOTIONAL_SHARE = 0.01;

/**
 * A share of a weight that pushes the line sideways at its seats, evenly on all posts since the beam ties them: the
 * notional push, or an earthquake. Also what posts weigh counts at the seats (safe side).
 * @source ASCE7_10 1.4.1; ASCE7 12.8 (7-16)
 */
export function inertiaCase(
  posts: readonly PostGeometry[],
  push: { readonly kind: 'notional' | 'seismic'; readonly forceLb: number; readonly verticalShare?: number },
  toward: 1 | -1,
): LineArrival {
  const direction = toward === 1 ? 'plus' : 'minus';
  const { kind, forceLb, verticalShare } = push;
  const id = `${kind}-${direction}`;
  const words = message(kind === 'notional' ? 'caseNotional' : 'caseSeismic', { way: toward === 1 ? 'right' : 'left' });
  return {
    loadCase: { id, kind, words, swaysAlong: true, ...(verticalShare === undefined ? {} : { verticalShare }) },
    lineCase: {
      ...emptyLineCase(id),
      points: posts.map((p) => ({ xIn: p.xIn, downLb: 0, alongLb: (toward * forceLb) / posts.length })),
    },
    alongLb: toward * forceLb,
  };
}
