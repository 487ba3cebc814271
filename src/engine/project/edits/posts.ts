import { MisuseError } from '../../errors.ts';
import type { Id, Member, Project } from '../model.ts';
import { membersOf } from '../traits.ts';
import { finite, memberOf } from './find.ts';

/**
 * The project with a post moved along its line, and every post that tie logs join to it moved as far on its own: a tie lies
 * square to the lines. Where two beams meet over a post their ends go with it; nothing else moves.
 * @param xIn  new place of its axis [in]
 * @throws MisuseError  if there is no such post or the place is not finite
 */
export function movePost(project: Project, postId: Id, xIn: number): Project {
  finite('xIn', xIn);
  const from = memberOf(project, 'post', postId).xIn;
  return rowOf(project, postId).reduce(
    (moved, id) => moveAlone(moved, id, xIn + (memberOf(project, 'post', id).xIn - from)),
    project,
  );
}

/** The posts that tie logs join, one to the next, this one with them. */
function rowOf(project: Project, postId: Id): readonly Id[] {
  const row = new Set([postId]);
  const ties = membersOf(project, 'tie');
  for (const post of row)
    for (const { fromPost, toPost } of ties) {
      if (fromPost === post) row.add(toPost);
      if (toPost === post) row.add(fromPost);
    }
  return [...row];
}

function moveAlone(project: Project, postId: Id, xIn: number): Project {
  const post = memberOf(project, 'post', postId);
  const beams = membersOf(project, 'beam').filter((beam) => beam.line === post.line);
  const isSplice = beams.some((beam) => beam.toXIn === post.xIn) && beams.some((beam) => beam.fromXIn === post.xIn);
  const moved = (member: Member): Member => {
    if (member.id === postId && member.role === 'post') return { ...member, xIn };
    if (!isSplice || member.role !== 'beam' || member.line !== post.line) return member;
    if (member.fromXIn === post.xIn) return { ...member, fromXIn: xIn };
    return member.toXIn === post.xIn ? { ...member, toXIn: xIn } : member;
  };
  return { ...project, members: project.members.map(moved) };
}

/**
 * The project with one more post, like the nearest one of its line: same group, pier top and ground. Joints and braces
 * are left as they are.
 * @throws MisuseError  if the line has no post to be like, or the place is not finite
 */
export function addPost(project: Project, id: Id, line: Id, xIn: number): Project {
  finite('xIn', xIn);
  const posts = membersOf(project, 'post').filter((post) => post.line === line);
  const [nearest] = [...posts].sort((a, b) => Math.abs(a.xIn - xIn) - Math.abs(b.xIn - xIn));
  if (!nearest) throw new MisuseError('line', line, 'a frame line with a post');
  return { ...project, members: [...project.members, { ...nearest, id, xIn }] };
}
