import { STEELS } from '../../../../data/fasteners/steel.ts';
import type { FastenerRow } from '../../../project/model.ts';
import type { PlateSteel } from '../../fasteners/dowel-bearing.ts';
import { refused, type Refused } from '../../fasteners/refused.ts';
import { stretchIn, type ShankLine } from '../../fasteners/round-geometry.ts';
import { drivenInto, shankPath } from '../../fasteners/shank-path.ts';
import { plus } from '../../fasteners/space.ts';
import type { JointPiece, JointSetting } from '../joint-setting.ts';
import { endOf, grossOf, inWood, type Standing } from './in-wood.ts';
import { besideGrain, onAxis, plateSeat, withFlats, type PlateSeat } from './plate-seat.ts';
import type { ShankSize } from './shank-size.ts';
import { toedThrough } from './toed.ts';
import type { PieceWood } from './wood-of-piece.ts';

export interface Woods {
  readonly upper: PieceWood | null;
  readonly lower: PieceWood | null;
}

/**
 * Where the fasteners of a row stand: one place through both pieces, or with a plate one place in each piece of wood.
 * @returns each place, or why the row does not fit there
 */
export function standingsOf(
  setting: JointSetting,
  woods: Woods,
  row: FastenerRow,
  size: ShankSize,
): readonly (Standing | Refused)[] {
  const { upper, lower } = setting;
  if (lower.of === 'wall') return [refused('wallOnlyRated')];
  if (upper.of === 'sheet') return [throughSheet(setting, woods, row, size)];
  if (row.plate && row.slanted) return [refused('toedNeedsSawn')];
  if (row.plate) return besidePlates(setting, woods, row, size);
  if (lower.of === 'pier' || !setting.line) return [refused('fastenersNeedPlate')];
  return [throughBoth(setting, setting.line, woods, row, size)];
}

/** The steel of a row's plate or strap. */
export const steelOf = ({ plate }: FastenerRow): PlateSteel => STEELS[plate?.steel ?? 'plate'];

function throughBoth(
  { upper, lower }: JointSetting,
  line: ShankLine,
  woods: Woods,
  row: FastenerRow,
  size: ShankSize,
): Standing | Refused {
  if (!upper.shape || !lower.shape || !woods.upper || !woods.lower)
    return notKnown(upper.shape && woods.upper ? lower : upper);
  const path = shankPath(upper.shape, lower.shape, line);
  if (!path.ok) return path;
  if (row.slanted) return toedThrough(upper, lower, line, { upper: woods.upper, lower: woods.lower }, row, size, path);
  const flatIn = row.headFlatIn ?? 0;
  const sideIn = path.side.thicknessIn - flatIn;
  if (!(sideIn > 0)) return refused('headFlatTooDeep', { flatIn, thicknessIn: path.side.thicknessIn });
  const inMain = reaching(size, { ...path, side: { ...path.side, thicknessIn: sideIn } }, flatIn);
  if (!inMain.ok) return inMain;
  const from = stretchIn(lower.shape, line)!.fromIn;
  const headAt = stretchIn(upper.shape, line)!.fromIn + flatIn;
  return {
    ok: true,
    into: line.into,
    side: {
      material: 'wood',
      piece: upper,
      wood: woods.upper,
      shape: upper.shape,
      entersAt: plus(line.at, line.into, headAt),
      lengthIn: sideIn,
      endIn: endOf(upper, line.into, sideIn, row),
      edgeIn: path.side.edgeHalfWayIn ?? Infinity,
      grossIn2: grossOf(upper),
      flatIn: 0,
    },
    main: inWood(lower, woods.lower, line, from, inMain.lengthIn, row),
    gapIn: path.gapIn,
    beyondIn: inMain.beyondIn,
    planes: 1,
    isToed: false,
  };
}

interface InMain {
  readonly ok: true;
  readonly lengthIn: number;
  readonly beyondIn: number;
}

/** A driven shank ends in the main piece; a bolt goes through and has its nut on it, let in as deep as its head. */
function reaching(size: ShankSize, path: Parameters<typeof drivenInto>[0], flatIn: number): InMain | Refused {
  const { kind, lengthIn } = size;
  if (kind !== 'bolt') {
    const driven = drivenInto(path, lengthIn);
    return driven.ok ? { ok: true, lengthIn: driven.penetrationIn, beyondIn: 0 } : driven;
  }
  // down the length of a post no bolt comes out on a far side
  if (path.main.thicknessIn === Infinity) return refused('fastenersNeedPlate');
  const mainIn = path.main.thicknessIn - flatIn;
  const beyondIn = lengthIn - (path.side.thicknessIn + path.gapIn + mainIn);
  return nutless(size, beyondIn) ?? { ok: true, lengthIn: mainIn, beyondIn };
}

/**
 * A bolt that sticks out too little has no room for its nut, as high as the bolt is thick; one that sticks out farther than
 * it is threaded stops its nut before the wood. Washers are not counted on.
 */
