import type { Seen, SourceKey } from '../sources.ts';

export interface OpenFrameRow {
  /** the row serves a ratio of solid to gross area below this (the last one up to and including it) */
  readonly solidityBelow: number;
  readonly flatSided: number;
  /** round members by D sqrt(qz), D in feet and qz in psf: up to 2.5, above */
  readonly roundSlow: number;
  readonly roundFast: number;
  readonly source: SourceKey;
  readonly seen: Seen;
}

/** Force coefficients of open signs and open frames, wind square to the frame; read on a worked sheet that prints them. */
export const OPEN_FRAME: readonly OpenFrameRow[] = [
  { solidityBelow: 0.1, flatSided: 2.0, roundSlow: 1.2, roundFast: 0.8, source: 'ASCE7', seen: 'public copy' },
  { solidityBelow: 0.3, flatSided: 1.8, roundSlow: 1.3, roundFast: 0.9, source: 'ASCE7', seen: 'public copy' },
  { solidityBelow: 0.7, flatSided: 1.6, roundSlow: 1.5, roundFast: 1.1, source: 'ASCE7', seen: 'public copy' },
];

/** Limit of D sqrt(qz) between the two columns of round members [ft sqrt(psf)]. */
export const ROUND_FLOW_LIMIT = 2.5;
