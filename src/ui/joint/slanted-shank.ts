import { toeNail } from '../../engine/checks/fasteners/lateral-factors.ts';
import { stretchIn, type ShankLine } from '../../engine/checks/fasteners/round-geometry.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointPiece } from '../../engine/checks/joints/joint-setting.ts';
import type { Shank } from './shanks.ts';

/** How a nail is driven slantwise: from the side of the upper piece, down and inward. */
type Slanted = Pick<Shank, 'headAt' | 'into' | 'entersIn' | 'inMainIn'>;

/**
 * A slanted nail in the upper piece, by the start and the slant that the checks take; every second one of a row comes from the
 * other side, as nails are driven.
 * @param line  straight through both pieces
 * @returns null where there is no wood
 */
export function slantedShank(
  side: JointPiece,
  main: JointPiece,
  line: ShankLine,
  lengthIn: number,
  isFromOtherSide: boolean,
): Slanted | null {
  const [inSide, inMain] = [side, main].map(({ shape }) => shape && stretchIn(shape, line));
  if (!side.shape || !inSide || !inMain) return null;
  const { sideIn: startIn, penetrationIn } = toeNail(lengthIn);
  const cos = (startIn + penetrationIn) / lengthIn;
  const inward = inwardOf(side.shape.axis, line.into, isFromOtherSide);
  const startAt = plus(line.at, line.into, inSide.toIn - startIn);
  const faceIn = stretchIn(side.shape, { at: startAt, into: inward })?.fromIn;
  if (faceIn === undefined) return null;
  const entersIn = (inMain.fromIn - inSide.toIn + startIn) / cos;
  return {
    headAt: plus(startAt, inward, faceIn),
    into: unit(plus(plus([0, 0, 0], line.into, cos), inward, Math.sqrt(1 - cos ** 2))),
    entersIn,
    inMainIn: lengthIn - entersIn,
  };
}

/** From a side of a stick to its middle, square to its grain and to the way down. */
function inwardOf(axis: Vector, into: Vector, isFromOtherSide: boolean): Vector {
  const across = [cross(axis, into), cross([0, 1, 0], into), cross([1, 0, 0], into)].find((v) => lengthOf(v) > 0.1)!;
  const way = unit(plus(across, into, -dot(across, into)));
  return isFromOtherSide ? plus([0, 0, 0], way, -1) : way;
}
