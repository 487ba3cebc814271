import type { SheetPaper } from '../sheet/page-format.ts';

/** Clear paper around the text of the calculation, and the line at its foot [pt]; the style sheet sets the same. */
const SIDE = 36;
const ABOVE = 32;
const BELOW = 28;
const FOOT = 14;
/** Kept free on every page: a printer's rounding of lines must not push the foot off the paper. */
const SPARE = 10;
/** Points of paper in a pixel of the screen. */
const POINTS_PER_PIXEL = 0.75;

export const bodyWidthOn = (paper: SheetPaper): number => paper.widthPt - 2 * SIDE;

/** Height that blocks may fill on a page [px]. */
export const bodyHeightOn = (paper: SheetPaper): number =>
  (paper.heightPt - 1 - ABOVE - BELOW - FOOT - SPARE) / POINTS_PER_PIXEL;