function nutless({ lengthIn, nominalIn, threadIn }: ShankSize, beyondIn: number): Refused | null {
  const gripIn = lengthIn - beyondIn;
  if (beyondIn < nominalIn) return refused('boltTooShort', { lengthIn, leastIn: gripIn + nominalIn });
  return beyondIn > threadIn ? refused('boltTooLong', { lengthIn, mostIn: gripIn + threadIn }) : null;
}

/** A screw through the sheet of the roof, square to it. */
function throughSheet(
  { lower, line }: JointSetting,
  { lower: wood }: Woods,
  row: FastenerRow,
  size: ShankSize,
): Standing | Refused {
  if (!row.plate) return refused('sheetThicknessNotGiven');
  if (!lower.shape || !wood || !line) return notKnown(lower);
  const whole = stretchIn(lower.shape, line);
  if (!whole) return refused('shankMissesStick', { stick: lower.label });
  return inMainOf(lower, wood, { ...line, at: plus(line.at, line.into, whole.fromIn) }, row, size, 1);
}

/** A place in each piece of wood, where the plates lie on both. */
function besidePlates(
  setting: JointSetting,
  woods: Woods,
  row: FastenerRow,
  size: ShankSize,
): readonly (Standing | Refused)[] {
  const { upper, lower } = setting;
  const seat = plateSeat(setting, row.headFlatIn ?? 0);
  if (!seat.ok) return [seat];
  return [[upper, woods.upper] as const, [lower, woods.lower] as const].flatMap(([piece, wood]) =>
    piece.of === 'wood' ? [throughPlate(setting, piece, wood, row, size, seat)] : [],
  );
}

/** A fastener through a plate on the side of a piece, level and square to its grain. */
function throughPlate(
  setting: JointSetting,
  whole: JointPiece,
  wood: PieceWood | null,
  row: FastenerRow,
  size: ShankSize,
  seat: PlateSeat,
): Standing | Refused {
  const into = whole.shape && besideGrain(setting, whole.shape);
  if (!whole.shape || !into || !wood) return notKnown(whole);
  const shape = withFlats(setting, whole.shape, into, whole === seat.wider ? seat.flatIn : 0);
  const piece = { ...whole, shape };
  const room = Math.min(...(piece.toEndsIn ?? [0, 0]));
  const shiftIn = Math.max(0, (row.endIn ?? 0) - room);
  if (room + shiftIn <= 0) return refused('endNotGiven', { piece: piece.label });
  const inward = (piece.toEndsIn?.[0] ?? 0) < (piece.toEndsIn?.[1] ?? 0) ? shiftIn : -shiftIn;
  const at = plus(onAxis(setting, shape), shape.axis, inward);
  const stretch = stretchIn(shape, { at, into });
  if (!stretch) return refused('shankMissesStick', { stick: piece.label });
  const line = { at: plus(at, into, stretch.fromIn), into };
  const standing = inMainOf(piece, wood, line, row, size, row.plate?.each ?? 1);
  if (!standing.ok) return standing;
  return whole === seat.wider
    ? { ...standing, main: { ...standing.main, flatIn: seat.flatIn } }
    : { ...standing, gapIn: seat.gapIn };
}

/** Steel under the head and wood behind it, which begins where the line does. */
function inMainOf(
  piece: JointPiece,
  wood: PieceWood,
  line: ShankLine,
  row: FastenerRow,
  size: ShankSize,
  plates: 1 | 2,
): Standing | Refused {
  const steelIn = row.plate!.thicknessIn;
  const stretch = piece.shape && stretchIn(piece.shape, line);
  if (!stretch || !Number.isFinite(stretch.toIn)) return refused('shankMissesStick', { stick: piece.label });
  const roomIn = stretch.toIn;
  const isBolt = size.kind === 'bolt';
  const planes = isBolt ? plates : 1;
  const beyondIn = isBolt ? size.lengthIn - roomIn - planes * steelIn : 0;
  const lengthIn = isBolt ? roomIn : size.lengthIn - steelIn;
  const unheld = isBolt ? nutless(size, beyondIn) : null;
  if (unheld) return unheld;
  if (lengthIn > roomIn) return refused('shankComesOut', { lengthIn: size.lengthIn, roomIn: roomIn + steelIn });
  // those through two plates are driven at each other on one line
  const isMet = !isBolt && plates === 2 && lengthIn > roomIn / 2;
  if (isMet) return refused('shanksMeet', { lengthIn: size.lengthIn, mostIn: roomIn / 2 + steelIn });
  return {
    ok: true,
    into: line.into,
    side: { material: 'steel', lengthIn: steelIn, steel: steelOf(row) },
    main: inWood(piece, wood, line, 0, lengthIn, row),
    gapIn: 0,
    beyondIn,
    planes,
    isToed: false,
  };
}

const notKnown = ({ label }: JointPiece): Refused => refused('memberNotGiven', { member: label });
