import { DataError } from '../../errors.ts';

/** Where a slope falls in a figure: the rows on either side and the share of the way to the upper one. */
export interface Bracket<Row> {
  readonly low: Row;
  readonly high: Row;
  readonly share: number;
}

/**
 * Rows on either side of a slope, ascending rows of one figure.
 * @throws DataError  if the figure does not reach the slope
 */
export function betweenSlopes<Row extends { readonly slopeDeg: number }>(
  rows: readonly Row[],
  slopeDeg: number,
): Bracket<Row> {
  const upper = rows.findIndex((row) => slopeDeg <= row.slopeDeg);
  const high = rows[upper];
  const low = rows[Math.max(upper - 1, 0)];
  if (!high || !low || (upper === 0 && slopeDeg < high.slopeDeg)) {
    throw new DataError('figureSlopes', slopeDeg, 'a slope within the rows of the figure');
  }
  const width = high.slopeDeg - low.slopeDeg;
  return { low, high, share: width === 0 ? 0 : (slopeDeg - low.slopeDeg) / width };
}

/** Straight between two printed cells; an end cell comes back exactly as printed. */
export const straight = (low: number, high: number, share: number): number =>
  share === 0 ? low : share === 1 ? high : low + share * (high - low);
