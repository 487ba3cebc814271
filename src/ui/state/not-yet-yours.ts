import { movePost } from '../../engine/project/edits/posts.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { Project } from '../../engine/project/model.ts';
import { valueAt } from './value-at.ts';

/** One field laid over; a value of a new shelter that is touched becomes the person's own. */
export function setAtTouched(project: Project, path: string, value: unknown): Project {
  const next = withoutOldGiver(laidOver(project, path, value), project, path);
  const left = next.notYetYours.filter((each) => each !== path && !each.startsWith(`${path}.`));
  return left.length === next.notYetYours.length ? next : { ...next, notYetYours: left };
}

/** Where a post stands along its line: as when it is dragged, what must go along goes along. */
const PLACE_OF_MEMBER = /^members\[([^\]]+)\]\.xIn$/;

function laidOver(project: Project, path: string, value: unknown): Project {
  const id = PLACE_OF_MEMBER.exec(path)?.[1];
  const post = project.members.find((member) => member.id === id && member.role === 'post');
  return post && typeof value === 'number' ? movePost(project, post.id, value) : setAt(project, path, value);
}

/** A value of the site or the code that somebody gave, typed over: nobody has given the new one yet. */
const GIVEN_VALUE = /^((?:site|code)\..+)\.value$/;

function withoutOldGiver(next: Project, before: Project, path: string): Project {
  const given = GIVEN_VALUE.exec(path)?.[1];
  if (given === undefined || valueAt(next, path) === valueAt(before, path)) return next;
  return setAt(setAt(next, `${given}.givenBy`, 'guess'), `${given}.date`, null);
}
