import { clause } from '../../../data/sources.ts';
import { notGiven } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { footIndex, type PostChain } from '../../frame/read-response.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { quantity } from '../../units.ts';
import { holderAt } from '../joints/holder.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
import { togetherSite } from '../joints/together-site.ts';
import type { LineCheckContext } from '../line-context.ts';
import { acrossPushAtFoot } from '../pier/across-push.ts';
import type { CheckSite } from '../site-of-check.ts';

/**
 * What the foot's hardware must hold: pull, push along the line and across it, and, where the end of the post stands off its
 * pier, all that presses it down. The push across is not given while nobody knows what reaches the feet. A post that stands
 * in the ground has no hardware: the soil is asked.
 */
export function footSites(context: LineCheckContext, chain: PostChain): readonly CheckSite<LineResponse>[] {
  const { foot: base } = chain.post;
  if (base.kind === 'embedded') return [];
  const holder = holderAt(context, 'postFoot', jointKey('postFoot', chain.memberId));
  const foot = footIndex(context.frame.layout, chain);
  const at = { memberId: chain.memberId, place: { kind: 'joint', name: 'foot' } as const, holder };
  const presses = {
    part: 'push',
    force: fromFrame('push of the post on what holds it off its pier', (r: LineResponse) =>
      Math.max(0, r.values[foot + 1]!),
    ),
  } as const;
  const pulls = {
    part: 'pull',
    force: fromFrame('pull of the post off its pier', (r: LineResponse) => Math.max(0, -r.values[foot + 1]!)),
  } as const;
  const along = {
    part: 'along',
    force: fromFrame('push of the foot along the line', (r: LineResponse) => Math.abs(r.values[foot]!)),
  } as const;
  const push = acrossPushAtFoot(context, chain);
  const across = {
    part: 'across',
    force: (r: LineResponse, note?: Note) => pushAcross(push?.(r).pushLb ?? 0, note),
  } as const;
  const acrossSite = ratedSite<LineResponse>({ ...at, ruleId: 'post.footAcross', ...across });
  const both = togetherSite<LineResponse>({
    ...at,
    ruleId: 'post.footTogether',
    parts: push ? [pulls, along, across] : [pulls, along],
  });
  return [
    ...(base.standOffIn > 0 ? [ratedSite({ ...at, ruleId: 'post.footPush', ...presses })] : []),
    ratedSite({ ...at, ruleId: 'post.foot', ...pulls }),
    ratedSite({ ...at, ruleId: 'post.footAlong', ...along }),
    push ? acrossSite : { ...acrossSite, stops: () => notGiven(message('footAcrossNotKnown')) },
    ...(both ? [both] : []),
  ];
}

function pushAcross(pushLb: number, note?: Note): number {
  note?.({
    symbol: 'P',
    words: 'push of the foot across the line',
    formula: 'P',
    put: [put('P', pushLb, 'lb', 'from wind on the post and what holds the shelter across')],
    result: quantity(pushLb, 'lb'),
    clause: clause('ASCE7', '29.4'),
  });
  return pushLb;
}
