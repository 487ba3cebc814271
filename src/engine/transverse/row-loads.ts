import type { RowGeometry } from '../geometry/rows.ts';
import type { PostGeometry, Shelter, TieGeometry } from '../geometry/shelter.ts';
import type { Givens } from '../givens.ts';
import { emptyLineCase, type DeadPiece, type LineCase } from '../loads/cases.ts';
import { braceWeight } from '../loads/dead-pieces.ts';
import type { TwoWeights } from '../loads/weights.ts';
import type { PushAcross, PushesAcross } from './push-across.ts';

/**
 * Share of a line's push across that comes to each of its posts in a frame: half way to the next such posts and out to the
 * line's ends. No sheet shares the push between rows.
 * @returns by post id, one in sum for each line
 * @source OWN: by length of line
 */
export function sharesOfLines(shelter: Shelter, rows: readonly RowGeometry[]): ReadonlyMap<string, number> {
  const inFrames = rows.flatMap((row) => row.posts);
  return new Map(
    shelter.lines.flatMap((line) => {
      const posts = inFrames.filter((p) => p.line === line.id).toSorted((a, b) => a.xIn - b.xIn);
      return posts.map((post, i) => {
        const [before, after] = [posts[i - 1], posts[i + 1]];
        const from = before ? (before.xIn + post.xIn) / 2 : line.fromXIn;
        const to = after ? (post.xIn + after.xIn) / 2 : line.toXIn;
        return [post.id, (to - from) / (line.toXIn - line.fromXIn)] as const;
      });
    }),
  );
}

/**
 * A push across as it comes to the posts of one row: its share at beam level, wind on the posts themselves, goods.
 * @param framed  its posts as they stand in the frame
 */
export function pushOnRow(
  row: RowGeometry,
  { windOn }: PushesAcross,
  push: PushAcross,
  shareOf: ReadonlyMap<string, number>,
  framed: readonly PostGeometry[],
): LineCase {
  return {
    ...emptyLineCase(push.id),
    atPosts: row.posts.map((post) => ({
      postId: post.id,
      zIn: post.axisZIn,
      downLb: 0,
      alongLb: shareOf.get(post.id)! * (push.atBeamLb.get(post.line) ?? 0),
    })),
    onPosts: framed.flatMap((post) => {
      const { postsLb, goodsLb } = windOn(post.line);
      const forceLb = push.windTimes * ((postsLb.get(post.id) ?? 0) + shareOf.get(post.id)! * goodsLb);
      return forceLb === 0 ? [] : [spreadOver(post, forceLb)];
    }),
  };
}

/** Over the whole height of the frame: what is pressed at its lower part pushes higher (safe side). */
const spreadOver = (post: PostGeometry, forceLb: number): LineCase['onPosts'][number] => ({
  postId: post.id,
  footDownLbPerIn: 0,
  topDownLbPerIn: 0,
  alongLbPerIn: forceLb / (post.axisZIn - post.footZIn),
});

/** What presses on each post from its own line in one combination, put on its top: it makes the frame sway more. */
export const pressedRow = (row: RowGeometry, caseId: string, pushOf: (post: PostGeometry) => number): LineCase => ({
  ...emptyLineCase(caseId),
  atPosts: row.posts.map((post) => ({ postId: post.id, zIn: post.axisZIn, downLb: pushOf(post), alongLb: 0 })),
});

const PROFILE_STEP_IN = 12;

/** Own weight of what runs across: each tie log, and the braces together. */
export function deadOfRow({ project, weights }: Givens, row: RowGeometry): readonly DeadPiece[] {
  const piece = (name: string, caseOf: (weight: keyof TwoWeights) => Partial<LineCase>): DeadPiece => ({
    piece: name,
    heavy: { ...emptyLineCase(`dead-heavy-${name}`), ...caseOf('heavy') },
    light: { ...emptyLineCase(`dead-light-${name}`), ...caseOf('light') },
  });
  return [
    ...row.ties.map((tie) =>
      piece(tie.label, (weight) => ({
        onBeam: placesOf(tie).map((xIn) => ({ xIn, downLbPerIn: weights.of(tie.id)(xIn - tie.fromYIn)[weight] })),
      })),
    ),
    piece('braces', (weight) => ({
      onBraces: row.braces.map((b) => ({
        braceId: b.id,
        downLb: braceWeight(project, weights, b)[weight],
        alongLb: 0,
      })),
    })),
  ];
}

function placesOf({ fromYIn, toYIn }: TieGeometry): readonly number[] {
  const n = Math.max(1, Math.ceil((toYIn - fromYIn) / PROFILE_STEP_IN));
  return Array.from({ length: n + 1 }, (_, i) => fromYIn + ((toYIn - fromYIn) * i) / n);
}
