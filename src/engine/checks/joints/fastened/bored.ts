import { UP } from '../stick-shape.ts';
import { THICK_FROM_IN } from '../../fasteners/dowel-bearing.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../fasteners/space.ts';
import { holeAcrossPlane, holeInPlane, type Bored } from '../../wood/bored-section.ts';
import { segmentOf } from '../../wood/flat-section.ts';
import type { RowThere } from './row-sideways.ts';
import type { InWood } from './in-wood.ts';

/** What one row of hardware takes out of a member, where it crosses its grain. */
export interface BoredRow {
  readonly memberId: string;
  /** from the member's start, first to last hole; the whole of it where a row stands for others along it [in] */
  readonly fromIn: number;
  readonly toIn: number;
  /** for bending in the upright plane of a lying stick */
  readonly upright: readonly Bored[];
  /** as if every hole lay in the plane of bending, where it harms most */
  readonly inPlane: readonly Bored[];
}

/** A hole for a bolt is this much wider than the bolt [in]; other holes are as wide as the shank. @source NDS 12.1.3.2, from memory */
export const HOLE_MORE_IN = 1 / 16;
/** Cosines above which a row runs along the grain, and under which across it. */
const ALONG = 0.98;
const ACROSS = 0.2;
/** A shank this near to the grain runs along it, as a pin in the end of a post does. */
const IN_GRAIN = 0.98;

/**
 * Wood that a row takes out of each piece it stands in: holes side by side across the grain, and flats under heads, nuts
 * and plates. Of holes that stand aslant to one another all count as side by side (safe side). Shanks under 1/4 in. are
 * driven and push the wood aside (common practice).
 * @param isRepeated where the row stands for others along its pieces
 * @source NDS 3.1.2 (from memory)
 */
export function boredBy(there: RowThere, isRepeated: boolean): readonly BoredRow[] {
  const { standing, size } = there;
  if (size.nominalIn < THICK_FROM_IN) return [];
  const { side, main } = standing;
  return [main, ...(side.material === 'wood' ? [side] : [])].map((wood) => boredInto(there, wood, isRepeated));
}

function boredInto(there: RowThere, wood: InWood, isRepeated: boolean): BoredRow {
  const { group, standing } = there;
  const { axis, axisAt } = wood.shape;
  const middleIn = (wood.piece.toEndsIn?.[0] ?? 0) + dot(plus(wood.entersAt, axisAt, -1), axis);
  const reachIn =
    (group.spacingIn *
      (Math.abs(dot(group.along, axis)) * (group.inRow - 1) + Math.abs(dot(group.across, axis)) * (group.rows - 1))) /
    2;
  const plumb = plus(UP, axis, -dot(UP, axis));
  const up = lengthOf(plumb) > 1 - ALONG ? unit(plumb) : standing.into;
  return {
    memberId: wood.piece.id,
    fromIn: isRepeated ? -Infinity : middleIn - reachIn,
    toIn: isRepeated ? Infinity : middleIn + reachIn,
    upright: takenFor(there, wood, up),
    inPlane: takenFor(there, wood, squareOf(standing.into, axis)),
  };
}

/** The way of a shank square to the grain; any such way where it runs along it. */
function squareOf(into: Vector, axis: Vector): Vector {
  const rest = plus(into, axis, -dot(into, axis));
  if (lengthOf(rest) > 1 - ALONG) return unit(rest);
  const aside = cross(axis, UP);
  return lengthOf(aside) > 1 - ALONG ? unit(aside) : cross(axis, [0, 1, 0]);
}

