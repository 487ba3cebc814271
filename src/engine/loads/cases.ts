import type { LoadDuration } from '../../data/loads/combinations.ts';
import type { Message } from '../message.ts';

export type CaseKind = 'dead' | 'ownLive' | 'roofLive' | 'snow' | 'wind' | 'notional' | 'seismic';

/** One pattern of load: what is there, which way, in which variant. Factors belong to combinations. */
export interface LoadCase {
  readonly id: string;
  readonly kind: CaseKind;
  readonly words: Message;
  /** pushes the frame line sideways along x */
  readonly swaysAlong: boolean;
  /** how long it lasts, where that is not the duration of its kind: counts in the combination that it leads alone */
  readonly duration?: LoadDuration;
  /** false where nobody asks how far anything sags under it */
  readonly isAskedForSag?: false;
  /** what pushes the shelter across the lines at the same time, by its id; none where nothing does */
  readonly pushAcross?: string;
  /** of an earthquake: its vertical effect as a share of the dead load */
  readonly verticalShare?: number;
}

/** Load on a part of a sloping member: where the part begins and ends on the level, and what acts there; along is +x. */
export interface SlopeLoad {
  readonly from: SlopeLoadAt;
  readonly to: SlopeLoadAt;
}

interface SlopeLoadAt {
  readonly xIn: number;
  readonly downLbPerIn: number;
  readonly alongLbPerIn: number;
}

/** A load case as it arrives on one frame line: everything in the plane of the line. */
export interface LineCase {
  readonly caseId: string;
  /** on the beam's axis, from rafters, strip and what the person hangs there; along is +x */
  readonly points: readonly { readonly xIn: number; readonly downLb: number; readonly alongLb: number }[];
  /** on the beam by station, straight between; only within its range */
  readonly onBeam: readonly { readonly xIn: number; readonly downLbPerIn: number }[];
  /** on a sloping member in its place, where loads step: per inch on the level, straight between the ends of a part */
  readonly onSlope?: readonly SlopeLoad[];
  /** along the wood of a post, at its foot and at the beam axis */
  readonly onPosts: readonly {
    readonly postId: string;
    readonly footDownLbPerIn: number;
    readonly topDownLbPerIn: number;
    readonly alongLbPerIn: number;
  }[];
  /** at a place on a post's axis */
  readonly atPosts: readonly {
    readonly postId: string;
    readonly zIn: number;
    readonly downLb: number;
    readonly alongLb: number;
  }[];
  /** whole brace, half to each end */
  readonly onBraces: readonly { readonly braceId: string; readonly downLb: number; readonly alongLb: number }[];
}

/** A case with all that it brings to one frame line. */
export interface LineArrival {
  readonly loadCase: LoadCase;
  readonly lineCase: LineCase;
  /** its whole push toward +x [lb] */
  readonly alongLb: number;
}

/**
 * Dead load comes in pieces, one per stretch of beam between posts (and one for posts and braces), heavy and light,
 * because in an uplift combination each piece counts light x 0.6 where it helps and heavy x 1.0 where it hurts.
 */
export interface DeadPiece {
  readonly piece: string;
  readonly heavy: LineCase;
  readonly light: LineCase;
}

export interface LineLoads {
  readonly lineId: string;
  readonly dead: readonly DeadPiece[];
  /** all other cases that reach this line */
  readonly cases: readonly LineCase[];
  /** total sway force of each case along x, for lines that something else holds [lb] */
  readonly alongLb: Readonly<Record<string, number>>;
  /** all dead load, heavy [lb] */
  readonly deadLb: number;
  /** one per cent of the dead load, or the earthquake on all that it shakes, strength level [lb] */
  readonly inertiaLb: number;
}

export const emptyLineCase = (caseId: string): LineCase => ({
  caseId,
  points: [],
  onBeam: [],
  onPosts: [],
  atPosts: [],
  onBraces: [],
});
