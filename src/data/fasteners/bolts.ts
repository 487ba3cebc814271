import type { Cited } from '../wood/cited.ts';

export interface BoltSize {
  readonly nominalIn: number;
  /** at the root of the thread */
  readonly rootIn: number;
  /** hexagon head, across flats */
  readonly headIn: number;
}

const size = (nominalIn: number, rootIn: number, headIn: number): BoltSize => ({ nominalIn, rootIn, headIn });

/** Hex bolts with coarse thread: nominal diameter, root diameter, head. @source NDS Appendix L, Table L1 */
export const BOLTS: Cited & { readonly rows: readonly BoltSize[] } = {
  rows: [
    size(1 / 4, 0.189, 7 / 16),
    size(5 / 16, 0.245, 1 / 2),
    size(3 / 8, 0.298, 9 / 16),
    size(1 / 2, 0.406, 3 / 4),
    size(5 / 8, 0.514, 15 / 16),
    size(3 / 4, 0.627, 9 / 8),
    size(7 / 8, 0.739, 21 / 16),
    size(1, 0.847, 3 / 2),
  ],
  source: 'NDS',
  where: 'Appendix L, Table L1',
  seen: 'memory',
};

/** Length of thread of a bolt: twice its diameter and a quarter inch, half an inch where it is longer than 6 in. */
export const BOLT_THREAD: Cited & {
  readonly diameters: number;
  readonly moreIn: number;
  readonly longerThanIn: number;
  readonly moreOfLongIn: number;
} = {
  diameters: 2,
  moreIn: 0.25,
  longerThanIn: 6,
  moreOfLongIn: 0.5,
  source: 'NDS',
  where: 'Appendix L, Table L1',
  seen: 'memory',
};

export interface WasherSize {
  /** of the bolt or lag screw that it belongs to */
  readonly nominalIn: number;
  readonly outsideIn: number;
  readonly holeIn: number;
  readonly thickIn: number;
}

const washer = (nominalIn: number, outsideIn: number, holeIn: number, thickIn: number): WasherSize => ({
  nominalIn,
  outsideIn,
  holeIn,
  thickIn,
});

/** Standard cut washers: outside, hole, thickness. @source NDS Appendix L, Table L6 */
export const CUT_WASHERS: Cited & { readonly rows: readonly WasherSize[] } = {
  rows: [
    washer(3 / 8, 1, 0.438, 0.083),
    washer(1 / 2, 1.375, 0.562, 0.109),
    washer(5 / 8, 1.75, 0.688, 0.134),
    washer(3 / 4, 2, 0.812, 0.148),
    washer(7 / 8, 2.25, 0.938, 0.165),
    washer(1, 2.5, 1.062, 0.165),
  ],
  source: 'NDS',
  where: 'Appendix L, Table L6',
  seen: 'memory',
};
