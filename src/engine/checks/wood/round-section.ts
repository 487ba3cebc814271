import { clause } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

const CIRCLE = clause('MECHANICS', 'section of a circle');

/**
 * Area of a round section.
 * @param diameterIn wood diameter at the section, bark off [in]
 * @returns area [in2]
 * @throws MisuseError if the diameter is not finite or not above zero
 * @source MECHANICS: pi d2 / 4
 */
export function roundArea(diameterIn: number, note?: Note): number {
  const d = positive('diameterIn', diameterIn);
  const A = (Math.PI * d * d) / 4;
  note?.({
    symbol: 'A',
    words: 'area of the round section',
    formula: 'π × d^2 / 4',
    put: [put('d', d, 'in', 'diameter at the section')],
    result: quantity(A, 'in2'),
    clause: CIRCLE,
  });
  return A;
}

/**
 * Moment of inertia of a round section about any diameter.
 * @param diameterIn wood diameter at the section, bark off [in]
 * @returns inertia [in4]
 * @throws MisuseError if the diameter is not finite or not above zero
 * @source MECHANICS: pi d4 / 64
 */
export function roundInertia(diameterIn: number): number {
  const d = positive('diameterIn', diameterIn);
  return (Math.PI * d * d * d * d) / 64;
}

/**
 * Section modulus of a round section, the same about every diameter.
 * @param diameterIn wood diameter at the section, bark off, nothing cut away [in]
 * @returns section modulus [in3]
 * @throws MisuseError if the diameter is not finite or not above zero
 * @source MECHANICS: pi d3 / 32. The real round section: no form factor (pole values come from round tests).
 */
export function roundSectionModulus(diameterIn: number, note?: Note): number {
  const d = positive('diameterIn', diameterIn);
  const S = (Math.PI * d * d * d) / 32;
  note?.({
    symbol: 'S',
    words: 'section modulus of the round section',
    formula: 'π × d^3 / 32',
    put: [put('d', d, 'in', 'diameter at the section')],
    result: quantity(S, 'in3'),
    clause: CIRCLE,
  });
  return S;
}
