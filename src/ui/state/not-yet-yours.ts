import { setAt } from '../../engine/project/edits/set-at.ts';
import type { Project } from '../../engine/project/model.ts';

/** One field laid over; a value of a new shelter that is touched becomes the person's own. */
export function setAtTouched(project: Project, path: string, value: unknown): Project {
  const next = setAt(project, path, value);
  const left = next.notYetYours.filter((each) => each !== path && !each.startsWith(`${path}.`));
  return left.length === next.notYetYours.length ? next : { ...next, notYetYours: left };
}
