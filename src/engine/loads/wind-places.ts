import type { RoofForm, WindDirection } from '../../data/loads/free-roof-main.ts';
import { SIDE_WORDS } from '../../data/words/sides.ts';
import type { PlaneGeometry, RafterGeometry, Shelter } from '../geometry/shelter.ts';
import { radiansFromDegrees } from '../units.ts';
import type { RafterPart } from './rafter-run.ts';

/**
 * Which way wind across the lines blows: 0 meets the high eave of a single slope and blows toward +y on two; 180 the other
 * way.
 */
export function blowsToward(form: RoofForm, planes: readonly PlaneGeometry[], direction: WindDirection): 1 | -1 {
  const zero = form === 'monoslope' ? planes[0]!.downY : 1;
  return direction === 0 ? zero : zero === 1 ? -1 : 1;
}

/** The side of the shelter that the wind meets, in words. */
export function sideMet(axis: 'x' | 'y', toward: 1 | -1): string {
  const side = toward === 1 ? (`${axis}Minus` as const) : (`${axis}Plus` as const);
  return SIDE_WORDS[side];
}

/** Level distance from the edge of the roof that the wind meets to the nearer end of a part of a rafter [in]. */
export function fromWindwardEdge(
  shelter: Shelter,
  toward: 1 | -1,
  rafter: RafterGeometry,
  part: Pick<RafterPart, 'fromIn' | 'toIn'>,
): number {
  const edges = shelter.planes.flatMap((p) => [p.lowYIn, p.highYIn]);
  const edgeY = toward === 1 ? Math.min(...edges) : Math.max(...edges);
  const cos = Math.cos(radiansFromDegrees(rafter.slopeDeg));
  const from = (alongIn: number): number => toward * (rafter.eaveYIn - rafter.downY * alongIn * cos - edgeY);
  return Math.max(0, Math.min(from(part.fromIn), from(part.toIn)));
}

/** The strip of roof that a rafter carries, by its nearer and farther edge from the end that the wind meets [in]. */
export function stripFromWindward(
  shelter: Shelter,
  toward: 1 | -1,
  rafter: RafterGeometry,
): { readonly nearIn: number; readonly farIn: number } {
  const fromX = Math.min(...shelter.planes.map((p) => p.fromXIn));
  const toX = Math.max(...shelter.planes.map((p) => p.toXIn));
  const near = toward === 1 ? rafter.tributaryFromXIn - fromX : toX - rafter.tributaryToXIn;
  const far = toward === 1 ? rafter.tributaryToXIn - fromX : toX - rafter.tributaryFromXIn;
  return { nearIn: Math.max(0, near), farIn: far };
}
