import type { Seen, SourceKey } from '../sources.ts';

/** `dimension`: 2 to 4 in. thick; `beams`: 5 in. and thicker, more than 2 in. wider; `posts`: the other timbers. */
export type SizeClass = 'dimension' | 'beams' | 'posts';

/** Base values of a visual grade: dry service, normal duration, before every adjustment. */
export interface LumberRow {
  readonly group: string;
  readonly grade: string;
  readonly size: SizeClass;
  /** nominal widths that the row is for; 14 stands for 14 in. and wider; null: every width */
  readonly nominalWidthIn: readonly [number, number] | null;
  readonly FbPsi: number;
  readonly FtPsi: number;
  readonly FvPsi: number;
  readonly FcPerpPsi: number;
  readonly FcPsi: number;
  readonly EPsi: number;
  readonly EminPsi: number;
  readonly source: SourceKey;
  readonly table: '4A' | '4B' | '4D';
  readonly seen: Seen;
}

type Printed = readonly [Fb: number, Ft: number, Fv: number, FcPerp: number, Fc: number, E: number, Emin: number];

const values = ([FbPsi, FtPsi, FvPsi, FcPerpPsi, FcPsi, EPsi, EminPsi]: Printed) => ({
  FbPsi,
  FtPsi,
  FvPsi,
  FcPerpPsi,
  FcPsi,
  EPsi,
  EminPsi,
});

const dimension = (
  table: '4A' | '4B',
  group: string,
  grade: string,
  nominalWidthIn: readonly [number, number],
  printed: Printed,
  seen: Seen,
): LumberRow => ({
  group,
  grade,
  size: 'dimension',
  nominalWidthIn,
  ...values(printed),
  source: 'NDS_SUPPLEMENT',
  table,
  seen,
});

const timber = (group: string, grade: string, size: 'beams' | 'posts', printed: Printed, seen: Seen): LumberRow => ({
  group,
  grade,
  size,
  nominalWidthIn: null,
  ...values(printed),
  source: 'NDS_SUPPLEMENT',
  table: '4D',
  seen,
});

/**
 * Bending, tension, shear, compression across, compression along, E, Emin [psi]. A row is `memory` when any of its
 * values was not seen. Southern Pine values hold size already. Superseded rows are left out.
 * @source NDS_SUPPLEMENT Tables 4A, 4B, 4D (2018)
 */
