import { clause } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

const BENDING = clause('NDS', '3.3.2');
const FACTORS = clause('NDS', '3.3.1');

/**
 * Extreme-fibre bending stress.
 * Use at every station: with taper the worst one need not be at mid-span.
 * @param momentLbIn bending moment at the section, either sign [lb in]
 * @param sectionModulusIn3 of the section left there, to the side in question [in3]
 * @returns stress, positive in tension or compression [psi]
 * @throws MisuseError if the section modulus is not above zero
 * @source NDS 3.3.2, equation 3.3-1
 */
export function bendingStress(momentLbIn: number, sectionModulusIn3: number, note?: Note): number {
  const M = Math.abs(momentLbIn);
  const fb = M / positive('sectionModulusIn3', sectionModulusIn3);
  note?.({
    symbol: 'fb',
    words: 'bending stress',
    formula: 'M / S',
    put: [
      put('M', M, 'lb·in', 'bending moment at the section'),
      put('S', sectionModulusIn3, 'in3', 'section modulus there'),
    ],
    result: quantity(fb, 'psi'),
    clause: BENDING,
  });
  return fb;
}

/**
 * Allowable bending stress.
 * @param FbPsi reference value, wet service and size already in [psi]
 * @param CD load duration factor
 * @param CL beam stability factor; 1 for round wood
 * @param Cr repetitive member factor; 1 for a log
 * @returns Fb' [psi]
 * @throws MisuseError if a value is not above zero
 * @source NDS 3.3.1, Table 4.3.1
 */
export function adjustedBending(FbPsi: number, CD: number, CL: number, Cr: number, note?: Note): number {
  const allowable = positive('FbPsi', FbPsi) * positive('CD', CD) * positive('CL', CL) * positive('Cr', Cr);
  note?.({
    symbol: "Fb'",
    words: 'allowable bending stress',
    formula: 'Fb × CD × CL × Cr',
    put: [
      put('Fb', FbPsi, 'psi', 'reference bending value'),
      put('CD', CD, '1', 'load duration factor'),
      put(
        'CL',
        CL,
        '1',
        CL === 1 ? 'beam stability: no deeper than wide, or held along its pressed edge' : 'beam stability factor',
      ),
      put(
        'Cr',
        Cr,
        '1',
        Cr === 1
          ? 'load sharing: only graded sticks, three or more alike at 24 in. or closer, gain by it'
          : 'load sharing: three or more alike at 24 in. or closer',
      ),
    ],
    result: quantity(allowable, 'psi'),
    clause: FACTORS,
  });
  return allowable;
}
