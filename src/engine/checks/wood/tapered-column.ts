import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

const SQUARE = remembered('NDS', '3.7.3');
const TAPERED = clause('NDS', '3.7.2');

/** Side over diameter of the square with the area of a circle. */
const SIDE_PER_DIAMETER = Math.sqrt(Math.PI) / 2;

/**
 * Side of the square that has the area of a round section: the depth by which a round column's slenderness is judged.
 * @param diameterIn diameter, for a tapered column the representative one [in]
 * @returns side [in]
 * @throws MisuseError if the diameter is not above zero
 * @source NDS 3.7.3. Its Euler stress is 4.7 % above the exact one of a round shaft; the rule is followed.
 */
export function equalAreaSide(diameterIn: number, note?: Note): number {
  const side = SIDE_PER_DIAMETER * positive('diameterIn', diameterIn);
  note?.({
    symbol: 's',
    words: 'side of the square of equal area',
    formula: 'sqrt(π) / 2 × d',
    put: [put('d', diameterIn, 'in', 'representative diameter')],
    result: quantity(side, 'in'),
    clause: SQUARE,
  });
  return side;
}

/** How the ends of a tapered column are held; `general` is always allowed. */
export type TaperedEnds = 'largeEndFixed' | 'smallEndFixed' | 'bothPinnedOneTaper' | 'bothPinnedTwoTapers' | 'general';
/** The factor a of the clause typed in, instead of the one that belongs to the ends. */
export interface TypedTaper {
  readonly a: number;
}

const END_FACTOR: Readonly<Record<Exclude<TaperedEnds, 'general'>, TypedTaper & { readonly words: string }>> = {
  largeEndFixed: { a: 0.7, words: 'large end fixed, small end free or pinned' },
  smallEndFixed: { a: 0.3, words: 'small end fixed, large end free or pinned' },
  bothPinnedOneTaper: { a: 0.5, words: 'both ends pinned, tapering toward one end' },
  bothPinnedTwoTapers: { a: 0.7, words: 'both ends pinned, tapering toward both ends' },
};

/**
 * Diameter of the cylinder that stands for a tapered column in its stability check.
 * @param smallestIn, largestIn diameters of the column's ends (or of its middle, tapering toward both ends) [in]
 * @param ends how the ends are held
 * @returns representative diameter [in]
 * @throws MisuseError if a diameter is not above zero or the smallest is above the largest
 * @limits within 0.2 % of the exact Euler load of a cone while the diameters differ by a factor of 1.6 at most; on the
 *   weak side of it by a few per cent above 2.
 * @source NDS 3.7.2
 */
export function representativeDiameter(
  smallestIn: number,
  largestIn: number,
  ends: TaperedEnds | TypedTaper,
  note?: Note,
): number {
  const dmin = positive('smallestIn', smallestIn);
  const dmax = positive('largestIn', largestIn);
  if (dmin > dmax) throw new MisuseError('smallestIn', dmin, `a diameter not above the largest, ${dmax}`);
  if (ends === 'general') {
    const third = dmin + (dmax - dmin) / 3;
    note?.({
      symbol: 'd',
      words: 'representative diameter, any way the ends are held',
      formula: 'dmin + (dmax - dmin) / 3',
      put: smallAndLarge(dmin, dmax),
      result: quantity(third, 'in'),
      clause: TAPERED,
    });
    return third;
  }
  const { a, words } = typeof ends === 'string' ? END_FACTOR[ends] : { ...ends, words: 'factor typed in' };
  const d = dmin + (dmax - dmin) * (a - 0.15 * (1 - dmin / dmax));
  note?.({
    symbol: 'd',
    words: `representative diameter, ${words}`,
    formula: 'dmin + (dmax - dmin) × (a - 0.15 × (1 - dmin / dmax))',
    put: [...smallAndLarge(dmin, dmax), put('a', a, '1', 'by how the ends are held')],
    result: quantity(d, 'in'),
    clause: TAPERED,
  });
  return d;
}

const smallAndLarge = (dmin: number, dmax: number) => [
  put('dmin', dmin, 'in', 'smallest diameter'),
  put('dmax', dmax, 'in', 'largest diameter'),
];
