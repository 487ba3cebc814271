import { ID_PATTERN, JOINT_KEY_PATTERN } from './name-patterns.ts';

/**
 * Paths by id. `members[post-2].xIn`: the member whose id is post-2. Lists without ids go by place, counted from 0:
 * `logs[log-1].stations[2].diameterIn`. Where an id cannot be used (missing, twice in the list, ill-formed) the place
 * is written `members[#4]`. A name that is not a plain word is quoted: `site["snow load"]`.
 */
export type Step = string | number;

/** The lists whose elements have a name of their own, and the field that holds it. */
const NAME_FIELD: Readonly<Record<string, string>> = {
  supportLines: 'id',
  roofPlanes: 'id',
  woods: 'id',
  logs: 'id',
  groups: 'id',
  members: 'id',
  cuts: 'id',
  ownLoads: 'id',
  defaults: 'kind',
  own: 'key',
};

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The field that names the elements of a list, by the property that holds the list; undefined for a list by place. */
export const nameFieldOf = (list: string): string | undefined =>
  Object.hasOwn(NAME_FIELD, list) ? NAME_FIELD[list] : undefined;

/** What stands at a step of `value`: an element of a list or an own field of an object, else undefined. */
function inside(value: unknown, step: Step): unknown {
  if (Array.isArray(value)) return typeof step === 'number' ? value[step] : undefined;
  return isRecord(value) && Object.hasOwn(value, step) ? value[step] : undefined;
}

const nameOf = (element: unknown, field: string): string | undefined => {
  const name = isRecord(element) ? element[field] : undefined;
  return typeof name === 'string' && (ID_PATTERN.test(name) || JOINT_KEY_PATTERN.test(name)) ? name : undefined;
};

function placeInList(list: readonly unknown[], listName: string, index: number): string {
  const field = nameFieldOf(listName);
  if (field === undefined) return `[${index}]`;
  const name = nameOf(list[index], field);
  const isAlone = name !== undefined && list.filter((element) => nameOf(element, field) === name).length === 1;
  return isAlone ? `[${name}]` : `[#${index}]`;
}

const property = (name: string, isFirst: boolean): string =>
  /^[A-Za-z_$][\w$]*$/.test(name) ? (isFirst ? name : `.${name}`) : `[${JSON.stringify(name)}]`;

/** Writes a path through `root`; total, also where the steps lead past what is there. */
export function writePath(root: unknown, steps: readonly Step[]): string {
  let here = root;
  let listName = '';
  let path = '';
  for (const step of steps) {
    const isPlace = Array.isArray(here) && typeof step === 'number';
    path += isPlace ? placeInList(here as readonly unknown[], listName, step) : property(String(step), path === '');
    here = inside(here, step);
    listName = String(step);
  }
  return path;
}

const TOKEN = /\.?([A-Za-z_$][\w$]*)|\[#(\d+)\]|\[("(?:[^"\\]|\\.)*")\]|\[([^\]#"]+)\]/;

/**
 * Reads a path against `root`: the properties and places to go through, or null when a list has no such element or the
 * path is not well-formed. Properties of objects need not exist (an optional field may be absent).
 */
export function readPath(root: unknown, path: string): readonly Step[] | null {
  const steps: Step[] = [];
  let here = root;
  let listName = '';
  const tokens = new RegExp(TOKEN, 'y');
  while (tokens.lastIndex < path.length) {
    const token = tokens.exec(path);
    if (!token) return null;
    const [, word, place, quoted, name] = token;
    const step = word ?? (quoted ? unquote(quoted) : placeOf(here, listName, place, name));
    if (step === null) return null;
    if (Array.isArray(here) !== (typeof step === 'number')) return null;
    steps.push(step);
    here = inside(here, step);
    listName = String(step);
  }
  return steps.length > 0 ? steps : null;
}

function unquote(quoted: string): string | null {
  try {
    return String(JSON.parse(quoted));
  } catch {
    return null;
  }
}

function placeOf(list: unknown, listName: string, place: string | undefined, name: string | undefined): number | null {
  if (!Array.isArray(list)) return null;
  const field = nameFieldOf(listName);
  const index =
    place !== undefined
      ? Number(place)
      : field !== undefined
        ? list.findIndex((element) => nameOf(element, field) === name)
        : /^\d+$/.test(name ?? '')
          ? Number(name)
          : -1;
  return index >= 0 && index < list.length ? index : null;
}
