import type { Id, Member, MemberOf, NewId, Project } from '../model.ts';
import { membersOf } from '../traits.ts';

/** Posts whose axes are no farther apart along the lines than this may be joined by a tie [in]; as a tie is asked to be. */
const SQUARE_ACROSS_IN = 1;
/** How a new frame across starts: below the beams' axes, and a brace that leaves room to walk under [in]. */
const START = { downIn: 18, runIn: 30, dropIn: 30 } as const;
/** A brace runs over no more than this share of the way between its posts. */
const MOST_OF_BAY = 1 / 4;

/**
 * The project with a tie log between every two posts of neighbouring lines that stand square across from one another and have
 * none, a brace under each of its ends, and frames across named as what holds where nothing was. What the logs are made of is
 * left to be said; braces are made as those along the lines.
 */
export function joinRows(project: Project, newId: NewId): Project {
  const pairs = pairsToJoin(project);
  if (pairs.length === 0) return project;
  const ties = project.groups.find((g) => g.role === 'tie') ?? {
    id: newId('ties'),
    role: 'tie' as const,
    stock: null,
    downIn: START.downIn,
    ends: 'between' as const,
  };
  const along = project.groups.find((g) => g.role === 'brace');
  const shortestIn = Math.min(...pairs.map(({ awayIn }) => awayIn));
  const braces = {
    id: newId('braces-across'),
    role: 'brace' as const,
    stock: along?.stock ?? null,
    runIn: Math.min(START.runIn, shortestIn * MOST_OF_BAY),
    dropIn: START.dropIn,
    // a housing would weaken the tie where the sway stretches it: the top end is saddled to the whole log
    ends: { post: { kind: 'housed' as const, depthIn: 1 }, top: { kind: 'coped' as const, depthIn: 0 } },
  };
  const members = pairs.flatMap(({ near, far }): Member[] => {
    const tie = newId('tie');
    const brace = (post: Id, side: 'plus' | 'minus'): Member => ({
      id: newId('brace'),
      role: 'brace',
      group: braces.id,
      post,
      to: tie,
      side,
    });
    return [
      { id: tie, role: 'tie', group: ties.id, fromPost: near.id, toPost: far.id, pastFromIn: 0, pastToIn: 0 },
      brace(near.id, 'plus'),
      brace(far.id, 'minus'),
    ];
  });
  const { across } = project.lateral;
  const { defaults } = project.joints;
  return {
    ...project,
    groups: [...project.groups, ...(project.groups.includes(ties) ? [] : [ties]), braces],
    members: [...project.members, ...members],
    lateral: across.some(({ by }) => by !== null)
      ? project.lateral
      : { ...project.lateral, across: [{ by: 'transverseFrame' }] },
    joints: defaults.some(({ kind }) => kind === 'tiePost')
      ? project.joints
      : { ...project.joints, defaults: [...defaults, { kind: 'tiePost', capacity: null }] },
  };
}

/** True where a tie log could join two posts that none joins yet. */
export const canJoinRows = (project: Project): boolean => pairsToJoin(project).length > 0;

interface Pair {
  /** the post at the smaller y */
  readonly near: MemberOf<'post'>;
  readonly far: MemberOf<'post'>;
  readonly awayIn: number;
}

function pairsToJoin(project: Project): readonly Pair[] {
  const frames = project.supportLines.filter((l) => l.kind === 'frame').toSorted((a, b) => a.yIn - b.yIn);
  const posts = membersOf(project, 'post');
  const isTied = (a: Id, b: Id): boolean =>
    membersOf(project, 'tie').some((t) => [t.fromPost, t.toPost].includes(a) && [t.fromPost, t.toPost].includes(b));
  return frames.slice(1).flatMap((line, i) => {
    const before = frames[i]!;
    return posts
      .filter((p) => p.line === before.id)
      .flatMap((near): Pair[] => {
        const far = posts.find((p) => p.line === line.id && Math.abs(p.xIn - near.xIn) <= SQUARE_ACROSS_IN);
        return far && !isTied(near.id, far.id) ? [{ near, far, awayIn: line.yIn - before.yIn }] : [];
      });
  });
}
