import { OPEN_GABLE } from '../../data/loads/open-gable.ts';
import { ridgeOf } from '../geometry/ridge.ts';
import type { Shelter } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import { feetFromInches } from '../units.ts';
import { openGableAlongRidge } from './site/open-gable.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { soliditySeen } from './solid-wind.ts';
import { edgeWidthIn } from './zones.ts';

/**
 * Least push of the wind along the ridge of a gable on the whole shelter, strength level; zero for other roofs and without
 * wind. Every pair of rafters counts as a frame across the ridge.
 * @returns push [lb]
 * @source ASCE7 28.3.5 (7-16), from memory
 */
export function leastGablePush(project: Project, shelter: Shelter, site: SitePressures): number {
  const { velocityPressure, exposureFactor } = site.figures;
  const q = velocityPressure.value ?? 0;
  const ridge = ridgeOf(shelter.planes);
  if (!ridge || q <= 0) return 0;
  const isInB = project.site.exposure.value === 'B' && exposureFactor.value !== null;
  const method = isInB ? Math.max(1, OPEN_GABLE.exposureB / exposureFactor.value!) : 1;
  return openGableAlongRidge({
    velocityPressurePsf: method * q,
    widthFt: feetFromInches(shelter.planAcrossIn),
    endAreaFt2: (shelter.planAcrossIn * shelter.meanRoofHeightIn) / 144,
    endStripFt: feetFromInches(2 * edgeWidthIn(site)),
    solidity: soliditySeen(shelter, 'end'),
    frames: Math.max(
      1,
      ...ridge.planes.map((plane) => shelter.rafters.filter((rafter) => rafter.plane === plane.id).length),
    ),
  });
}
