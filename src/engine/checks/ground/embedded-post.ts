import { clause, remembered } from '../../../data/sources.ts';
import { notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { feetFromInches, quantity } from '../../units.ts';

const POLE = clause('IBC', '1807.3.2.1');
const DOUBLED = remembered('IBC', '1806.3.4');

/** Depth beyond which lateral bearing is not increased [ft]. @source IBC 1807.3.2.1 */
const DEEPEST_FT = 12;
/** @source IBC equation 18-1 */
const FORCE = 2.34;
const ARM = 4.36;
/** @source IBC 1806.3.4, from memory: isolated poles that may move half an inch at the ground under short loads */
const SHORT_TERM_LEEWAY = 2;

/** The search for the depth ends when it is closed to this [ft]. */
const CLOSED_FT = 1e-9;

/**
 * Allowable lateral soil pressure at a third of the depth of an embedded post.
 * @param lateralPsfPerFt allowable lateral bearing per foot of depth [psf/ft]
 * @param depthFt depth below the ground [ft]
 * @param doubled twice the value: only short-term loads, only a post that may move 1/2 in. at the ground, only if chosen
 * @returns S1 [psf]
 * @throws MisuseError if a value is not above zero
 * @source IBC 1807.3.2.1 (depth at most 12 ft); doubling IBC 1806.3.4 from memory
 */
export function lateralBearingAtThird(lateralPsfPerFt: number, depthFt: number, doubled: boolean, note?: Note): number {
  const perFoot = positive('lateralPsfPerFt', lateralPsfPerFt) * (doubled ? SHORT_TERM_LEEWAY : 1);
  const counted = Math.min(positive('depthFt', depthFt), DEEPEST_FT);
  const S1 = (perFoot * counted) / 3;
  note?.({
    symbol: 'S1',
    words: doubled
      ? 'allowable lateral soil pressure at a third of the depth, doubled for a short load'
      : 'allowable lateral soil pressure at a third of the depth',
    formula: 's × z / 3',
    put: [
      put('s', perFoot, 'psf/ft', 'allowable lateral bearing per foot of depth'),
      put('z', counted, 'ft', 'depth, at most 12 ft'),
    ],
    result: quantity(S1, 'psf'),
    clause: doubled ? DOUBLED : POLE,
  });
  return S1;
}

/**
 * The term A of the embedded-post equation.
 * @param forceLb lateral force [lb]
 * @param S1Psf allowable lateral pressure at a third of the depth [psf]
 * @param widthFt diameter of a round post or of its concrete, diagonal of a square one [ft]
 * @returns A [ft]
 * @throws MisuseError if the force is below zero or another value not above zero
 * @source IBC equation 18-1
 */
export function lateralTerm(forceLb: number, S1Psf: number, widthFt: number): number {
  return (FORCE * notNegative('forceLb', forceLb)) / (positive('S1Psf', S1Psf) * positive('widthFt', widthFt));
}

/** Sideways action on an embedded post and the ground it stands in. */
export interface EmbeddedPost {
  /** lateral force, without sign [lb] */
  readonly forceLb: number;
  /** moment of everything above about the ground, force times height included, without sign [lb in] */
  readonly momentLbIn: number;
  readonly lateralPsfPerFt: number;
  /** diameter of a round post or of its concrete, diagonal of a square one [in] */
  readonly widthIn: number;
  /** see `lateralBearingAtThird` */
  readonly doubled: boolean;
}

/**
 * Depth that a post needs in ground that is not held at the surface (no slab or pavement).
 * The moment replaces force times height, so that a pure moment is the limit of a small force on a long arm.
 * @returns depth [ft]; 0 with nothing sideways on it
 * @throws MisuseError if a given is out of bounds
 * @limits embedment only: bending of the post, which peaks below the ground, and bearing at its foot are other checks.
 * @source IBC equation 18-1: d = A/2 (1 + sqrt(1 + 4.36 h / A)); solved for d, on which S1 depends
 * @departs written as A/2 + sqrt((A/2)2 + 4.36 h A / 4) with h A = 2.34 M / (S1 b): the same for a force, and its
 *   limit sqrt(2.55 M / (S1 b)) for a moment alone
 */
export function requiredEmbedment(post: EmbeddedPost, note?: Note): number {
  notNegative('forceLb', post.forceLb);
  notNegative('momentLbIn', post.momentLbIn);
  if (post.forceLb === 0 && post.momentLbIn === 0) return 0;
  // The needed depth falls as the assumed one grows: the answer is where they meet.
  let low = 0;
  let high = 1;
  while (depthFor(post, high) > high) high *= 2;
  while (high - low > CLOSED_FT) {
    const assumed = (low + high) / 2;
    if (depthFor(post, assumed) > assumed) low = assumed;
    else high = assumed;
  }
  if (note) writeDown(post, high, note);
  return high;
}

/** Depth by the equation with the soil pressure of an assumed depth [ft]. */
function depthFor(post: EmbeddedPost, assumedFt: number): number {
  const S1 = lateralBearingAtThird(post.lateralPsfPerFt, assumedFt, post.doubled);
  const b = feetFromInches(post.widthIn);
  const half = lateralTerm(post.forceLb, S1, b) / 2;
  return half + Math.sqrt(half * half + (ARM * FORCE * feetFromInches(post.momentLbIn)) / (4 * S1 * b));
}

function writeDown(post: EmbeddedPost, depthFt: number, note: Note): void {
  const S1 = lateralBearingAtThird(post.lateralPsfPerFt, depthFt, post.doubled, note);
  const b = feetFromInches(post.widthIn);
  const A = lateralTerm(post.forceLb, S1, b);
  const common = [
    put('S1', S1, 'psf', 'allowable lateral soil pressure at a third of this depth'),
    put('b', b, 'ft', 'width that presses on the soil'),
  ];
  note({
    symbol: 'A',
    words: 'term A of the embedded-post equation',
    formula: '2.34 × P / (S1 × b)',
    put: [put('P', post.forceLb, 'lb', 'lateral force'), ...common],
    result: quantity(A, 'ft'),
    clause: POLE,
  });
  note({
    symbol: 'd',
    words: 'depth needed, found by trying until the depth put in comes out',
    formula: 'A / 2 + sqrt((A / 2)^2 + 4.36 / 4 × 2.34 × M / 12 / (S1 × b))',
    put: [put('A', A, 'ft', 'term A'), put('M', post.momentLbIn, 'lb·in', 'moment about the ground'), ...common],
    result: quantity(depthFt, 'ft'),
    clause: POLE,
  });
}
