import { MisuseError } from '../../errors.ts';
import type { Id, MemberOf, Project, Role } from '../model.ts';
import { membersOf } from '../traits.ts';

/** The member of that id and role. @throws MisuseError  if there is none */
export function memberOf<R extends Role>(project: Project, role: R, id: Id): MemberOf<R> {
  const member = membersOf(project, role).find((m) => m.id === id);
  if (!member) throw new MisuseError('memberId', id, `a ${role} of the project`);
  return member;
}

/** The value itself where it is a finite number. @throws MisuseError  otherwise */
export function finite(code: string, value: number): number {
  if (!Number.isFinite(value)) throw new MisuseError(code, value, 'a finite number');
  return value;
}
