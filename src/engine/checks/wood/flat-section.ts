import { clause } from '../../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

/**
 * A round section with flats on two opposite sides, each as deep as it was cut (0 = not cut): planed top, seat, dap,
 * housing taken as a full flat. `flatIn` lies on the side that is asked about, `oppositeIn` on the other.
 * All pieces are plane geometry of the circle less its two segments; the functions return plain numbers and call
 * nothing that allocates, because every station of every log passes through here.
 */
const FLATTENED = clause('MECHANICS', 'circle less two segments');

function guard(diameterIn: number, flatIn: number, oppositeIn: number): void {
  positive('diameterIn', diameterIn);
  notNegative('flatIn', flatIn);
  notNegative('oppositeIn', oppositeIn);
  if (flatIn + oppositeIn >= diameterIn) {
    throw new MisuseError('flatIn', flatIn + oppositeIn, `cuts that leave wood: together less than ${diameterIn}`);
  }
}

/** Distance from the centre to the flat. */
const toFlat = (R: number, t: number): number => R - t;
/** Half width of the flat. */
const halfWidth = (R: number, t: number): number => Math.sqrt(t * (2 * R - t));

/** Area of the segment cut off. */
function segmentArea(R: number, t: number): number {
  return R * R * Math.acos(toFlat(R, t) / R) - toFlat(R, t) * halfWidth(R, t);
}
/** First moment of the segment about the centre: the integral of z over it. */
const segmentMoment = (R: number, t: number): number => (2 * halfWidth(R, t) ** 3) / 3;
/** Inertia of the segment about the diameter parallel to the flat. */
function segmentInertia(R: number, t: number): number {
  return (R * R * segmentArea(R, t)) / 4 + (toFlat(R, t) * halfWidth(R, t) ** 3) / 2;
}
/** Inertia of the segment about the diameter square to the flat. */
function segmentSidewaysInertia(R: number, t: number): number {
  return (R * R * segmentArea(R, t)) / 4 - (toFlat(R, t) * halfWidth(R, t) ** 3) / 6;
}

/**
 * The wood that a flat takes off a round section.
 * @returns its area, where its centroid lies from the centre, and its inertia about its own centroid: for bending square to
 *          the flat, and along it
 * @throws MisuseError if a value is out of the bounds of `flattenedArea`
 * @source MECHANICS: segment of a circle
 */
export function segmentOf(diameterIn: number, depthIn: number) {
  guard(diameterIn, depthIn, 0);
  const R = diameterIn / 2;
  const areaIn2 = segmentArea(R, depthIn);
  const offIn = areaIn2 > 0 ? segmentMoment(R, depthIn) / areaIn2 : R;
  return {
    areaIn2,
    offIn,
    squareIn4: segmentInertia(R, depthIn) - areaIn2 * offIn * offIn,
    alongIn4: segmentSidewaysInertia(R, depthIn),
  };
}

/**
 * Area left of a round section with two opposite flats.
 * @param diameterIn full wood diameter [in]
 * @param flatIn, oppositeIn depths of the flats [in]; together less than the diameter
 * @returns area [in2]
 * @throws MisuseError if a value is out of these bounds
 * @source MECHANICS: circle less two segments
 */
export function flattenedArea(diameterIn: number, flatIn: number, oppositeIn: number, note?: Note): number {
  guard(diameterIn, flatIn, oppositeIn);
  const R = diameterIn / 2;
  const A = Math.PI * R * R - segmentArea(R, flatIn) - segmentArea(R, oppositeIn);
  note?.({
    symbol: 'A',
    words: 'area of the round section less its flats',
    formula: 'π × R^2 - R^2 × (acos((R-t)/R) + acos((R-u)/R)) + (R-t) × sqrt(t×(2×R-t)) + (R-u) × sqrt(u×(2×R-u))',
    put: flats(R, flatIn, oppositeIn),
    result: quantity(A, 'in2'),
    clause: FLATTENED,
  });
  return A;
}

/**
 * How far the centroid lies from the centre of the circle, away from the flat.
 * @returns shift [in]; negative when the opposite flat is the deeper one
 * @throws MisuseError as `flattenedArea`
 * @source MECHANICS: first moments of the two segments over the area left
 */
