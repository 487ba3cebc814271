import type { Project } from '../../engine/project/model.ts';
import { readPath } from '../../engine/project/paths.ts';

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** What the project holds at a path by id; undefined where there is nothing. */
export function valueAt(project: Project, path: string): unknown {
  const steps = readPath(project, path);
  if (!steps) return undefined;
  return steps.reduce<unknown>(
    (here, step) => (isRecord(here) && Object.hasOwn(here, step) ? here[step] : undefined),
    project,
  );
}

/** Whether the path still leads somewhere: a draft for a post that is gone has no place to stand. */
export const leadsSomewhere = (project: Project, path: string): boolean => readPath(project, path) !== null;
