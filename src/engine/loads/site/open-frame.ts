import { OPEN_FRAME, ROUND_FLOW_LIMIT, type OpenFrameRow } from '../../../data/loads/open-frame.ts';
import { LEAST_WIND } from '../../../data/loads/wind-exposure.ts';
import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { message, type Message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import type { Psf } from '../../units.ts';
import { notNegative } from './givens.ts';

export type OpenFrameShape =
  | { readonly kind: 'flat' }
  | { readonly kind: 'round'; readonly diameterFt: number; readonly velocityPressurePsf: number };

export type OpenFrameAnswer =
  { readonly ok: true; readonly coefficient: number } | { readonly ok: false; readonly reason: Message };

/**
 * Force coefficient of an open frame with the wind square to it, on the projected solid area.
 * @param shape  flat-sided members, or round ones with diameter and velocity pressure
 * @param solidity  solid over gross area of the frame's outline, above 0 to 1
 * @returns Cf; above a solidity of 0.7 why there is none
 * @throws MisuseError  if solidity is not above 0 and at most 1, or diameter or pressure is not above zero
 * @limits  solidity to 0.7
 * @source ASCE7 29.4, Table 29.4-2 (7-16)
 */
export function openFrameForceCoefficient(shape: OpenFrameShape, solidity: number, note?: Note): OpenFrameAnswer {
  if (positive('solidity', solidity) > 1) throw new MisuseError('solidity', solidity, 'at most 1');
  const last = OPEN_FRAME[OPEN_FRAME.length - 1];
  const row = OPEN_FRAME.find((candidate) => solidity < candidate.solidityBelow) ?? last;
  if (!row || solidity > row.solidityBelow) {
    return { ok: false, reason: message('solidityOverTable', { solidity, limit: row?.solidityBelow ?? 0 }) };
  }
  const coefficient = inRow(row, shape);
  note?.({
    symbol: 'Cf',
    words: shape.kind === 'flat' ? 'Flat-sided members of an open frame' : 'Round members of an open frame',
    formula: shape.kind === 'flat' ? 'table by ε' : 'table by ε and D sqrt(q), limit 2.5',
    put: [
      put('ε', solidity, '1', 'solid over gross area'),
      ...(shape.kind === 'round'
        ? [
            put('D', shape.diameterFt, 'ft', 'diameter'),
            put('q', shape.velocityPressurePsf, 'psf', 'velocity pressure'),
          ]
        : []),
    ],
    result: { value: coefficient, unit: '1' },
    clause: clause('ASCE7', '29.4, Table 29.4-2'),
  });
  return { ok: true, coefficient };
}

function inRow(row: OpenFrameRow, shape: OpenFrameShape): number {
  if (shape.kind === 'flat') return row.flatSided;
  const roundness =
    positive('diameterFt', shape.diameterFt) * Math.sqrt(positive('velocityPressurePsf', shape.velocityPressurePsf));
  return roundness <= ROUND_FLOW_LIMIT ? row.roundSlow : row.roundFast;
}

/**
 * Greatest coefficient of all rows up to the one of a solidity: a part of the frame may stand in a more open place than
 * the whole does (own rule, safe side). Beyond the table its last row and why.
 * @param solidity  solid over gross area of the frame's outline, 0 to 1
 * @throws MisuseError  as `openFrameForceCoefficient`
 * @source ASCE7 29.4, Table 29.4-2 (7-16)
 */
export function harshestForceCoefficient(
  shape: OpenFrameShape,
  solidity: number,
): { readonly coefficient: number; readonly beyond: Message | null } {
  const reached = notNegative('solidity', solidity);
  const rows = OPEN_FRAME.filter((_, i) => i === 0 || reached >= OPEN_FRAME[i - 1]!.solidityBelow);
  const printed = reached > 0 ? openFrameForceCoefficient(shape, reached) : null;
  return {
    coefficient: Math.max(...rows.map((row) => inRow(row, shape))),
    beyond: printed && !printed.ok ? printed.reason : null,
  };
}

/**
 * Level wind on the projected solid area of an open building's frame, strength level, never under 16 psf.
 * @returns p [psf]
 * @throws MisuseError  if a given is not finite and above zero
 * @source ASCE7 Eq. 29.4-1 and 27.1.5 (7-16; the 16 psf from memory, its use was seen on a worked sheet)
 */
export function openFramePressure(
  givens: { readonly velocityPressurePsf: number; readonly gustFactor: number; readonly coefficient: number },
  note?: Note,
): Psf {
  const q = positive('velocityPressurePsf', givens.velocityPressurePsf);
  const G = positive('gustFactor', givens.gustFactor);
  const Cf = positive('coefficient', givens.coefficient);
  const p = Math.max(q * G * Cf, LEAST_WIND.openBuildingPsf);
  note?.({
    symbol: 'p',
    words: 'Wind on the solid area of the frame, strength level',
    formula: 'max(q G Cf, p0)',
    put: [
      put('q', q, 'psf', 'velocity pressure'),
      put('G', G, '1', 'gust-effect factor'),
      put('Cf', Cf, '1', 'force coefficient'),
      put('p0', LEAST_WIND.openBuildingPsf, 'psf', 'least wind on an open building'),
    ],
    result: { value: p, unit: 'psf' },
    clause: remembered('ASCE7', '29.4, 27.1.5'),
  });
  return p as Psf;
}
