import type { FastenerRow } from '../../../project/model.ts';
import type { PlateSteel } from '../../fasteners/dowel-bearing.ts';
import { edgeBeside, type ShankLine, type StickShape } from '../../fasteners/round-geometry.ts';
import { dot, plus, type Vector } from '../../fasteners/space.ts';
import type { JointPiece } from '../joint-setting.ts';
import type { PieceWood } from './wood-of-piece.ts';

/** A piece of wood as a shank stands in it. */
export interface InWood {
  readonly material: 'wood';
  readonly piece: JointPiece;
  readonly wood: PieceWood;
  readonly shape: StickShape;
  /** where the shank goes in */
  readonly entersAt: Vector;
  /** of the shank in it [in] */
  readonly lengthIn: number;
  /** from the shank to the end of its fibres and to its nearer edge; Infinity where it runs along the grain [in] */
  readonly endIn: number;
  readonly edgeIn: number;
  /** whole section of the stick there [in2] */
  readonly grossIn2: number;
  /** of flats for plates, on both of its sides; 0 without [in] */
  readonly flatIn: number;
}

export interface InSteel {
  readonly material: 'steel';
  readonly lengthIn: number;
  readonly steel: PlateSteel;
}

/** A fastener of a row where it joins two pieces, the head in or on the side one, the point or nut in the main one. */
export interface Standing {
  readonly ok: true;
  readonly into: Vector;
  readonly side: InWood | InSteel;
  readonly main: InWood;
  readonly gapIn: number;
  /** beyond the main piece: nut and what sticks out of a bolt; 0 of a driven one [in] */
  readonly beyondIn: number;
  readonly planes: 1 | 2;
  /** nails driven slantwise; lengths are then those of the standard's own slant, along the line through both pieces */
  readonly isToed: boolean;
}

/** Cosine under which a shank counts as square to the grain. */
const SQUARE = 1e-6;

/** A shank in a piece: from a place on its line so far into the wood. */
export function inWood(
  piece: JointPiece,
  wood: PieceWood,
  line: ShankLine,
  fromIn: number,
  lengthIn: number,
  row: FastenerRow,
): InWood {
  const shape = piece.shape!;
  const beside = edgeBeside(shape, line, fromIn + lengthIn / 2);
  return {
    material: 'wood',
    piece,
    wood,
    shape,
    entersAt: plus(line.at, line.into, fromIn),
    lengthIn,
    endIn: beside === null ? Infinity : endOf(piece, line.into, lengthIn, row),
    edgeIn: beside ?? halfWidth(piece),
    grossIn2: grossOf(piece),
    flatIn: 0,
  };
}

export function grossOf({ stick, shape }: JointPiece): number {
  if (stick?.kind === 'sawn') return stick.breadthIn * stick.depthIn;
  return (Math.PI * (shape?.diameterIn ?? 0) ** 2) / 4;
}

/** A shank down the middle of a stick has half of its width beside it. */
const halfWidth = ({ stick, shape }: JointPiece): number =>
  (stick?.kind === 'sawn' ? Math.min(stick.breadthIn, stick.depthIn) : (shape?.diameterIn ?? 0)) / 2;

/**
 * Wood along the grain from a shank to the end of its fibres. In a stick that ends on the other one aslant the fibres
 * beside the shank end at the contact: half of its way in, along the grain.
 */
export function endOf({ shape, toEndsIn }: JointPiece, into: Vector, lengthIn: number, { endIn }: FastenerRow): number {
  const room = Math.min(...(toEndsIn ?? [0, 0]));
  const aslant = Math.abs(dot(shape!.axis, into));
  return room <= 0 && aslant > SQUARE ? lengthIn / 2 / aslant : Math.max(room, endIn ?? 0);
}
