import { remembered } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { put } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { quantity } from '../../units.ts';
import { holderAt } from '../joints/holder.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';

/** Depth over breadth up to which a sawn beam needs nothing, and with its ends held upright. @source NDS 4.4.1.2, from memory */
const MOST = { loose: 2, held: 4 } as const;

/**
 * A sawn beam that is much deeper than wide must be held upright where it rests. Its joint to the post holds it where it is
 * given something across the line; thinner than one to four it would need its edge held all along, which no strip is
 * counted to do (safe side). Sizes as they are, not nominal ones (safe side).
 * @source NDS 4.4.1.2 (from memory)
 */
export function uprightSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  const { frame } = context;
  return frame.members.beams.flatMap((beam) => {
    const { stick } = beam;
    if (stick?.kind !== 'sawn' || stick.depthIn <= stick.breadthIn) return [];
    const slender = stick.depthIn / stick.breadthIn;
    const under = frame.members.posts.filter((p) => p.seats.some((s) => s.beamId === beam.id));
    return under.map((post): CheckSite<LineResponse> => {
      const tie = holderAt(context, 'beamPost', jointKey('beamPost', beam.id, post.id)).part('across', 1);
      const most = tie.ok ? MOST.held : MOST.loose;
      return {
        ruleId: 'beam.upright',
        memberId: beam.id,
        place: { kind: 'support', name: post.id },
        unit: '1',
        purpose: 'strength',
        isByDuration: true,
        stops: () => {
          if (tie.ok || slender <= MOST.loose) return null;
          const verdict = tie.verdict(slender);
          return verdict?.demand ? { ...verdict, demand: quantity(slender, '1') } : verdict;
        },
        demand: (_, note) => {
          note?.({
            symbol: 'd / b',
            words: 'depth over breadth',
            formula: 'd / b',
            put: [put('d', stick.depthIn, 'in', 'depth'), put('b', stick.breadthIn, 'in', 'breadth')],
            result: quantity(slender, '1'),
            clause: remembered('NDS', '4.4.1.2'),
          });
          return slender;
        },
        capacity: (_, note) => {
          note?.({
            symbol: 'most',
            words: tie.ok ? 'with its ends held upright' : 'without anything that holds it upright',
            formula: 'most',
            put: [put('most', most, '1', 'depth over breadth that may be')],
            result: quantity(most, '1'),
            clause: remembered('NDS', '4.4.1.2'),
          });
          return most;
        },
      };
    });
  });
}
