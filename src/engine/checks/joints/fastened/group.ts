import type { Arrangement } from '../../../../data/fasteners/moisture.ts';
import type { LoadOnGrain } from '../../../../data/fasteners/placement.ts';
import type { FastenerRow } from '../../../project/model.ts';
import type { FastenerPlace } from '../../fasteners/placement.ts';
import { refused, type Refused } from '../../fasteners/refused.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../fasteners/space.ts';
import type { JointSetting } from '../joint-setting.ts';
import type { ShankSize } from './shank-size.ts';
import type { InWood, Standing } from './in-wood.ts';

/** The fasteners of a row as they stand beside one another: a grid, as far apart both ways. */
export interface Group {
  readonly inRow: number;
  readonly rows: number;
  /** 0 of a single one [in] */
  readonly spacingIn: number;
  readonly along: Vector;
  readonly across: Vector;
  /** what is typed as end distance is already to the nearest one */
  readonly beginsAtEnd: boolean;
}

/** A force across the shank, of length one, as the grain of one piece meets it. */
export interface GrainLoad {
  readonly angleDeg: number;
  readonly loads: readonly LoadOnGrain[];
  /** fasteners one behind the other as the force runs, and beside one another */
  readonly inLine: number;
  readonly beside: number;
}

/** Parts of a direction smaller than this ask nothing of a distance. */
const SOME = 0.1;
/** To the end of a piece whose end grain holds the shank: there is none beside it [in]. */
const NO_END_IN = 1e4;
/** Cosine above which a row counts as running along the grain. */
const SAME_WAY = 0.98;

/**
 * How the fasteners of a row stand: its lines run along the strap, else along the grain of the lower piece where a fastener
 * crosses it (own rule).
 */
export function groupOf(setting: JointSetting, standing: Standing, row: FastenerRow): Group | Refused {
  if (row.count > 1 && row.spacingIn === null) return refused('spacingNotGiven');
  const isStrap = row.plate !== undefined && setting.upper.of !== 'sheet';
  const wanted = isStrap ? setting.ways.pull : standing.main.shape.axis;
  const other = standing.side.material === 'wood' ? standing.side.shape.axis : setting.ways.along;
  const along = squareTo(wanted, standing.into) ?? squareTo(other, standing.into) ?? setting.ways.across;
  const rows = Math.min(row.rows, row.count);
  // screws of a sheet stand in their line over the whole roof
  const isLine = setting.upper.of === 'sheet';
  return {
    inRow: isLine ? Math.max(2, row.count) : Math.ceil(row.count / rows),
    rows: isLine ? 1 : rows,
    spacingIn: row.count > 1 || isLine ? (row.spacingIn ?? 0) : 0,
    along,
    across: unit(cross(standing.into, along)),
    beginsAtEnd: isStrap,
  };
}

/** The part of a direction square to another, of length one; null where nothing is left. */
export function squareTo(v: Vector, n: Vector): Vector | null {
  const rest = plus(v, n, -dot(v, n));
  return lengthOf(rest) > SOME ? unit(rest) : null;
}

const grainOf = ({ shape }: InWood, into: Vector): Vector | null => squareTo(shape.axis, into);

/** A force as a piece meets it; a piece whose end grain holds the shank has no grain in that plane. */
export function loadOn(piece: InWood, into: Vector, group: Group, force: Vector): GrainLoad {
  const grain = grainOf(piece, into);
  const isAlongRow = Math.abs(dot(force, group.along)) >= Math.SQRT1_2;
  const lines = isAlongRow ? [group.inRow, group.rows] : [group.rows, group.inRow];
  const along = grain ? Math.min(1, Math.abs(dot(force, grain))) : 0;
  return {
    angleDeg: (Math.acos(along) * 180) / Math.PI,
    loads: [
      ...(along > SOME ? ['towardEnd' as const] : []),
      ...(grain && Math.sqrt(1 - along * along) > SOME ? ['across' as const] : []),
    ],
    inLine: lines[0]!,
    beside: lines[1]!,
  };
}

/** Where the outermost fasteners of a group stand in a piece. */
export function placeIn(
  piece: InWood,
  into: Vector,
  group: Group,
  load: GrainLoad,
  size: ShankSize,
  slenderness: number,
  hasOnePlate: boolean,
): FastenerPlace {
  const grain = grainOf(piece, into);
  const beside = grain && unit(cross(into, grain));
  const edgeIn = Math.max(0, piece.edgeIn - (beside ? spread(group, beside) : 0));
  // beside one another on the flank of a stick that ends aslant some stand nearer to its end than on its axis
  const slope = group.beginsAtEnd && beside ? (piece.piece.endSlope ?? 0) * spread(group, beside) : 0;
  const endIn = grain ? piece.endIn - slope - (group.beginsAtEnd ? 0 : spread(group, grain)) : NO_END_IN;
  const { spacingIn } = group;
  return {
    nominalIn: size.nominalIn,
    isHardwood: piece.wood.isHardwood,
    isPrebored: size.kind === 'screw',
    loads: load.loads,
    endIn: Math.max(0, endIn),
    loadedEdgeIn: edgeIn,
    unloadedEdgeIn: edgeIn,
    inRowIn: load.inLine > 1 ? spacingIn : null,
    rowsApartIn: load.beside > 1 ? spacingIn : null,
    outerRowsIn: load.beside > 1 ? (load.beside - 1) * spacingIn : null,
    hasOnePlate,
    slenderness,
  };
}

/** Half of what a group takes up in a direction [in]. */
const spread = ({ inRow, rows, spacingIn, along, across }: Group, way: Vector): number =>
  ((Math.abs(dot(along, way)) * (inRow - 1) + Math.abs(dot(across, way)) * (rows - 1)) * spacingIn) / 2;

/** As far as the drying wood of a piece can split between the fasteners. */
export function arrangementIn(piece: InWood, into: Vector, group: Group): Arrangement {
  if (group.inRow * group.rows === 1) return 'one';
  const grain = grainOf(piece, into);
  return group.rows === 1 && grain && Math.abs(dot(group.along, grain)) > SAME_WAY ? 'oneRowAlongGrain' : 'rows';
}
