import type { Id } from '../project/model.ts';
import type { BraceGeometry, PostGeometry, RafterGeometry, Shelter, TieGeometry } from './shelter.ts';

/** Posts of different lines that tie logs join across, or that stand at one x without any. */
export interface RowGeometry {
  /** no id of the file can look like it */
  readonly id: Id;
  /** row A1 B1 */
  readonly label: string;
  readonly xIn: number;
  /** ascending y */
  readonly posts: readonly PostGeometry[];
  readonly ties: readonly TieGeometry[];
  /** that braces of its posts run to */
  readonly rafters: readonly RafterGeometry[];
  /** from its posts to its ties and rafters */
  readonly braces: readonly BraceGeometry[];
}

/** Posts that are no farther apart along the lines than this stand at one x [in]; as ties are asked to be. */
const ONE_ROW_IN = 1;

/** Every row across the lines: first those that ties join, then what is left by where it stands. Each post is in one. */
export function rowsAcross({
  posts,
  ties,
  braces,
  rafters,
}: Pick<Shelter, 'posts' | 'ties' | 'braces' | 'rafters'>): readonly RowGeometry[] {
  const tied = joinedByTies(posts, ties);
  const loose = posts.filter((p) => !tied.some((group) => group.includes(p))).toSorted((a, b) => a.xIn - b.xIn);
  const standing = loose.reduce<PostGeometry[][]>((rows, post) => {
    const last = rows.at(-1);
    if (last && post.xIn - last[0]!.xIn <= ONE_ROW_IN) last.push(post);
    else rows.push([post]);
    return rows;
  }, []);
  return [...tied, ...standing]
    .map((group) => rowOf(group, { ties, braces, rafters }))
    .toSorted((a, b) => a.xIn - b.xIn || a.id.localeCompare(b.id));
}

function joinedByTies(posts: readonly PostGeometry[], ties: readonly TieGeometry[]): readonly PostGeometry[][] {
  let groups: PostGeometry[][] = [];
  for (const { fromPostId, toPostId } of ties) {
    const ends = posts.filter((p) => p.id === fromPostId || p.id === toPostId);
    const joined = groups.filter((group) => ends.some((p) => group.includes(p)));
    groups = [...groups.filter((group) => !joined.includes(group)), [...new Set([...joined.flat(), ...ends])]];
  }
  return groups;
}

function rowOf(
  group: readonly PostGeometry[],
  { ties, braces, rafters }: Pick<Shelter, 'ties' | 'braces' | 'rafters'>,
): RowGeometry {
  const posts = group.toSorted((a, b) => a.yIn - b.yIn || a.id.localeCompare(b.id));
  const ids = new Set(posts.map((p) => p.id));
  const own = ties.filter((t) => ids.has(t.fromPostId)).toSorted((a, b) => a.fromYIn - b.fromYIn);
  const braced = rafters.filter((r) => braces.some((b) => b.toId === r.id && ids.has(b.postId)));
  const reaches = new Set([...own, ...braced].map(({ id }) => id));
  return {
    id: `row:${posts[0]!.id}`,
    label: `row ${posts.map((p) => p.label).join(' ')}`,
    xIn: posts[0]!.xIn,
    posts,
    ties: own,
    rafters: braced,
    braces: braces.filter((b) => ids.has(b.postId) && reaches.has(b.toId)),
  };
}
