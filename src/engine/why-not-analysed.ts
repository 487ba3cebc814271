import type { LineMembers } from './frame/line-mesh.ts';
import type { LineGeometry } from './geometry/shelter.ts';
import type { Givens } from './givens.ts';
import { whyStripNotWeighed } from './loads/dead-pieces.ts';
import { message, type Message } from './message.ts';

export type Blocked = { readonly status: 'notGiven' | 'outside'; readonly reason: Message };

/** A member without wood, values or weight makes the forces of the whole line unknown. */
export function whyNotAnalysed(givens: Givens, members: LineMembers): Blocked | null {
  if (members.posts.length === 0)
    return { status: 'notGiven', reason: message('lineWithoutPosts', { line: members.line.label }) };
  const unknown = whyMembersUnknown(givens, members);
  if (unknown) return unknown;
  const unweighed = whyRoofNotWeighed(givens, members.line) ?? whyAcrossNotWeighed(givens, members);
  return unweighed && { status: 'notGiven', reason: unweighed };
}

/** Why the forces in a frame of these members are not known; null where they are. */
export function whyMembersUnknown(givens: Givens, members: LineMembers): Blocked | null {
  for (const member of [...members.beams, ...members.posts, ...members.braces]) {
    if (!member.stick) return { status: 'notGiven', reason: message('memberNotGiven', { member: member.label }) };
    const answer = givens.materials.of(member.id);
    if (!answer.ok && member.stick.kind !== 'typed') return { status: answer.status, reason: answer.reason };
    const weight = givens.weights.missing.get(member.id);
    if (weight) return { status: 'notGiven', reason: weight };
  }
  return null;
}

/** Tie logs and braces across weigh on the posts that they join. */
function whyAcrossNotWeighed({ shelter, weights }: Givens, { posts }: LineMembers): Message | null {
  const stands = (postId: string): boolean => posts.some((p) => p.id === postId);
  const across = [
    ...shelter.ties.filter((t) => stands(t.fromPostId) || stands(t.toPostId)),
    ...shelter.braces.filter((b) => b.plane === 'across' && stands(b.postId)),
  ];
  const unknown = across.find((m) => !m.stick || weights.missing.has(m.id));
  return unknown ? (weights.missing.get(unknown.id) ?? message('memberNotGiven', { member: unknown.label })) : null;
}

/** Why the weight of what lies on a line is not known: its rafters, their purlins, its strip; null when it is. */
function whyRoofNotWeighed({ project, shelter, weights }: Givens, { id, label }: LineGeometry): Message | null {
  for (const plane of project.roofPlanes.filter((p) => p.onLines.includes(id))) {
    const held: readonly string[] = plane.dead.by === 'total' ? plane.dead.includes : [];
    const lying = [
      ...(held.includes('rafters') ? [] : shelter.rafters),
      ...(held.includes('purlins') ? [] : shelter.purlins),
    ].filter((m) => m.plane === plane.id);
    for (const member of lying) {
      if (!member.stick) return message('memberNotGiven', { member: member.label });
      const missing = weights.missing.get(member.id);
      if (missing) return missing;
    }
  }
  return whyStripNotWeighed(project, id, label);
}
