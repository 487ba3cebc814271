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
  const addedIn = addedByCombination(frame, posts);
  const responses = frame.responses.flatMap((r): readonly LineResponse[] => {
    if (r.combination.purpose !== 'strength') return [r];
    // a way that adds nothing leaves the line as it is
    return [...new Set(addedIn(r.combination.id).map((added) => (added ? withAdded(frame.layout, r, added) : r)))];
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

/** What a push across adds to the values of a line, one way, whatever braces work in it. */
interface Added {
  readonly way: 'pressed' | 'lifted';
  readonly at: readonly number[];
  readonly lb: readonly number[];
}

/** Both ways of each combination; null where the push across adds nothing that way. */
function addedByCombination(
  frame: LineFrame,
  posts: ReadonlyMap<string, PostInRow>,
): (combinationId: string) => readonly [pressed: Added | null, lifted: Added | null] {
  const chains = frame.mesh.posts.flatMap((chain) => {
    const inRow = posts.get(chain.memberId);
    const footAt = footIndex(frame.layout, chain) + 1;
    return inRow ? [{ inRow, footAt, sections: sectionsOf(chain, frame.layout) }] : [];
  });
  const addedIn = (id: string, way: Added['way']): Added | null => {
    const [at, lb]: [number[], number[]] = [[], []];
    for (const { inRow, footAt, sections } of chains) {
      const across = inRow.in(id);
      if (!across) continue;
      for (const s of sections) {
        const { pushLb, pullLb } = across.addedAt(s.atIn);
        at.push(s.axial);
        lb.push(way === 'pressed' ? -pushLb : pullLb);
      }
      at.push(footAt);
      lb.push(way === 'pressed' ? across.foot.addedPushLb : -across.foot.addedPullLb);
    }
    return lb.every((pounds) => pounds === 0) ? null : { way, at, lb };
  };
  const known = new Map<string, readonly [Added | null, Added | null]>();
  return (id) => {
    const both = known.get(id) ?? ([addedIn(id, 'pressed'), addedIn(id, 'lifted')] as const);
    known.set(id, both);
    return both;
  };
}

function withAdded(layout: LineFrame['layout'], r: LineResponse, { way, at, lb }: Added): LineResponse {
  const pressed = (own: LineResponse): LineResponse => {
    const values = layout.copyOf(own.values);
    for (let i = 0; i < at.length; i++) values[at[i]!]! += lb[i]!;
    return { ...own, values, across: { way, own } };
  };
  const { secondOrder } = r;
  return {
    ...pressed(r),
    ...(secondOrder ? { secondOrder: { ...secondOrder, first: pressed(secondOrder.first) } } : {}),
  };
}
