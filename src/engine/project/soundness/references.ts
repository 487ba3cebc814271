import { type Fault, fault } from '../../message.ts';
import type { Id, Member, Project } from '../model.ts';
import { memberAt, planeAt, stockPlaces } from './at.ts';

interface Reference {
  readonly path: string;
  readonly id: Id;
  /** what it should name, in words */
  readonly of: string;
  readonly among: ReadonlySet<Id>;
}

/**
 * Every id that is pointed at exists and is of the right kind. Joint keys, marks of what is not yet yours and records
 * of what was built may outlive their member: they are kept, not refused.
 */
export function referenceFaults(project: Project): readonly Fault[] {
  const references = [...memberReferences(project), ...roofReferences(project), ...otherReferences(project)];
  return [
    ...references
      .filter(({ id, among }) => !among.has(id))
      .map(({ path, id, of }) => fault(path, 'unknownReference', { id, of })),
    ...groupFaults(project),
  ];
}

const idsOf = (list: readonly { readonly id: Id }[]): ReadonlySet<Id> => new Set(list.map(({ id }) => id));
const idsOfRole = (project: Project, ...roles: readonly Member['role'][]): ReadonlySet<Id> =>
  idsOf(project.members.filter(({ role }) => roles.includes(role)));
const idsOfLines = (project: Project, kind: 'frame' | 'ledger'): ReadonlySet<Id> =>
  idsOf(project.supportLines.filter((line) => line.kind === kind));

function groupFaults(project: Project): readonly Fault[] {
  return project.members.flatMap((member) => {
    const group = project.groups.find(({ id }) => id === member.group);
    const path = memberAt(member.id, 'group');
    if (!group) return [fault(path, 'unknownReference', { id: member.group, of: 'a group' })];
    if (group.role === member.role) return [];
    return [fault(path, 'groupOfOtherRole', { group: group.id, got: group.role, role: member.role })];
  });
}

function memberReferences(project: Project): readonly Reference[] {
  const frameLines = idsOfLines(project, 'frame');
  const planes = idsOf(project.roofPlanes);
  const posts = idsOfRole(project, 'post');
  const braceTops = new Set(['line', ...idsOfRole(project, 'tie', 'rafter')]);
  return project.members.flatMap((member): readonly Reference[] => {
    const to = (field: string, id: Id, of: string, among: ReadonlySet<Id>): Reference => ({
      path: memberAt(member.id, field),
      id,
      of,
      among,
    });
    switch (member.role) {
      case 'beam':
      case 'post':
        return [to('line', member.line, 'a frame line', frameLines)];
      case 'rafter':
      case 'purlin':
        return [to('plane', member.plane, 'a roof plane', planes)];
      case 'brace':
        return [
          to('post', member.post, 'a post', posts),
          to('to', member.to, 'the word line, a tie or a rafter', braceTops),
        ];
      case 'tie':
        return [to('fromPost', member.fromPost, 'a post', posts), to('toPost', member.toPost, 'a post', posts)];
    }
  });
}

function roofReferences(project: Project): readonly Reference[] {
  const lines = idsOf(project.supportLines);
  return project.roofPlanes.flatMap((plane) => [
    ...plane.onLines.map((id, i) => ({
      path: planeAt(plane.id, `onLines[${i}]`),
      id,
      of: 'a support line',
      among: lines,
    })),
    {
      path: planeAt(plane.id, 'horizontalHeldBy'),
      id: plane.horizontalHeldBy,
      of: 'worse, each-square or a line that this plane lies on',
      among: new Set(['worse', 'each-square', ...plane.onLines]),
    },
  ]);
}

function otherReferences(project: Project): readonly Reference[] {
  const woods = idsOf(project.woods);
  const logs = idsOf(project.logs);
  const members = idsOf(project.members);
  const lines = idsOf(project.supportLines);
  const { neighbour, goods } = project.surroundings;
  const ledger = neighbour?.ledgerLine ?? null;
  const measured = new Set([...lines, ...members, ...idsOf(project.groups), ...idsOf(project.roofPlanes)]);
  return [
    ...project.logs.map(({ id, woodId }) => ({ path: `logs[${id}].woodId`, id: woodId, of: 'a wood', among: woods })),
    ...stockPlaces(project).flatMap(({ path, stock }) =>
      stock.kind === 'log' ? [{ path: `${path}.logId`, id: stock.logId, of: 'a log', among: logs }] : [],
    ),
    ...project.cuts.map(({ id, member }) => ({
      path: `cuts[${id}].member`,
      id: member,
      of: 'a member',
      among: members,
    })),
    ...(ledger === null
      ? []
      : [
          {
            path: 'surroundings.neighbour.ledgerLine',
            id: ledger,
            of: 'a ledger',
            among: idsOfLines(project, 'ledger'),
          },
        ]),
    ...(goods?.leansOnLines ?? []).map((id, i) => ({
      path: `surroundings.goods.leansOnLines[${i}]`,
      id,
      of: 'a support line',
      among: lines,
    })),
    ...project.instead.flatMap(({ of: id }, i) =>
      id === null
        ? []
        : [{ path: `instead[${i}].of`, id, of: 'a line, a roof plane, a group or a member', among: measured }],
    ),
    ...project.ownLoads.flatMap(({ id, where }): readonly Reference[] => {
      const path = `ownLoads[${id}].where`;
      if (where.on === 'member') return [{ path: `${path}.member`, id: where.member, of: 'a member', among: members }];
      if (where.on !== 'plane') return [{ path: `${path}.line`, id: where.line, of: 'a support line', among: lines }];
      return [{ path: `${path}.plane`, id: where.plane, of: 'a roof plane', among: idsOf(project.roofPlanes) }];
    }),
    ...(['along', 'across'] as const).flatMap((way) =>
      project.lateral[way].flatMap((held, i): readonly Reference[] => [
        ...(held.lines ?? []).map((id, k) => ({
          path: `lateral.${way}[${i}].lines[${k}]`,
          id,
          of: held.by === 'kneeBraces' ? 'a frame line' : 'a support line',
          among: held.by === 'kneeBraces' ? idsOfLines(project, 'frame') : lines,
        })),
        ...(held.posts ?? []).map((id, k) => ({
          path: `lateral.${way}[${i}].posts[${k}]`,
          id,
          of: 'a post',
          among: idsOfRole(project, 'post'),
        })),
      ]),
    ),
  ];
}
