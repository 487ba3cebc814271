import type { Group, Log, Member, Project, Stock } from '../../engine/project/model.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
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

/** The member's fields written with it, as they are, so that a change does not touch the others. */
export const madeOwn = (project: Project, memberId: string, fields: readonly string[]): Project =>
  fields.reduce(
    (so, field) => setAt(so, `members[${memberId}].own.${field}`, valueAt(so, traitPath(so, memberId, field))),
    project,
  );

/** Back to what the group says. */
export const madeLikeOthers = (project: Project, memberId: string, fields: readonly string[]): Project =>
  fields.reduce((so, field) => setAt(so, `members[${memberId}].own.${field}`, undefined), project);

/** The log that a member is made of; undefined for sawn sticks and for nothing given. */
export function logUnder(project: Project, memberId: string): Log | undefined {
  const member = memberIn(project, memberId);
  const stock = member ? stockOf(project, member) : null;
  return stock?.kind === 'log' ? project.logs.find(({ id }) => id === stock.logId) : undefined;
}

/** Ids of all members that are made of a log. */
export const membersFromLog = (project: Project, logId: string): readonly string[] =>
  project.members.filter(({ id }) => logUnder(project, id)?.id === logId).map(({ id }) => id);

/** A copy of the member's log, for this member alone. */
export function withLogOfItsOwn(project: Project, memberId: string, newLogId: string): Project {
  const member = memberIn(project, memberId);
  const stock = member ? stockOf(project, member) : null;
  const log = logUnder(project, memberId);
  if (stock?.kind !== 'log' || !log) return project;
  const grown = { ...project, logs: [...project.logs, { ...log, id: newLogId }] };
  return setAt(grown, `members[${memberId}].own.stock`, { ...stock, logId: newLogId });
}

/** Another stock for a member, written where its stock is written. */
export const withStock = (project: Project, memberId: string, stock: Stock): Project =>
  setAt(project, traitPath(project, memberId, 'stock'), stock);

export const groupsOfRole = <R extends Group['role']>(project: Project, role: R) =>
  project.groups.filter((group): group is Extract<Group, { role: R }> => group.role === role);
