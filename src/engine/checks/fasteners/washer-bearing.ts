import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity, radiansFromDegrees } from '../../units.ts';
import { adjustedAcrossGrain, bearingAreaFactor, bearingAtAngle } from '../wood/bearing.ts';
import { refused } from './refused.ts';
import type { Pounds } from './withdrawal.ts';

/** Widths that differ by the last bit of a number are the same [in]. */
const SLACK_IN = 1e-9;

/** A washer, or a hexagon head without one, and the wood that it presses on. */
export interface PressedWasher {
  readonly outsideIn: number;
  readonly holeIn: number;
  /** of the log under it [in]; null: a sawn face */
  readonly diameterIn: number | null;
  /** how deep the flat that it lies on is cut, along the shank [in] */
  readonly flatIn: number;
  /** from the shank to the nearer edge of a sawn face [in] */
  readonly edgeIn: number;
  /** across the grain, from the middle of a log to the shank [in] */
  readonly offIn: number;
  /** from its rim to the end of the stick [in] */
  readonly toEndIn: number;
  /** between the shank and the grain, 0 to 90 [deg] */
  readonly angleDeg: number;
  /** Fc-perp of the wood, wet service in [psi] */
  readonly FcPerpPsi: number;
  /** Fc with every factor but column stability [psi]; it counts only where the shank is not square to the grain */
  readonly FcStarPsi: number;
}

/**
 * Area under a round washer.
 * @param outsideIn, holeIn diameters [in]
 * @returns area [in2]
 * @throws MisuseError if they are not above zero or the hole takes all
 * @source MECHANICS: circle less circle
 */
export function washerArea(outsideIn: number, holeIn: number, note?: Note): number {
  const D = positive('outsideIn', outsideIn);
  const h = positive('holeIn', holeIn);
  if (h >= D) throw new MisuseError('holeIn', h, `a hole smaller than ${D}`);
  const A = (Math.PI * (D * D - h * h)) / 4;
  note?.({
    symbol: 'A',
    words: 'area under the washer',
    formula: 'π × (Do^2 - h^2) / 4',
    put: [put('Do', D, 'in', 'outside of the washer'), put('h', h, 'in', 'hole')],
    result: quantity(A, 'in2'),
    clause: clause('MECHANICS', 'circle less circle'),
  });
  return A;
}

/** A shank this near to the grain comes out of a sawn end, on which its washer lies [sine of the angle]. */
const ALONG_GRAIN = 1e-6;

/**
 * How deep a flat square to the shank must be cut, along the shank, for a washer to lie on it whole: wide enough across a log,
 * and long enough where the shank leaves the stick aslant.
 * @param outsideIn of the washer [in]
 * @param diameterIn of the log; null: a sawn face
 * @param angleDeg between shank and grain
 * @param offIn across the grain, from the middle of the log to the shank [in]
 * @returns depth [in]; Infinity where the log is no wider than the washer
 * @source MECHANICS: chord of a circle; along the slope the flat gets shallower by the cosine, the log's chord needs less
 */
export function leastFlat(outsideIn: number, diameterIn: number | null, angleDeg: number, offIn = 0): number {
  const a = outsideIn / 2;
  const [sin, cos] = [Math.sin(radiansFromDegrees(angleDeg)), Math.abs(Math.cos(radiansFromDegrees(angleDeg)))];
  if (sin < ALONG_GRAIN) return 0;
  if (diameterIn === null) return (a * cos) / sin;
  const R = diameterIn / 2;
  const c = R * R - (a + offIn) ** 2;
  if (c <= 0) return Infinity;
  // the hardest place of the washer's rim, along the slope from the shank
  const s = Math.min(a, (Math.sqrt(c) * cos) / sin);
  return (R - Math.sqrt(c + s * s) + s * cos) / sin;
}

/**
 * Pull in a bolt or lag screw at which its washer presses too far into the wood.
 * @returns pounds, or a refusal: a washer wants a flat that it lies on whole
 * @throws MisuseError if a dimension or value is not above zero, or the angle not from 0 to 90
 * @limits  the washer is thick enough not to dish: a cut washer, a malleable one or a plate
 * @source NDS 3.10.2, 3.10.3, 3.10.4 (the length of a round washer is its diameter); the flat: own rule
 */
export function washerBearing(washer: PressedWasher, note?: Note): Pounds {
  const { outsideIn, diameterIn, flatIn, edgeIn, offIn, angleDeg } = washer;
  const leastIn = leastFlat(outsideIn, diameterIn, angleDeg, offIn);
  if (leastIn === Infinity || (diameterIn === null && edgeIn < outsideIn / 2 - SLACK_IN))
    return refused('washerOverEdge', { washerIn: outsideIn });
  if (flatIn < leastIn - SLACK_IN) return refused('washerNeedsFlat', { washerIn: outsideIn, leastIn, flatIn });
  const A = washerArea(outsideIn, washer.holeIn, note);
  const Cb = bearingAreaFactor(outsideIn, washer.toEndIn, note);
  const across = adjustedAcrossGrain(washer.FcPerpPsi, Cb, note);
  const allowed = angleDeg === 90 ? across : bearingAtAngle(washer.FcStarPsi, across, angleDeg, note);
  const pounds = allowed * A;
  note?.({
    symbol: 'Pw',
    words: 'pull that the wood under the washer takes',
    formula: 'F × A',
    put: [put('F', allowed, 'psi', 'allowable bearing'), put('A', A, 'in2', 'area under the washer')],
    result: quantity(pounds, 'lb'),
    clause: remembered('NDS', '12.1.3, 3.10'),
  });
  return { ok: true, pounds };
}
