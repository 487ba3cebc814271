import type { SteelGrade } from '../../../data/fasteners/steel.ts';
import { remembered } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

/** A thin steel sheet or strap under the head of a fastener that is pulled. */
export interface SheetUnderHead {
  readonly thicknessIn: number;
  /** outside of head or washer, whichever is wider */
  readonly headIn: number;
  readonly steel: SteelGrade;
}

const PULL_OVER = { factor: 1.5, widestIn: 0.75, omega: 3 } as const;

/**
 * Pull at which a thin sheet is drawn over a head.
 * @returns pounds; no load duration factor belongs to steel
 * @throws MisuseError if a measure is not above zero
 * @source AISI S100 J4.4.2 (from memory): 1.5 t dw Fu / 3.0, of a head no more than 3/4 in. wide
 */
export function pullOver({ thicknessIn, headIn, steel }: SheetUnderHead, note?: Note): number {
  const t = positive('thicknessIn', thicknessIn);
  const dw = Math.min(positive('headIn', headIn), PULL_OVER.widestIn);
  const pounds = (PULL_OVER.factor * t * dw * steel.FuPsi) / PULL_OVER.omega;
  note?.({
    symbol: 'Po',
    words: `pull at which the sheet is drawn over the head, ${steel.words}`,
    formula: '1.5 × t × dw × Fu / 3',
    put: [
      put('t', t, 'in', 'thickness of the sheet'),
      put('dw', dw, 'in', 'head or washer, no more than 3/4 in. counted'),
      put('Fu', steel.FuPsi, 'psi', 'least tensile strength'),
    ],
    result: quantity(pounds, 'lb'),
    clause: remembered('AISI', 'J4.4.2'),
  });
  return pounds;
}
