import { type Fault, fault } from '../../message.ts';
import type { Id, Project } from '../model.ts';
import { writePath } from '../paths.ts';

/** Words that stand where an id may stand, and names that every object already has. */
const isReserved = (id: Id): boolean => ['line', 'each-square', 'worse'].includes(id) || id in {};

interface Named {
  readonly id: Id;
  readonly path: string;
}

function everyId(project: Project): readonly Named[] {
  const { supportLines, roofPlanes, woods, logs, groups, members, cuts, ownLoads } = project;
  const lists = { supportLines, roofPlanes, woods, logs, groups, members, cuts, ownLoads };
  const inLists = Object.entries(lists).flatMap(([name, list]) =>
    list.map((element, i) => ({ id: element.id, path: writePath(project, [name, i, 'id']) })),
  );
  return [{ id: project.title.id, path: 'title.id' }, ...inLists];
}

/** Ids are unique in the whole file, and joint keys and kinds in their lists. */
export function idFaults(project: Project): readonly Fault[] {
  const ids = everyId(project);
  const { defaults, own } = project.joints;
  return [
    ...ids.filter(({ id }) => isReserved(id)).map(({ id, path }) => fault(path, 'idReserved', { id })),
    ...twice(ids, 'idTwice'),
    ...twice(
      defaults.map((joint, i) => ({ id: joint.kind, path: writePath(project, ['joints', 'defaults', i, 'kind']) })),
      'jointTwice',
    ),
    ...twice(
      own.map((joint, i) => ({ id: joint.key, path: writePath(project, ['joints', 'own', i, 'key']) })),
      'jointTwice',
    ),
  ];
}

function twice(named: readonly Named[], code: 'idTwice' | 'jointTwice'): readonly Fault[] {
  const first = new Map<Id, string>();
  return named.flatMap(({ id, path }) => {
    const other = first.get(id);
    if (other !== undefined) return [fault(path, code, { id, other })];
    first.set(id, path);
    return [];
  });
}
