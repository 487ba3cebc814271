import type { PlaneGeometry } from './shelter.ts';

/** Places closer than this are the same [in]. */
const SAME_PLACE_IN = 1 / 16;

/** Two slopes alike that fall away from one ridge line, meet on its axis and end at the same places along it. */
export interface Ridge {
  readonly lineId: string;
  readonly planes: readonly [PlaneGeometry, PlaneGeometry];
}

/** The ridge of a gable; null for any other roof. The figures of wind and snow are drawn for two equal slopes. */
export function ridgeOf(planes: readonly PlaneGeometry[]): Ridge | null {
  const [a, b] = planes;
  if (!a || !b || planes.length !== 2 || a.onLines[0] !== b.onLines[0] || a.downY === b.downY) return null;
  const isSame = (of: (plane: PlaneGeometry) => number): boolean => Math.abs(of(a) - of(b)) < SAME_PLACE_IN;
  const meetsAllAlong = isSame((p) => p.highYIn) && isSame((p) => p.fromXIn) && isSame((p) => p.toXIn);
  return meetsAllAlong && a.risePer12 === b.risePer12 ? { lineId: a.onLines[0]!, planes: [a, b] } : null;
}
