import type { Group, Log, Member, Project } from '../../engine/project/model.ts';
import { stockOf } from '../../engine/project/traits.ts';
import { valueAt } from '../state/value-at.ts';

export const memberIn = (project: Project, id: string): Member | undefined =>
  project.members.find((member) => member.id === id);

const groupIdOf = (project: Project, memberId: string): string => memberIn(project, memberId)?.group ?? '';

/** Whether a member differs from its group in a field. */
export const isOwn = (project: Project, memberId: string, field: string): boolean =>
  valueAt(project, `members[${memberId}].own.${field}`) !== undefined;

/** Where what holds for a member is written: with the member where it differs, else with its group. */
export const traitPath = (project: Project, memberId: string, field: string): string =>
  isOwn(project, memberId, field)
    ? `members[${memberId}].own.${field}`
    : `groups[${groupIdOf(project, memberId)}].${field}`;

/** How many pieces change with the group's field. */
export function sharersOf(project: Project, memberId: string, field: string): number {
  const group = groupIdOf(project, memberId);
  return project.members.filter((each) => each.group === group && !isOwn(project, each.id, field)).length;
}

/** The log that a member is made of; undefined for sawn sticks and for nothing given. */
export function logUnder(project: Project, memberId: string): Log | undefined {
  const member = memberIn(project, memberId);
  const stock = member ? stockOf(project, member) : null;
  return stock?.kind === 'log' ? project.logs.find(({ id }) => id === stock.logId) : undefined;
}

/** Ids of all members that are made of a log. */
export const membersFromLog = (project: Project, logId: string): readonly string[] =>
  project.members.filter(({ id }) => logUnder(project, id)?.id === logId).map(({ id }) => id);

export const groupsOfRole = <R extends Group['role']>(project: Project, role: R) =>
  project.groups.filter((group): group is Extract<Group, { role: R }> => group.role === role);
