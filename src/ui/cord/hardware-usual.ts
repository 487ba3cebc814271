import { END_DISTANCE } from '../../data/fasteners/placement.ts';
import type { FastenerKind } from '../../data/fasteners/kind.ts';
import { commonPath, type JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import { flatsFor, flatsOf, underHead } from './hardware-flats.ts';
import { listedLengths, namedSizes } from './hardware-sizes.ts';

/** Thickness and length that a row of a kind begins with where the joint does not say more [in]; common practice. */
const USUAL: Readonly<Record<FastenerKind, readonly [diameterIn: number, lengthIn: number]>> = {
  lag: [0.5, 8],
  bolt: [0.625, 12],
  screw: [0.242, 4],
  nail: [0.162, 3.5],
  spike: [0.375, 8.5],
  driftPin: [0.625, 18],
};
/** What fastens the sheet of a roof, and how far apart [in]; common practice. */
const ON_SHEET = {
  screw: { diameterIn: 0.242, lengthIn: 1.5 },
  nail: { diameterIn: 0.148, lengthIn: 1.5 },
  spacingIn: 12,
} as const;
/** A bar of flat steel before anybody types [in]; common practice. */
const BAR = { thicknessIn: 0.1875, widthIn: 2 } as const;
/** What sticks out of the wood for washer and nut, in diameters; common practice. */
const NUT_DIAMETERS = 1.5;
/** Depth in the piece that holds the point at which a first length aims, in diameters; own choice. */
const AIMS_AT = 8;

type Plate = NonNullable<FastenerRow['plate']>;

/** A plate of the kind, with the measures of the one that is there. */
export const plateOf = (steel: Plate['steel'], each: Plate['each'], now: Plate | undefined): Plate => ({
  thicknessIn: now?.thicknessIn ?? BAR.thicknessIn,
  widthIn: now?.widthIn ?? BAR.widthIn,
  steel,
  each,
});

/** From the end as far as loses nothing, in half inches [in]. @source NDS Table 12.5.1A */
const usualEndIn = (diameterIn: number): number => Math.ceil(END_DISTANCE.softwood.towardEnd.full * diameterIn * 2) / 2;

/** Whether nothing reaches straight from one piece into the other. */
export const needsPlate = ({ line, upper, lower }: JointSetting): boolean =>
  upper.of !== 'sheet' && (line === null || lower.of === 'pier');

/** Kinds that are driven slantwise too. @source NDS 12.5.4, from memory */
export const isToed = (kind: FastenerRow['fastener']): boolean => kind === 'nail' || kind === 'spike';

/** Kinds that are offered for a joint: a sheet is screwed or nailed, and down a post no bolt finds a far side for its nut. */
export function kindsFor(setting: JointSetting | null): readonly FastenerKind[] {
  if (setting?.upper.of === 'sheet') return ['screw', 'nail'];
  const path = setting && commonPath(setting);
  const isEndless = path?.ok && !Number.isFinite(path.main.thicknessIn);
  return isEndless
    ? ['lag', 'screw', 'nail', 'spike', 'driftPin']
    : ['lag', 'bolt', 'screw', 'nail', 'spike', 'driftPin'];
}

/** A row before anybody types: one fastener of the usual size of its kind, as long as the joint lets it be. */
export function usualRow(kind: FastenerKind, setting: JointSetting | null): FastenerRow {
  const [diameterIn, lengthIn] = USUAL[kind];
  const row: FastenerRow = {
    fastener: kind,
    diameterIn,
    lengthIn,
    count: 1,
    rows: 1,
    spacingIn: null,
    endIn: null,
    acts: 'both',
    driven: 'wet',
  };
  if (!setting) return row;
  if (setting.upper.of === 'sheet') {
    const size = kind === 'nail' ? ON_SHEET.nail : ON_SHEET.screw;
    return { ...row, ...size, ...underHead(row, setting), spacingIn: ON_SHEET.spacingIn };
  }
  return needsPlate(setting)
    ? throughPlate(row, plateOf('plate', 2, undefined), setting)
    : straightThrough(row, setting);
}

/**
 * The row through steel on its pieces: no washer, no flat for a head of its own, but flats for plates where one piece is
 * wider; how far from the end matters now.
 */
export function throughPlate(row: FastenerRow, plate: Plate, setting: JointSetting | null): FastenerRow {
  const { diameterIn, endIn } = row;
  const flats = row.plate ? flatsOf(row) : flatsFor(setting);
  const lengthIn = setting ? lengthThroughSteel({ ...row, ...flats }, plate, setting) : row.lengthIn;
  return { ...bare(row), ...flats, lengthIn, endIn: endIn ?? usualEndIn(diameterIn), plate };
}

/** The row straight through both pieces: what was asked for the sake of the steel goes with it. */
export const straightThrough = (row: FastenerRow, setting: JointSetting | null): FastenerRow =>
  setting ? withSize({ ...bare(row), ...underHead(row, setting) }, setting) : bare(row);

/** Nails slantwise through the side of the upper piece: of the usual size, without a flat or a washer. */
export function slantwise(row: FastenerRow): FastenerRow {
  const [diameterIn, lengthIn] = row.fastener === 'strap' ? [row.diameterIn, row.lengthIn] : USUAL[row.fastener];
  return { ...bare(row), diameterIn, lengthIn, endIn: row.endIn, slanted: true };
}

const withSize = (row: FastenerRow, setting: JointSetting): FastenerRow => ({
  ...row,
  ...sizeThroughBoth(row, setting),
});

/** What a row is whatever its fasteners go through. */
function bare({ fastener, diameterIn, lengthIn, count, rows, spacingIn, acts, driven }: FastenerRow): FastenerRow {
  return { fastener, diameterIn, lengthIn, count, rows, spacingIn, endIn: null, acts, driven };
}

/** The same row of another kind: how many and how they stand stays, what belongs to the size comes anew. */
export function asKind(row: FastenerRow, kind: FastenerKind, setting: JointSetting | null): FastenerRow {
  const { count, rows, spacingIn, endIn, acts, driven, plate } = row;
  const usual = usualRow(kind, setting);
  const stands = { count, rows, spacingIn, acts, driven };
  if (!plate) {
    const plain = { ...usual, ...stands, endIn };
    return row.slanted && isToed(kind) ? slantwise(plain) : plain;
  }
  if (setting?.upper.of === 'sheet') return { ...usual, ...stands, endIn, plate };
  // lengths of steel begin with the kind's own, not with one that was fitted to other wood
  const [diameterIn, lengthIn] = USUAL[kind];
  return throughPlate(
    { ...bare(usual), ...stands, ...flatsOf(row), diameterIn, lengthIn, endIn, plate },
    plate,
    setting,
  );
}

type Size = Pick<FastenerRow, 'diameterIn' | 'lengthIn'>;

/** Sizes to begin with, from the shortest; lengths of no list go by half inches. */
function sizesFrom({ fastener, diameterIn, lengthIn }: FastenerRow): readonly Size[] {
  const named = namedSizes(fastener).filter((size) => size.lengthIn >= lengthIn);
  if (named.length > 0) return named;
  const listed = listedLengths(fastener, 'feet').map(({ valueIn }) => valueIn);
  const lengths = listed.length > 0 ? listed : Array.from({ length: 48 }, (_, i) => (i + 1) / 2);
  return lengths.map((each) => ({ diameterIn, lengthIn: each }));
}

const upToHalfInch = (lengthIn: number): number => Math.ceil(lengthIn * 2) / 2;

/** The first size that goes deep into the piece that holds it, else the longest that ends in it, else the usual one. */
function sizeThroughBoth(row: FastenerRow, setting: JointSetting): Size {
  const { fastener, diameterIn, lengthIn } = row;
  const path = commonPath(setting);
  if (!path?.ok) return { diameterIn, lengthIn };
  const flatIn = row.headFlatIn ?? 0;
  const beginsIn = path.side.thicknessIn - flatIn + path.gapIn;
  const endsIn = beginsIn + path.main.thicknessIn;
  if (fastener === 'bolt') {
    // the nut is let in as deep as the head
    const through = upToHalfInch(endsIn - flatIn + NUT_DIAMETERS * diameterIn);
    return { diameterIn, lengthIn: Number.isFinite(through) ? through : lengthIn };
  }
  const inside = sizesFrom(row).filter((size) => size.lengthIn > beginsIn && size.lengthIn <= endsIn);
  const deep = inside.find((size) => size.lengthIn >= beginsIn + AIMS_AT * size.diameterIn);
  return pickSize(deep ?? inside.at(-1) ?? row);
}

const pickSize = ({ diameterIn, lengthIn }: Size): Size => ({ diameterIn, lengthIn });

/**
 * Through steel on the side of each piece: a bolt through the thicker one, a driven shank no longer than the thinner, or than half
 * of it where another comes from the other side.
 */
function lengthThroughSteel(row: FastenerRow, plate: Plate, { upper, lower }: JointSetting): number {
  const thick = [upper, lower].flatMap(({ stick, shape }) =>
    stick?.kind === 'sawn' ? [Math.max(stick.breadthIn, stick.depthIn)] : (shape?.diameterIn ?? []),
  );
  if (thick.length === 0) return row.lengthIn;
  const flatsIn = 2 * (row.headFlatIn ?? 0);
  if (row.fastener === 'bolt') {
    const woodIn = Math.max(...thick) - flatsIn;
    return upToHalfInch(woodIn + plate.each * plate.thicknessIn + NUT_DIAMETERS * row.diameterIn);
  }
  return Math.min(row.lengthIn, Math.floor((Math.min(...thick) - flatsIn) / plate.each));
}
