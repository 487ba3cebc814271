import { REPETITIVE } from '../../data/wood/lumber-factors.ts';
import type { SawnStick } from '../geometry/shelter.ts';
import { lumberSize } from './lumber-size.ts';

/**
 * Bending gain of graded sticks that share their load with their neighbours.
 * @param spacingIn centre to centre, the greater of both sides [in]; null when the stick stands alone
 * @param count sticks alike in the row
 * @returns 1.15 for three or more of graded dimension lumber at 24 in. or closer, else 1; home-sawn sticks get none
 * @source NDS (2018) 4.3.9
 * @limits  the caller vouches for purlins or sheathing that tie the row together
 */
export function repetitiveFactor(stick: SawnStick, spacingIn: number | null, count: number): number {
  const isShared =
    stick.grade !== null &&
    lumberSize(stick)?.sizeClass === 'dimension' &&
    spacingIn !== null &&
    spacingIn <= REPETITIVE.spacingIn &&
    count >= REPETITIVE.count;
  return isShared ? REPETITIVE.factor : 1;
}
