import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { flattenedArea } from './flat-section.ts';

const SHEAR = clause('NDS', '3.4.2');
const NOTCH = remembered('NDS', '3.4.3.2');

/**
 * Allowable shear stress along the grain.
 * @param FvPsi reference value, wet service in [psi]
 * @param CD load duration factor
 * @returns Fv' [psi]
 * @throws MisuseError if a value is not above zero
 * @source NDS 4.3, 6.3 (applicability of factors)
 */
export function adjustedShear(FvPsi: number, CD: number, note?: Note): number {
  const allowable = positive('FvPsi', FvPsi) * positive('CD', CD);
  note?.({
    symbol: "Fv'",
    words: 'allowable shear along the grain',
    formula: 'Fv × CD',
    put: [put('Fv', FvPsi, 'psi', 'reference shear value'), put('CD', CD, '1', 'load duration factor')],
    result: quantity(allowable, 'psi'),
    clause: SHEAR,
  });
  return allowable;
}

/**
 * Greatest shear stress in a solid round section.
 * @param shearLb shear force, either sign [lb]
 * @param areaIn2 area of the round section [in2]
 * @returns stress [psi]
 * @throws MisuseError if the area is not above zero
 * @limits no flat: with one, take `shearArea` of flat-shear.ts.
 * @source NDS 3.4.2: V Q / (I b), for a circle 4 V / (3 A)
 */
export function roundShearStress(shearLb: number, areaIn2: number, note?: Note): number {
  const V = Math.abs(shearLb);
  const fv = (4 * V) / (3 * positive('areaIn2', areaIn2));
  note?.({
    symbol: 'fv',
    words: 'greatest shear stress of the round section',
    formula: '4 × V / (3 × A)',
    put: [put('V', V, 'lb', 'shear force'), put('A', areaIn2, 'in2', 'area of the section')],
    result: quantity(fv, 'psi'),
    clause: SHEAR,
  });
  return fv;
}

/**
 * Greatest shear stress in a rectangular section.
 * @param shearLb shear force, either sign [lb]
 * @param breadthIn across the load [in]
 * @param depthIn along the load, less any cut [in]
 * @returns stress [psi]
 * @throws MisuseError if breadth or depth is not above zero
 * @source NDS 3.4.2, equation 3.4-2
 */
export function rectangularShearStress(shearLb: number, breadthIn: number, depthIn: number, note?: Note): number {
  const V = Math.abs(shearLb);
  const b = positive('breadthIn', breadthIn);
  const d = positive('depthIn', depthIn);
  const fv = (3 * V) / (2 * b * d);
  note?.({
    symbol: 'fv',
    words: 'greatest shear stress of the rectangular section',
    formula: '3 × V / (2 × b × d)',
    put: [put('V', V, 'lb', 'shear force'), put('b', b, 'in', 'breadth'), put('d', d, 'in', 'depth')],
    result: quantity(fv, 'psi'),
    clause: SHEAR,
  });
  return fv;
}

/**
 * Allowable shear force at a seat cut into the tension side of a round log at its end.
 * @param FvAllowablePsi Fv' [psi]
 * @param diameterIn full diameter at the end of the cut [in]
 * @param cutIn depth of the cut [in]; under the diameter
 * @returns allowable shear [lb]
 * @throws MisuseError if a value is out of these bounds
 * @limits end notch over a support; how deep it may be (d/4) is another check.
 * @source NDS 3.4.3.2 (tension side, circular): 2/3 Fv' An (dn/d)2, from memory
 */
export function roundEndNotchShear(FvAllowablePsi: number, diameterIn: number, cutIn: number, note?: Note): number {
  const Fv = positive('FvAllowablePsi', FvAllowablePsi);
  const d = diameterIn;
  const An = flattenedArea(d, cutIn, 0, note);
  const dn = d - cutIn;
  const allowable = (2 / 3) * Fv * An * (dn / d) ** 2;
  note?.({
    symbol: "V'",
    words: 'allowable shear at the seat cut',
    formula: "2 / 3 × Fv' × An × (dn / d)^2",
    put: [
      put("Fv'", Fv, 'psi', 'allowable shear along the grain'),
      put('An', An, 'in2', 'area left over the cut'),
      put('dn', dn, 'in', 'depth left over the cut'),
      put('d', d, 'in', 'full diameter'),
    ],
    result: quantity(allowable, 'lb'),
    clause: NOTCH,
  });
  return allowable;
}

/**
 * Allowable shear force at a seat cut into the tension side of a sawn member at its end.
 * @param FvAllowablePsi Fv' [psi]
 * @param breadthIn, depthIn full section [in]
 * @param cutIn depth of the cut [in]; under the depth
 * @returns allowable shear [lb]
 * @throws MisuseError if a value is out of these bounds
 * @source NDS 3.4.3.2 (tension side, rectangular): 2/3 Fv' b dn (dn/d)2, from memory
 */
export function rectangularEndNotchShear(
  FvAllowablePsi: number,
  breadthIn: number,
  depthIn: number,
  cutIn: number,
  note?: Note,
): number {
  const Fv = positive('FvAllowablePsi', FvAllowablePsi);
  const b = positive('breadthIn', breadthIn);
  const d = positive('depthIn', depthIn);
  if (notNegative('cutIn', cutIn) >= d) throw new MisuseError('cutIn', cutIn, `a cut less deep than ${d}`);
  const dn = d - cutIn;
  const allowable = (2 / 3) * Fv * b * dn * (dn / d) ** 2;
  note?.({
    symbol: "V'",
    words: 'allowable shear at the seat cut',
    formula: "2 / 3 × Fv' × b × dn × (dn / d)^2",
    put: [
      put("Fv'", Fv, 'psi', 'allowable shear along the grain'),
      put('b', b, 'in', 'breadth'),
      put('dn', dn, 'in', 'depth left over the cut'),
      put('d', d, 'in', 'full depth'),
    ],
    result: quantity(allowable, 'lb'),
    clause: NOTCH,
  });
  return allowable;
}
