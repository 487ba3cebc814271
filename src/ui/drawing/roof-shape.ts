import type { PlaneGeometry, PurlinGeometry, RafterGeometry } from '../../engine/geometry/shelter.ts';
import type { Point } from './paper.ts';
import { thicknessAt } from './sticks.ts';

const radians = (deg: number): number => (deg * Math.PI) / 180;

/** Level of the top of the covering at a place across the shelter [in]. */
export function coverZAt(plane: PlaneGeometry, yIn: number): number {
  const across = plane.lowYIn - plane.highYIn;
  const share = across === 0 ? 0 : (yIn - plane.highYIn) / across;
  return plane.highZIn + share * (plane.lowZIn - plane.highZIn);
}

/**
 * A rafter from the side, its ends cut plumb; places are (y, z) in inches. Its underside passes through the seats, less
 * the seat cut. Null when it has no supports or no known size.
 */
export function rafterOutline(rafter: RafterGeometry): readonly Point[] | null {
  const seat = rafter.supports[0];
  const steep = Math.tan(radians(rafter.slopeDeg));
  const plumb = 1 / Math.cos(radians(rafter.slopeDeg));
  const eave = thicknessAt(rafter.stick, 0, 'depth');
  const high = thicknessAt(rafter.stick, rafter.runIn * plumb, 'depth');
  if (!seat || eave === null || high === null) return null;
  const underside = (atIn: number): number => seat.zIn - rafter.seatCutIn + (atIn - seat.atIn) * steep;
  const y = (atIn: number): number => rafter.eaveYIn - rafter.downY * atIn;
  const ends = [
    { atIn: 0, depth: eave },
    { atIn: rafter.runIn, depth: high },
  ];
  return [
    ...ends.map((e) => ({ x: y(e.atIn), y: underside(e.atIn) })),
    ...ends.toReversed().map((e) => ({ x: y(e.atIn), y: underside(e.atIn) + e.depth * plumb })),
  ];
}

/** A purlin cut across, hanging square under the covering: places are (y, z) in inches. Null without a known size. */
export function purlinOutline(purlin: PurlinGeometry, plane: PlaneGeometry): readonly Point[] | null {
  const breadth = thicknessAt(purlin.stick, 0, 'breadth');
  const depth = thicknessAt(purlin.stick, 0, 'depth');
  if (breadth === null || depth === null) return null;
  const sin = Math.sin(radians(plane.slopeDeg));
  const cos = Math.cos(radians(plane.slopeDeg));
  const place = (upSlopeIn: number, underIn: number): Point => ({
    x: plane.lowYIn - plane.downY * (upSlopeIn * cos + underIn * sin),
    y: plane.lowZIn + upSlopeIn * sin - underIn * cos,
  });
  const half = breadth / 2;
  return [
    place(purlin.upSlopeIn - half, 0),
    place(purlin.upSlopeIn + half, 0),
    place(purlin.upSlopeIn + half, depth),
    place(purlin.upSlopeIn - half, depth),
  ];
}
