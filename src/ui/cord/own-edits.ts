import type { Project, Stock } from '../../engine/project/model.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import { stockOf } from '../../engine/project/traits.ts';
import { valueAt } from '../state/value-at.ts';
import { logUnder, memberIn, traitPath } from './own.ts';

/** The member's fields written with it, as they are, so that a change does not touch the others. */
export const madeOwn = (project: Project, memberId: string, fields: readonly string[]): Project =>
  fields.reduce(
    (so, field) => setAt(so, `members[${memberId}].own.${field}`, valueAt(so, traitPath(so, memberId, field))),
    project,
  );

/** Back to what the group says. */
export const madeLikeOthers = (project: Project, memberId: string, fields: readonly string[]): Project =>
  fields.reduce((so, field) => setAt(so, `members[${memberId}].own.${field}`, undefined), project);

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
