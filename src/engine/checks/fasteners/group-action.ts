import { remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { THICK_FROM_IN } from './dowel-bearing.ts';

const GROUP = remembered('NDS', '11.3.6, equation 11.3-1');

/** Load and slip modulus over D^1.5. @source NDS 11.3.6: dowel-type fasteners, from memory */
const SLIP_MODULUS = { wood: 180_000, steel: 270_000 } as const;

/** A piece that a row of fasteners pulls. */
export interface RowPiece {
  readonly EPsi: number;
  /** whole section; loaded across the grain, its thickness times the width of the group */
  readonly areaIn2: number;
}

export interface FastenerRow {
  readonly nominalIn: number;
  /** of one row, a row running along the load */
  readonly count: number;
  readonly spacingIn: number;
  readonly main: RowPiece;
  /** all side pieces together */
  readonly side: RowPiece;
  readonly sideMaterial: 'wood' | 'steel';
}

/**
 * Group action factor: the outer fasteners of a long row take more than their share.
 * @returns Cg, above 0 to 1
 * @throws MisuseError if the count is no whole number from 1 on or a measure is not above zero
 * @source NDS 11.3.6, equation 11.3-1, from memory; 1 for one fastener and for shanks thinner than 1/4 in.
 */
export function groupActionFactor(row: FastenerRow, note?: Note): number {
  const n = row.count;
  if (!Number.isInteger(n) || n < 1) throw new MisuseError('count', n, 'a whole number from 1 on');
  const D = positive('nominalIn', row.nominalIn);
  const isAlone = n === 1 || D < THICK_FROM_IN;
  const Cg = isAlone ? 1 : ofRow(row, D, note);
  if (isAlone) {
    note?.({
      symbol: 'Cg',
      words: n === 1 ? 'group action: one fastener in the row' : 'group action: thinner than 1/4 in.',
      formula: '1',
      put: [],
      result: quantity(Cg, '1'),
      clause: GROUP,
    });
  }
  return Cg;
}

function ofRow({ count: n, spacingIn, main, side, sideMaterial }: FastenerRow, D: number, note?: Note): number {
  const s = positive('spacingIn', spacingIn);
  const EAm = positive('main.EPsi', main.EPsi) * positive('main.areaIn2', main.areaIn2);
  const EAs = positive('side.EPsi', side.EPsi) * positive('side.areaIn2', side.areaIn2);
  const k = SLIP_MODULUS[sideMaterial];
  const gamma = k * D ** 1.5;
  const u = 1 + gamma * (s / 2) * (1 / EAm + 1 / EAs);
  const m = u - Math.sqrt(u * u - 1);
  const R = Math.min(EAs / EAm, EAm / EAs);
  const m2n = m ** (2 * n);
  const Cg = ((m * (1 - m2n)) / (n * ((1 + R * m ** n) * (1 + m) - 1 + m2n))) * ((1 + R) / (1 - m));
  note?.({
    symbol: 'γ',
    words: 'slip modulus of one fastener',
    formula: 'k × D^1.5',
    put: [
      put('k', k, '1', sideMaterial === 'steel' ? 'wood to metal' : 'wood to wood'),
      put('D', D, 'in', 'nominal diameter'),
    ],
    result: quantity(gamma, 'lb/in'),
    clause: GROUP,
  });
  note?.({
    symbol: 'u',
    words: 'slip of the fasteners against stretch of the pieces',
    formula: '1 + γ × s / 2 × (1 / EAm + 1 / EAs)',
    put: [
      put('γ', gamma, 'lb/in', 'slip modulus'),
      put('s', s, 'in', 'from one to the next in the row'),
      put('EAm', EAm, 'lb', 'stiffness of the main piece'),
      put('EAs', EAs, 'lb', 'stiffness of the side pieces together'),
    ],
    result: quantity(u, '1'),
    clause: GROUP,
  });
  note?.({
    symbol: 'm',
    words: 'how far a fastener is felt by the next one',
    formula: 'u - sqrt(u^2 - 1)',
    put: [put('u', u, '1', 'slip against stretch')],
    result: quantity(m, '1'),
    clause: GROUP,
  });
  note?.({
    symbol: 'Cg',
    words: 'group action factor',
    formula: 'm × (1 - m^(2 × n)) / (n × ((1 + R × m^n) × (1 + m) - 1 + m^(2 × n))) × (1 + R) / (1 - m)',
    put: [
      put('m', m, '1', 'as above'),
      put('n', n, '1', 'fasteners in the row'),
      put('R', R, '1', 'stiffness of the softer pieces over that of the stiffer'),
    ],
    result: quantity(Cg, '1'),
    clause: GROUP,
  });
  return Cg;
}
