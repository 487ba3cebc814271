import type { RoofForm } from '../../data/loads/free-roof-main.ts';
import { SNOW_IMPORTANCE } from '../../data/loads/snow.ts';
import type { Shelter } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import { neighbourSnow } from './neighbour-snow.ts';
import { ridgeSnow } from './ridge-snow.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { NO_UNEVEN_SNOW, type EvenSnow, type UnevenRoofSnow } from './uneven-snow.ts';

/** All snow that does not lie evenly on the roof; none while the snow of the site is not known. */
export function unevenRoofSnow(
  project: Project,
  shelter: Shelter,
  site: SitePressures,
  form: RoofForm | null,
): UnevenRoofSnow {
  const snow = evenSnowOf(project, site);
  if (!snow || shelter.planes.length === 0) return NO_UNEVEN_SNOW;
  const beside = neighbourSnow(project, shelter, snow);
  const ridge = ridgeSnow(shelter, form, snow);
  return {
    isPartialAcross: ridge.isPartialAcross,
    cases: [...beside.cases, ...ridge.cases],
    leftOut: [...beside.leftOut, ...ridge.leftOut],
    notGiven: [...beside.notGiven, ...ridge.notGiven],
  };
}

function evenSnowOf(project: Project, { figures }: SitePressures): EvenSnow | null {
  const { groundSnowPsf, snowExposureCe, riskCategory } = project.site;
  const pg = groundSnowPsf.value;
  const ce = snowExposureCe.value;
  const slopedPsf = figures.slopedRoofSnow.value;
  const balancedPsf = figures.balancedSnow.value;
  if (pg === null || ce === null || riskCategory.value === null) return null;
  if (slopedPsf === null || balancedPsf === null) return null;
  return { groundSnowPsf: pg, is: SNOW_IMPORTANCE[riskCategory.value], ce, slopedPsf, balancedPsf };
}
