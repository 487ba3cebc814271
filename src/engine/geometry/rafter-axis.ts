import { radiansFromDegrees } from '../units.ts';
import { roundDiameterWithin } from './beam-shape.ts';
import type { RafterGeometry, Stick } from './shelter.ts';

/** Level of a rafter's axis at a place across the lines, half its depth above its underside; null beyond its ends [in]. */
export function rafterAxisZ(rafter: RafterGeometry, yIn: number): number | null {
  const slope = radiansFromDegrees(rafter.slopeDeg);
  const seat = rafter.supports[0];
  const atIn = runFromEave(rafter, yIn);
  if (!seat || atIn < -1e-6 || atIn > rafter.runIn + 1e-6) return null;
  const halfIn = depthOf(rafter.stick, atIn / Math.cos(slope)) / 2 / Math.cos(slope);
  return seat.zIn - rafter.seatCutIn + (atIn - seat.atIn) * Math.tan(slope) + halfIn;
}

/** Level distance from a rafter's eave end [in]. */
export const runFromEave = ({ downY, eaveYIn }: Pick<RafterGeometry, 'downY' | 'eaveYIn'>, yIn: number): number =>
  downY * (eaveYIn - yIn);

/** Depth of a stick at a distance from its start; none where it is typed or missing [in]. */
export function depthOf(stick: Stick | null, atIn: number): number {
  if (!stick || stick.kind === 'typed') return 0;
  return stick.kind === 'round' ? roundDiameterWithin(stick, atIn) : stick.depthIn;
}
