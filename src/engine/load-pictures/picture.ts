import type { CaseKind } from '../loads/cases.ts';
import type { SwayPart } from '../loads/sway.ts';
import type { Message } from '../message.ts';

/**
 * A strip of a roof plane under a pressure that runs straight from its low to its high end. Plus presses on the roof.
 * `level`: plumb, per area of the level projection; `slope`: plumb, per area of the slope itself, as weights are;
 * `square`: square to the slope, as wind is.
 */
export interface LoadStrip {
  readonly planeId: string;
  readonly fromXIn: number;
  readonly toXIn: number;
  /** along the slope from the eave [in] */
  readonly fromIn: number;
  readonly toIn: number;
  /** [psf] */
  readonly lowPsf: number;
  readonly highPsf: number;
  readonly acts: 'level' | 'slope' | 'square';
}

/** What the person hangs on a frame line, at a place along it. */
export interface LoadPoint {
  readonly lineId: string;
  readonly xIn: number;
  readonly downLb: number;
}

/** Weight of a beam and what lies on it along its length, straight between the stations. */
export interface LoadAlong {
  readonly lineId: string;
  readonly stations: readonly { readonly xIn: number; readonly downLbPerFt: number }[];
}

/** All dead load that rests on a frame line, its posts and braces too. */
export interface LineWeight {
  readonly lineId: string;
  readonly downLb: number;
}

/** Weight of a rafter, its mean over its length. */
export interface RafterWeight {
  readonly rafterId: string;
  readonly downLbPerFt: number;
}

/** Push on a whole line along x, and for wind what it presses on. */
export interface LinePush {
  readonly lineId: string;
  /** plus is toward +x */
  readonly alongLb: number;
  readonly parts: readonly Pick<SwayPart, 'name' | 'forceLb'>[];
}

/** Push on the whole shelter across its lines, strength level but for the last, which is what the checks ask. */
export interface AcrossPush {
  readonly roofLb: number;
  readonly dragLb: number;
  readonly leastLb: number;
  readonly inertiaLb: number;
  readonly asdLb: number;
}

export interface LoadPicture {
  /** id of the load case */
  readonly id: string;
  /** further cases that press the roof in the same way and differ in what reaches the lines */
  readonly alsoFor: readonly string[];
  readonly kind: CaseKind | 'across';
  readonly words: Message;
  /** the frame, or parts of the roof by their own areas */
  readonly actsOn: 'frame' | 'sheet' | 'purlins' | 'rafters';
  /** the frame line for which the case counts like this; null where it is alike for all */
  readonly forLine: string | null;
  readonly strips: readonly LoadStrip[];
  readonly points: readonly LoadPoint[];
  readonly along: readonly LoadAlong[];
  readonly rafters: readonly RafterWeight[];
  readonly lines: readonly LineWeight[];
  readonly pushes: readonly LinePush[];
  readonly across: AcrossPush | null;
  /** where the wind blows to: along the lines x, across them y */
  readonly windToward: 'xPlus' | 'xMinus' | 'yPlus' | 'yMinus' | null;
}

/** A picture with nothing on it yet. */
export const emptyPicture = (
  of: Pick<LoadPicture, 'id' | 'kind' | 'words'>,
  forLine: string | null = null,
): LoadPicture => ({
  id: of.id,
  alsoFor: [],
  kind: of.kind,
  words: of.words,
  actsOn: 'frame',
  forLine,
  strips: [],
  points: [],
  along: [],
  rafters: [],
  lines: [],
  pushes: [],
  across: null,
  windToward: null,
});
