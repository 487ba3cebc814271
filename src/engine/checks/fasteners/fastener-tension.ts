import type { SteelGrade } from '../../../data/fasteners/steel.ts';
import { remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

/** The steel of a bolt, lag screw or wood screw. */
export interface PulledSteel {
  /** full shank [in] */
  readonly shankIn: number;
  /** at the root of the thread [in] */
  readonly rootIn: number;
  readonly steel: Pick<SteelGrade, 'FyPsi' | 'FuPsi' | 'words'>;
}

/** Safety factors on yielding of the shank and on fracture at the root. @source AISI D2, D3, from memory */
const ON_YIELD = 1.67;
const ON_FRACTURE = 2;
const STEEL = remembered('AISI', 'D2, D3');

/**
 * Pull that the steel of a threaded fastener takes: yielding of its shank, fracture at the root of its thread.
 * @returns pounds
 * @throws MisuseError if a diameter or strength is not above zero, or the root thicker than the shank
 * @limits  no load duration factor: it belongs to wood
 * @source NDS 12.2.1.3 asks for it at the root; AISI D2, D3 (from memory): tension members with holes
 * @departs fracture on the root area, not on 0.75 of the shank as bolts are usually taken (less, safe side)
 */
export function tensionOfSteel({ shankIn, rootIn, steel }: PulledSteel, note?: Note): number {
  const D = positive('shankIn', shankIn);
  const Dr = positive('rootIn', rootIn);
  if (Dr > D) throw new MisuseError('rootIn', Dr, `a root no thicker than the shank, ${D}`);
  const Fy = positive('FyPsi', steel.FyPsi);
  const Fu = positive('FuPsi', steel.FuPsi);
  const yields = (Fy * (Math.PI * D * D)) / 4 / ON_YIELD;
  const breaks = (Fu * (Math.PI * Dr * Dr)) / 4 / ON_FRACTURE;
  const isRoot = breaks <= yields;
  const pounds = isRoot ? breaks : yields;
  note?.({
    symbol: 'Ty',
    words: `yielding of the shank, ${steel.words}`,
    formula: 'Fy × π × D^2 / 4 / 1.67',
    put: [put('Fy', Fy, 'psi', 'yield strength'), put('D', D, 'in', 'shank')],
    result: quantity(yields, 'lb'),
    clause: STEEL,
  });
  note?.({
    symbol: 'Tu',
    words: `fracture at the root of the thread, ${steel.words}`,
    formula: 'Fu × π × Dr^2 / 4 / 2',
    put: [put('Fu', Fu, 'psi', 'tensile strength'), put('Dr', Dr, 'in', 'root of the thread')],
    result: quantity(breaks, 'lb'),
    clause: STEEL,
  });
  note?.({
    symbol: 'T',
    words: isRoot
      ? 'pull that the steel takes: its root breaks first'
      : 'pull that the steel takes: its shank yields first',
    formula: isRoot ? 'Tu' : 'Ty',
    put: [put(isRoot ? 'Tu' : 'Ty', pounds, 'lb', 'the smaller of both')],
    result: quantity(pounds, 'lb'),
    clause: remembered('NDS', '12.2.1.3'),
  });
  return pounds;
}
