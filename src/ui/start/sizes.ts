import type { Shelter } from '../../engine/geometry/shelter.ts';
import { INCHES_PER_FOOT, SQUARE_INCHES_PER_SQUARE_FOOT } from '../../engine/units.ts';

/** What a department may count of a shelter. */
export interface Sizes {
  readonly underRoofFt2: number;
  /** between the outer posts, and the wall that it hangs on */
  readonly insidePostsFt2: number;
  /** of the covering's highest edge over the lowest ground at a post */
  readonly heightFt: number;
  readonly isAttached: boolean;
}

export function sizesOf({ lines, posts, planes, planAlongIn, planAcrossIn, lowestGradeZIn }: Shelter): Sizes {
  const width = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  const insideIn2 = width(posts.map(({ xIn }) => xIn)) * width(lines.map(({ yIn }) => yIn));
  return {
    underRoofFt2: (planAlongIn * planAcrossIn) / SQUARE_INCHES_PER_SQUARE_FOOT,
    insidePostsFt2: insideIn2 / SQUARE_INCHES_PER_SQUARE_FOOT,
    heightFt: (Math.max(...planes.map(({ highZIn }) => highZIn)) - lowestGradeZIn) / INCHES_PER_FOOT,
    isAttached: lines.some(({ kind }) => kind === 'ledger'),
  };
}
