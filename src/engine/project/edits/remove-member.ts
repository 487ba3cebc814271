import { MisuseError } from '../../errors.ts';
import type { Id, Lateral, Project } from '../model.ts';

/**
 * The project without a member and without what cannot be there without it: braces and ties on a post, braces to a tie
 * or rafter, cuts, own loads, typed values and joints of these, their part in what holds the shelter sideways. Records of what
 * was built are kept.
 * @throws MisuseError  if there is no such member
 */
export function removeMember(project: Project, memberId: Id): Project {
  if (!project.members.some(({ id }) => id === memberId)) {
    throw new MisuseError('memberId', memberId, 'a member of the project');
  }
  const gone = withDependants(project, memberId);
  const { along, across } = project.lateral;
  return {
    ...project,
    members: project.members.filter(({ id }) => !gone.has(id)),
    cuts: project.cuts.filter(({ member }) => !gone.has(member)),
    ownLoads: project.ownLoads.filter(({ where }) => where.on !== 'member' || !gone.has(where.member)),
    instead: project.instead.filter(({ of }) => of === null || !gone.has(of)),
    lateral: { along: along.flatMap(withoutPosts(gone)), across: across.flatMap(withoutPosts(gone)) },
    joints: { ...project.joints, own: project.joints.own.filter(({ key }) => !isJointOf(key, gone)) },
  };
}

/** Keys are the kind of a joint and then the ids that it is told by. */
const isJointOf = (key: string, gone: ReadonlySet<Id>): boolean =>
  key
    .split('/')
    .slice(1)
    .some((id) => gone.has(id));

function withDependants(project: Project, memberId: Id): ReadonlySet<Id> {
  const gone = new Set([memberId]);
  for (const member of project.members) {
    if (member.role === 'tie' && (gone.has(member.fromPost) || gone.has(member.toPost))) gone.add(member.id);
  }
  for (const member of project.members) {
    if (member.role === 'brace' && (gone.has(member.post) || gone.has(member.to))) gone.add(member.id);
  }
  return gone;
}

/** A system that named posts and has lost one of them holds nothing any more: a frame of one post is none. */
const withoutPosts =
  (gone: ReadonlySet<Id>) =>
  (held: Lateral): readonly Lateral[] => {
    if (!held.posts?.some((id) => gone.has(id))) return [held];
    const posts = held.posts.filter((id) => !gone.has(id));
    const isLeft = held.by !== 'transverseFrame' && posts.length > 0;
    return isLeft ? [{ ...held, posts }] : [];
  };
