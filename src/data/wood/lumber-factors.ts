import type { Cited } from './cited.ts';

/** Nominal sizes by which tables are entered; 14 stands for 14 in. and wider. */
export const NOMINAL_IN = [2, 3, 4, 5, 6, 8, 10, 12, 14] as const;

export interface SizeFactorRow {
  readonly upToNominalIn: number;
  readonly bending: number;
  /** bending, pieces 4 in. thick */
  readonly bendingThick: number;
  readonly tension: number;
  readonly compression: number;
}

const size = (
  upToNominalIn: number,
  bending: number,
  bendingThick: number,
  tension: number,
  compression: number,
): SizeFactorRow => ({ upToNominalIn, bending, bendingThick, tension, compression });

/** Size factor of dimension lumber, by nominal width. @source NDS_SUPPLEMENT Table 4A adjustment factors */
export const SIZE_FACTORS: Cited & { readonly rows: readonly SizeFactorRow[] } = {
  rows: [
    size(4, 1.5, 1.5, 1.5, 1.15),
    size(5, 1.4, 1.4, 1.4, 1.1),
    size(6, 1.3, 1.3, 1.3, 1.1),
    size(8, 1.2, 1.3, 1.2, 1.05),
    size(10, 1.1, 1.2, 1.1, 1.0),
    size(12, 1.0, 1.1, 1.0, 1.0),
    size(14, 0.9, 1.0, 0.9, 0.9),
  ],
  source: 'NDS_SUPPLEMENT',
  where: 'Table 4A, size factor',
  seen: 'public copy',
};

/**
 * Southern Pine holds size in its values up to 12 in.; wider pieces take 0.9. The 1.1 for pieces 4 in. thick and 8 in.
 * or wider is left out (safe side).
 * @source NDS_SUPPLEMENT Table 4B adjustment factors, from memory
 */
export const SOUTHERN_PINE_SIZE: Cited & { readonly rows: readonly SizeFactorRow[] } = {
  rows: [size(12, 1, 1, 1, 1), size(14, 0.9, 0.9, 0.9, 0.9)],
  source: 'NDS_SUPPLEMENT',
  where: 'Table 4B, size factor',
  seen: 'memory',
};

/** Size factor of timbers deeper than 12 in., bending only: (12/d)^(1/9). */
export const TIMBER_SIZE = {
  depthIn: 12,
  exponent: 1 / 9,
  source: 'NDS_SUPPLEMENT',
  where: 'Table 4D, size factor',
  seen: 'public copy',
} as const satisfies Cited & Record<string, unknown>;

/** Flat use of dimension lumber, bending only, by nominal width. @source NDS_SUPPLEMENT Table 4A, from memory */
export const FLAT_USE: Cited & {
  readonly rows: readonly { readonly upToNominalIn: number; readonly thin: number; readonly thick: number }[];
} = {
  rows: [
    { upToNominalIn: 3, thin: 1.0, thick: 1.0 },
    { upToNominalIn: 4, thin: 1.1, thick: 1.0 },
    { upToNominalIn: 5, thin: 1.1, thick: 1.05 },
    { upToNominalIn: 6, thin: 1.15, thick: 1.05 },
    { upToNominalIn: 8, thin: 1.15, thick: 1.05 },
    { upToNominalIn: 14, thin: 1.2, thick: 1.1 },
  ],
  source: 'NDS_SUPPLEMENT',
  where: 'Table 4A, flat use factor',
  seen: 'memory',
};

/** Beams and stringers loaded on the wide face lose strength and stiffness. @source NDS_SUPPLEMENT Table 4D, from memory */
export const BEAMS_ON_THE_FLAT: Cited & {
  readonly rows: readonly { readonly grade: string; readonly bending: number; readonly stiffness: number }[];
} = {
  rows: [
    { grade: 'Select Structural', bending: 0.86, stiffness: 1.0 },
    { grade: 'No.1', bending: 0.74, stiffness: 0.9 },
    { grade: 'No.2', bending: 1.0, stiffness: 1.0 },
  ],
  source: 'NDS_SUPPLEMENT',
  where: 'Table 4D, flat use factor',
  seen: 'memory',
};

/** Three or more alike, 24 in. or closer, with purlins or sheathing across: bending only. */
export const REPETITIVE = {
  factor: 1.15,
  spacingIn: 24,
  count: 3,
  source: 'NDS',
  where: '4.3.9',
  seen: 'public copy',
} as const satisfies Cited & Record<string, unknown>;

export interface WetServiceRow {
  readonly bending: number;
  readonly tension: number;
  readonly shear: number;
  readonly compressionAcross: number;
  readonly compressionAlong: number;
  readonly stiffness: number;
  /** bending keeps 1.0 where Fb times its size factor is at or under this; null: no such rule */
  readonly bendingKeepsBelowPsi: number | null;
  readonly compressionKeepsBelowPsi: number | null;
}

/** Wet service: values published dry, used above 19 % moisture. @source NDS_SUPPLEMENT Tables 4A, 4B, 4D */
export const WET_SERVICE: Cited & { readonly dimension: WetServiceRow; readonly timber: WetServiceRow } = {
  dimension: {
    bending: 0.85,
    tension: 1.0,
    shear: 0.97,
    compressionAcross: 0.67,
    compressionAlong: 0.8,
    stiffness: 0.9,
    bendingKeepsBelowPsi: 1150,
    compressionKeepsBelowPsi: 750,
  },
  timber: {
    bending: 1.0,
    tension: 1.0,
    shear: 1.0,
    compressionAcross: 0.67,
    compressionAlong: 0.91,
    stiffness: 1.0,
    bendingKeepsBelowPsi: null,
    compressionKeepsBelowPsi: null,
  },
  source: 'NDS_SUPPLEMENT',
  where: 'Tables 4A, 4D, wet service factor',
  seen: 'public copy',
};
