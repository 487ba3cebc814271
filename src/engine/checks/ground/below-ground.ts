import { clause } from '../../../data/sources.ts';
import { notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

const RIGID_POLE = clause('MECHANICS', 'rigid pole in soil that grows stiffer with depth');

/** Where a post bends most below the ground, and how much. */
export interface PeakBelow {
  /** below the ground [in] */
  readonly depthIn: number;
  readonly momentLbIn: number;
}

/**
 * Greatest bending moment of a post that the ground alone holds sideways, with nothing held at the surface.
 * The post turns about a point in the soil as a stiff stick; soil that grows stiffer with depth then presses by
 * k z (a - z). Both numbers k and a follow from the balance of push and moment, so that the peak, where the shear is zero,
 * is a closed form. Soil alike at all depths would press nearer to the surface and bend the post less.
 * @param forceLb push sideways on the post above the ground [lb]
 * @param momentLbIn moment of all above about the ground, of the same sense [lb in]
 * @param depthIn depth of the post in the ground [in]
 * @returns depth of the peak [in] and moment there [lb in]; never less than the moment at the ground
 * @throws MisuseError if force or moment are below zero or the depth is not above zero
 * @source MECHANICS: c = d2 / (4 (2 d + 3 M/P)); shear is zero at z = (c + sqrt(c2 + 4 d c)) / 2
 */
export function peakBelowGround(forceLb: number, momentLbIn: number, depthIn: number, note?: Note): PeakBelow {
  const P = notNegative('forceLb', forceLb);
  const M = notNegative('momentLbIn', momentLbIn);
  const d = positive('depthIn', depthIn);
  if (P === 0) {
    // a moment alone fades from the ground down
    note?.(peakStep(M, 'Mg', [put('Mg', M, 'lb·in', 'moment about the ground')]));
    return { depthIn: 0, momentLbIn: M };
  }
  const turned = 2 * d * P + 3 * M;
  const c = (d * d * P) / (4 * turned);
  const z = (c + Math.sqrt(c * c + 4 * d * c)) / 2;
  const k = (12 * turned) / d ** 4;
  const a = (2 / 3) * (d + c);
  const peak = M + P * z - k * ((a * z ** 3) / 6 - z ** 4 / 12);
  note?.({
    symbol: 'c',
    words: 'length that places the point about which the post turns: a = 2/3 (d + c) below the ground',
    formula: 'd^2 × P / (4 × (2 × d × P + 3 × Mg))',
    put: given(P, M, d),
    result: quantity(c, 'in'),
    clause: RIGID_POLE,
  });
  note?.({
    symbol: 'z',
    words: 'depth at which the post bends most',
    formula: '(c + sqrt(c^2 + 4 × d × c)) / 2',
    put: [put('c', c, 'in', 'as above'), put('d', d, 'in', 'depth in the ground')],
    result: quantity(z, 'in'),
    clause: RIGID_POLE,
  });
  note?.(
    peakStep(peak, 'Mg + P × z - 12 × (2 × d × P + 3 × Mg) / d^4 × ((d + c) × z^3 / 9 - z^4 / 12)', [
      ...given(P, M, d),
      put('c', c, 'in', 'as above'),
      put('z', z, 'in', 'depth of the peak'),
    ]),
  );
  return { depthIn: z, momentLbIn: peak };
}

const given = (P: number, M: number, d: number) => [
  put('P', P, 'lb', 'push on the post above the ground'),
  put('Mg', M, 'lb·in', 'moment about the ground'),
  put('d', d, 'in', 'depth in the ground'),
];

const peakStep = (momentLbIn: number, formula: string, puts: ReturnType<typeof given>) => ({
  symbol: 'M',
  words: 'greatest bending moment below the ground',
  formula,
  put: puts,
  result: quantity(momentLbIn, 'lb·in'),
  clause: RIGID_POLE,
});
