import type { Cited } from './cited.ts';

/**
 * Coefficients of variation of clear-wood properties, averages over 50 species; used where no printed standard
 * deviation of the species was seen.
 * @source WOOD_HANDBOOK_2010 Table 5-6
 */
export const AVERAGE_COV = {
  bending: 0.16,
  compressionAlong: 0.18,
  shear: 0.14,
  source: 'WOOD_HANDBOOK_2010',
  where: 'Table 5-6',
  seen: 'public copy',
} as const satisfies Cited & Record<string, unknown>;

interface Scatter {
  readonly meanPsi: number;
  readonly sdPsi: number;
}

/** A species whose green means and standard deviations were both seen in the same table. */
export interface SurveyedSpecies extends Cited {
  readonly species: string;
  readonly bending: Scatter;
  readonly compressionAlong: Scatter;
  readonly shear: Scatter;
  readonly stiffnessPsi: number;
  /** at the proportional limit; null where the extract does not show it */
  readonly compressionAcrossPsi: number | null;
  /** at 0.04 in. of crushing, as printed */
  readonly compressionAcrossAtFourHundredthsPsi: number | null;
}

type Printed = readonly [mean: number, deviation: number];

const scatter = ([meanPsi, sdPsi]: Printed): Scatter => ({ meanPsi, sdPsi });

const row = (
  species: string,
  bending: Printed,
  compressionAlong: Printed,
  shear: Printed,
  stiffnessPsi: number,
  across: readonly [atProportionalLimit: number | null, atFourHundredths: number | null],
): SurveyedSpecies => ({
  species,
  bending: scatter(bending),
  compressionAlong: scatter(compressionAlong),
  shear: scatter(shear),
  stiffnessPsi,
  compressionAcrossPsi: across[0],
  compressionAcrossAtFourHundredthsPsi: across[1],
  source: 'D2555',
  where: 'Table 1',
  seen: 'public copy',
});

/**
 * Bending, compression along and shear with their deviations, stiffness, across at both marks [psi].
 * @source D2555 Table 1, green
 */
export const SURVEYED: readonly SurveyedSpecies[] = [
  row('White fir', [5854, 949], [2902, 528], [756, 78], 1161000, [282, 491]),
  row('Grand fir', [5839, 680], [2939, 363], [739, 97], 1250000, [272, 475]),
  row('Western hemlock', [6637, 1088], [3364, 615], [864, 105], 1307000, [282, 457]),
  row('Slash pine', [8692, 1127], [3823, 547], [964, 128], 1532000, [529, 883]),
  row('Baldcypress', [6640, 1062], [3580, 644], [812, 114], 1184000, [403, 683]),
  row('Port-Orford-cedar', [6598, 860], [3145, 397], [842, 122], 1297000, [301, 521]),
  row('Subalpine fir', [4900, 664], [2301, 363], [696, 103], 1052000, [192, 348]),
  row('Eastern hemlock', [6420, 1027], [3080, 554], [848, 119], 1073000, [359, 613]),
  row('Lodgepole pine', [5490, 878], [2610, 470], [685, 96], 1076000, [null, null]),
];

/**
 * Unrounded green means across the grain that are remembered and lie below the rounded figure of the species table.
 * The lower one is used (safe side); remembered means above the table, and every remembered deviation, are left out.
 * @source D2555 Table 1, from memory
 */
export const LOWER_MEANS_ACROSS: Cited & {
  readonly rows: readonly { readonly species: string; readonly compressionAcrossPsi: number }[];
} = {
  rows: [
    { species: 'Western larch', compressionAcrossPsi: 399 },
    { species: 'Douglas-fir, Interior West', compressionAcrossPsi: 418 },
    { species: 'Douglas-fir, Interior North', compressionAcrossPsi: 356 },
    { species: 'Douglas-fir, Interior South', compressionAcrossPsi: 337 },
  ],
  source: 'D2555',
  where: 'Table 1',
  seen: 'memory',
};
