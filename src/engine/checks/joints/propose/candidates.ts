import { BOLTS, CUT_WASHERS } from '../../../../data/fasteners/bolts.ts';
import { LAG_SCREWS, LAG_THREADS } from '../../../../data/fasteners/lag-screws.ts';
import { WOOD_SCREWS } from '../../../../data/fasteners/wood-screws.ts';
import type { FastenerRow } from '../../../project/model.ts';
import { stretchIn } from '../../fasteners/round-geometry.ts';
import { angleToGrainDeg } from '../../fasteners/round-geometry.ts';
import { leastFlat } from '../../fasteners/washer-bearing.ts';
import { widerByIn } from '../fastened/plate-seat.ts';
import type { JointPiece, JointSetting } from '../joint-setting.ts';

/** Lengths of wood screws as they are commonly sold, and spacings of sheet screws [in]; common practice. */
const SCREW_LENGTHS_IN = [1, 1.25, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6];
const SHEET_SPACINGS_IN = [24, 18, 12, 9, 6, 4, 3];
/** Lag screws and bolts thinner than this are toys at a log, thicker ones no hand drives [in]; own choice. */
const LAGS_IN = { from: 0.25, to: 0.75 };
const STRAP_SHANKS_IN = { from: 0.5, to: 0.75 };
const MOST_OF_A_KIND = 4;
/** Washers of wood screws [in]; common practice. */
const SCREW_WASHER_IN = 0.5;
/** Straps of flat bar [in]; common practice. */
const BARS = [
  { thicknessIn: 0.1875, widthIn: 2 },
  { thicknessIn: 0.25, widthIn: 3 },
] as const;
/** Diameters from one to the next, and to the end, that lose nothing. @source NDS Tables 12.5.1A, B */
const FULL = { spacing: 4, end: 7 } as const;
const DRIFT_PIN_DEPTH = 8;
/** Flats are cut to this [in]; common practice. */
const FLAT_STEP_IN = 1 / 16;

/** A flat shallower than this is none [in]. */
const NO_FLAT_IN = 1e-6;

const within = (sizeIn: number, { from, to }: { readonly from: number; readonly to: number }): boolean =>
  sizeIn >= from - 1e-9 && sizeIn <= to + 1e-9;

const upTo = (lengthIn: number, stepIn: number): number => Math.ceil(lengthIn / stepIn - 1e-9) * stepIn;

const base = { rows: 1, spacingIn: null, endIn: null, acts: 'both', driven: 'wet' } as const;

/** Rows of a size in every count, as far apart as loses nothing. */
const inCounts = (row: FastenerRow, most = MOST_OF_A_KIND): readonly FastenerRow[] =>
  Array.from({ length: most }, (_, i) => ({
    ...row,
    count: i + 1,
    spacingIn: i === 0 ? null : upTo(FULL.spacing * row.diameterIn, 0.25),
  }));

/** Rows that may go straight through both pieces of a joint: wood screws and lag screws. */
export function drivenRows(setting: JointSetting): readonly FastenerRow[] {
  const screws = WOOD_SCREWS.rows.flatMap(({ nominalIn }) =>
    SCREW_LENGTHS_IN.flatMap((lengthIn) =>
      inCounts({ ...base, fastener: 'screw', diameterIn: nominalIn, lengthIn, count: 1, washerIn: SCREW_WASHER_IN }),
    ),
  );
  const lags = LAG_SCREWS.rows
    .filter(({ nominalIn }) => within(nominalIn, LAGS_IN))
    .flatMap(({ nominalIn }) =>
      LAG_THREADS.rows.flatMap(({ lengthIn }) =>
        inCounts({
          ...base,
          fastener: 'lag',
          diameterIn: nominalIn,
          lengthIn,
          count: 1,
          ...washerOn(setting, nominalIn),
        }),
      ),
    );
  return [...screws, ...lags];
}

