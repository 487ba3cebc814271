import { MisuseError } from '../../errors.ts';
import type { Id, Project, RoofPlane } from '../model.ts';

/** The planes that meet this one over its high line. */
const across = (project: Project, plane: RoofPlane): readonly RoofPlane[] =>
  project.roofPlanes.filter(
    (p) => p.id !== plane.id && p.onLines[0] === plane.onLines[0] && p.onLines.at(-1) !== plane.onLines.at(-1),
  );

const isAlike = (a: RoofPlane, b: RoofPlane): boolean =>
  a.risePer12 === b.risePer12 && a.fromXIn === b.fromXIn && a.toXIn === b.toXIn;

/** True where a slope meets another over its ridge line that rises or ends otherwise. */
export const isUnlikeAcross = (project: Project, plane: RoofPlane): boolean =>
  across(project, plane).some((other) => !isAlike(plane, other));

/**
 * The project with the other slope of a gable as steep as this one and as long along the ridge.
 * @throws MisuseError  if there is no such plane
 */
export function matchSlope(project: Project, planeId: Id): Project {
  const plane = project.roofPlanes.find(({ id }) => id === planeId);
  if (!plane) throw new MisuseError('planeId', planeId, 'a roof plane of the project');
  const { risePer12, fromXIn, toXIn } = plane;
  const others = new Set(across(project, plane).map(({ id }) => id));
  return {
    ...project,
    roofPlanes: project.roofPlanes.map((p) => (others.has(p.id) ? { ...p, risePer12, fromXIn, toXIn } : p)),
  };
}
