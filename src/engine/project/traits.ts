import { MisuseError } from '../errors.ts';
import type { GroupOf, Log, LogStock, Member, MemberOf, Project, Role, Stock, TraitsOf, Wood } from './model.ts';

const withoutIdAndRole = <R extends Role>({ id: _id, role: _role, ...traits }: GroupOf<R>): TraitsOf<R> => traits;

/** The members of one role, in the order of the file (which has no meaning). */
export const membersOf = <R extends Role>(project: Project, role: R): readonly MemberOf<R>[] =>
  project.members.filter((member): member is MemberOf<R> => member.role === role);

/** The group that says what a member is; undefined when the reference is broken (a fault of the project). */
export const groupOf = <R extends Role>(project: Project, member: MemberOf<R>): GroupOf<R> | undefined =>
  project.groups.find((group): group is GroupOf<R> => group.id === member.group && group.role === member.role);

/**
 * What a member is: the fields of its group, each replaced as a whole by the member's own where it has one.
 * @throws MisuseError  if the member's group does not exist or has another role; a sound project has none such
 */
export function traitsOf<R extends Role>(project: Project, member: MemberOf<R>): TraitsOf<R> {
  const group = groupOf(project, member);
  if (!group) throw new MisuseError('groupOfMember', member.group, `a group of role ${member.role}`);
  return { ...withoutIdAndRole(group), ...withoutUndefined(member.own ?? {}) };
}

/** An own field that holds `undefined` says nothing, so it must not hide the group's. */
const withoutUndefined = <T extends object>(own: T): Partial<T> =>
  Object.fromEntries(Object.entries(own).filter(([, value]) => value !== undefined)) as Partial<T>;

/** What a member is made of; null = not given yet. Throws as {@link traitsOf}. */
export const stockOf = (project: Project, member: Member): Stock | null => traitsOf<Role>(project, member).stock;

export const logOf = (project: Project, stock: LogStock): Log | undefined =>
  project.logs.find((log) => log.id === stock.logId);

export const woodOf = (project: Project, log: Log): Wood | undefined =>
  project.woods.find((wood) => wood.id === log.woodId);
