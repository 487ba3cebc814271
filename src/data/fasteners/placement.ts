import type { Cited } from '../wood/cited.ts';

/** How the wood at the fastener is loaded: along the grain toward its end, away from it, or across. */
export type LoadOnGrain = 'towardEnd' | 'awayFromEnd' | 'across';

/** Distances in diameters: from `full` on nothing is lost, under `least` the fastener may not be there. */
export interface DistanceInDiameters {
  readonly full: number;
  readonly least: number;
}

/** Distance to the end, shanks of 1/4 in. and thicker. @source NDS Table 12.5.1A */
export const END_DISTANCE: Cited & {
  readonly softwood: Readonly<Record<LoadOnGrain, DistanceInDiameters>>;
  readonly hardwood: Readonly<Record<LoadOnGrain, DistanceInDiameters>>;
} = {
  softwood: {
    towardEnd: { full: 7, least: 3.5 },
    awayFromEnd: { full: 4, least: 2 },
    across: { full: 4, least: 2 },
  },
  hardwood: {
    towardEnd: { full: 5, least: 2.5 },
    awayFromEnd: { full: 4, least: 2 },
    across: { full: 4, least: 2 },
  },
  source: 'NDS',
  where: 'Table 12.5.1A',
  seen: 'memory',
};

/**
 * From one fastener to the next in a row. Across the grain the full distance is whatever the other member asks, so the
 * least one counts in full here.
 * @source NDS Table 12.5.1B
 */
export const IN_ROW: Cited & {
  readonly along: DistanceInDiameters;
  readonly across: DistanceInDiameters;
} = {
  along: { full: 4, least: 3 },
  across: { full: 3, least: 3 },
  source: 'NDS',
  where: 'Table 12.5.1B',
  seen: 'memory',
};

/** Distance to the edges; along the grain a slender shank also wants half of what is between its rows. @source NDS Table 12.5.1C */
export const EDGE_DISTANCE: Cited & {
  readonly along: number;
  readonly loaded: number;
  readonly unloaded: number;
  readonly slenderFrom: number;
} = {
  along: 1.5,
  loaded: 4,
  unloaded: 1.5,
  slenderFrom: 6,
  source: 'NDS',
  where: 'Table 12.5.1C',
  seen: 'memory',
};

/**
 * Between rows. Across the grain it grows with l/D, the shorter bearing length over the diameter: 2.5 D up to 2, then
 * (5 l + 10 D) / 8, from 6 on 5 D. Outer rows on one plate may not be farther apart than 5 in., since the wood shrinks
 * between them.
 * @source NDS Table 12.5.1D
 */
export const BETWEEN_ROWS: Cited & {
  readonly along: number;
  readonly acrossStout: number;
  readonly stoutTo: number;
  readonly acrossSlender: number;
  readonly slenderFrom: number;
  readonly onOnePlateIn: number;
} = {
  along: 1.5,
  acrossStout: 2.5,
  stoutTo: 2,
  acrossSlender: 5,
  slenderFrom: 6,
  onOnePlateIn: 5,
  source: 'NDS',
  where: 'Table 12.5.1D',
  seen: 'memory',
};

/** A lag screw that is only pulled. @source NDS Table 12.5.1E */
export const PULLED_LAG: Cited & { readonly edge: number; readonly end: number; readonly spacing: number } = {
  edge: 1.5,
  end: 4,
  spacing: 4,
  source: 'NDS',
  where: 'Table 12.5.1E',
  seen: 'memory',
};

interface ThinDistances {
  readonly edge: number;
  readonly end: Readonly<Record<LoadOnGrain, number>>;
  readonly inRowAlong: number;
  readonly inRowAcross: number;
  readonly betweenRows: number;
}

/**
 * Nails and screws thinner than 1/4 in.: the standard asks only that the wood does not split; its commentary has these
 * distances for wood side members. We take them as the least (own rule).
 * @source NDS_COMMENTARY C12.1.6
 */
export const THIN_FASTENERS: Cited & Readonly<Record<'driven' | 'prebored', ThinDistances>> = {
  driven: {
    edge: 2.5,
    end: { towardEnd: 15, awayFromEnd: 10, across: 10 },
    inRowAlong: 15,
    inRowAcross: 10,
    betweenRows: 5,
  },
  prebored: {
    edge: 2.5,
    end: { towardEnd: 10, awayFromEnd: 5, across: 5 },
    inRowAlong: 10,
    inRowAcross: 5,
    betweenRows: 3,
  },
  source: 'NDS_COMMENTARY',
  where: 'C12.1.6, recommended distances',
  seen: 'memory',
};
