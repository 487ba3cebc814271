import type { RafterGeometry, Shelter } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import { ownPatches } from './own-on-rafters.ts';
import { personCuts } from './person.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { snowCuts } from './snow-cases.ts';
import { edgeWidthIn, zoneCuts } from './zones.ts';

/** Where loads on a rafter begin or end beside its supports and mid-slope, along the slope from its eave [in]. */
export const rafterCuts = (
  project: Project,
  shelter: Shelter,
  site: SitePressures,
  rafter: RafterGeometry,
): readonly number[] => [
  ...ownPatches(shelter, rafter, project.ownLoads).flatMap((patch) => [patch.fromIn, patch.toIn]),
  ...personCuts(rafter),
  ...snowCuts(site, rafter),
  ...zoneCuts(
    shelter.planes.find((p) => p.id === rafter.plane)!,
    rafter,
    edgeWidthIn(site),
  ),
];
