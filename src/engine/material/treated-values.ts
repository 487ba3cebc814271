import { remembered } from '../../data/sources.ts';
import { put, type Step } from '../note.ts';
import { quantity } from '../units.ts';
import type { DesignValues, ValuesBasis, ValueSymbol } from './values.ts';

/**
 * What preservative treatment may leave of the strength: steaming of round poles and incising of sawn sticks both take a
 * fifth. How a post was treated is not asked, so that is taken off every one (safe side).
 * @source NDS 4.3.8 (incising), 6.3.5 (steaming), from memory
 */
const STRENGTH_LEFT = 0.8;
/** What incising leaves of the stiffness of a sawn stick; steaming takes none. @source NDS 4.3.8, from memory */
const STIFFNESS_LEFT = 0.95;
const TREATED = remembered('NDS', '4.3.8, 6.3.5');

const SAWN: ReadonlySet<ValuesBasis> = new Set<ValuesBasis>(['graded', 'homeSawn']);
const WORDS = 'pressure treated for the ground, taken as steamed or incised whatever stands above';

/**
 * Values of a stick that was pressure treated to stand in the ground. Bearing across the grain loses nothing.
 * @returns the values with less strength; sawn sticks are less stiff as well
 * @source NDS 4.3.8, 6.3.5, from memory
 */
export function treatedValues(values: DesignValues): DesignValues {
  const stiffness = SAWN.has(values.basis) ? STIFFNESS_LEFT : 1;
  const left: Readonly<Record<ValueSymbol, number>> = {
    Fb: STRENGTH_LEFT,
    Fv: STRENGTH_LEFT,
    Fc: STRENGTH_LEFT,
    Ft: STRENGTH_LEFT,
    Fcp: 1,
    E: stiffness,
    Emin: stiffness,
  };
  return {
    ...values,
    FbPsi: values.FbPsi * left.Fb,
    FvPsi: values.FvPsi * left.Fv,
    FcPsi: values.FcPsi * left.Fc,
    FtPsi: values.FtPsi * left.Ft,
    EPsi: values.EPsi * left.E,
    EminPsi: values.EminPsi * left.Emin,
    steps: (of) => [...values.steps(of), ...(left[of] === 1 ? [] : [treatedStep(of, read(values, of), left[of])])],
  };
}

function read(values: DesignValues, of: ValueSymbol): number {
  switch (of) {
    case 'Fb':
      return values.FbPsi;
    case 'Fv':
      return values.FvPsi;
    case 'Fcp':
      return values.FcPerpPsi;
    case 'Fc':
      return values.FcPsi;
    case 'Ft':
      return values.FtPsi;
    case 'E':
      return values.EPsi;
    case 'Emin':
      return values.EminPsi;
  }
}

const treatedStep = (of: ValueSymbol, untreatedPsi: number, left: number): Step => ({
  symbol: of,
  words: WORDS,
  formula: 'F × Ctr',
  put: [put('F', untreatedPsi, 'psi', 'the value above'), put('Ctr', left, '1', 'what treatment may leave of it')],
  result: quantity(untreatedPsi * left, 'psi'),
  clause: TREATED,
});
