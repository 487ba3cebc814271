import { clause } from '../../../../data/sources.ts';
import { put, type Note } from '../../../note.ts';
import { quantity } from '../../../units.ts';
import { shearAtFasteners } from '../../fasteners/bolt-near-end.ts';
import { THICK_FROM_IN } from '../../fasteners/dowel-bearing.ts';
import { stretchIn } from '../../fasteners/round-geometry.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../fasteners/space.ts';
import type { Group } from './group.ts';
import type { ShankSize } from './shank-size.ts';
import type { InWood } from './in-wood.ts';

/** A force with a smaller part than this across the grain asks no shear of the piece. */
const SOME = 0.1;

/**
 * Sideways force of a row at which the piece it stands in shears beside the fasteners, which bear on a part of its depth
 * only. All of the force counts as shear on one side of the joint, and the harsher of both edges as the unloaded one (safe
 * side). Driven in the end grain a shank has no such depth.
 * @param force across the shanks, of length one
 * @returns pounds; Infinity where the force runs along the grain, or for shanks under 1/4 in.
 * @source NDS 3.4.3.3, from memory: bolts and lag screws
 */
export function shearBeside(
  piece: InWood,
  into: Vector,
  group: Group,
  size: ShankSize,
  force: Vector,
  CD: number,
  note?: Note,
): number {
  const { shape, piece: whole, grossIn2 } = piece;
  const aside = cross(shape.axis, into);
  if (lengthOf(aside) < SOME || size.nominalIn < THICK_FROM_IN) return Infinity;
  // square to grain and shank: the depth that the shank divides
  const way = unit(aside);
  const part = Math.abs(dot(force, way));
  if (part < SOME) return Infinity;
  const at = plus(shape.axisAt, shape.axis, dot(plus(piece.entersAt, shape.axisAt, -1), shape.axis));
  const isSawn = whole.stick?.kind === 'sawn';
  // a log with flats counts as a thinner one as deep as is left
  const extent = stretchIn(shape, { at, into: way });
  if (!extent) return Infinity;
  const depthIn = extent.toIn - extent.fromIn;
  const offIn = dot(plus(piece.entersAt, at, -1), way);
  // to the axis of the outermost shank on each side: of bolts and lag screws the clause counts the depth from there
  const reachIn = spreadAlong(group, way) / 2;
  // beyond the group on its two sides; the deeper rest is lost when the load presses away from it
  const lostIn = Math.max(offIn - reachIn - extent.fromIn, extent.toIn - offIn - reachIn);
  const allowable = shearAtFasteners(
    piece.wood.values.FvPsi * CD,
    {
      shape: isSawn ? 'rectangular' : 'round',
      depthIn,
      breadthIn: isSawn ? grossIn2 / depthIn : depthIn,
      lostIn: Math.min(Math.max(lostIn, size.nominalIn), depthIn - size.nominalIn),
      toEndIn: piece.endIn,
    },
    note,
  );
  note?.({
    symbol: 'Vp',
    words: 'sideways force at which the piece shears beside its fasteners',
    formula: "V' / a",
    put: [
      put("V'", allowable, 'lb', 'allowable shear at the fasteners'),
      put('a', part, '1', 'part of the force across the grain'),
    ],
    result: quantity(allowable / part, 'lb'),
    clause: clause('MECHANICS', 'part of a force'),
  });
  return allowable / part;
}

/** What a group takes up in a direction, middle to middle [in]. */
const spreadAlong = ({ inRow, rows, spacingIn, along, across }: Group, way: Vector): number =>
  (Math.abs(dot(along, way)) * (inRow - 1) + Math.abs(dot(across, way)) * (rows - 1)) * spacingIn;