export const LUMBER: readonly LumberRow[] = [
  dimension(
    '4A',
    'Douglas Fir-Larch',
    'Select Structural',
    [2, 14],
    [1500, 1000, 180, 625, 1700, 1900000, 690000],
    'memory',
  ),
  dimension('4A', 'Douglas Fir-Larch', 'No.1 & Btr', [2, 14], [1200, 800, 180, 625, 1550, 1800000, 660000], 'memory'),
  dimension('4A', 'Douglas Fir-Larch', 'No.1', [2, 14], [1000, 675, 180, 625, 1500, 1700000, 620000], 'public copy'),
  dimension('4A', 'Douglas Fir-Larch', 'No.2', [2, 14], [900, 575, 180, 625, 1350, 1600000, 580000], 'memory'),
  dimension('4A', 'Douglas Fir-Larch', 'No.3', [2, 14], [525, 325, 180, 625, 775, 1400000, 510000], 'memory'),
  dimension('4A', 'Hem-Fir', 'Select Structural', [2, 14], [1400, 925, 150, 405, 1500, 1600000, 580000], 'memory'),
  dimension('4A', 'Hem-Fir', 'No.1 & Btr', [2, 14], [1100, 725, 150, 405, 1350, 1500000, 550000], 'memory'),
  dimension('4A', 'Hem-Fir', 'No.1', [2, 14], [975, 625, 150, 405, 1350, 1500000, 550000], 'memory'),
  dimension('4A', 'Hem-Fir', 'No.2', [2, 14], [850, 525, 150, 405, 1300, 1300000, 470000], 'public copy'),
  dimension('4A', 'Hem-Fir', 'No.3', [2, 14], [500, 300, 150, 405, 725, 1200000, 440000], 'memory'),
  dimension(
    '4A',
    'Spruce-Pine-Fir',
    'Select Structural',
    [2, 14],
    [1250, 700, 135, 425, 1400, 1500000, 550000],
    'memory',
  ),
  dimension('4A', 'Spruce-Pine-Fir', 'No.1/No.2', [2, 14], [875, 450, 135, 425, 1150, 1400000, 510000], 'memory'),
  dimension('4A', 'Spruce-Pine-Fir', 'No.3', [2, 14], [500, 250, 135, 425, 650, 1200000, 440000], 'memory'),
  dimension(
    '4A',
    'Western Cedars',
    'Select Structural',
    [2, 14],
    [1000, 600, 155, 425, 1000, 1100000, 400000],
    'memory',
  ),
  dimension('4A', 'Western Cedars', 'No.1', [2, 14], [725, 425, 155, 425, 825, 1000000, 370000], 'memory'),
  dimension('4A', 'Western Cedars', 'No.2', [2, 14], [700, 425, 155, 425, 650, 1000000, 370000], 'memory'),
  dimension('4A', 'Western Cedars', 'No.3', [2, 14], [400, 250, 155, 425, 375, 900000, 330000], 'memory'),
  dimension(
    '4A',
    'Spruce-Pine-Fir (South)',
    'Select Structural',
    [2, 14],
    [1300, 575, 135, 335, 1200, 1300000, 470000],
    'memory',
  ),
  dimension('4A', 'Spruce-Pine-Fir (South)', 'No.1', [2, 14], [875, 400, 135, 335, 1050, 1200000, 440000], 'memory'),
  dimension('4A', 'Spruce-Pine-Fir (South)', 'No.2', [2, 14], [775, 350, 135, 335, 1000, 1100000, 400000], 'memory'),
  dimension('4A', 'Spruce-Pine-Fir (South)', 'No.3', [2, 14], [450, 200, 135, 335, 575, 1000000, 370000], 'memory'),
  dimension(
    '4A',
    'Douglas Fir-South',
    'Select Structural',
    [2, 14],
    [1350, 900, 180, 520, 1600, 1400000, 510000],
    'memory',
  ),
  dimension('4A', 'Douglas Fir-South', 'No.1', [2, 14], [925, 600, 180, 520, 1450, 1300000, 470000], 'memory'),
  dimension('4A', 'Douglas Fir-South', 'No.2', [2, 14], [850, 525, 180, 520, 1350, 1200000, 440000], 'memory'),
  dimension('4A', 'Douglas Fir-South', 'No.3', [2, 14], [500, 300, 180, 520, 775, 1100000, 400000], 'memory'),
  dimension(
    '4B',
    'Southern Pine',
    'Select Structural',
    [2, 4],
    [2350, 1650, 175, 565, 1900, 1800000, 660000],
    'memory',
  ),
  dimension(
    '4B',
    'Southern Pine',
    'Select Structural',
    [5, 6],
    [2100, 1450, 175, 565, 1800, 1800000, 660000],
    'memory',
  ),
  dimension(
    '4B',
    'Southern Pine',
    'Select Structural',
    [8, 8],
    [1950, 1350, 175, 565, 1700, 1800000, 660000],
    'memory',
  ),
  dimension(
    '4B',
    'Southern Pine',
    'Select Structural',
    [10, 10],
    [1700, 1150, 175, 565, 1650, 1800000, 660000],
    'memory',
  ),
  dimension(
    '4B',
    'Southern Pine',
    'Select Structural',
    [12, 14],
    [1600, 1100, 175, 565, 1650, 1800000, 660000],
    'memory',
  ),
  dimension('4B', 'Southern Pine', 'No.1', [2, 4], [1500, 1000, 175, 565, 1650, 1600000, 580000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.1', [5, 6], [1350, 875, 175, 565, 1550, 1600000, 580000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.1', [8, 8], [1250, 800, 175, 565, 1500, 1600000, 580000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.1', [10, 10], [1050, 700, 175, 565, 1450, 1600000, 580000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.1', [12, 14], [1000, 650, 175, 565, 1400, 1600000, 580000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.2', [2, 4], [1100, 675, 175, 565, 1450, 1400000, 510000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.2', [5, 6], [1000, 600, 175, 565, 1400, 1400000, 510000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.2', [8, 8], [925, 550, 175, 565, 1350, 1400000, 510000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.2', [10, 10], [800, 475, 175, 565, 1300, 1400000, 510000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.2', [12, 14], [750, 450, 175, 565, 1250, 1400000, 510000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.3', [2, 4], [650, 400, 175, 565, 850, 1300000, 470000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.3', [5, 6], [575, 350, 175, 565, 800, 1300000, 470000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.3', [8, 8], [525, 325, 175, 565, 775, 1300000, 470000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.3', [10, 10], [475, 275, 175, 565, 750, 1300000, 470000], 'memory'),
  dimension('4B', 'Southern Pine', 'No.3', [12, 14], [450, 250, 175, 565, 725, 1300000, 470000], 'memory'),
  timber('Douglas Fir-Larch', 'No.1', 'beams', [1350, 675, 170, 625, 925, 1600000, 580000], 'public copy'),
  timber('Douglas Fir-Larch', 'No.1', 'posts', [1200, 825, 170, 625, 1000, 1600000, 580000], 'public copy'),
  timber('Hem-Fir', 'No.2', 'beams', [675, 350, 140, 405, 500, 1100000, 400000], 'public copy'),
  timber('Hem-Fir', 'No.2', 'posts', [575, 375, 140, 405, 575, 1100000, 400000], 'public copy'),
];
