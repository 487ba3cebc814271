import type { Group, Project } from '../model.ts';

/** Paths of what a new shelter took from its template: sizes, wood, pitch, covering, heights. Each is the person's once touched. */
export function notYetYours(project: Project): readonly string[] {
  return [
    ...project.woods.map(({ id }) => `woods[${id}].species`),
    ...project.logs.flatMap(({ id, stations }) => stations.map((_, i) => `logs[${id}].stations[${i}].diameterIn`)),
    ...project.groups.flatMap(traitsToChoose),
    ...project.roofPlanes.flatMap(({ id }) => [
      `roofPlanes[${id}].risePer12`,
      `roofPlanes[${id}].covering.kind`,
      `roofPlanes[${id}].dead.layers[0].heavyPsf`,
      `roofPlanes[${id}].dead.layers[0].lightPsf`,
    ]),
    ...project.supportLines.filter(({ height }) => height !== null).map(({ id }) => `supportLines[${id}].height.zIn`),
    ...project.members
      .filter(({ role }) => role === 'post')
      .flatMap(({ id }) => [`members[${id}].pierTopZIn`, `members[${id}].gradeZIn`]),
  ];
}

function traitsToChoose(group: Group): readonly string[] {
  const at = (...fields: readonly string[]): readonly string[] => fields.map((field) => `groups[${group.id}].${field}`);
  switch (group.role) {
    case 'beam':
      return at('seat.depthIn');
    case 'post':
      return at('foot.shaft.acrossIn', 'foot.shaft.lengthIn');
    case 'brace':
      return at('runIn', 'dropIn');
    case 'rafter':
    case 'purlin':
      return at('stock.breadthIn', 'stock.depthIn', 'stock.species', 'stock.grade');
    case 'tie':
      return [];
  }
}