function takenFor(there: RowThere, wood: InWood, plane: Vector): readonly Bored[] {
  const { size, standing } = there;
  const { into } = standing;
  const widthIn = size.nominalIn + (size.kind === 'bolt' ? HOLE_MORE_IN : 0);
  const { count, stepIn } = linesOf(there, wood, plane);
  if (Math.abs(dot(into, wood.shape.axis)) > IN_GRAIN) return [alongGrain(widthIn, count)];
  const isInPlane = Math.abs(dot(into, plane)) >= Math.SQRT1_2;
  const fromIn = dot(plus(wood.entersAt, wood.shape.axisAt, -1), plane);
  const toIn = fromIn + wood.lengthIn * dot(into, plane);
  const isTwofold = there.row.plate?.each === 2 && standing.planes === 1;
  const holes = isInPlane
    ? [holeInPlane(widthIn * count, fromIn, toIn), ...(isTwofold ? [holeInPlane(widthIn * count, -fromIn, -toIn)] : [])]
    : Array.from({ length: count }, (_, i) => {
        const offIn = fromIn + (i - (count - 1) / 2) * stepIn;
        return holeAcrossPlane(widthIn, wood.lengthIn * (isTwofold ? 2 : 1), offIn);
      });
  return [...holes, ...flatsOf(there, wood, isInPlane, Math.sign(fromIn - toIn))];
}

/** Lines of holes beside one another across the grain, and how far apart they are in a plane. */
function linesOf(
  { group: { inRow, rows, along, across, spacingIn } }: RowThere,
  { shape: { axis } }: InWood,
  plane: Vector,
): { readonly count: number; readonly stepIn: number } {
  const lies = Math.abs(dot(along, axis));
  if (lies > ALONG) return { count: rows, stepIn: spacingIn * dot(across, plane) };
  if (lies < ACROSS) return { count: inRow, stepIn: spacingIn * dot(along, plane) };
  return { count: inRow * rows, stepIn: 0 };
}

/** A hole along the grain takes its own circle out of the middle of the section. */
const alongGrain = (widthIn: number, count: number): Bored => ({
  areaIn2: (count * Math.PI * widthIn ** 2) / 4,
  offIn: 0,
  inertiaIn4: (count * Math.PI * widthIn ** 4) / 64,
  widthIn: count * widthIn,
});

/** Flats where a head, a nut or a plate lies: on the side that the shank enters by, and where it leaves. */
function flatsOf(there: RowThere, wood: InWood, isInPlane: boolean, entry: number): readonly Bored[] {
  const { row, size, standing } = there;
  const flatIn = row.headFlatIn ?? 0;
  if (flatIn === 0) return [];
  if (row.plate) return wood.flatIn > 0 ? [1, -1].map((way) => flatTaken(wood, wood.flatIn, isInPlane, way)) : [];
  const isSide = wood === standing.side;
  if (!isSide && size.kind !== 'bolt') return [];
  // where the shank leaves aslant the flat is deepest at one rim of the washer
  const cos = Math.abs(dot(standing.into, wood.shape.axis));
  const deepestIn = flatIn * Math.sqrt(1 - cos * cos) + ((size.headIn ?? size.nominalIn) / 2) * cos;
  return [flatTaken(wood, deepestIn, isInPlane, isSide ? entry : -entry)];
}

/** A flat of a log; of a sawn stick a cut as wide as the face that it lies on. */
function flatTaken({ piece: { stick, shape } }: InWood, flatIn: number, isInPlane: boolean, way: number): Bored {
  if (stick?.kind === 'sawn') {
    const { breadthIn, depthIn } = stick;
    return isInPlane
      ? { ...holeInPlane(breadthIn, way * (depthIn / 2 - flatIn), (way * depthIn) / 2), widthIn: 0 }
      : { ...holeInPlane(flatIn, -depthIn / 2, depthIn / 2), widthIn: flatIn };
  }
  const segment = segmentOf(shape?.diameterIn ?? 0, flatIn);
  return isInPlane
    ? { areaIn2: segment.areaIn2, offIn: way * segment.offIn, inertiaIn4: segment.squareIn4, widthIn: 0 }
    : { areaIn2: segment.areaIn2, offIn: 0, inertiaIn4: segment.alongIn4, widthIn: flatIn };
}
