import type { LineResponse } from '../../frame/line-frame.ts';
import { footIndex, type PostChain } from '../../frame/read-response.ts';
import { capacityOf, jointKey } from '../../project/joint-capacity.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
import { togetherSite } from '../joints/together-site.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';

/** What the foot's hardware must hold: pull, and push along the line. */
export function footSites(context: LineCheckContext, chain: PostChain): readonly CheckSite<LineResponse>[] {
  const capacity = capacityOf(context.project, 'postFoot', jointKey('postFoot', chain.memberId));
  const foot = footIndex(context.frame.layout, chain);
  const at = { memberId: chain.memberId, place: { kind: 'joint', name: 'foot' } as const, capacity };
  const pulls = {
    part: 'pull',
    force: fromFrame('pull of the post off its pier', (r: LineResponse) => Math.max(0, -r.values[foot + 1]!)),
  } as const;
  const pushes = {
    part: 'along',
    force: fromFrame('push of the foot along the line', (r: LineResponse) => Math.abs(r.values[foot]!)),
  } as const;
  const both = togetherSite<LineResponse>({ ...at, ruleId: 'post.footTogether', parts: [pulls, pushes] });
  return [
    ratedSite({ ...at, ruleId: 'post.foot', ...pulls }),
    ratedSite({ ...at, ruleId: 'post.footAlong', ...pushes }),
    ...(both ? [both] : []),
  ];
}
