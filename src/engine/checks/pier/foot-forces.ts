import { clause } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { footIndex, type PostChain } from '../../frame/read-response.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { LineCheckContext } from '../line-context.ts';
import { acrossPushAtFoot, type FootPush } from './across-push.ts';
import { turnsAbove } from './turns-above.ts';

/** What the ground must hold sideways at a post, without sign; the moment is about the ground. */
interface Sideways {
  readonly forceLb: number;
  readonly momentLbIn: number;
}

/** What a post brings to its foot in a response; with a note each tells its step. */
export interface FootForces {
  /** push on the foot, lift below zero [lb] */
  readonly down: (r: LineResponse, note?: Note) => number;
  /** what lifts the foot [lb] */
  readonly lift: (r: LineResponse, note?: Note) => number;
  /** moment of a foot that may not turn, along and across [lb in] */
  readonly turning: (r: LineResponse, words: string, note?: Note) => readonly [alongLbIn: number, acrossLbIn: number];
  /** push of both directions together [lb] */
  readonly push: (r: LineResponse, note?: Note) => number;
  readonly sideways: (r: LineResponse, note?: Note) => Sideways;
}

const FRAME = clause('MECHANICS', 'plane frame');
const VECTOR = clause('MECHANICS', 'forces at right angles add as a vector');
const NO_PUSH: FootPush = { pushLb: 0, momentLbIn: 0 };

/** True where the foot is said to hold the post against turning along the line. */
export const turnsAlong = ({ post }: PostChain): boolean => post.foot.fixity.along !== 'pinned';

export function footForces(context: LineCheckContext, chain: PostChain): FootForces {
  const { post } = chain;
  const foot = footIndex(context.frame.layout, chain);
  const start = chain.firstElement * 6;
  const heightIn = post.footZIn - post.gradeZIn;
  // a foot that may not turn brings its moment at its end; one between bolted plates turns at its bolts
  const turnsIn = turnsAbove(context.project, post);
  const alongAtIn = heightIn + (turnsAlong(chain) ? 0 : turnsIn);
  const acrossAtIn = heightIn + (post.foot.fixity.across === 'pinned' ? turnsIn : 0);
  const across = acrossPushAtFoot(context, chain);
  const acrossIn = (r: LineResponse): FootPush => across?.(r) ?? NO_PUSH;

  /**
   * Moment of what the foot gets along the line, about the ground. Above the ground the moment of a fixed foot is added to
   * that of its push whichever way it acts (safe side); below it the greater of the moments at the foot and at the ground
   * counts, since under uplift the values of one section need not belong to one instant.
   */
  const alongMoment = (r: LineResponse): number =>
    alongAtIn >= 0
      ? Math.abs(r.values[foot]!) * alongAtIn + (turnsAlong(chain) ? Math.abs(r.values[foot + 2]!) : 0)
      : Math.max(Math.abs(r.values[start + 2]!), Math.abs(r.values[start + 2]! - r.values[start + 1]! * alongAtIn));
  const acrossMoment = ({ pushLb, momentLbIn }: FootPush): number =>
    acrossAtIn >= 0 ? pushLb * acrossAtIn + momentLbIn : Math.max(momentLbIn, pushLb * -acrossAtIn);

  const push = (r: LineResponse, note?: Note): number => {
    const along = Math.abs(r.values[foot]!);
    const { pushLb } = acrossIn(r);
    const both = pushLb > 0 ? Math.hypot(along, pushLb) : along;
    note?.({
      symbol: 'P',
      words:
        pushLb > 0
          ? 'push of the post foot along and across the line together'
          : 'push of the post foot along the line',
      formula: pushLb > 0 ? 'sqrt(Px^2 + Py^2)' : 'Px',
      put: [
        put('Px', along, 'lb', 'from the frame analysis'),
        ...(pushLb > 0 ? [put('Py', pushLb, 'lb', 'across the lines')] : []),
      ],
      result: quantity(both, 'lb'),
      clause: pushLb > 0 ? VECTOR : FRAME,
    });
    return both;
  };

  const down = (r: LineResponse, note?: Note): number => {
    const N = r.values[foot + 1]!;
    note?.({
      symbol: 'N',
      words: 'push of the post on its foot',
      formula: 'N',
      put: [put('N', N, 'lb', 'from the frame analysis, down is plus')],
      result: quantity(N, 'lb'),
      clause: FRAME,
    });
    return N;
  };

  return {
    down,
    lift: (r, note) => {
      const N = down(r);
      const U = Math.max(0, -N);
      note?.({
        symbol: 'U',
        words: 'what lifts the foot',
        formula: 'max(0, -N)',
        put: [put('N', N, 'lb', 'push of the post on its foot, from the frame analysis, down is plus')],
        result: quantity(U, 'lb'),
        clause: FRAME,
      });
      return U;
    },
    turning: (r, words, note) => {
      const along = turnsAlong(chain) ? Math.abs(r.values[foot + 2]!) : 0;
      const { momentLbIn } = acrossIn(r);
      if (turnsAlong(chain)) note?.(momentStep('Mf', words, along, 'from the frame analysis'));
      if (momentLbIn > 0) note?.(momentStep('Mfy', `${words}, across the lines`, momentLbIn, 'across the lines'));
      return [along, momentLbIn];
    },
    push,
    sideways: (r, note) => {
      const forceLb = push(r, note);
      const along = alongMoment(r);
      const other = acrossMoment(acrossIn(r));
      const momentLbIn = other > 0 ? Math.hypot(along, other) : along;
      note?.({
        symbol: 'Mg',
        words: 'moment about the ground',
        formula: other > 0 ? 'sqrt(Mx^2 + My^2)' : 'Mx',
        put: [
          put(
            'Mx',
            along,
            'lb·in',
            `along the line; it acts ${Math.abs(alongAtIn).toFixed(1)} in ${alongAtIn >= 0 ? 'above' : 'below'} the ground`,
          ),
          ...(other > 0 ? [put('My', other, 'lb·in', 'across the lines')] : []),
        ],
        result: quantity(momentLbIn, 'lb·in'),
        clause: other > 0 ? VECTOR : FRAME,
      });
      return { forceLb, momentLbIn };
    },
  };
}

const momentStep = (symbol: string, words: string, momentLbIn: number, from: string) => ({
  symbol,
  words,
  formula: symbol,
  put: [put(symbol, momentLbIn, 'lb·in', from)],
  result: quantity(momentLbIn, 'lb·in'),
  clause: FRAME,
});
