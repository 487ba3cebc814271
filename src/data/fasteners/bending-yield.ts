import type { Cited } from '../wood/cited.ts';
import type { FastenerKind } from './kind.ts';

/** Bending yield strength of shanks up to a nominal diameter, thicker than the band before. */
export interface YieldBand {
  readonly upToIn: number;
  readonly FybPsi: number;
}

export interface YieldStrengths extends Cited {
  /** thinner shanks have no printed value */
  readonly fromIn: number;
  readonly bands: readonly YieldBand[];
}

/**
 * Common nails, spikes, wood screws and lag screws of low and medium carbon steel; lag screws of 3/8 in. and thicker go
 * with the bolts, which agrees with the last band.
 */
const DRIVEN: YieldStrengths = {
  fromIn: 0.099,
  bands: [
    { upToIn: 0.142, FybPsi: 100_000 },
    { upToIn: 0.177, FybPsi: 90_000 },
    { upToIn: 0.236, FybPsi: 80_000 },
    { upToIn: 0.273, FybPsi: 70_000 },
    { upToIn: 0.344, FybPsi: 60_000 },
    { upToIn: 0.375, FybPsi: 45_000 },
  ],
  source: 'NDS',
  where: 'Appendix I, Table I1',
  seen: 'memory',
};

const THICK: YieldStrengths = {
  fromIn: 0.25,
  bands: [{ upToIn: 1, FybPsi: 45_000 }],
  source: 'NDS',
  where: 'Appendix I, Table I1',
  seen: 'memory',
};

/** Lag screws: thin ones as nails, 3/8 in. and thicker as bolts. */
const LAGS: YieldStrengths = { ...DRIVEN, bands: [...DRIVEN.bands, ...THICK.bands] };

/** Bending yield strength by nominal diameter. @source NDS Appendix I, Table I1 */
export const BENDING_YIELD: Readonly<Record<FastenerKind, YieldStrengths>> = {
  nail: DRIVEN,
  spike: DRIVEN,
  screw: DRIVEN,
  lag: LAGS,
  bolt: THICK,
  driftPin: THICK,
};
