import { END_DISTANCE } from '../../data/fasteners/placement.ts';
import type { FastenerKind } from '../../data/fasteners/kind.ts';
import { commonPath, type JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import { listedLengths, namedSizes, usualWasherIn } from './hardware-sizes.ts';

/** Thickness and length that a row of a kind begins with where the joint does not say more [in]; common practice. */
const USUAL: Readonly<Record<FastenerKind, readonly [diameterIn: number, lengthIn: number]>> = {
  lag: [0.5, 8],
  bolt: [0.625, 12],
  screw: [0.242, 4],
  nail: [0.162, 3.5],
  spike: [0.375, 8.5],
  driftPin: [0.625, 18],
};
/** Of the screws of a roof's sheet [in]; common practice. */
const EVERY_FOOT = { spacingIn: 12 } as const;
const SHEET_SCREW = { diameterIn: 0.242, lengthIn: 1.5, ...EVERY_FOOT } as const;
/** A bar of flat steel before anybody types [in]; common practice. */
const BAR = { thicknessIn: 0.1875, widthIn: 2 } as const;
/** Depth of a flat before anybody types [in]; own choice. */
export const FIRST_FLAT_IN = 0.5;
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
export const usualEndIn = (diameterIn: number): number =>
  Math.ceil(END_DISTANCE.softwood.towardEnd.full * diameterIn * 2) / 2;

/** Whether nothing reaches straight from one piece into the other. */
export const needsPlate = ({ line, upper, lower }: JointSetting): boolean =>
  upper.of !== 'sheet' && (line === null || lower.of === 'pier');

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
  if (setting.upper.of === 'sheet')
    return { ...row, ...underHead(row, setting), ...(kind === 'screw' ? SHEET_SCREW : EVERY_FOOT) };
  if (needsPlate(setting)) return { ...row, endIn: usualEndIn(diameterIn), plate: plateOf('plate', 2, undefined) };
  return { ...row, ...underHead(row, setting), lengthIn: firstLength(kind, row, setting) };
}

/** The washer of its size where one is listed, and on a round piece the flat that a head wants. */
function underHead(
  { fastener, diameterIn }: FastenerRow,
  { upper }: JointSetting,
): Pick<FastenerRow, 'washerIn' | 'headFlatIn'> {
  const washerIn = usualWasherIn(fastener, diameterIn);
  return {
    ...(washerIn === null ? {} : { washerIn }),
    ...(upper.stick?.kind === 'round' ? { headFlatIn: FIRST_FLAT_IN } : {}),
  };
}

/** The same row of another kind: how many and how they stand stays, what belongs to the size comes anew. */
export function asKind(row: FastenerRow, kind: FastenerKind, setting: JointSetting | null): FastenerRow {
  const { count, rows, spacingIn, endIn, acts, driven, plate } = row;
  const usual = usualRow(kind, setting);
  return { ...usual, count, rows, spacingIn, endIn, acts, driven, ...(plate ? { plate } : {}) };
}

/** The shortest listed length that goes deep enough into the piece that holds it, else the usual one. */
function firstLength(kind: FastenerKind, { diameterIn, lengthIn }: FastenerRow, setting: JointSetting): number {
  const path = commonPath(setting);
  if (!path?.ok) return lengthIn;
  const beginsIn = path.side.thicknessIn + path.gapIn;
  const endsIn = beginsIn + path.main.thicknessIn;
  if (kind === 'bolt') return Math.ceil((endsIn + 1.5 * diameterIn) * 2) / 2;
  const listed = [
    ...listedLengths(kind, 'feet').map(({ valueIn }) => valueIn),
    ...namedSizes(kind).flatMap((named) => (named.diameterIn === diameterIn ? [named.lengthIn] : [])),
  ];
  const lengths = listed.length > 0 ? listed : Array.from({ length: 48 }, (_, i) => (i + 1) / 2);
  return lengths.find((each) => each >= beginsIn + AIMS_AT * diameterIn && each <= endsIn) ?? lengthIn;
}
