import { clause } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { STRETCHED_CUT } from '../beam/bending.ts';
import { lastRemembered } from '../last-remembered.ts';
import type { LineCheckContext, PostInRow } from '../line-context.ts';
import { acrossMoment } from './across-wind.ts';
import type { PostStation } from './post-stations.ts';

/** Moment across the line at a station, without sign, a housing counted twice while its face is stretched [lb·in]. */
export type BentAcross = (r: LineResponse, s: PostStation, note?: Note) => number;

/**
 * What bends a post across its line: the frame across that it stands in, or else only the wind on itself.
 * @source MECHANICS plane frame across the lines; own rule for stretched housings
 */
export function bentAcross(context: LineCheckContext, chain: PostChain): BentAcross {
  const inRow = context.across?.onPost(chain.memberId);
  if (inRow) return byFrame(inRow);
  const byWind = acrossMoment(context, chain);
  return (r, s, note) => twiceWhere(s.housing?.acrossSides.length) * Math.abs(byWind(r, s.atIn, note));
}

const twiceWhere = (housed: number | boolean | undefined): number => (housed ? STRETCHED_CUT : 1);

function byFrame(inRow: PostInRow): BentAcross {
  const acrossIn = lastRemembered((r: LineResponse) => inRow.in(r.combination.id));
  return (r, s, note) => {
    const across = acrossIn(r);
    if (!across) return 0;
    const { plusLbIn, minusLbIn } = across.momentAt(s.atIn);
    const onPlus = twiceWhere(s.housing?.acrossSides.includes(1));
    const onMinus = twiceWhere(s.housing?.acrossSides.includes(-1));
    const moment = Math.max(onPlus * plusLbIn, onMinus * minusLbIn);
    note?.({
      symbol: 'My',
      words: 'moment across the line, from the frame that the post stands in; hardest way of holding the push',
      formula: 'max(kf × Mf, kb × Mb)',
      put: [
        put('Mf', plusLbIn, 'lb·in', 'moment that stretches the front face'),
        put('kf', onPlus, '1', onPlus === 1 ? 'no housing in that face' : 'housing of a stretched face (own rule)'),
        put('Mb', minusLbIn, 'lb·in', 'moment that stretches the back face'),
        put('kb', onMinus, '1', onMinus === 1 ? 'no housing in that face' : 'housing of a stretched face (own rule)'),
      ],
      result: quantity(moment, 'lb·in'),
      clause: clause('MECHANICS', 'plane frame across the lines, first order'),
    });
    return moment;
  };
}
