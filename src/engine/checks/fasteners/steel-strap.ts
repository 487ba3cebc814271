import type { SteelGrade } from '../../../data/fasteners/steel.ts';
import { remembered } from '../../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { refused, type Refused } from './refused.ts';

const GROSS = remembered('AISI', 'D2');
const NET = remembered('AISI', 'D3');
const STRAP = remembered('AISI', 'D2, D3');
/** What the strength is divided by: yielding of the whole strap, tearing at the holes. @source AISI S100 D2, D3 */
const OMEGA = { gross: 1.67, net: 2 } as const;
/** A punched hole is this much wider than its nail. @source OWN: common practice */
const HOLE_MORE_IN = 1 / 32;

/** A flat steel strap that is pulled along its length. */
export interface Strap {
  readonly widthIn: number;
  readonly thicknessIn: number;
  readonly steel: SteelGrade;
  /** nominal diameter of what goes through it, and how many stand side by side across it */
  readonly fastenerIn: number;
  readonly abreast: number;
}

export type StrapPull = { readonly ok: true; readonly pullLb: number } | Refused;

/**
 * Pull that the steel of a strap takes: the lesser of yielding whole and tearing at its holes.
 * @returns allowable pull [lb]; no load duration factor belongs to steel
 * @throws MisuseError if a measure is not above zero or the count of holes is no whole number from 0 on
 * @limits straight strap lying flat; its fasteners, and where it bends on the wood, are asked on their own
 * @source AISI S100 D2, D3, from memory
 */
export function strapPull(strap: Strap, note?: Note): StrapPull {
  const t = positive('thicknessIn', strap.thicknessIn);
  const w = positive('widthIn', strap.widthIn);
  const n = notNegative('abreast', strap.abreast);
  if (!Number.isInteger(n)) throw new MisuseError('abreast', n, 'a whole number');
  const hole = positive('fastenerIn', strap.fastenerIn) + HOLE_MORE_IN;
  if (n * hole >= w) return refused('strapHolesTakeAll', { holesIn: n * hole, widthIn: w });
  const gross = (t * w * strap.steel.FyPsi) / OMEGA.gross;
  const net = (t * (w - n * hole) * strap.steel.FuPsi) / OMEGA.net;
  note?.({
    symbol: 'Tg',
    words: `yielding of the whole strap, ${strap.steel.words}`,
    formula: 't × w × Fy / 1.67',
    put: [
      put('t', t, 'in', 'thickness'),
      put('w', w, 'in', 'width'),
      put('Fy', strap.steel.FyPsi, 'psi', 'least yield strength'),
    ],
    result: quantity(gross, 'lb'),
    clause: GROSS,
  });
  note?.({
    symbol: 'Tn',
    words: 'tearing at the holes',
    formula: 't × (w - n × h) × Fu / 2',
    put: [
      put('t', t, 'in', 'thickness'),
      put('w', w, 'in', 'width'),
      put('n', n, '1', 'holes side by side'),
      put('h', hole, 'in', 'width of a hole'),
      put('Fu', strap.steel.FuPsi, 'psi', 'least tensile strength'),
    ],
    result: quantity(net, 'lb'),
    clause: NET,
  });
  const pullLb = Math.min(gross, net);
  note?.({
    symbol: 'T',
    words: 'pull that the steel of the strap takes',
    formula: 'min(Tg, Tn)',
    put: [put('Tg', gross, 'lb', 'yielding of the whole strap'), put('Tn', net, 'lb', 'tearing at the holes')],
    result: quantity(pullLb, 'lb'),
    clause: STRAP,
  });
  return { ok: true, pullLb };
}