/** A washer of the size, where one is listed, on a flat that it lies on whole. */
function washerOn({ upper: { shape }, line }: JointSetting, nominalIn: number): Partial<FastenerRow> {
  const washer = CUT_WASHERS.rows.find((w) => Math.abs(w.nominalIn - nominalIn) < 1e-6);
  const head = LAG_SCREWS.rows.find((s) => Math.abs(s.nominalIn - nominalIn) < 1e-6);
  const outsideIn = washer?.outsideIn ?? head?.headIn ?? nominalIn;
  if (!shape || !line) return { washerIn: outsideIn };
  const leastIn = leastFlat(outsideIn, shape.diameterIn, angleToGrainDeg(shape, line));
  if (leastIn === Infinity || leastIn < NO_FLAT_IN) return { washerIn: outsideIn };
  return { washerIn: outsideIn, headFlatIn: upTo(leastIn, 1 / 16) };
}

/** Screws of a sheet of known thickness, from the widest spacing. */
export const sheetRows = (sheet: NonNullable<FastenerRow['plate']>): readonly FastenerRow[] =>
  WOOD_SCREWS.rows.flatMap(({ nominalIn }) =>
    SCREW_LENGTHS_IN.flatMap((lengthIn) =>
      SHEET_SPACINGS_IN.map((spacingIn): FastenerRow => ({
        ...base,
        fastener: 'screw',
        diameterIn: nominalIn,
        lengthIn,
        count: 1,
        spacingIn,
        washerIn: SCREW_WASHER_IN,
        plate: sheet,
      })),
    ),
  );

/** Straps of flat bar on both sides: lag screws into each piece, or bolts through it; flats make the wider piece as wide. */
export function strapRows(setting: JointSetting): readonly FastenerRow[] {
  const { upper, lower } = setting;
  const flatIn = Math.round(widerByIn(setting) / FLAT_STEP_IN) * FLAT_STEP_IN;
  const flats = flatIn > 0 ? { headFlatIn: flatIn } : {};
  return BARS.flatMap((bar) => {
    const plate = { ...bar, steel: 'plate', each: 2 } as const;
    const lags = LAG_SCREWS.rows
      .filter(({ nominalIn }) => within(nominalIn, STRAP_SHANKS_IN))
      .flatMap(({ nominalIn }) => {
        const endIn = upTo(FULL.end * nominalIn, 0.5);
        return LAG_THREADS.rows.flatMap(({ lengthIn }) =>
          inCounts({ ...base, fastener: 'lag', diameterIn: nominalIn, lengthIn, count: 1, endIn, plate, ...flats }),
        );
      });
    const bolts = BOLTS.rows
      .filter(({ nominalIn }) => within(nominalIn, STRAP_SHANKS_IN))
      .flatMap(({ nominalIn }) => {
        const through = Math.max(thickest(upper), thickest(lower)) - 2 * flatIn + 2 * bar.thicknessIn + 1.5 * nominalIn;
        const row = {
          ...base,
          fastener: 'bolt',
          diameterIn: nominalIn,
          lengthIn: upTo(through, 0.5),
          count: 1,
        } as const;
        return inCounts({ ...row, endIn: upTo(FULL.end * nominalIn, 0.5), plate, ...flats });
      });
    return [...lags, ...bolts];
  });
}

const thickest = ({ stick, shape }: JointPiece): number =>
  stick?.kind === 'sawn' ? Math.max(stick.breadthIn, stick.depthIn) : (shape?.diameterIn ?? 0);

/** A pin down the middle of both pieces, which holds sideways only. */
export function pinRows({ upper, line }: JointSetting): readonly FastenerRow[] {
  const inUpper = upper.shape && line ? stretchIn(upper.shape, line) : null;
  if (!inUpper) return [];
  return BOLTS.rows
    .filter(({ nominalIn }) => within(nominalIn, STRAP_SHANKS_IN))
    .map(({ nominalIn }): FastenerRow => ({
      ...base,
      fastener: 'driftPin',
      diameterIn: nominalIn,
      lengthIn: upTo(inUpper.toIn - inUpper.fromIn + DRIFT_PIN_DEPTH * nominalIn, 1),
      count: 1,
      acts: 'lateral',
    }));
}
