import type { Stick } from '../../geometry/shelter.ts';
import type { Id, JointKind } from '../../project/model.ts';
import type { ShankLine, StickShape } from '../fasteners/round-geometry.ts';
import { shankPath, type ShankPath } from '../fasteners/shank-path.ts';
import { cross, dot, lengthOf, type Vector } from '../fasteners/space.ts';
import { degreesFromRadians } from '../../units.ts';

/** One of the two pieces that meet at a joint. Places and directions are the shelter's: x, y, z [in]. */
export interface JointPiece {
  /** of a member; of its line for strip, ledger and wall; of its plane for the sheet; of its post for a pier */
  readonly id: Id;
  readonly label: string;
  readonly of: 'wood' | 'sheet' | 'wall' | 'pier';
  readonly stick: Stick | null;
  /** the wood at the joint with its flats and cuts; null where it has none, or nobody has said what it is */
  readonly shape: StickShape | null;
  /** along its grain from the joint to its start and its end; null without grain [in] */
  readonly toEndsIn: readonly [start: number, end: number] | null;
  /** so much nearer is the end of its wood for each inch off its axis, where it ends aslant on the other piece; left out: square */
  readonly endSlope?: number;
}

/** Which way each demand of a joint acts, each of length one. */
export interface JointWays {
  /** takes the upper piece off the lower one; a push is the other way */
  readonly pull: Vector;
  readonly along: Vector;
  readonly across: Vector;
}

/** Two pieces that meet, and all that hardware between them can hold on to. */
export interface JointSetting {
  /** unique: kind and both pieces */
  readonly id: string;
  /** under which the file says what it can carry; several alike contacts may share one */
  readonly key: string;
  readonly kind: JointKind;
  readonly label: string;
  /** name of the place of its rows on the upper piece */
  readonly place: string;
  /** frame line whose analysis finds its forces; null where the roof's own does */
  readonly lineId: Id | null;
  readonly upper: JointPiece;
  readonly lower: JointPiece;
  /** where they meet */
  readonly at: Vector;
  readonly ways: JointWays;
  /** a fastener as it is commonly driven: under its head lies the upper piece; null where only plates or ratings join them */
  readonly line: ShankLine | null;
  /** depth of a shoulder that takes a push along the lower piece by its shape; 0 without one [in] */
  readonly shoulderIn: number;
  /** air between a post and its pier; left out elsewhere [in] */
  readonly standOffIn?: number;
}

/** Between the grains of both pieces; null where one has none [deg]. */
export function grainAngleDeg({ upper, lower }: JointSetting): number | null {
  if (!upper.shape || !lower.shape) return null;
  const [a, b] = [upper.shape.axis, lower.shape.axis];
  return degreesFromRadians(Math.atan2(lengthOf(cross(a, b)), Math.abs(dot(a, b))));
}

/** What a fastener driven as is common finds: thickness of the upper piece, depth of the lower one, gap and edges. */
export const commonPath = ({ upper, lower, line }: JointSetting): ShankPath | null =>
  upper.shape && lower.shape && line ? shankPath(upper.shape, lower.shape, line) : null;

/** Farther from the ends of its pieces than this no fastener asks for distance [in]; own choice, twelve times a stout one. */
const CLEAR_OF_ENDS_IN = 12;

/** Two joints with the same likeness hold alike: the same sticks, as near to their ends, lying the same way on one another. */
export function likenessOf(setting: JointSetting): string {
  const path = commonPath(setting);
  const lies = path?.ok ? [path.side, path.main, path.gapIn] : path;
  return JSON.stringify([sideOf(setting.upper), sideOf(setting.lower), setting.shoulderIn, setting.standOffIn, lies]);
}

const sideOf = ({ stick, shape, toEndsIn }: JointPiece): unknown => [
  stick,
  shape?.diameterIn,
  toEndsIn?.map((toEnd) => Math.min(toEnd, CLEAR_OF_ENDS_IN).toFixed(3)),
];
