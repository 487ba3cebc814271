import { clause } from '../../data/sources.ts';
import { ROUND_TIMBER, type RoundTimberRow } from '../../data/wood/round-timber.ts';
import type { ClearWoodSpecies } from '../../data/wood/species.ts';
import { message, type Message } from '../message.ts';
import { put, stepsOf, type Note } from '../note.ts';
import type { Log, WoodBasis } from '../project/model.ts';
import { inches, psi, quantity, type Psi } from '../units.ts';
import { cited, givenStep } from './citation.ts';
import { allowableTension } from './derived-values.ts';
import { largestDiameterOf } from './log-diameter.ts';
import { whyNoPole, whyNotInspected } from './pole-inspection.ts';
import { poleSizeFactor } from './size-factor.ts';
import type { DesignValues, MaterialAnswer, ValueSymbol } from './values.ts';

/**
 * Published pole values of a log whose wood was inspected item by item.
 * They are wet already, hold no seasoning gain, and count for whole round wood: every cut is taken off the section.
 * @returns values; `notGiven` for a species without a row, a row remembered too loosely, or an inspection that is not
 *   complete, dated and signed; `outside` when what was seen contradicts the ticks
 * @source NDS_SUPPLEMENT Table 6B; tension, which it does not print, as of derived values (D245)
 */
export function poleValues(
  log: Log,
  species: ClearWoodSpecies,
  basis: Extract<WoodBasis, { kind: 'poles' }>,
): MaterialAnswer {
  const row = ROUND_TIMBER.rows.find((candidate) => candidate.species.includes(species.name));
  if (!row) return notGiven(message('woodNoPoleRow', { species: species.name }));
  const { FvPsi, EminPsi } = row;
  if (row.isDoubtful || FvPsi === null || EminPsi === null) {
    return notGiven(message('woodPoleRowDoubtful', { species: species.name }));
  }
  const open = whyNotInspected(basis);
  if (open) return notGiven(open);
  const contradicted = whyNoPole(log);
  if (contradicted) return { ok: false, status: 'outside', reason: contradicted };
  return { ok: true, values: valuesOf({ ...row, FvPsi, EminPsi }, log, species) };
}

const notGiven = (reason: Message): MaterialAnswer => ({ ok: false, status: 'notGiven', reason });

type WholeRow = RoundTimberRow & { readonly FvPsi: number; readonly EminPsi: number };

function valuesOf(row: WholeRow, log: Log, species: ClearWoodSpecies): DesignValues {
  const largest = inches(largestDiameterOf(log));
  const where = cited(ROUND_TIMBER.source, ROUND_TIMBER.where, ROUND_TIMBER.seen);
  const printed = (symbol: string, words: string, value: number, note?: Note): Psi => {
    note?.(givenStep(symbol, `${words}, ${row.name} pole`, value, 'psi', where));
    return psi(value);
  };
  const bending = (note?: Note): Psi => {
    const base = printed('Fb_table', 'bending', row.FbPsi, note);
    const CF = poleSizeFactor(largest, note);
    note?.({
      symbol: 'Fb',
      words: 'bending',
      formula: 'Fb_table × CF',
      put: [put('Fb_table', base, 'psi', 'printed value'), put('CF', CF, '1', 'size')],
      result: quantity(base * CF, 'psi'),
      clause: clause('NDS', 'Table 6.3.1'),
    });
    return psi(base * CF);
  };
  const made: Readonly<Record<ValueSymbol, (note?: Note) => Psi>> = {
    Fb: bending,
    Fv: (note) => printed('Fv', 'shear', row.FvPsi, note),
    Fcp: (note) => printed('Fcp', 'compression across the grain', row.FcPerpPsi, note),
    Fc: (note) => printed('Fc', 'compression along the grain', row.FcPsi, note),
    Ft: (note) => allowableTension(bending(), () => stepsOf(bending).steps, note),
    E: (note) => printed('E', 'stiffness', row.EPsi, note),
    Emin: (note) => printed('Emin', 'stiffness for buckling', row.EminPsi, note),
  };
  return {
    basis: 'poles',
    FbPsi: made.Fb(),
    FvPsi: made.Fv(),
    FcPerpPsi: made.Fcp(),
    FcPsi: made.Fc(),
    FtPsi: made.Ft(),
    EPsi: made.E(),
    EminPsi: made.Emin(),
    cForColumns: 0.85,
    specificGravity: species.green.specificGravity,
    strengthRatioBending: null,
    strengthRatioCompression: null,
    steps: (of) => stepsOf(made[of]).steps,
    cautions: [message('woodPolesOwnInspection')],
  };
}
