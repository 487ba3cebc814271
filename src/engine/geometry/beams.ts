import type { FrameLine, Project } from '../project/model.ts';
import { bearingAboveLevelEdge } from './heights.ts';
import type { BeamShape } from './beam-shape.ts';
import type { BeamGeometry, CutGeometry } from './shelter.ts';

/** Beams of a line at their height, with shims under the strip and the cuts the person drew on them. */
export function placeBeams(
  project: Project,
  line: FrameLine,
  label: string,
  bearingZIn: number,
  shapes: readonly BeamShape[],
): readonly BeamGeometry[] {
  const levelEdgeZ = bearingZIn - bearingAboveLevelEdge(line, shapes);
  const highestTop = Math.max(...shapes.flatMap((s) => s.stations.map((p) => p.topIn)), -Infinity);
  return shapes.map((shape, i) => ({
    id: shape.member.id,
    line: line.id,
    label: shapes.length === 1 ? `beam ${label}` : `beam ${label}${String.fromCharCode(97 + i)}`,
    fromXIn: shape.member.fromXIn,
    toXIn: shape.member.toXIn,
    stick: shape.stick,
    stations: shape.stations.map((p) => ({
      xIn: p.xIn,
      diameterIn: p.diameterIn,
      axisZIn: levelEdgeZ + p.axisIn,
      topZIn: levelEdgeZ + p.topIn,
      undersideZIn: levelEdgeZ + p.undersideIn,
      shimIn: highestTop - p.topIn,
    })),
    cuts: handCuts(project, shape.member.id),
  }));
}

function handCuts(project: Project, beamId: string): readonly CutGeometry[] {
  return project.cuts
    .filter((c) => c.member === beamId)
    .map((c) => ({
      id: c.id,
      kind: c.kind,
      madeBy: 'hand' as const,
      atXIn: c.centreIn,
      lengthIn: c.lengthIn,
      depthIn: c.depthIn,
      angleDeg: c.angleDeg,
    }));
}

/** Cuts that geometry adds: a seat flat over every post, a housing where a brace is let in. */
export function withJointCuts(beam: BeamGeometry, cuts: readonly CutGeometry[]): BeamGeometry {
  return { ...beam, cuts: [...beam.cuts, ...cuts] };
}
