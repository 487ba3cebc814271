import { SIDE_WORDS } from '../../data/words/sides.ts';
import type { PostGeometry } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import { emptyLineCase, type LineArrival } from './cases.ts';

/** Notional push: one per cent of the dead load at the roof, each way. Load duration ten minutes. */
export const NOTIONAL_SHARE = 0.01;

interface Inertia {
  readonly kind: 'notional' | 'seismic';
  readonly forceLb: number;
  readonly verticalShare?: number;
}

/**
 * A share of a weight that pushes the line sideways at its seats, evenly on all posts since the beam ties them: the
 * notional push, or an earthquake. Also what posts weigh counts at the seats (safe side).
 * @source ASCE7_10 1.4.1; ASCE7 12.8 (7-16)
 */
export function inertiaCase(posts: readonly PostGeometry[], push: Inertia, toward: 1 | -1): LineArrival {
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

/**
 * The same push across the lines. It brings nothing to the line itself, but it combines with all that does: the frames across
 * the lines and the posts in them are asked for it.
 */
export function inertiaAcrossCase({ kind, verticalShare }: Inertia, toward: 1 | -1): LineArrival {
  const id = `${kind}-across-${toward === 1 ? 'plus' : 'minus'}`;
  const side = toward === 1 ? SIDE_WORDS.yPlus : SIDE_WORDS.yMinus;
  const words = message(kind === 'notional' ? 'caseNotionalAcross' : 'caseSeismicAcross', { side });
  return {
    loadCase: {
      id,
      kind,
      words,
      swaysAlong: false,
      pushAcross: id,
      ...(verticalShare === undefined ? {} : { verticalShare }),
    },
    lineCase: emptyLineCase(id),
    alongLb: 0,
  };
}
