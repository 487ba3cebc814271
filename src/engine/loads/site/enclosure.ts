import { ENCLOSURE_LIMITS, type Enclosure } from '../../../data/loads/wind-walled.ts';
import { positive } from '../../errors.ts';
import { notNegative } from './givens.ts';

/** One wall of a building and what is open in it [ft2]. */
export interface WallOpening {
  readonly areaFt2: number;
  readonly openFt2: number;
}

/**
 * How closed a building is, whichever wall the wind meets. The roof counts as envelope without openings.
 * @param walls  all that stand around it, open ones too
 * @param roofFt2  area of the roof [ft2]
 * @throws MisuseError  if an area is not above zero or an opening is negative
 * @source ASCE7 26.2 (7-16), from memory
 */
export function enclosureClass(walls: readonly WallOpening[], roofFt2: number): Enclosure {
  const { openShare, moreThanTheRest, restOpenAtMost, dominantFt2, dominantShare } = ENCLOSURE_LIMITS;
  const openFt2 = walls.reduce((sum, wall) => sum + notNegative('openFt2', wall.openFt2), 0);
  const wholeFt2 = walls.reduce((sum, wall) => sum + positive('areaFt2', wall.areaFt2), positive('roofFt2', roofFt2));
  const small = (wall: WallOpening): number => Math.min(dominantFt2, dominantShare * wall.areaFt2);
  if (walls.every((wall) => wall.openFt2 >= openShare * wall.areaFt2)) return 'open';
  const dominates = (wall: WallOpening): boolean => {
    const rest = openFt2 - wall.openFt2;
    return (
      wall.openFt2 > moreThanTheRest * rest &&
      wall.openFt2 > small(wall) &&
      rest <= restOpenAtMost * (wholeFt2 - wall.areaFt2)
    );
  };
  if (walls.some(dominates)) return 'partiallyEnclosed';
  return walls.every((wall) => wall.openFt2 <= small(wall)) ? 'enclosed' : 'partiallyOpen';
}
