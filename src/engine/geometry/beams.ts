import type { FrameLine, Project } from '../project/model.ts';
import { bearingAboveLevelEdge } from './heights.ts';
import type { BeamShape } from './beam-shape.ts';
import type { BeamGeometry, BraceGeometry, CutGeometry } from './shelter.ts';

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

/** Cuts that the person drew on a log that lies. */
export function handCuts(project: Project, beamId: string): readonly CutGeometry[] {
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

/** Housings of braces in a log that lies, in its underside where each brace meets it. */
export const housingCuts = (logId: string, braces: readonly BraceGeometry[]): readonly CutGeometry[] =>
  braces
    .filter((b) => b.toId === logId && b.ends.top.kind !== 'coped' && b.ends.top.depthIn > 0)
    .map((b) => ({
      id: `brace-${b.id}`,
      kind: b.ends.top.kind === 'housed' ? ('housing' as const) : ('flat' as const),
      madeBy: 'brace' as const,
      atXIn: b.topPoint.xIn,
      lengthIn: braceWidth(b) / Math.cos((b.phiDeg * Math.PI) / 180),
      depthIn: b.ends.top.depthIn,
      angleDeg: 180,
    }));

function braceWidth({ stick }: BraceGeometry): number {
  if (!stick || stick.kind === 'typed') return 0;
  return stick.kind === 'round' ? (stick.profile[0]?.diameterIn ?? 0) : stick.depthIn;
}
