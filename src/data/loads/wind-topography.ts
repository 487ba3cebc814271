import type { Seen, SourceKey } from '../sources.ts';
import type { Exposure } from './wind-exposure.ts';

export type HillShape = 'ridge' | 'escarpment' | 'hill';
export type SideOfCrest = 'upwind' | 'downwind';

export interface HillRow {
  /** K1 over H / Lh, by exposure */
  readonly speedUp: Readonly<Record<Exposure, number>>;
  /** how fast the effect dies out with height */
  readonly heightDecay: number;
  /** how far it reaches from the crest, in Lh */
  readonly reach: Readonly<Record<SideOfCrest, number>>;
}

/** Parameters of speed-up over hills, read in BNBC Fig. 6.2.4, whose exposures A, B, C are B, C, D here. */
export const HILLS: Readonly<Record<HillShape, HillRow>> & { readonly source: SourceKey; readonly seen: Seen } = {
  ridge: { speedUp: { B: 1.3, C: 1.45, D: 1.55 }, heightDecay: 3, reach: { upwind: 1.5, downwind: 1.5 } },
  escarpment: { speedUp: { B: 0.75, C: 0.85, D: 0.95 }, heightDecay: 2.5, reach: { upwind: 1.5, downwind: 4 } },
  hill: { speedUp: { B: 0.95, C: 1.05, D: 1.15 }, heightDecay: 4, reach: { upwind: 1.5, downwind: 1.5 } },
  source: 'BNBC',
  seen: 'public copy',
};

/** When a hill counts. From memory, but for the cap of H / Lh, which was read. */
export const HILL_LIMITS = {
  /** below this rise over half length a hill is none */
  leastSteepness: 0.2,
  /** a steeper one counts as this steep */
  greatestSteepness: 0.5,
  /** below this height a hill is none [ft] */
  leastHeightFt: { B: 60, C: 15, D: 15 } satisfies Record<Exposure, number>,
  source: 'ASCE7' satisfies SourceKey,
  seen: 'memory' satisfies Seen,
} as const;
