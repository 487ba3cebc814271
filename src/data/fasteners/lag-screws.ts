import type { Seen } from '../sources.ts';
import type { Cited } from '../wood/cited.ts';

export interface LagScrewSize {
  readonly nominalIn: number;
  /** at the root of the thread */
  readonly rootIn: number;
  /** hexagon head, across flats */
  readonly headIn: number;
  /** how the root was read; the heads were all seen */
  readonly seen: Seen;
}

const size = (nominalIn: number, rootIn: number, headIn: number, seen: Seen): LagScrewSize => ({
  nominalIn,
  rootIn,
  headIn,
  seen,
});

/** Hex lag screws: nominal diameter, root diameter, width of the head. @source ASME_B18 hex lag screws */
export const LAG_SCREWS: Cited & { readonly rows: readonly LagScrewSize[] } = {
  rows: [
    size(1 / 4, 0.173, 7 / 16, 'public copy'),
    size(5 / 16, 0.227, 1 / 2, 'public copy'),
    size(3 / 8, 0.265, 9 / 16, 'public copy'),
    size(7 / 16, 0.328, 5 / 8, 'memory'),
    size(1 / 2, 0.371, 3 / 4, 'public copy'),
    size(5 / 8, 0.471, 15 / 16, 'public copy'),
    size(3 / 4, 0.579, 9 / 8, 'public copy'),
    size(7 / 8, 0.683, 21 / 16, 'memory'),
    size(1, 0.78, 3 / 2, 'memory'),
  ],
  source: 'ASME_B18',
  where: 'hex lag screws',
  seen: 'public copy',
};

/** Length of the tapered tip by nominal diameter. @source NDS Appendix L, Table L2 */
export const LAG_TIPS: Cited & {
  readonly rows: readonly { readonly nominalIn: number; readonly tipIn: number }[];
} = {
  rows: [
    { nominalIn: 1 / 4, tipIn: 5 / 32 },
    { nominalIn: 5 / 16, tipIn: 3 / 16 },
    { nominalIn: 3 / 8, tipIn: 7 / 32 },
    { nominalIn: 7 / 16, tipIn: 9 / 32 },
    { nominalIn: 1 / 2, tipIn: 5 / 16 },
    { nominalIn: 5 / 8, tipIn: 13 / 32 },
    { nominalIn: 3 / 4, tipIn: 1 / 2 },
    { nominalIn: 7 / 8, tipIn: 19 / 32 },
    { nominalIn: 1, tipIn: 11 / 16 },
  ],
  source: 'NDS',
  where: 'Appendix L, Table L2',
  seen: 'memory',
};

/**
 * Length of thread, tip included, by length of the screw. A length between two rows has the thread of the shorter one
 * (safe side in withdrawal).
 * @source NDS Appendix L, Table L2
 */
export const LAG_THREADS: Cited & {
  readonly rows: readonly { readonly lengthIn: number; readonly threadIn: number }[];
} = {
  rows: [
    { lengthIn: 1, threadIn: 0.75 },
    { lengthIn: 1.5, threadIn: 1.25 },
    { lengthIn: 2, threadIn: 1.5 },
    { lengthIn: 2.5, threadIn: 1.75 },
    { lengthIn: 3, threadIn: 2 },
    { lengthIn: 4, threadIn: 2.5 },
    { lengthIn: 5, threadIn: 3 },
    { lengthIn: 6, threadIn: 3.5 },
    { lengthIn: 7, threadIn: 4 },
    { lengthIn: 8, threadIn: 4.5 },
    { lengthIn: 9, threadIn: 5 },
    { lengthIn: 10, threadIn: 5.25 },
    { lengthIn: 11, threadIn: 5.5 },
    { lengthIn: 12, threadIn: 6 },
  ],
  source: 'NDS',
  where: 'Appendix L, Table L2',
  seen: 'memory',
};
