import type { Exposure } from '../../../data/loads/wind-exposure.ts';
import { HILL_LIMITS, HILLS, type HillShape, type SideOfCrest } from '../../../data/loads/wind-topography.ts';
import { remembered } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { notNegative } from './givens.ts';

/** A hill as a person can pace it out or read it off a map. */
export interface Hill {
  readonly shape: HillShape;
  readonly exposure: Exposure;
  /** H, crest above the country upwind of it [ft] */
  readonly heightFt: number;
  /** Lh, level distance on the upwind side from the crest to where the ground is half way up [ft] */
  readonly halfLengthFt: number;
  /** x, level distance from the crest to the shelter, and on which side of it as the wind blows [ft] */
  readonly distanceFt: number;
  readonly side: SideOfCrest;
  /** z, mean roof height above its own ground [ft] */
  readonly roofHeightFt: number;
}

/**
 * Topographic factor Kzt: how much faster the wind blows on a hill. 1 where the hill is too low or too gentle to count.
 * Whether the hill stands alone and high above its surroundings is not asked: it counts as if it did (safe side).
 * @returns Kzt, 1 or more, a pure number
 * @throws MisuseError  if a length is not finite or negative, or height, half length or roof height is zero
 * @source ASCE7 26.8, Fig. 26.8-1 (7-16); parameters read in BNBC Fig. 6.2.4, when a hill counts from memory
 */
export function topographicFactor(hill: Hill, note?: Note): number {
  const { shape, exposure, side } = hill;
  const H = positive('heightFt', hill.heightFt);
  const Lh = positive('halfLengthFt', hill.halfLengthFt);
  const x = notNegative('distanceFt', hill.distanceFt);
  const z = positive('roofHeightFt', hill.roofHeightFt);
  const { leastSteepness, greatestSteepness, leastHeightFt } = HILL_LIMITS;
  const counts = H / Lh >= leastSteepness && H >= leastHeightFt[exposure];
  const { speedUp, heightDecay, reach } = HILLS[shape];
  // a steeper hill counts as one of steepness 1/2 with the same height
  const length = Math.max(Lh, H / greatestSteepness);
  const k1 = counts ? speedUp[exposure] * Math.min(H / Lh, greatestSteepness) : 0;
  const k2 = Math.max(0, 1 - x / (reach[side] * length));
  const k3 = Math.exp((-heightDecay * z) / length);
  const kzt = (1 + k1 * k2 * k3) ** 2;
  note?.({
    symbol: 'K1',
    words: `Speed-up at the crest of ${ARTICLE[shape]}, exposure ${exposure}`,
    formula: `k min(H / Lh, ${greatestSteepness}); 0 where H / Lh < ${leastSteepness} or H < ${leastHeightFt[exposure]} ft`,
    put: [
      put('k', speedUp[exposure], '1', 'by shape and exposure'),
      put('H', H, 'ft', 'height of the hill'),
      put('Lh', Lh, 'ft', 'crest to half height, upwind'),
    ],
    result: { value: k1, unit: '1' },
    clause: remembered('ASCE7', '26.8.1, Fig. 26.8-1'),
  });
  note?.({
    symbol: 'K2',
    words: `Less speed-up away from the crest, ${side}`,
    formula: 'max(0, 1 - x / (μ L))',
    put: [
      put('x', x, 'ft', 'distance from the crest'),
      put('μ', reach[side], '1', 'reach by shape and side'),
      put('L', length, 'ft', 'Lh, or 2 H of a steeper hill'),
    ],
    result: { value: k2, unit: '1' },
    clause: remembered('ASCE7', 'Fig. 26.8-1'),
  });
  note?.({
    symbol: 'K3',
    words: 'Less speed-up above the ground',
    formula: 'exp(-γ z / L)',
    put: [
      put('γ', heightDecay, '1', 'by shape'),
      put('z', z, 'ft', 'mean roof height'),
      put('L', length, 'ft', 'Lh, or 2 H of a steeper hill'),
    ],
    result: { value: k3, unit: '1' },
    clause: remembered('ASCE7', 'Fig. 26.8-1'),
  });
  note?.({
    symbol: 'Kzt',
    words: 'Hills and ridges',
    formula: '(1 + K1 K2 K3)²',
    put: [put('K1', k1, '1', 'at the crest'), put('K2', k2, '1', 'away from it'), put('K3', k3, '1', 'above ground')],
    result: { value: kzt, unit: '1' },
    clause: remembered('ASCE7', 'Eq. 26.8-1'),
  });
  return kzt;
}

const ARTICLE: Readonly<Record<HillShape, string>> = {
  ridge: 'a long ridge',
  escarpment: 'a long escarpment',
  hill: 'a round hill',
};
