import { clause } from '../../../../data/sources.ts';
import { LEAST_HOLD } from '../../../../data/fasteners/withdrawal.ts';
import { put, type Note } from '../../../note.ts';
import type { FastenerRow } from '../../../project/model.ts';
import { quantity } from '../../../units.ts';
import { groupActionFactor, type RowPiece } from '../../fasteners/group-action.ts';
import { adjustedLateral, type LateralSetting } from '../../fasteners/lateral-factors.ts';
import { lateralValue, type JoinedPiece } from '../../fasteners/lateral.ts';
import { geometryFactor } from '../../fasteners/placement.ts';
import { refused, type Refused } from '../../fasteners/refused.ts';
import { angleToGrainDeg } from '../../fasteners/round-geometry.ts';
import { bearingDiameter } from '../../fasteners/shank.ts';
import type { Vector } from '../../fasteners/space.ts';
import { groupTearOut, rowTearOut } from '../../fasteners/tear-out.ts';
import { threadAtNut, threadAtPoint } from '../../fasteners/thread-in-piece.ts';
import { grainMet, type Grain, type Pounds } from '../../fasteners/withdrawal.ts';
import { THICK_FROM_IN } from '../../fasteners/dowel-bearing.ts';
import { shearBeside } from './across-grain.ts';
import { arrangementIn, loadOn, placeIn, type GrainLoad, type Group } from './group.ts';
import type { ShankSize } from './shank-size.ts';
import type { InSteel, InWood, Standing } from './in-wood.ts';

/** A row of fasteners at one place of a joint. */
export interface RowThere {
  readonly row: FastenerRow;
  readonly size: ShankSize;
  readonly standing: Standing;
  readonly group: Group;
}

/** Steel is this stiff [psi]; common practice. */
const STEEL_E_PSI = 29_000_000;
/** Within this angle a load counts as along the grain, where wood may tear out [deg]. */
const ALONG_WITHIN_DEG = 10;
/** Least width that a row across the grain stretches, in diameters: the least spacing of a row. @source NDS 11.3.6.3, from memory */
const LEAST_WIDTH = 3;

/**
 * What a row holds against a force across its shanks: yield of each with every factor, and the wood around all of them.
 * @param force across the shanks, of length one
 * @returns pounds of the whole row, or why it does not hold there
 * @source NDS 12.3, 3.4.3.3, Table 11.3.1, Appendix E
 */
export function heldSideways(there: RowThere, force: Vector, CD: number, note?: Note): Pounds {
  const { standing, group, size } = there;
  const short = tooShort(there);
  if (short) return short;
  const inMain = loadOn(standing.main, standing.into, group, force);
  const inSide = standing.side.material === 'wood' ? loadOn(standing.side, standing.into, group, force) : null;
  const Z = lateralValue(
    {
      kind: size.kind,
      nominalIn: size.nominalIn,
      diameterIn: bearingOf(there, note),
      tipIn: size.tipIn,
      main: joined(standing.main, standing.into, inMain.angleDeg, note),
      side: inSide
        ? joined(standing.side, standing.into, inSide.angleDeg, note)
        : joined(standing.side, standing.into, 0),
      gapIn: standing.gapIn,
      planes: standing.planes,
    },
    note,
  );
  if (!Z.ok) return Z;
  const woods = woodsOf(standing, inMain, inSide);
  const slenderness = Math.min(...woods.map(({ piece }) => piece.lengthIn)) / size.nominalIn;
  const onPlate = standing.side.material === 'steel';
  let Cdelta = 1;
  const torn: (LoadedWood & { readonly endIn: number })[] = [];
  for (const { piece, load } of woods) {
    const place = placeIn(piece, standing.into, group, load, size, slenderness, onPlate);
    const factor = geometryFactor(place, note);
    if (!factor.ok) return factor;
    Cdelta = Math.min(Cdelta, factor.Cdelta);
    torn.push({ piece, load, endIn: place.endIn });
  }
  const Cg = groupActionFactor(
    {
      nominalIn: size.nominalIn,
      count: inMain.inLine,
      spacingIn: Math.max(group.spacingIn, size.nominalIn),
      main: stretching(standing.main, inMain, group, size),
      side:
        inSide && standing.side.material === 'wood'
          ? stretching(standing.side, inSide, group, size)
          : stretchingSteel(there),
      sideMaterial: standing.side.material,
    },
    note,
  );
  const factors = { CD, Cg, Cdelta };
  const worst = settingsOf(there, woods).reduce((a, b) =>
    adjustedLateral(Z.ZLb, b, factors) < adjustedLateral(Z.ZLb, a, factors) ? b : a,
  );
  const each = adjustedLateral(Z.ZLb, worst, factors, note);
  const n = countOf(there);
  const faces = n / there.row.count;
  const tearing = faces * Math.min(...torn.map((wood) => tearOut(there, wood, CD, note)));
  const beside = Math.min(...woods.map(({ piece }) => shearBeside(piece, standing.into, group, size, force, CD, note)));
  const wood = [
    ...(Number.isFinite(tearing) ? [put('Zt', tearing, 'lb', 'wood torn out along the grain')] : []),
    ...(Number.isFinite(beside) ? [put('Vp', beside, 'lb', 'shear of a piece beside its fasteners')] : []),
  ];
  const pounds = Math.min(n * each, tearing, beside);
  note?.({
    symbol: 'Zrow',
    words: 'all fasteners of the row sideways, or the wood around them',
    formula: wood.length > 0 ? `min(${["n × Z'", ...wood.map(({ symbol }) => symbol)].join(', ')})` : "n × Z'",
    put: [put('n', n, '1', 'fasteners'), put("Z'", each, 'lb', 'allowable lateral value of one'), ...wood],
    result: quantity(pounds, 'lb'),
    clause: clause('NDS', '11.2.2'),
  });
  return { ok: true, pounds };
}

