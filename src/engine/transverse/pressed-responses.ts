import type { AcrossOnLine, PostInRow } from '../checks/line-context.ts';
import { lineBuckling } from '../frame/line-buckling.ts';
import { firstOrderOf, type LineFrame, type LineResponse } from '../frame/line-frame.ts';
import { footIndex, sectionsOf } from '../frame/read-response.ts';

/**
 * What frames across bring to a line: where a push across presses or lifts its posts, the response of the line stands once with
 * every post pressed as hard, once with every post lifted as hard as in any way of holding the push (safe side).
 * @param stabilityShare  Emin over E of a member
 */
export function acrossOnLine(
  frame: LineFrame,
  posts: ReadonlyMap<string, PostInRow>,
  stabilityShare: (memberId: string) => number,
): AcrossOnLine | undefined {
  if (!frame.mesh.posts.some((p) => posts.has(p.memberId))) return undefined;
  const ways = ['pressed', 'lifted'] as const;
  const responses = frame.responses.flatMap((r): readonly LineResponse[] => {
    if (r.combination.purpose !== 'strength') return [r];
    // a way that adds nothing leaves the line as it is
    return [...new Set(ways.map((way) => withPushAcross(frame, posts, r, way) ?? r))];
  });
  return { responses: buckling(frame, responses, stabilityShare), onPost: (postId) => posts.get(postId) ?? null };
}

/** What a push across adds in the posts makes their line buckle sooner, or later. How often its sway counts is left as it is. */
function buckling(
  frame: LineFrame,
  responses: readonly LineResponse[],
  stabilityShare: (memberId: string) => number,
): readonly LineResponse[] {
  const pressed = responses.filter((r) => r.across).map(firstOrderOf);
  const bucklingOf = lineBuckling({ ...frame, responses: pressed }, stabilityShare);
  return responses.map((r) => {
    const found = r.across ? bucklingOf(firstOrderOf(r)) : null;
    return found ? { ...r, buckling: found } : r;
  });
}

/** Null where the push across adds nothing that way. */
function withPushAcross(
  frame: LineFrame,
  posts: ReadonlyMap<string, PostInRow>,
  r: LineResponse,
  way: 'pressed' | 'lifted',
): LineResponse | null {
  const added = frame.mesh.posts.flatMap((chain) => {
    const across = posts.get(chain.memberId)?.in(r.combination.id);
    if (!across) return [];
    const { addedPushLb, addedPullLb } = across.foot;
    const plumb = way === 'pressed' ? addedPushLb : -addedPullLb;
    const axial = sectionsOf(chain, frame.layout).map((s) => {
      const { pushLb, pullLb } = across.addedAt(s.atIn);
      return [s.axial, way === 'pressed' ? -pushLb : pullLb] as const;
    });
    return [...axial, [footIndex(frame.layout, chain) + 1, plumb] as const];
  });
  if (added.every(([, lb]) => lb === 0)) return null;
  const pressed = (own: LineResponse): LineResponse => {
    const values = own.values.slice();
    for (const [index, lb] of added) values[index]! += lb;
    return { ...own, values, across: { way, own } };
  };
  const { secondOrder } = r;
  return {
    ...pressed(r),
    ...(secondOrder ? { secondOrder: { ...secondOrder, first: pressed(secondOrder.first) } } : {}),
  };
}
