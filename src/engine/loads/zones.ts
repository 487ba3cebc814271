import type { RoofZone } from '../../data/loads/free-roof-components.ts';
import type { PlaneGeometry, RafterGeometry } from '../geometry/shelter.ts';
import { INCHES_PER_FOOT, radiansFromDegrees } from '../units.ts';
import type { RafterPart } from './rafter-run.ts';
import { LEAST_EDGE_FT } from './site/components.ts';
import type { SitePressures } from './site/site-pressures.ts';

/**
 * Zones of a slope, as wide as the edge width a on plan: corners (3) where two edges meet, edges (2) along eaves, gable
 * ends and both sides of a ridge, the rest (1). What reaches into a harder zone counts as lying in it over its whole width
 * (own rule, safe side).
 * @source ASCE7 Fig. 30.7-1 and 30.7-2 (7-16): the layout is assumed, the drawing was not seen
 */
export const zoneAt = (nearGableEnd: boolean, nearEave: boolean): RoofZone =>
  nearGableEnd && nearEave ? 3 : nearGableEnd || nearEave ? 2 : 1;

/** Width of the strips along the edges of the roof [in]. */
export const edgeWidthIn = ({ figures }: SitePressures): number =>
  (figures.edgeWidth.value ?? LEAST_EDGE_FT) * INCHES_PER_FOOT;

/** Touching the limit of a zone is not reaching into it. */
const TOUCHING_IN = 1e-6;

/** True where a stretch along the lines reaches into the strip at either end of the slope. */
export const reachesGableEnd = (plane: PlaneGeometry, fromXIn: number, toXIn: number, edgeIn: number): boolean =>
  fromXIn < plane.fromXIn + edgeIn - TOUCHING_IN || toXIn > plane.toXIn - edgeIn + TOUCHING_IN;

/** True where a stretch up the slope, level distances from the low edge of the covering, reaches into the strip at either edge. */
export const reachesEave = (plane: PlaneGeometry, fromIn: number, toIn: number, edgeIn: number): boolean =>
  fromIn < edgeIn - TOUCHING_IN || toIn > plane.runIn - edgeIn + TOUCHING_IN;

/** How far the covering reaches past the low end of a rafter, level [in]. */
const pastEave = (plane: PlaneGeometry, rafter: RafterGeometry): number =>
  plane.downY * (plane.lowYIn - rafter.eaveYIn);

/** Where the strips along the eave and along the top of a slope end, along a rafter from its low end [in]. */
export function zoneCuts(plane: PlaneGeometry, rafter: RafterGeometry, edgeIn: number): readonly number[] {
  const cos = Math.cos(radiansFromDegrees(rafter.slopeDeg));
  const past = pastEave(plane, rafter);
  return [edgeIn - past, plane.runIn - edgeIn - past].map((levelIn) => levelIn / cos);
}

/** Zone of a part of a rafter. */
export function zoneOfPart(
  plane: PlaneGeometry,
  rafter: RafterGeometry,
  part: Pick<RafterPart, 'fromIn' | 'toIn'>,
  edgeIn: number,
): RoofZone {
  const cos = Math.cos(radiansFromDegrees(rafter.slopeDeg));
  const past = pastEave(plane, rafter);
  return zoneAt(
    reachesGableEnd(plane, rafter.tributaryFromXIn, rafter.tributaryToXIn, edgeIn),
    reachesEave(plane, part.fromIn * cos + past, part.toIn * cos + past, edgeIn),
  );
}
