import { stretchIn, type ShankLine, type StickShape } from '../../engine/checks/fasteners/round-geometry.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';
import { shankSize, type ShankSize } from '../../engine/checks/joints/fastened/shank-size.ts';
import type { JointPiece, JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { opposite, UP } from '../../engine/checks/joints/stick-shape.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import { isFitted } from './bodies-of.ts';
import { underPlate } from './plate-flats.ts';
import { slantedShank } from './slanted-shank.ts';

type Plate = NonNullable<FastenerRow['plate']>;

/** One fastener as it stands in a joint. Lengths along it are told from under its head [in]. */
export interface Shank {
  readonly row: FastenerRow;
  readonly size: ShankSize;
  readonly headAt: Vector;
  readonly into: Vector;
  /** straight into the piece that holds it: the same but for a slanted nail */
  readonly square: Vector;
  /** the way that the lines of its row run */
  readonly along: Vector;
  /** piece under its head; null where that is steel */
  readonly side: JointPiece | null;
  /** piece that holds its point or has its nut */
  readonly main: JointPiece;
  readonly entersIn: number;
  readonly inMainIn: number;
  /** under the nut of a bolt */
  readonly nutIn: number | null;
  readonly plate: Plate | null;
}

/** Screws of a sheet are drawn as far as this from the joint [in]. */
const SHEET_ROW_IN = 9;
/** Parts of a direction smaller than this are none. */
const SOME = 0.1;

/** Every fastener of a row where it stands; one that finds no wood there is not drawn. */
export function shanksOf(setting: JointSetting, row: FastenerRow, fromSide: Vector): readonly Shank[] {
  if (row.fastener === 'strap') return [];
  return standsOf(setting, row, fromSide).flatMap((stand) => {
    const along = lineOf(setting, row, stand);
    return gridOf(setting, row, stand, along).flatMap((at, i): readonly Shank[] => {
      const shank = shankAt(row, stand, { at, into: stand.into }, along, i);
      return shank ? [shank] : [];
    });
  });
}

/** Where the fasteners of a row are driven: through both pieces, or through steel into one. */
interface Stand {
  readonly side: JointPiece | null;
  readonly main: JointPiece;
  readonly at: Vector;
  readonly into: Vector;
  /** away from the end of the piece, where the row begins at a distance from it */
  readonly inward: Vector | null;
}

function standsOf(setting: JointSetting, row: FastenerRow, fromSide: Vector): readonly Stand[] {
  const { upper, lower, line } = setting;
  if (upper.of === 'sheet') return lower.shape && line ? [{ side: null, main: lower, ...line, inward: null }] : [];
  if (!row.plate) return line ? [{ side: upper, main: lower, ...line, inward: null }] : [];
  return [upper, lower].flatMap((piece, i): readonly Stand[] => {
    const stand = besideSteel(setting, piece, i === 0 ? lower : upper, row, fromSide);
    if (!stand) return [];
    const isOnBothSides = row.plate?.each === 2 && row.fastener !== 'bolt';
    return isOnBothSides ? [stand, { ...stand, into: opposite(stand.into) }] : [stand];
  });
}

/** Through a plate on the side of a piece: level, square to its grain, and as far from its end as the row says. */
function besideSteel(
  setting: JointSetting,
  piece: JointPiece,
  other: JointPiece,
  row: FastenerRow,
  fromSide: Vector,
): Stand | null {
  const { kind, at, ways } = setting;
  const { shape, toEndsIn } = piece;
  if (!shape || !toEndsIn) return null;
  const { axis } = shape;
  const toStart = toEndsIn[0] < toEndsIn[1];
  const away = toStart ? axis : opposite(axis);
  const onAxis = plus(shape.axisAt, axis, dot(plus(at, shape.axisAt, -1), axis));
  const shiftIn =
    (row.endIn ?? 0) - Math.min(...toEndsIn) + (isFitted(kind) ? hiddenIn(onAxis, away, toEndsIn, other.shape) : 0);
  // level; on a plumb piece square to the pull as well
  const square = [cross(axis, UP), cross(axis, ways.pull)].find((v) => lengthOf(v) > SOME);
  const into = square ? unit(square) : ways.across;
  return {
    side: null,
    main: underPlate(setting, piece, row, into),
    at: plus(onAxis, away, Math.max(0, shiftIn)),
    into: dot(into, fromSide) > 0 ? opposite(into) : into,
    inward: shiftIn > 0 ? away : null,
  };
}

/** What a stick that ends on another one is short of the place where their axes meet [in]. */
function hiddenIn(at: Vector, away: Vector, toEndsIn: readonly [number, number], other: StickShape | null): number {
  if (Math.min(...toEndsIn) > 0 || !other || Math.abs(dot(away, other.axis)) > 0.99) return 0;
  const inside = stretchIn(other, { at, into: away });
  return inside && inside.fromIn < -SOME && Number.isFinite(inside.toIn) ? Math.max(0, inside.toIn) : 0;
}

/** The way that the lines of a row run: along the strap, else along the grain that its fasteners cross. */
function lineOf({ upper, ways }: JointSetting, row: FastenerRow, { main, into }: Stand): Vector {
  const isStrap = row.plate !== undefined && upper.of !== 'sheet';
  const wanted = isStrap ? ways.pull : (main.shape?.axis ?? ways.along);
  const other = upper.shape?.axis ?? ways.along;
  return squareTo(wanted, into) ?? squareTo(other, into) ?? ways.across;
}

/** Places of a row's fasteners, on their lines beside one another. */
function gridOf(
  { upper }: JointSetting,
  row: FastenerRow,
  { at, into, inward }: Stand,
  along: Vector,
): readonly Vector[] {
  const across = unit(cross(into, along));
  const spacing = row.spacingIn ?? 0;
  if (upper.of === 'sheet') {
    const each = spacing > 0 ? Math.min(4, Math.floor(SHEET_ROW_IN / spacing)) : 0;
    return Array.from({ length: 2 * each + 1 }, (_, i) => plus(at, along, (i - each) * spacing));
  }
  const abreast = Math.min(row.rows, row.count);
  const inRow = Math.ceil(row.count / abreast);
  const beginsAtEnd = inward !== null && Math.abs(dot(inward, along)) > 0.5;
  return Array.from({ length: row.count }, (_, i) => {
    const [step, line] = [Math.floor(i / abreast), i % abreast];
    const alongIn = beginsAtEnd ? step * spacing * Math.sign(dot(inward, along)) : (step - (inRow - 1) / 2) * spacing;
    return plus(plus(at, along, alongIn), across, (line - (abreast - 1) / 2) * spacing);
  });
}

function squareTo(v: Vector, n: Vector): Vector | null {
  const rest = plus(v, n, -dot(v, n));
  return lengthOf(rest) > SOME ? unit(rest) : null;
}

function shankAt(row: FastenerRow, stand: Stand, line: ShankLine, along: Vector, nth: number): Shank | null {
  const { side, main } = stand;
  if (row.fastener === 'strap') return null;
  const plate = row.plate ?? null;
  const known = { row, size: sizeOf(row, row.fastener), square: line.into, along, side, main, plate };
  if (row.slanted && side && !plate) {
    const slanted = slantedShank(side, main, line, row.lengthIn, nth % 2 === 1);
    return slanted && { ...known, ...slanted, nutIn: null };
  }
  const inMain = main.shape && stretchIn(main.shape, line);
  const inSide = side ? side.shape && stretchIn(side.shape, line) : inMain;
  if (!inMain || !inSide) return null;
  const flatIn = row.headFlatIn ?? 0;
  const steelIn = plate?.thicknessIn ?? 0;
  const headFromIn = side ? inSide.fromIn + flatIn : inSide.fromIn - steelIn;
  const entersIn = inMain.fromIn - headFromIn;
  const isBolt = row.fastener === 'bolt';
  const farIn = inMain.toIn - headFromIn - (side ? flatIn : 0);
  return {
    ...known,
    headAt: plus(line.at, line.into, headFromIn),
    into: line.into,
    entersIn,
    inMainIn: isBolt ? farIn - entersIn : row.lengthIn - entersIn,
    nutIn: isBolt ? farIn + (plate?.each === 2 ? steelIn : 0) : null,
  };
}

/** A size that is not listed is drawn as a plain shank. */
function sizeOf(row: FastenerRow, kind: ShankSize['kind']): ShankSize {
  const answer = shankSize(row);
  if (answer.ok) return answer.size;
  const { diameterIn: nominalIn, lengthIn, washerIn } = row;
  return { kind, nominalIn, lengthIn, rootIn: nominalIn, tipIn: 0, threadIn: 0, headIn: washerIn ?? null };
}

/** A place along a fastener, from under its head. */
export const onShank = ({ headAt, into }: Shank, atIn: number): Vector => plus(headAt, into, atIn);

/** Fasteners that go in the same way stand on one face. */
export const faceOf = ({ into }: Shank): string => into.map((v) => v.toFixed(2)).join(' ');
