import type { Seen, SourceKey } from '../sources.ts';

/**
 * Fastest-mile wind speeds of codes before 1995 and the three-second gusts of the codes after them, allowable-stress
 * level both [mph]. Read as quoted from the 2000 edition of the code, which rounds up to 5 mph.
 */
export const FASTEST_MILE_TO_GUST = {
  rows: [
    [70, 85],
    [75, 90],
    [80, 100],
    [85, 105],
    [90, 110],
    [100, 120],
    [105, 125],
    [110, 130],
    [120, 140],
    [125, 145],
    [130, 150],
    [140, 160],
    [150, 170],
  ],
  source: 'IBC_2000',
  seen: 'public copy',
} as const satisfies {
  readonly rows: readonly (readonly [fastestMile: number, gust: number])[];
  readonly source: SourceKey;
  readonly seen: Seen;
};
