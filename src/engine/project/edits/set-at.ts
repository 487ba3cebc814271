import { MisuseError } from '../../errors.ts';
import type { Project } from '../model.ts';
import { readPath, type Step } from '../paths.ts';
import { projectSchema } from '../schema.ts';

/**
 * The project with one field set, found by its path; `undefined` takes an optional field away. The value itself is not
 * judged here: what comes out goes through `parseProject` like everything that a person typed.
 * @throws MisuseError  if no such field exists in a project file, or the path leads through something not given
 */
export function setAt(project: Project, path: string, value: unknown): Project {
  const steps = readPath(project, path);
  if (!steps) throw new MisuseError('path', path, 'a path of the project');
  const edited = setIn(project, steps, value);
  if (edited === null) throw new MisuseError('path', path, 'a path through fields that are given');
  const issues = projectSchema.safeParse(edited).error?.issues ?? [];
  const strange = issues.find((issue) => issue.code === 'unrecognized_keys' && leadsTo(steps, issue.path, issue.keys));
  if (strange) throw new MisuseError('path', path, 'a field that the format knows');
  return edited as Project;
}

/** A changed copy, everything beside the path shared with the old one; null where the path meets no object. */
function setIn(here: unknown, steps: readonly Step[], value: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (Array.isArray(here)) {
    const inside = setIn(here[Number(step)], rest, value);
    return inside === null && rest.length > 0 ? null : here.with(Number(step), inside);
  }
  if (typeof here !== 'object' || here === null) return null;
  const isOwn = Object.hasOwn(here, step);
  const current = isOwn ? (here as Readonly<Record<Step, unknown>>)[step] : rest.length > 0 ? {} : undefined;
  const inside = setIn(current, rest, value);
  if (inside === null && rest.length > 0) return null;
  const others = Object.entries(here).filter(([key]) => key !== step);
  const saysNothing = inside === undefined || (isEmpty(inside) && (step === 'own' || !isOwn));
  if (saysNothing) return Object.fromEntries(others);
  if (isOwn) return { ...here, [step]: inside };
  return Object.fromEntries([...others, [step, inside]]);
}

const isEmpty = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && Object.keys(value).length === 0;

const leadsTo = (steps: readonly Step[], at: readonly PropertyKey[], keys: readonly string[]): boolean =>
  at.every((key, i) => key === steps[i]) && keys.includes(String(steps[at.length]));
