import type { Shelter } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { windOnSolid, type SeenFrom } from './solid-wind.ts';

/** A heap is as solid as anything: the greatest coefficient of the table counts. */
const SOLID = 1;

/**
 * Face that stored goods turn to the wind: the width of the shelter by their height, or less where less of the opening
 * is blocked.
 * @returns area [ft2]
 */
export function goodsFace(project: Project, shelter: Shelter, from: SeenFrom): number {
  const { goods } = project.surroundings;
  if (!goods) return 0;
  const widthIn = from === 'end' ? shelter.planAcrossIn : shelter.planAlongIn;
  return (widthIn * Math.min(goods.heightIn, goods.blockedShare * shelter.meanRoofHeightIn)) / 144;
}

/**
 * Wind on goods that lean on a frame line, strength level: whole on every line that they lean on, since they may lean on
 * one alone (own rule, safe side); none on a line where they stand by themselves.
 * @returns force [lb]
 * @source ASCE7 29.4, 27.1.5 (7-16), flat-sided
 */
export function windOnGoods(
  project: Project,
  shelter: Shelter,
  site: SitePressures,
  from: SeenFrom,
  lineId: string,
): number {
  if (!project.surroundings.goods?.leansOnLines.includes(lineId)) return 0;
  return goodsFace(project, shelter, from) * windOnSolid(site, SOLID, null);
}
