import { clause } from '../../../data/sources.ts';
import { notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { feetFromInches, quantity } from '../../units.ts';

const SQUARE = clause('MECHANICS', 'rigid square on soil without tension');
const CIRCLE = clause('MECHANICS', 'rigid circle on soil without tension');

/** What stands on the soil: a square pad or shaft, or a round shaft. */
export interface Base {
  readonly shape: 'round' | 'square';
  /** side or diameter [in] */
  readonly acrossIn: number;
}

/** Halvings of the search for the edge of contact: far below what a printed pressure shows. */
const HALVINGS = 60;

/**
 * Greatest pressure under a rigid base on soil that cannot pull. Inside the kern the whole base bears; beyond it only
 * a part does and the pressure grows faster.
 * @param base square or circle
 * @param downLb force on the soil, down [lb]
 * @param momentLbIn moment about an axis parallel to a side [lb in]. Moments in two planes: on a circle their
 *   resultant; on a square the sum of both magnitudes, which never gives less than the corner really gets.
 * @returns pressure [psf]; 0 with nothing on it; Infinity when the force falls outside the base (it tips)
 * @throws MisuseError if the force or moment is below zero or the size not above zero
 * @source MECHANICS: plane stress distribution, e = M / N, kern B/6 of a square and d/8 of a circle
 */
export function soilPressure(base: Base, downLb: number, momentLbIn: number, note?: Note): number {
  const N = notNegative('downLb', downLb);
  const M = notNegative('momentLbIn', momentLbIn);
  const B = feetFromInches(positive('acrossIn', base.acrossIn));
  if (N === 0) return M === 0 ? 0 : Infinity;
  const e = feetFromInches(M / N);
  if (e >= B / 2) return Infinity;
  return base.shape === 'square' ? underSquare(N, B, e, note) : underCircle(N, B, e, note);
}

function underSquare(N: number, B: number, e: number, note?: Note): number {
  const whole = e <= B / 6;
  const q = whole ? (N / (B * B)) * (1 + (6 * e) / B) : (2 * N) / (3 * B * (B / 2 - e));
  note?.({
    symbol: 'q',
    words: whole ? 'greatest soil pressure, whole base bearing' : 'greatest soil pressure, part of the base bearing',
    formula: whole ? 'N / B^2 × (1 + 6 × e / B)' : '2 × N / (3 × B × (B / 2 - e))',
    put: forceOnBase(N, B, e, 'side of the base'),
    result: quantity(q, 'psf'),
    clause: SQUARE,
  });
  return q;
}

function underCircle(N: number, d: number, e: number, note?: Note): number {
  const whole = e <= d / 8;
  const k = whole ? 0 : contactFactor((2 * e) / d);
  const q = whole ? ((4 * N) / (Math.PI * d * d)) * (1 + (8 * e) / d) : (4 * N) / (k * d * d);
  note?.({
    symbol: 'q',
    words: whole ? 'greatest soil pressure, whole base bearing' : 'greatest soil pressure, part of the base bearing',
    formula: whole ? '4 × N / (π × B^2) × (1 + 8 × e / B)' : '4 × N / (k × B^2)',
    put: whole
      ? forceOnBase(N, d, e, 'diameter of the base')
      : [
          ...forceOnBase(N, d, e, 'diameter of the base'),
          put('k', k, '1', 'part of a circle of radius 1 that bears, weighed by its pressure, for this e / B'),
        ],
    result: quantity(q, 'psf'),
    clause: CIRCLE,
  });
  return q;
}

const forceOnBase = (N: number, B: number, e: number, words: string) => [
  put('N', N, 'lb', 'force on the soil'),
  put('B', B, 'ft', words),
  put('e', e, 'ft', 'how far off the centre it acts'),
];

/**
 * N / (q R2) of a circle that bears from a chord to its pressed edge, the pressure growing straight from 0 at the chord
 * to q at the edge. The half angle of the bearing part, seen from the centre, is found from the eccentricity e / R.
 */
function contactFactor(eOverR: number): number {
  let low = 0;
  let high = Math.PI;
  for (let i = 0; i < HALVINGS; i++) {
    const half = (low + high) / 2;
    if (momentIntegral(half) > eOverR * forceIntegral(half)) low = half;
    else high = half;
  }
  const half = (low + high) / 2;
  return forceIntegral(half) / (1 - Math.cos(half));
}

/** Integral of (x - cos a) over the part of the unit circle beyond x = cos a. */
function forceIntegral(a: number): number {
  return (2 / 3) * Math.sin(a) ** 3 - Math.cos(a) * (a - Math.sin(a) * Math.cos(a));
}

/** Integral of x (x - cos a) over the same part. */
function momentIntegral(a: number): number {
  return a / 4 - Math.sin(4 * a) / 16 - (2 / 3) * Math.cos(a) * Math.sin(a) ** 3;
}
