import { message, type Message } from '../message.ts';
import type { Combination } from '../loads/combination.ts';
import { lineBuckling, type LineBuckling } from './line-buckling.ts';
import type { LineFrame, LineResponse } from './line-frame.ts';
import { PULL_LB, pushOnly } from './push-only.ts';

/** Rounds of choosing the braces that push under the larger sway, before none counts as holding (own rule). */
const ROUNDS = 4;

/**
 * How often the sway of a line counts: by as much as its thrust, on the moved frame, adds to it. At or under a factor of 1
 * nothing would stand still: it counts once then, and the row of the line's buckling fails.
 * @source MECHANICS second order of a frame from its critical load
 */
export const swayTimes = ({ swayFactor }: LineBuckling): number => (swayFactor > 1 ? 1 / (1 - 1 / swayFactor) : 1);

/**
 * A line with its buckling in every strength response, and with the sway of free ones counted so often as second order asks.
 * Sway is all in which a free line differs from the same line held sideways: what pushes it, and the drift of uneven gravity.
 * Which braces push is asked again under the larger sway. Sag stays first order.
 * @param stabilityShare  Emin over E of a member
 */
export function withSecondOrder(frame: LineFrame, stabilityShare: (memberId: string) => number): LineFrame {
  const { layout, members } = frame;
  const bucklingOf = lineBuckling(frame, stabilityShare);
  const unheld: { combination: Combination; reason: Message }[] = [];
  const responses = frame.responses.flatMap((r) => {
    const buckling = bucklingOf(r);
    if (!buckling) return [r];
    if (r.held) return lettingGo({ ...r, buckling });
    const settled = settle(r, buckling);
    if (settled) return lettingGo(settled);
    unheld.push({
      combination: r.combination,
      reason: message('noBracesHoldItsSway', { line: members.line.label }),
    });
    return [];
  });
  // with pull given, braces that hold both ways judge the combination alone
  const judged = new Set(responses.map((r) => r.combination.id));
  return { ...frame, responses, unheld: [...frame.unheld, ...unheld.filter((u) => !judged.has(u.combination.id))] };

  function settle(asked: LineResponse, itsBuckling: LineBuckling): LineResponse | null {
    let first: LineResponse = { ...asked, buckling: itsBuckling };
    let times = swayTimes(itsBuckling);
    for (let round = 0; round < ROUNDS; round++) {
      if (times === 1) return first;
      if (first.braceModel !== 'pushOnly') return inSecondOrder(first, times);
      const set = pushOnly(layout, first.combination, first.working, true, times);
      if (!set) return null;
      const { working } = set;
      if (working.every((on, j) => on === first.working[j])) return inSecondOrder(first, times);
      const next: LineResponse = { ...asked, working, values: set.combine(asked.combination) };
      const buckling = lineBuckling({ ...frame, responses: [next] }, stabilityShare)(next)!;
      first = { ...next, buckling };
      times = Math.max(times, swayTimes(buckling));
    }
    return null;
  }

  /**
   * Braces that push while dead load counts as one may be pulled where every piece of it is taken as it harms. One that only
   * pushes then lets go: it is asked no pull, and what it leaves is asked as a response of its own.
   */
  function lettingGo(r: LineResponse): readonly LineResponse[] {
    const isPulled = ({ values }: LineResponse, j: number): boolean => values[layout.bracesAt + j]! < -PULL_LB;
    if (r.braceModel !== 'pushOnly' || !r.working.some((_, j) => isPulled(r, j))) return [r];
    const working = r.working.map((on, j) => on && !isPulled(r, j));
    const set = layout.with(working, !r.held);
    if (!set) {
      unheld.push({
        combination: r.combination,
        reason: message('nothingHoldsWhilePulled', { line: members.line.label }),
      });
      return [];
    }
    const { combination, braceModel, held } = r;
    const letGo = (r.letGo ?? 0) + r.working.filter((on, j) => on && !working[j]).length;
    const next: LineResponse = { combination, braceModel, held, working, values: set.combine(combination), letGo };
    const first: LineResponse = {
      ...next,
      buckling: lineBuckling({ ...frame, responses: [next] }, stabilityShare)(next)!,
    };
    const times = held ? 1 : swayTimes(first.buckling!);
    return [withoutPull(layout, r), ...lettingGo(times === 1 ? first : inSecondOrder(first, times))];
  }

  function inSecondOrder(first: LineResponse, times: number): LineResponse {
    const set = layout.with(first.working, true)!;
    const values = set.combine(first.combination, layout.swayOf(first.working, times));
    return { ...first, values, secondOrder: { times, first } };
  }
}

/** What a brace that only pushes is asked at the most: nothing where it would be pulled. */
function withoutPull(layout: LineFrame['layout'], r: LineResponse): LineResponse {
  const values = layout.copyOf(r.values);
  for (let j = 0; j < r.working.length; j++) values[layout.bracesAt + j] = Math.max(0, values[layout.bracesAt + j]!);
  const { secondOrder } = r;
  if (!secondOrder) return { ...r, values };
  return { ...r, values, secondOrder: { ...secondOrder, first: withoutPull(layout, secondOrder.first) } };
}
