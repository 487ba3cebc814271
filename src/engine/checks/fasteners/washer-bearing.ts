import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { adjustedAcrossGrain, bearingAreaFactor, bearingAtAngle } from '../wood/bearing.ts';
import { refused } from './refused.ts';
import type { Pounds } from './withdrawal.ts';

/** A washer, or a hexagon head without one, and the wood that it presses on. */
export interface PressedWasher {
  readonly outsideIn: number;
  readonly holeIn: number;
  /** narrowest width of the flat that it lies on [in]; null: a sawn face */
  readonly flatIn: number | null;
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

/**
 * Pull in a bolt or lag screw at which its washer presses too far into the wood.
 * @returns pounds, or a refusal: on a round log a washer wants a flat as wide as itself
 * @throws MisuseError if a dimension or value is not above zero, or the angle not from 0 to 90
 * @limits  the washer is thick enough not to dish: a cut washer, a malleable one or a plate
 * @source NDS 3.10.2, 3.10.3, 3.10.4 (the length of a round washer is its diameter); the flat: own rule
 */
export function washerBearing(washer: PressedWasher, note?: Note): Pounds {
  const { outsideIn, flatIn, angleDeg } = washer;
  if (flatIn !== null && flatIn < outsideIn) return refused('washerNeedsFlat', { washerIn: outsideIn, flatIn });
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
