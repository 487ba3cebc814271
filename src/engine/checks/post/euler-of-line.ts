import { clause } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import type { DesignValues } from '../../material/values.ts';
import { put, type Note } from '../../note.ts';
import { insteadOf } from '../../project/instead.ts';
import { quantity } from '../../units.ts';
import type { LineCheckContext } from '../line-context.ts';
import { alongSystem } from '../sway/sway-checks.ts';
import { eulerStress } from '../wood/column.ts';
import type { ColumnPlane } from './column.ts';

/** Euler stress of a post in the plane of its line, by its greatest push in that response [lb] -> [psi]. */
export type EulerOfLine = (r: LineResponse, pushLb: number, note?: Note) => number;

/** A mode that moves a post by less than this share of its farthest movement is not the buckling of that post (own rule). */
const MOVES = 0.1;
/** Stands for none at all where the line moves under no load: the post then fails by far [psi]. */
const NONE_PSI = 1e-6;

/**
 * Euler stress of a post from the buckling of its whole line: so many times the push of the response as the line stands.
 * A post that only leans on a line which others hold, pinned at both ends without a brace, is a column of its own length; so
 * is one that the lowest mode does not move, while the line does not sway sooner.
 * @returns null where the length by table stands: somebody typed one, or the line does not hold itself
 * @source MECHANICS elastic buckling of the frame; NDS 3.7.1.5 for the column on pins
 * @limits true section properties: the standard's own square of equal area is 4.5 % less stiff than the round it stands for
 */
export function eulerOfLine(
  context: LineCheckContext,
  chain: PostChain,
  along: ColumnPlane,
  areaIn2: number,
  values: DesignValues,
): EulerOfLine | null {
  const { project, line, frame } = context;
  const by = alongSystem(project.lateral.along, line)?.by;
  const isTyped = insteadOf(project, 'effectiveLengthAlongIn', chain.memberId) !== undefined;
  if (isTyped || (by !== 'kneeBraces' && by !== 'embeddedPosts')) return null;
  const { post } = chain;
  const onPins = (note?: Note): number => eulerStress(values.EminPsi, post.seatZIn - post.footZIn, along.sideIn, note);
  const leans = post.foot.fixity.along === 'pinned' && !frame.members.braces.some((b) => b.postId === post.id);
  if (leans) return (_r, _pushLb, note) => onPins(note);
  const place = frame.mesh.posts.indexOf(chain);
  return ({ buckling }, pushLb, note) => {
    if (!buckling) return along.FcEPsi;
    if (!(pushLb > 0)) return Infinity;
    const moves = buckling.envelope.postMoves[place] ?? 1;
    if (moves >= MOVES) return timesPush(buckling.factor, pushLb, areaIn2, 'the line buckles', note);
    const sways = timesPush(buckling.swayFactor, pushLb, areaIn2, 'the line sways', note);
    return Math.min(sways, onPins(note));
  };
}

/**
 * Euler stress of a post across its line, from the buckling of the row that it stands in: of every way in which the row is
 * asked that combination, the one that buckles soonest. A post that this mode hardly moves counts as if it buckled with it
 * (safe side).
 * @returns null where somebody typed a length, or the post stands in no frame across
 * @source MECHANICS elastic buckling of the frame
 */
export function eulerOfRow(
  context: LineCheckContext,
  chain: PostChain,
  across: ColumnPlane,
  areaIn2: number,
): EulerOfLine | null {
  const inRow = context.across?.onPost(chain.memberId);
  const isTyped = insteadOf(context.project, 'effectiveLengthAcrossIn', chain.memberId) !== undefined;
  if (!inRow || isTyped) return null;
  return ({ combination }, pushLb, note) => {
    const factor = inRow.in(combination.id)?.bucklesAt ?? null;
    if (factor === null) return across.FcEPsi;
    return pushLb > 0 ? timesPush(factor, pushLb, areaIn2, 'the frame across buckles', note) : Infinity;
  };
}

function timesPush(factor: number, pushLb: number, areaIn2: number, what: string, note?: Note): number {
  const FcE = Math.max(NONE_PSI, (factor * pushLb) / areaIn2);
  note?.({
    symbol: 'FcE',
    words: 'Euler stress, from the buckling of the whole frame',
    formula: 'λ × P / A',
    put: [
      put('λ', factor, '1', `so many times the loads of this combination until ${what}`),
      put('P', pushLb, 'lb', 'greatest push in the post, first order'),
      put('A', areaIn2, 'in2', 'representative section'),
    ],
    result: quantity(FcE, 'psi'),
    clause: clause('MECHANICS', 'elastic buckling of a plane frame'),
  });
  return FcE;
}
