import { clause } from '../../data/sources.ts';
import { SIZE } from '../../data/wood/strength-ratios.ts';
import { put, type Note } from '../note.ts';
import { quantity, type Inches } from '../units.ts';

/** Side of the square with the area of a circle of diameter 1. */
const SQUARE_SIDE = Math.sqrt(Math.PI) / 2;

/**
 * What a full-size log keeps of the bending strength of a 2 in. test piece.
 * @param largestDiameter largest wood diameter anywhere on the log [in]: the safe side for its whole length
 * @returns 0.82 up to 13.5 in., then falling with the depth of the square of equal area
 * @source D2899 (2003), size adjustment; NDS (2018) 4.3.6 for the ninth root, circle taken as a square of equal area
 * @departs the factor printed for 13.5 in. serves every thinner log too (safe side)
 */
export function logSizeFactor(largestDiameter: Inches, note?: Note): number {
  const factor = SIZE.factor * thickLogShare(largestDiameter);
  note?.({
    symbol: 'C_size',
    words: `size, ${SIZE.factor} up to ${SIZE.logIn} in., less for a thicker log`,
    formula: `${SIZE.factor} × ${THICK_LOG}`,
    put: [put('d', largestDiameter, 'in', 'largest diameter of the log')],
    result: quantity(factor, '1'),
    clause: clause('D2899', 'size, index diameter 13.5 in.'),
  });
  return factor;
}

/** What a pole keeps of its published bending value, which belongs to 13.5 in. and thinner. @source NDS (2018) 6.3.7 */
export function poleSizeFactor(largestDiameter: Inches, note?: Note): number {
  const factor = thickLogShare(largestDiameter);
  note?.({
    symbol: 'CF',
    words: `size, 1.0 up to ${SIZE.logIn} in., less for a thicker pole`,
    formula: THICK_LOG,
    put: [put('d', largestDiameter, 'in', 'largest diameter of the pole')],
    result: quantity(factor, '1'),
    clause: clause('D2899', 'size, index diameter 13.5 in.'),
  });
  return factor;
}

const THICK_LOG = `min(1, (${SIZE.squareIn} / (sqrt(pi) / 2 × d))^(1/9))`;
const thickLogShare = (diameterIn: number): number =>
  Math.min(1, (SIZE.squareIn / (SQUARE_SIDE * diameterIn)) ** SIZE.exponent);

/** The same for a stick with flat faces, by its depth along the load [in]. */
export function stickSizeFactor(depth: Inches, note?: Note): number {
  const factor = SIZE.factor * Math.min(1, (SIZE.squareIn / depth) ** SIZE.exponent);
  note?.({
    symbol: 'C_size',
    words: `size, ${SIZE.factor} up to ${SIZE.squareIn} in. deep, less for a deeper stick`,
    formula: `${SIZE.factor} × min(1, (${SIZE.squareIn} / d)^(1/9))`,
    put: [put('d', depth, 'in', 'depth of the stick')],
    result: quantity(factor, '1'),
    clause: clause('D2899', 'size, 12 in. square'),
  });
  return factor;
}
