import { clause, remembered, type Seen, type SourceKey } from '../sources.ts';

/** How closed a building is (26.2). */
export type Enclosure = 'open' | 'partiallyOpen' | 'partiallyEnclosed' | 'enclosed';

/** Internal pressure coefficients, either sign. */
export const INTERNAL_PRESSURE: Readonly<Record<Enclosure, number>> = {
  open: 0,
  partiallyOpen: 0.18,
  partiallyEnclosed: 0.55,
  enclosed: 0.18,
};
/** Read in BNBC Fig. 6.2.5, but for the partially open building, which later editions added. */
export const INTERNAL_PRESSURE_CLAUSE = remembered('ASCE7', 'Table 26.13-1');

/** What the openings of its walls make of a building. From memory. */
export const ENCLOSURE_LIMITS = {
  /** each wall open to at least this share: open building */
  openShare: 0.8,
  /** one wall's openings over those of all the rest */
  moreThanTheRest: 1.1,
  /** rest of the envelope open to at most this share of it */
  restOpenAtMost: 0.2,
  /** an opening this large counts as one: the lesser of the two */
  dominantFt2: 4,
  dominantShare: 0.01,
  clause: remembered('ASCE7', '26.2'),
} as const;

/** External coefficients of a roof half by slope: pulling and pressing, both to be run. */
export interface WalledSlopeRow {
  readonly heightOverLength: number;
  readonly slopeDeg: number;
  /** null: the copies print none there */
  readonly lift: number | null;
  readonly press: number | null;
}

const row = (
  heightOverLength: number,
  slopeDeg: number,
  lift: number | null,
  press: number | null,
): WalledSlopeRow => ({
  heightOverLength,
  slopeDeg,
  lift,
  press,
});

/** ASCE 7-16 Fig. 27.3-1, wind square to the ridge, slopes of 10 degrees and more: windward half. */
export const WALLED_WINDWARD: readonly WalledSlopeRow[] = [
  row(0.25, 10, -0.7, -0.18),
  row(0.25, 15, -0.5, 0),
  row(0.25, 20, -0.3, 0.2),
  row(0.25, 25, -0.2, 0.3),
  row(0.25, 30, -0.2, 0.3),
  row(0.25, 35, 0, 0.4),
  row(0.25, 45, null, 0.4),
  row(0.5, 10, -0.9, -0.18),
  row(0.5, 15, -0.7, -0.18),
  row(0.5, 20, -0.4, 0),
  row(0.5, 25, -0.3, 0.2),
  row(0.5, 30, -0.2, 0.2),
  row(0.5, 35, -0.2, 0.3),
  row(0.5, 45, 0, 0.4),
  row(1, 10, -1.3, -0.18),
  row(1, 15, -1, -0.18),
  row(1, 20, -0.7, -0.18),
  row(1, 25, -0.5, 0),
  row(1, 30, -0.3, 0.2),
  row(1, 35, -0.2, 0.2),
  row(1, 45, 0, 0.3),
];

/** The same figure, leeward half: lift only; the last row of each h/L serves every steeper slope. */
export const WALLED_LEEWARD: readonly WalledSlopeRow[] = [
  row(0.25, 10, -0.3, null),
  row(0.25, 15, -0.5, null),
  row(0.25, 20, -0.6, null),
  row(0.5, 10, -0.5, null),
  row(0.5, 15, -0.5, null),
  row(0.5, 20, -0.6, null),
  row(1, 10, -0.7, null),
  row(1, 15, -0.6, null),
  row(1, 20, -0.6, null),
];

/** The same figure, slopes under 10 degrees, or wind along the ridge: bands from the windward edge, in heights. */
export interface WalledBand {
  readonly toHeights: number;
  /** h/L up to 0.5, and 1 or more */
  readonly lift: readonly [low: number, tall: number];
  readonly press: number;
}

export const WALLED_BANDS: readonly WalledBand[] = [
  { toHeights: 0.5, lift: [-0.9, -1.3], press: -0.18 },
  { toHeights: 1, lift: [-0.9, -0.7], press: -0.18 },
  { toHeights: 2, lift: [-0.5, -0.7], press: -0.18 },
  { toHeights: Infinity, lift: [-0.3, -0.7], press: -0.18 },
];

export const WALLED_ROOF = {
  /** below it the bands */
  slopeFigureFromDeg: 10,
  /** underside of an overhang on the side that the wind meets. From memory */
  undersideOfOverhang: 0.8,
  source: 'ASCE7_10' satisfies SourceKey,
  seen: 'public copy' satisfies Seen,
  clause: clause('ASCE7_10', 'Fig. 27.4-1'),
  overhangClause: remembered('ASCE7', '27.3.3'),
} as const;