export function centroidShift(diameterIn: number, flatIn: number, oppositeIn: number): number {
  const A = flattenedArea(diameterIn, flatIn, oppositeIn);
  const R = diameterIn / 2;
  return (segmentMoment(R, flatIn) - segmentMoment(R, oppositeIn)) / A;
}

/**
 * Inertia for bending square to the flats, about the section's own centroid.
 * @returns inertia [in4]
 * @throws MisuseError as `flattenedArea`
 * @source MECHANICS: circle less two segments, parallel-axis theorem
 */
export function flattenedInertia(diameterIn: number, flatIn: number, oppositeIn: number, note?: Note): number {
  const A = flattenedArea(diameterIn, flatIn, oppositeIn);
  const R = diameterIn / 2;
  const e = (segmentMoment(R, flatIn) - segmentMoment(R, oppositeIn)) / A;
  const whole = (Math.PI * R ** 4) / 4;
  const ofFlat = segmentInertia(R, flatIn);
  const ofOpposite = segmentInertia(R, oppositeIn);
  const I = whole - ofFlat - ofOpposite - A * e * e;
  note?.({
    symbol: 'I',
    words: 'inertia of the round section less its flats',
    formula: 'π × R^4 / 4 - It - Iu - A × e^2',
    put: [
      ...flats(R, flatIn, oppositeIn),
      put('A', A, 'in2', 'area left'),
      put('e', e, 'in', 'shift of the centroid away from flat t'),
      put('It', ofFlat, 'in4', 'inertia of the wood cut off at flat t, about the centre'),
      put('Iu', ofOpposite, 'in4', 'inertia of the wood cut off at flat u, about the centre'),
    ],
    result: quantity(I, 'in4'),
    clause: FLATTENED,
  });
  return I;
}

/**
 * Section modulus to the side of `flatIn`. For the round side of a log with one flat call it with 0 and the flat.
 * @returns section modulus [in3]
 * @throws MisuseError as `flattenedArea`
 * @source MECHANICS: I over the distance from the centroid to that side
 */
export function sectionModulusToward(diameterIn: number, flatIn: number, oppositeIn: number, note?: Note): number {
  const I = flattenedInertia(diameterIn, flatIn, oppositeIn, note);
  const R = diameterIn / 2;
  const e = centroidShift(diameterIn, flatIn, oppositeIn);
  const S = I / (toFlat(R, flatIn) + e);
  note?.({
    symbol: 'S',
    words: flatIn > 0 ? 'section modulus to the flat t' : 'section modulus to the round side',
    formula: 'I / (R - t + e)',
    put: [
      put('I', I, 'in4', 'inertia of the section left'),
      put('R', R, 'in', 'half of the full diameter'),
      put('t', flatIn, 'in', 'depth of the flat on that side'),
      put('e', e, 'in', 'shift of the centroid away from that side'),
    ],
    result: quantity(S, 'in3'),
    clause: FLATTENED,
  });
  return S;
}

/**
 * Section modulus for bending parallel to the flats (sideways).
 * @returns section modulus [in3], by half the full diameter or, past the centre, half the width of the flat
 * @throws MisuseError as `flattenedArea`
 * @source MECHANICS: circle less two segments, about the diameter square to the flats
 */
export function sidewaysSectionModulus(diameterIn: number, flatIn: number, oppositeIn: number, note?: Note): number {
  guard(diameterIn, flatIn, oppositeIn);
  const R = diameterIn / 2;
  const I = (Math.PI * R ** 4) / 4 - segmentSidewaysInertia(R, flatIn) - segmentSidewaysInertia(R, oppositeIn);
  const deeper = Math.max(flatIn, oppositeIn);
  const reach = deeper > R ? halfWidth(R, deeper) : R;
  const S = I / reach;
  note?.({
    symbol: 'S',
    words: 'section modulus sideways, parallel to the flats',
    formula: 'I / y',
    put: [
      ...flats(R, flatIn, oppositeIn),
      put('I', I, 'in4', 'inertia sideways of the section left'),
      put('y', reach, 'in', 'half of its greatest width'),
    ],
    result: quantity(S, 'in3'),
    clause: FLATTENED,
  });
  return S;
}

const flats = (R: number, flatIn: number, oppositeIn: number) => [
  put('R', R, 'in', 'half of the full diameter'),
  put('t', flatIn, 'in', 'depth of one flat'),
  put('u', oppositeIn, 'in', 'depth of the flat opposite'),
];
