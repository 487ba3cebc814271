import { angleToGrainDeg } from '../../engine/checks/fasteners/round-geometry.ts';
import { leastFlat } from '../../engine/checks/fasteners/washer-bearing.ts';
import { plateSeat, widerByIn } from '../../engine/checks/joints/fastened/plate-seat.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import { usualWasherIn } from './hardware-sizes.ts';

/** Depth of a flat before anybody types [in]; own choice. */
const FIRST_FLAT_IN = 0.5;
/** Flats for plates are cut to sixteenths [in]; own choice. */
const FLAT_STEP_IN = 1 / 16;

type Flats = Pick<FastenerRow, 'headFlatIn'>;

/** The flats of a row as they are. */
export const flatsOf = ({ headFlatIn }: FastenerRow): Flats => (headFlatIn === undefined ? {} : { headFlatIn });

/** Flats on both sides of the wider piece that let plates lie on both; none where the pieces are as wide, or too unlike. */
export function flatsFor(setting: JointSetting | null): Flats {
  const headFlatIn = setting ? plateFlatIn(setting) : 0;
  return setting && headFlatIn > 0 && plateSeat(setting, headFlatIn).ok ? { headFlatIn } : {};
}

const plateFlatIn = (setting: JointSetting): number => Math.round(widerByIn(setting) / FLAT_STEP_IN) * FLAT_STEP_IN;

/** Depth of a flat that is asked for before anybody types [in]. */
export const firstFlatIn = ({ plate }: FastenerRow, setting: JointSetting | null): number =>
  plate && setting ? plateFlatIn(setting) || FIRST_FLAT_IN : FIRST_FLAT_IN;

/** The washer of its size where one is listed, and the flat that it lies on whole; a head on a round piece has one too. */
export function underHead(row: FastenerRow, setting: JointSetting): Pick<FastenerRow, 'washerIn' | 'headFlatIn'> {
  const { fastener, diameterIn } = row;
  const washerIn = fastener === 'strap' ? null : usualWasherIn(fastener, diameterIn);
  // a pin has no head to lie on a flat
  const isRound = fastener !== 'driftPin' && setting.upper.stick?.kind === 'round';
  const flatIn = flatUnder(fastener, washerIn, setting) ?? (isRound ? FIRST_FLAT_IN : 0);
  return { ...(washerIn === null ? {} : { washerIn }), ...(flatIn > 0 ? { headFlatIn: flatIn } : {}) };
}

/** Depth of the flat that a washer lies on whole, by sixteenths; null where there is none, or the wood is not known [in]. */
function flatUnder(
  fastener: FastenerRow['fastener'],
  washerIn: number | null,
  { upper, lower, line }: JointSetting,
): number | null {
  if (washerIn === null || !line) return null;
  // the nut of a bolt lies on the other piece
  const pieces = fastener === 'bolt' ? [upper, lower] : [upper];
  const wantsIn = pieces.map(({ shape }) =>
    shape ? leastFlat(washerIn, shape.diameterIn, angleToGrainDeg(shape, line)) : Infinity,
  );
  return wantsIn.every(Number.isFinite) ? upToSixteenth(Math.max(...wantsIn)) : null;
}

/** The row with fasteners of another thickness: the washer of that size comes with them, on a flat deep enough for it. */
export function ofThickness(row: FastenerRow, diameterIn: number, setting: JointSetting | null): FastenerRow {
  const { fastener, plate } = row;
  const thick = { ...row, diameterIn };
  if (plate || fastener === 'strap') return thick;
  return underWasher(thick, usualWasherIn(fastener, diameterIn), setting);
}

/** The row with another washer, or none, on a flat that is no less deep than before and deep enough for it. */
export function underWasher(row: FastenerRow, washerIn: number | null, setting: JointSetting | null): FastenerRow {
  const { washerIn: _, headFlatIn: wasIn = 0, ...rest } = row;
  const flatIn = Math.max(wasIn, (setting && flatUnder(row.fastener, washerIn, setting)) ?? 0);
  return { ...rest, ...(washerIn === null ? {} : { washerIn }), ...(flatIn > 0 ? { headFlatIn: flatIn } : {}) };
}

/** A thousandth over a sixteenth is that sixteenth. */
const upToSixteenth = (depthIn: number): number => Math.ceil(depthIn * 16 - 1e-3) / 16;
