import { clause, remembered } from '../../../data/sources.ts';
import { notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { feetFromInches, quantity, SQUARE_INCHES_PER_SQUARE_FOOT } from '../../units.ts';

const TABLE = clause('IBC', 'Table 1806.2');
const LIMIT = remembered('IBC', '1806.3.2');
const TOGETHER = remembered('IBC', '1806.3.1');

/** Depth beyond which the soil beside a footing counts no more, that of posts in the ground [ft]. @source IBC 1807.3.2.1 */
const DEEPEST_FT = 12;
/** Cohesion holds no more than this share of the dead load. @source IBC 1806.3.2, from memory */
const COHESION_SHARE = 0.5;

/** What a base rubs with; null where nobody has given it. */
export interface Grip {
  readonly friction: number | null;
  readonly cohesionPsf: number | null;
}

/**
 * Push that a base holds by rubbing on the soil under it: friction by the dead load on it, or the cohesion of clay on its
 * area, at most half of that load. Given both, the smaller counts; given neither, nothing.
 * @param deadLb dead load on the base that counts [lb]
 * @param areaIn2 area of the base [in2]
 * @returns force [lb]
 * @throws MisuseError if a value is below zero
 * @source IBC Table 1806.2 with its notes; limit of cohesion IBC 1806.3.2 from memory
 */
export function baseFriction({ friction, cohesionPsf }: Grip, deadLb: number, areaIn2: number, note?: Note): number {
  const N = notNegative('deadLb', deadLb);
  const A = notNegative('areaIn2', areaIn2) / SQUARE_INCHES_PER_SQUARE_FOOT;
  const rubs = friction === null ? Infinity : notNegative('friction', friction) * N;
  const sticks =
    cohesionPsf === null ? Infinity : Math.min(notNegative('cohesionPsf', cohesionPsf) * A, COHESION_SHARE * N);
  if (rubs === Infinity && sticks === Infinity) return 0;
  const bySticking = sticks < rubs;
  const Fb = Math.min(rubs, sticks);
  note?.({
    symbol: 'Fb',
    words: bySticking
      ? 'cohesion of the soil under the base, at most half of the dead load'
      : 'friction under the base',
    formula: bySticking ? 'min(c × A, N / 2)' : 'μ × N',
    put: bySticking
      ? [
          put('c', cohesionPsf ?? 0, 'psf', 'cohesion of the soil'),
          put('A', A, 'ft2', 'area of the base'),
          put('N', N, 'lb', 'dead load on the base that counts'),
        ]
      : [
          put('μ', friction ?? 0, '1', 'coefficient of friction'),
          put('N', N, 'lb', 'dead load on the base that counts'),
        ],
    result: quantity(Fb, 'lb'),
    clause: bySticking ? LIMIT : TABLE,
  });
  return Fb;
}

/**
 * Push that a pier holds by the soil beside it when it slides as a whole: allowable lateral bearing that grows with depth.
 * @param lateralPsfPerFt allowable lateral bearing per foot of depth [psf/ft]
 * @param depthFt depth of the pier in the ground [ft]
 * @param widthIn width that presses on the soil: diameter of a round pier, side of a square one [in]
 * @returns force [lb]; 0 without depth
 * @throws MisuseError if the depth is below zero or another value not above zero
 * @source IBC Table 1806.2; the sum of the triangle down to the base, at most 12 ft of it
 */
export function sideBearing(lateralPsfPerFt: number, depthFt: number, widthIn: number, note?: Note): number {
  const z = Math.min(notNegative('depthFt', depthFt), DEEPEST_FT);
  const b = feetFromInches(positive('widthIn', widthIn));
  const Fs = (positive('lateralPsfPerFt', lateralPsfPerFt) * z * z * b) / 2;
  note?.({
    symbol: 'Fs',
    words: 'allowable bearing of the soil beside the pier, all of its depth',
    formula: 's × z^2 / 2 × b',
    put: [
      put('s', lateralPsfPerFt, 'psf/ft', 'allowable lateral bearing per foot of depth'),
      put('z', z, 'ft', 'depth in the ground, at most 12 ft'),
      put('b', b, 'ft', 'width of the pier'),
    ],
    result: quantity(Fs, 'lb'),
    clause: TABLE,
  });
  return Fs;
}

/**
 * Push that a pier holds against sliding: what rubs under it and what presses beside it.
 * @returns force [lb]
 * @throws MisuseError if a force is below zero
 * @source IBC 1806.3.1, from memory: both may be added
 */
export function slidingResistance(frictionLb: number, besideLb: number, note?: Note): number {
  const F = notNegative('frictionLb', frictionLb) + notNegative('besideLb', besideLb);
  note?.({
    symbol: 'F',
    words: 'push that the pier holds against sliding',
    formula: 'Fb + Fs',
    put: [put('Fb', frictionLb, 'lb', 'under the base'), put('Fs', besideLb, 'lb', 'beside the pier')],
    result: quantity(F, 'lb'),
    clause: TOGETHER,
  });
  return F;
}
