import type { Cited } from './cited.ts';

/** Published values of round construction poles: wet or dry use, air-dried or untreated, normal duration [psi]. */
export interface RoundTimberRow {
  /** as the table prints it */
  readonly name: string;
  /** species of the clear-wood table that the row is for */
  readonly species: readonly string[];
  readonly FbPsi: number;
  /** null where no figure is remembered */
  readonly FvPsi: number | null;
  readonly FcPerpPsi: number;
  readonly FcPsi: number;
  readonly EPsi: number;
  readonly EminPsi: number | null;
  /** remembered too loosely to design with: kept so that the answer can say so */
  readonly isDoubtful: boolean;
}

type Printed = readonly [
  Fb: number,
  Fv: number | null,
  FcPerp: number,
  Fc: number,
  EThousands: number,
  EminThousands: number | null,
];

const row = (
  name: string,
  species: readonly string[],
  [FbPsi, FvPsi, FcPerpPsi, FcPsi, E, Emin]: Printed,
  isDoubtful = false,
): RoundTimberRow => ({
  name,
  species,
  FbPsi,
  FvPsi,
  FcPerpPsi,
  FcPsi,
  EPsi: E * 1000,
  EminPsi: Emin === null ? null : Emin * 1000,
  isDoubtful,
});

const SOUTHERN = ['Loblolly pine', 'Longleaf pine', 'Shortleaf pine', 'Slash pine'];

/**
 * Bending, shear, across, along, E and Emin in 1000 psi. The piles' Table 6A prints the same for its three species. Which species a name holds is from memory too: only the coast type counts as Pacific Coast Douglas Fir (safe side).
 * Western hemlock's Emin is remembered as 560: that is 0.43 of E where every other row has 0.39 to 0.41, so it stands here
 * as 520, what red pine has with the same E (safe side).
 * @source NDS_SUPPLEMENT Table 6B (construction poles graded by D3200), 2012 and later, from memory
 */
export const ROUND_TIMBER: Cited & { readonly rows: readonly RoundTimberRow[] } = {
  rows: [
    row('Pacific Coast Douglas Fir', ['Douglas-fir, Coast'], [2050, 160, 490, 1300, 1700, 690]),
    row('Lodgepole Pine', ['Lodgepole pine'], [1275, 125, 265, 825, 1100, 430]),
    row('Ponderosa Pine', ['Ponderosa pine'], [1200, null, 295, 775, 1000, 400], true),
    row('Red Pine', ['Red pine'], [1350, 125, 270, 850, 1300, 520]),
    row('Southern Pine', SOUTHERN, [1950, 160, 440, 1250, 1500, 600]),
    row('Western Hemlock', ['Western hemlock'], [1550, 165, 275, 1050, 1300, 520]),
    row('Western Larch', ['Western larch'], [1900, 170, 405, 1250, 1500, null], true),
    row('Western Red Cedar', ['Western redcedar'], [1250, 140, 260, 875, 900, 360]),
  ],
  source: 'NDS_SUPPLEMENT',
  where: 'Table 6B',
  seen: 'memory',
};