/** A driven shank that hardly reaches the piece that is to hold it. @source NDS 12.1.4.6, 12.1.5.6, 12.1.6.5, from memory */
function tooShort({ size, standing }: RowThere): Refused | null {
  if (size.kind === 'bolt' || size.kind === 'driftPin') return null;
  const diameters = LEAST_HOLD[size.kind];
  const leastIn = diameters * size.nominalIn + (size.kind === 'lag' ? size.tipIn : 0);
  const reachIn = standing.main.lengthIn;
  return reachIn < leastIn ? refused('fastenerTooShort', { reachIn, leastIn, diameters }) : null;
}

/** Fasteners that act at one place: with plates on both sides each side has its own, but a bolt goes through both. */
export const countOf = ({ row, standing }: RowThere): number =>
  row.count * (row.plate?.each === 2 && standing.planes === 1 ? 2 : 1);

interface LoadedWood {
  readonly piece: InWood;
  readonly load: GrainLoad;
}

const woodsOf = ({ main, side }: Standing, inMain: GrainLoad, inSide: GrainLoad | null): readonly LoadedWood[] => [
  { piece: main, load: inMain },
  ...(side.material === 'wood' && inSide ? [{ piece: side, load: inSide }] : []),
];

/** Diameter that bears: the root of a thread that reaches far into the piece that holds it. */
function bearingOf({ size, standing }: RowThere, note?: Note): number {
  const { kind, nominalIn, rootIn, threadIn, tipIn } = size;
  if (rootIn === nominalIn) return nominalIn;
  const inPiece =
    kind === 'bolt'
      ? threadAtNut(threadIn, standing.beyondIn, standing.main.lengthIn)
      : threadAtPoint(threadIn, tipIn, standing.main.lengthIn);
  return bearingDiameter(nominalIn, rootIn, inPiece, note);
}

function joined(piece: InWood | InSteel, into: Vector, angleDeg: number, note?: Note): JoinedPiece {
  if (piece.material === 'steel') return piece;
  const grain = grainMet(angleToGrainDeg(piece.shape, { at: piece.shape.axisAt, into }));
  return { material: 'wood', lengthIn: piece.lengthIn, gravity: piece.wood.gravity(note), angleDeg, grain };
}

/** Every moisture that the joint may have, in the arrangement that each wood makes of it. */
const settingsOf = (
  { size, row, standing, group }: RowThere,
  woods: readonly LoadedWood[],
): readonly LateralSetting[] =>
  woods.flatMap(({ piece }) =>
    piece.wood.used.map((used) => ({
      kind: size.kind,
      nominalIn: size.nominalIn,
      made: row.driven,
      used,
      arrangement: arrangementIn(piece, standing.into, group),
      grain: metBy(standing.main, standing.into),
      isToed: standing.isToed,
    })),
  );

const metBy = ({ shape }: InWood, into: Vector): Grain => grainMet(angleToGrainDeg(shape, { at: shape.axisAt, into }));

/** What stretches of a piece between the fasteners; across the grain no more than the group is wide. */
function stretching(piece: InWood, { angleDeg, beside }: GrainLoad, group: Group, { nominalIn }: ShankSize): RowPiece {
  const EPsi = piece.wood.values.EPsi;
  if (angleDeg < 45) return { EPsi, areaIn2: piece.grossIn2 };
  return { EPsi, areaIn2: piece.lengthIn * Math.max((beside - 1) * group.spacingIn, LEAST_WIDTH * nominalIn) };
}

function stretchingSteel({ row, standing }: RowThere): RowPiece {
  const { thicknessIn = standing.side.lengthIn, widthIn = null } = row.plate ?? {};
  return { EPsi: STEEL_E_PSI, areaIn2: thicknessIn * (widthIn ?? LEAST_WIDTH * row.diameterIn) * standing.planes };
}

/** Force along the grain at which the rows tear out of a piece; Infinity where it cannot, or for thin shanks. */
function tearOut(
  { group, size }: RowThere,
  { piece, load, endIn }: LoadedWood & { readonly endIn: number },
  CD: number,
  note?: Note,
): number {
  const isAlong = load.angleDeg <= ALONG_WITHIN_DEG && Number.isFinite(piece.endIn);
  if (!isAlong || size.nominalIn < THICK_FROM_IN) return Infinity;
  const { FvPsi, FtPsi } = piece.wood.values;
  const criticalIn = load.inLine > 1 ? Math.min(endIn, group.spacingIn) : endIn;
  const line = { count: load.inLine, thicknessIn: piece.lengthIn, criticalIn };
  if (load.beside === 1) return rowTearOut(FvPsi * CD, line, note);
  const betweenIn2 = (load.beside - 1) * (group.spacingIn - size.nominalIn) * piece.lengthIn;
  const lines = load.beside * rowTearOut(FvPsi * CD, line, note);
  const whole = groupTearOut(FvPsi * CD, FtPsi * CD, { first: line, last: line }, Math.max(0, betweenIn2), note);
  return Math.min(lines, whole);
}
