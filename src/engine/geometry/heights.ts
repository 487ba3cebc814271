import type { FrameLine, Project, SupportLine } from '../project/model.ts';
import type { Fault } from '../message.ts';
import { message } from '../message.ts';
import { between, type BeamShape } from './beam-shape.ts';

/**
 * Level of the rafter seat on every line. Exactly one line of a connected roof carries a height, the rest follow from
 * the rises of the planes that lie on them.
 */
export function bearingLevels(
  project: Project,
  shapes: ReadonlyMap<string, readonly BeamShape[]>,
): { readonly levels: ReadonlyMap<string, number>; readonly faults: readonly Fault[] } {
  const levels = new Map<string, number>();
  for (const line of project.supportLines) {
    if (line.height) levels.set(line.id, bearingFromHeight(project, line, shapes.get(line.id) ?? []));
  }
  const y = new Map(project.supportLines.map((l) => [l.id, l.yIn]));
  for (let round = 0; round < project.roofPlanes.length + 1; round++) {
    for (const plane of project.roofPlanes) {
      const known = plane.onLines.find((id) => levels.has(id));
      if (known === undefined) continue;
      const high = y.get(plane.onLines[0]!) ?? 0;
      const fall = (id: string) => (plane.risePer12 / 12) * Math.abs((y.get(id) ?? 0) - high);
      const highLevel = levels.get(known)! + fall(known);
      for (const id of plane.onLines) if (!levels.has(id)) levels.set(id, highLevel - fall(id));
    }
  }
  const faults = project.supportLines
    .filter((l) => !levels.has(l.id))
    .map((l) => ({ path: `supportLines[${l.id}].height`, ...message('lineWithoutHeight', { line: l.id }) }));
  return { levels, faults };
}

/** Bearing level of a line that carries a height; measured at its first post where the beam tapers. */
function bearingFromHeight(project: Project, line: SupportLine, shapes: readonly BeamShape[]): number {
  const height = line.height!;
  if (height.of === 'bearing' || line.kind === 'ledger' || shapes.length === 0) return height.zIn;
  const firstPostX = Math.min(
    ...project.members.flatMap((m) => (m.role === 'post' && m.line === line.id ? [m.xIn] : [])),
  );
  const over = shapes.find((s) => s.member.fromXIn <= firstPostX && firstPostX <= s.member.toXIn) ?? shapes[0]!;
  const level = between(over.stations, firstPostX, (s) => (height.of === 'beamAxis' ? s.axisIn : s.undersideIn));
  return height.zIn - level + bearingAboveLevelEdge(line, shapes);
}

/** From the line's level edge up to the rafter seat: highest beam top over the whole line, plus the strip [in]. */
export function bearingAboveLevelEdge(line: FrameLine, shapes: readonly BeamShape[]): number {
  const tops = shapes.flatMap((s) => s.stations.map((p) => p.topIn));
  return (tops.length > 0 ? Math.max(...tops) : 0) + (line.strip?.thicknessIn ?? 0);
}
