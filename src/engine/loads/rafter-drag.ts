import type { LineGeometry, RafterGeometry, Shelter } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { alongForces, type SwayPart } from './sway.ts';
import { shareOfEdge } from './sway-areas.ts';

/** What of the wind along a line comes through its rafters; where the whole is typed, all of it may. */
const THROUGH_RAFTERS: ReadonlySet<SwayPart['name']> = new Set(['roofEdge', 'gable', 'typed']);

/**
 * Wind along the lines that one rafter hands to a line, strength level: the line's push on the edge of the roof, shared by
 * the broad sides of its rafters. No post and no brace takes any of the least push on a gable here (safe side).
 * @returns force [lb]
 * @source ASCE7 29.4, 27.1.5 and, from memory, 28.3.5
 */
export function dragOfRafter(
  project: Project,
  shelter: Shelter,
  line: LineGeometry,
  rafter: RafterGeometry,
  site: SitePressures,
): number {
  const { parts } = alongForces(project, shelter, line, [], [], site);
  const throughLb = parts.filter((p) => THROUGH_RAFTERS.has(p.name)).reduce((sum, p) => sum + p.forceLb, 0);
  return throughLb * shareOfEdge(shelter, line, rafter);
}
