import { remembered } from '../../../data/sources.ts';
import { firstOrderOf, type LineResponse } from '../../frame/line-frame.ts';
import { pinForce, type PostChain } from '../../frame/read-response.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { lastRemembered } from '../last-remembered.ts';
import type { LineCheckContext } from '../line-context.ts';

/** Less than this beside the axis is a seat in the middle of its post [in]. */
const IN_THE_MIDDLE_IN = 1e-9;

/** Moment from beams that press beside the axis of their post, without sign, by place and fc / FcE in that plane [lb·in]. */
export type OffsetMoment = (r: LineResponse, atIn: number, pushShare: number, note?: Note) => number;

const WORDS = {
  along: { symbol: 'Me', words: 'moment from beams that end on the post and press beside its axis' },
  across: { symbol: 'Mo', words: 'moment across the line from beams that bow to the side and press beside the axis' },
} as const;

/**
 * A beam that ends on a post covers a part of its top, and one that bows to the side passes over it beside its axis: the post
 * bends from there down to its foot, which a fixed foot makes no easier (taken as full all the way). On a round post that is
 * 8 e / d of the push stress, as M / S; the push adds to it as it bends. Two beams that end on one post press on either side;
 * of their bows nobody knows that they go different ways.
 * @returns null where every beam presses in the middle
 * @source NDS 15.4.1 with the modulus of a round section (from memory)
 */
export function offsetMoment(
  { frame }: LineCheckContext,
  chain: PostChain,
  way: 'along' | 'across',
): OffsetMoment | null {
  const { post } = chain;
  const seats = post.seats
    .filter((s) => s.areaIn2 > 0)
    .map((s) => ({ offIn: way === 'along' ? s.offsetIn : s.besideIn, pin: pinForce(frame.mesh, chain, s.beamId) }))
    .filter(({ offIn }) => Math.abs(offIn) > IN_THE_MIDDLE_IN);
  if (seats.length === 0) return null;
  const from = post.footZIn - post.woodFromZIn;
  const length = post.seatZIn - post.footZIn;
  const isPinned = post.foot.fixity[way] === 'pinned';
  const momentAtTop = lastRemembered((r: LineResponse) => {
    const { values } = firstOrderOf(r);
    return seats.reduce((sum, { offIn, pin }) => sum + Math.max(0, pin.down(values)) * offIn, 0);
  });
  return (r, atIn, pushShare, note) => {
    const top = momentAtTop(r);
    const z = isPinned ? Math.min(Math.max((atIn - from) / length, 0), 1) : 1;
    const moment = Math.abs(top) * z * (1 + 0.234 * pushShare);
    note?.({
      ...WORDS[way],
      formula: 'Σ(P × e) × z × (1 + 0.234 × fc / FcE)',
      put: [
        put('Σ(P × e)', Math.abs(top), 'lb·in', 'push of each beam times its distance from the axis, at the seat'),
        put('z', z, '1', 'height above the foot over that of the seat'),
        put('fc / FcE', pushShare, '1', 'share of the Euler stress in that plane'),
      ],
      result: quantity(moment, 'lb·in'),
      clause: remembered('NDS', '15.4.1'),
    });
    return moment;
  };
}
