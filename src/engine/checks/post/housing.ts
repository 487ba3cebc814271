import { clause } from '../../../data/sources.ts';
import { breaks } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import { put } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import type { PostStation } from './post-stations.ts';

/** Share of a post that a housing may take (own rule). */
export const DEEPEST_HOUSING = 1 / 6;

/** A housing may take at most a sixth of the post (own rule). */
export function housingSites(chain: PostChain, stations: readonly PostStation[]): readonly CheckSite<LineResponse>[] {
  return stations
    .filter((s, i) => s.housing !== null && stations.findIndex((o) => o.atIn === s.atIn) === i)
    .map((s): CheckSite<LineResponse> => {
      const limit = DEEPEST_HOUSING * s.diameterIn;
      const depth = s.housing!.depthIn;
      return {
        ruleId: 'post.housing',
        memberId: chain.memberId,
        place: { kind: 'joint', name: `at-${s.atIn.toFixed(1)}` },
        unit: 'in',
        purpose: 'strength',
        isByDuration: true,
        stops: () =>
          depth > limit + 1e-9
            ? breaks({ code: 'housingTooDeep', values: { member: chain.post.label, depthIn: depth, limitIn: limit } })
            : null,
        demand: (_, note) => {
          note?.({
            symbol: 't',
            words: 'depth of the housing',
            formula: 't',
            put: [put('t', depth, 'in', 'as drawn')],
            result: quantity(depth, 'in'),
            clause: clause('OWN', 'at most one sixth of the post'),
          });
          return depth;
        },
        capacity: (_, note) => {
          note?.({
            symbol: 't max',
            words: 'deepest housing of a post',
            formula: 'd / 6',
            put: [put('d', s.diameterIn, 'in', 'diameter there')],
            result: quantity(limit, 'in'),
            clause: clause('OWN', 'at most one sixth of the post'),
          });
          return limit;
        },
      };
    });
}
