import type { Face } from '../../engine/checks/fasteners/round-geometry.ts';
import { dot, plus, type Vector } from '../../engine/checks/fasteners/space.ts';
import { plateSeat, withFlats } from '../../engine/checks/joints/fastened/plate-seat.ts';
import type { JointPiece, JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import type { LocalCut } from './body.ts';
import type { Shank } from './shanks.ts';

/** Wood that is cut away beyond a plate [in]. */
const AROUND_IN = 1 / 8;
/** Cosine from which on a strap runs along the grain. */
const ALONG = 0.7;

/** A piece as a plate lies on it: with flats on both sides where it is the wider one and the row's plates have them. */
export function underPlate(setting: JointSetting, piece: JointPiece, row: FastenerRow, into: Vector): JointPiece {
  const { shape } = piece;
  if (!shape || !row.plate || !row.headFlatIn) return piece;
  const seat = plateSeat(setting, row.headFlatIn);
  if (!seat.ok || seat.wider?.id !== piece.id) return piece;
  return { ...piece, shape: withFlats(setting, shape, into, seat.flatIn) };
}

/** The flats that a row's plates lie on, on the piece that has them: from the joint past the last fastener. */
export function plateFlats(piece: JointPiece, shanks: readonly Shank[], joint: Vector): readonly LocalCut[] {
  const own = piece.shape;
  const there = shanks.filter(({ main }) => main.id === piece.id && main.shape !== own);
  const [first] = there;
  if (!own || !first?.main.shape || !first.plate) return [];
  const { axis, axisAt } = own;
  const isAlong = Math.abs(dot(first.along, axis)) > ALONG;
  const places = [...there.map(({ headAt }) => headAt), ...(isAlong ? [joint] : [])];
  const at = places.map((place) => dot(plus(place, axisAt, -1), axis));
  const pastIn = (isAlong ? endOfPlateIn(first) : (first.plate.widthIn ?? 0) / 2) + AROUND_IN;
  const [fromIn, toIn] = [Math.min(...at) - pastIn, Math.max(...at) + pastIn];
  return first.main.shape.faces.slice(own.faces.length).map((face: Face) => ({ face, fromIn, toIn, rampIn: 0 }));
}

/** Steel beyond the outermost fastener of a plate, in diameters; drawn only. */
const PAST_DIAMETERS = 2;
const LEAST_PAST_IN = 1 / 2;

/** Steel beyond the outermost fastener of a plate [in]. */
export const endOfPlateIn = ({ size }: Shank): number => Math.max(PAST_DIAMETERS * size.nominalIn, LEAST_PAST_IN);
