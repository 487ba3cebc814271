import type { Id, Member, Project } from '../model.ts';
import { finite, memberOf } from './find.ts';

/**
 * The project with the legs of a brace changed where each is written: with the brace if it differs there from its
 * group, else with the group, and then all its braces follow.
 * @param runIn  along the beam, from axis to axis [in]
 * @param dropIn  down the post [in]
 * @throws MisuseError  if there is no such brace or a leg is not finite
 */
export function moveBrace(project: Project, braceId: Id, runIn: number, dropIn: number): Project {
  const { own, group } = memberOf(project, 'brace', braceId);
  const legs = Object.entries({ runIn: finite('runIn', runIn), dropIn: finite('dropIn', dropIn) } as const);
  const isOwn = (leg: string): boolean => own !== undefined && Object.hasOwn(own, leg);
  const ownLegs = Object.fromEntries(legs.filter(([leg]) => isOwn(leg)));
  const sharedLegs = Object.fromEntries(legs.filter(([leg]) => !isOwn(leg)));
  const moved = (member: Member): Member =>
    member.id === braceId && member.role === 'brace' ? { ...member, own: { ...own, ...ownLegs } } : member;
  return {
    ...project,
    members: own ? project.members.map(moved) : project.members,
    groups: project.groups.map((each) => (each.id === group ? { ...each, ...sharedLegs } : each)),
  };
}
