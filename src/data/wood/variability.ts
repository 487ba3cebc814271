import type { Seen, SourceKey } from '../sources.ts';
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
  table: 'Table 5-6',
  seen: 'public copy',
} as const satisfies Record<string, unknown> & { source: SourceKey; seen: Seen };

interface Scatter {
  readonly meanPsi: number;
  readonly sdPsi: number;
}

/** A species whose green means and standard deviations were both seen in the same table. */
export interface SurveyedSpecies {
  readonly species: string;
  readonly bending: Scatter;
  readonly compressionAlong: Scatter;
  readonly shear: Scatter;
  readonly stiffnessPsi: number;
  /** at the proportional limit; null where the extract does not show it */
  readonly compressionAcrossPsi: number | null;
  /** at 0.04 in. of crushing, as printed */
  readonly compressionAcrossAtFourHundredthsPsi: number | null;
  readonly source: SourceKey;
  readonly table: string;
  readonly seen: Seen;
}

const SURVEY = { source: 'D2555', table: 'Table 1', seen: 'public copy' } as const;

/** @source D2555 Table 1, green */
export const SURVEYED: readonly SurveyedSpecies[] = [
  {
    species: 'White fir',
    bending: { meanPsi: 5854, sdPsi: 949 },
    compressionAlong: { meanPsi: 2902, sdPsi: 528 },
    shear: { meanPsi: 756, sdPsi: 78 },
    stiffnessPsi: 1161000,
    compressionAcrossPsi: 282,
    compressionAcrossAtFourHundredthsPsi: 491,
    ...SURVEY,
  },
  {
    species: 'Grand fir',
    bending: { meanPsi: 5839, sdPsi: 680 },
    compressionAlong: { meanPsi: 2939, sdPsi: 363 },
    shear: { meanPsi: 739, sdPsi: 97 },
    stiffnessPsi: 1250000,
    compressionAcrossPsi: 272,
    compressionAcrossAtFourHundredthsPsi: 475,
    ...SURVEY,
  },
  {
    species: 'Western hemlock',
    bending: { meanPsi: 6637, sdPsi: 1088 },
    compressionAlong: { meanPsi: 3364, sdPsi: 615 },
    shear: { meanPsi: 864, sdPsi: 105 },
    stiffnessPsi: 1307000,
    compressionAcrossPsi: 282,
    compressionAcrossAtFourHundredthsPsi: 457,
    ...SURVEY,
  },
  {
    species: 'Slash pine',
    bending: { meanPsi: 8692, sdPsi: 1127 },
    compressionAlong: { meanPsi: 3823, sdPsi: 547 },
    shear: { meanPsi: 964, sdPsi: 128 },
    stiffnessPsi: 1532000,
    compressionAcrossPsi: 529,
    compressionAcrossAtFourHundredthsPsi: 883,
    ...SURVEY,
  },
  {
    species: 'Baldcypress',
    bending: { meanPsi: 6640, sdPsi: 1062 },
    compressionAlong: { meanPsi: 3580, sdPsi: 644 },
    shear: { meanPsi: 812, sdPsi: 114 },
    stiffnessPsi: 1184000,
    compressionAcrossPsi: 403,
    compressionAcrossAtFourHundredthsPsi: 683,
    ...SURVEY,
  },
  {
    species: 'Port-Orford-cedar',
    bending: { meanPsi: 6598, sdPsi: 860 },
    compressionAlong: { meanPsi: 3145, sdPsi: 397 },
    shear: { meanPsi: 842, sdPsi: 122 },
    stiffnessPsi: 1297000,
    compressionAcrossPsi: 301,
    compressionAcrossAtFourHundredthsPsi: 521,
    ...SURVEY,
  },
  {
    species: 'Subalpine fir',
    bending: { meanPsi: 4900, sdPsi: 664 },
    compressionAlong: { meanPsi: 2301, sdPsi: 363 },
    shear: { meanPsi: 696, sdPsi: 103 },
    stiffnessPsi: 1052000,
    compressionAcrossPsi: 192,
    compressionAcrossAtFourHundredthsPsi: 348,
    ...SURVEY,
  },
  {
    species: 'Eastern hemlock',
    bending: { meanPsi: 6420, sdPsi: 1027 },
    compressionAlong: { meanPsi: 3080, sdPsi: 554 },
    shear: { meanPsi: 848, sdPsi: 119 },
    stiffnessPsi: 1073000,
    compressionAcrossPsi: 359,
    compressionAcrossAtFourHundredthsPsi: 613,
    ...SURVEY,
  },
  {
    species: 'Lodgepole pine',
    bending: { meanPsi: 5490, sdPsi: 878 },
    compressionAlong: { meanPsi: 2610, sdPsi: 470 },
    shear: { meanPsi: 685, sdPsi: 96 },
    stiffnessPsi: 1076000,
    compressionAcrossPsi: null,
    compressionAcrossAtFourHundredthsPsi: null,
    ...SURVEY,
  },
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
