import { remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { flattenedArea } from '../wood/flat-section.ts';

const NEAR_END = remembered('NDS', '3.4.3.3');
/** From this many depths to the end on the wood beyond helps. @source NDS 3.4.3.3, from memory */
const DEPTHS_FROM_END = 5;

export interface HungSection {
  readonly shape: 'round' | 'rectangular';
  /** of a round one its diameter */
  readonly depthIn: number;
  readonly breadthIn: number;
  /** from the unloaded edge to the axis of the nearest bolt or lag screw */
  readonly lostIn: number;
  /** from the fastener to the end of the stick */
  readonly toEndIn: number;
}

/**
 * Allowable shear of a bending member that hangs on or rests on fasteners: only the depth on the loaded side of them
 * counts, near an end less still.
 * @param FvAllowablePsi Fv' along the grain [psi]
 * @returns allowable shear [lb]
 * @throws MisuseError if a value is not above zero or the fasteners leave no depth
 * @source NDS 3.4.3.3, from memory: 2/3 Fv' b de (de/d)2 within 5 d of the end, beyond it without the square
 * @departs of a round section the area left takes the place of b de, as in the rule for round end notches (own rule)
 */
export function shearAtFasteners(FvAllowablePsi: number, section: HungSection, note?: Note): number {
  const Fv = positive('FvAllowablePsi', FvAllowablePsi);
  const d = positive('depthIn', section.depthIn);
  const b = positive('breadthIn', section.breadthIn);
  const lost = positive('lostIn', section.lostIn);
  if (lost >= d) throw new MisuseError('lostIn', lost, `less than the depth of ${d}`);
  const de = d - lost;
  const isNear = section.toEndIn < DEPTHS_FROM_END * d;
  const area = section.shape === 'round' ? flattenedArea(d, lost, 0, note) : b * de;
  const allowable = (2 / 3) * Fv * area * (isNear ? (de / d) ** 2 : 1);
  note?.({
    symbol: "V'",
    words: isNear ? 'allowable shear at fasteners within 5 d of the end' : 'allowable shear at fasteners',
    formula: isNear ? "2 / 3 × Fv' × Ae × (de / d)^2" : "2 / 3 × Fv' × Ae",
    put: [
      put("Fv'", Fv, 'psi', 'allowable shear along the grain'),
      put('Ae', area, 'in2', 'section on the loaded side of the fasteners'),
      put('de', de, 'in', 'depth on the loaded side of the fasteners'),
      put('d', d, 'in', 'full depth'),
    ],
    result: quantity(allowable, 'lb'),
    clause: NEAR_END,
  });
  return allowable;
}
