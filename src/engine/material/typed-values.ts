import { clause } from '../../data/sources.ts';
import { WET_SERVICE } from '../../data/wood/lumber-factors.ts';
import { CLEAR_WOOD } from '../../data/wood/species.ts';
import { message, type Message } from '../message.ts';
import type { Step } from '../note.ts';
import type { Wood, WoodBasis } from '../project/model.ts';
import { cited, givenStep } from './citation.ts';
import { product } from './product.ts';
import { findSpecies } from './species.ts';
import type { DesignValues } from './values.ts';

type TypedBasis = Extract<WoodBasis, { kind: 'typed' }>;

/** True when the person says that the wet service factor is inside the typed values already. */
export const holdsWetService = (basis: TypedBasis): boolean => basis.factorsHeld.includes('CM');

/**
 * Design values that a stamp, a letter or an engineer gives, as typed.
 * Values published dry take the wet factors of timbers, because logs are built in green.
 * @source NDS_SUPPLEMENT Table 4D wet service factors (5x5 and larger)
 */
export function typedValues(wood: Wood, basis: TypedBasis): DesignValues {
  const isWetApplied = basis.published === 'dry' && !holdsWetService(basis);
  const wet = (factor: number): readonly Step[] => (isWetApplied ? [wetStep(factor)] : []);
  const typed = (symbol: string, words: string, value: number, factors: readonly Step[] = []) =>
    typedProduct(symbol, words, value, factors, basis.by);
  const row = WET_SERVICE.timber;
  const Fb = typed('Fb', 'bending', basis.FbPsi);
  const Fv = typed('Fv', 'shear', basis.FvPsi);
  const Fcp = typed('Fcp', 'compression across the grain', basis.FcpPsi, wet(row.compressionAcross));
  const Fc = typed('Fc', 'compression along the grain', basis.FcPsi, wet(row.compressionAlong));
  const Ft = typed('Ft', 'tension along the grain', basis.FtPsi);
  const E = typed('E', 'stiffness', basis.EPsi);
  const Emin = typed('Emin', 'stiffness for buckling', basis.EminPsi);
  const gravity = gravityOf(wood.species);
  return {
    basis: 'typed',
    FbPsi: Fb.value,
    FvPsi: Fv.value,
    FcPerpPsi: Fcp.value,
    FcPsi: Fc.value,
    FtPsi: Ft.value,
    EPsi: E.value,
    EminPsi: Emin.value,
    cForColumns: basis.asPoles ? 0.85 : 0.8,
    specificGravity: gravity.value,
    strengthRatioBending: null,
    strengthRatioCompression: null,
    steps: (of) => ({ Fb, Fv, Fcp, Fc, Ft, E, Emin })[of].steps,
    cautions: gravity.cautions,
  };
}

const wetStep = (factor: number): Step =>
  givenStep(
    'CM',
    'wet service, timbers 5x5 and larger',
    factor,
    '1',
    cited(WET_SERVICE.source, WET_SERVICE.where, WET_SERVICE.seen),
  );

function typedProduct(symbol: string, words: string, value: number, factors: readonly Step[], by: string) {
  const where = clause('OWN', 'value typed in, with who gave it');
  const said = by === '' ? words : `${words}, given by ${by}`;
  if (factors.length === 0) return { value, steps: [givenStep(symbol, said, value, 'psi', where, 'as typed')] };
  return product(symbol, words, givenStep(`${symbol}_typed`, said, value, 'psi', where, 'as typed'), factors, where);
}

/** Fasteners need a specific gravity: the species' own, else the lightest listed one (safe side) with a caution. */
function gravityOf(name: string): { readonly value: number; readonly cautions: readonly Message[] } {
  const species = findSpecies(name);
  if (species) return { value: species.green.specificGravity, cautions: [] };
  const lightest = Math.min(...CLEAR_WOOD.map((row) => row.green.specificGravity));
  return { value: lightest, cautions: [message('woodGravityAssumed', { species: name, specificGravity: lightest })] };
}
