/** Symmetric matrix of three diagonals: `beside[i]` stands between rows i and i + 1. */
export interface Tridiagonal {
  readonly diagonal: readonly number[];
  readonly beside: readonly number[];
}

/** Halvings of an interval until nothing is left but rounding. */
const HALVINGS = 60;
/** Stands for a pivot of zero, so that a quotient stays a number. */
const TINY = 1e-300;

/**
 * Eigenvalue by rank, the greatest first, by halving: the pivots of T - x say how many eigenvalues lie above x.
 * @source MECHANICS Sturm sequence (Sylvester's law of inertia)
 */
export function eigenvalueAt(rank: number, T: Tridiagonal): number {
  // every eigenvalue lies within a row's sum of its own diagonal (Gershgorin)
  const reach = T.diagonal.map((_, i) => Math.abs(T.beside[i - 1] ?? 0) + Math.abs(T.beside[i] ?? 0));
  let low = Math.min(...T.diagonal.map((d, i) => d - reach[i]!));
  let high = Math.max(...T.diagonal.map((d, i) => d + reach[i]!));
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (countAbove(middle, T) > rank) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function countAbove(x: number, { diagonal, beside }: Tridiagonal): number {
  let count = 0;
  let pivot = 1;
  for (let i = 0; i < diagonal.length; i++) {
    const b = i > 0 ? beside[i - 1]! : 0;
    pivot = diagonal[i]! - x - (b * b) / pivot || TINY;
    if (pivot > 0) count++;
  }
  return count;
}

/**
 * Unit eigenvector of an eigenvalue. It is grown both ways from the row where elimination from above and from below meet
 * with the least that is left over: from there on it only becomes smaller, so that rounding does not grow.
 * @source MECHANICS twisted factorization of a tridiagonal matrix
 */
export function eigenvectorAt(value: number, { diagonal, beside }: Tridiagonal): Float64Array {
  const n = diagonal.length;
  const fromAbove = new Float64Array(n);
  const fromBelow = new Float64Array(n);
  for (let i = 0; i < n; i++)
    fromAbove[i] = diagonal[i]! - value - (i > 0 ? beside[i - 1]! ** 2 / fromAbove[i - 1]! : 0) || TINY;
  for (let i = n - 1; i >= 0; i--)
    fromBelow[i] = diagonal[i]! - value - (i < n - 1 ? beside[i]! ** 2 / fromBelow[i + 1]! : 0) || TINY;
  const leftOver = (i: number): number => Math.abs(fromAbove[i]! + fromBelow[i]! - (diagonal[i]! - value));

  let meet = 0;
  for (let i = 1; i < n; i++) if (leftOver(i) < leftOver(meet)) meet = i;
  const vector = new Float64Array(n);
  vector[meet] = 1;
  for (let i = meet; i > 0; i--) vector[i - 1] = (-beside[i - 1]! * vector[i]!) / fromAbove[i - 1]!;
  for (let i = meet; i < n - 1; i++) vector[i + 1] = (-beside[i]! * vector[i]!) / fromBelow[i + 1]!;
  const length = Math.hypot(...vector);
  return vector.map((v) => v / length);
}
