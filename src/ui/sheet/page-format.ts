/** The two papers of the sheet and its measures, all in points. The planner reckons with them, the style sheet sets them. */
export interface SheetPaper {
  readonly words: string;
  readonly widthPt: number;
  readonly heightPt: number;
  /** size of the page as style sheets name it */
  readonly pageSize: string;
}
export type PaperName = 'letter' | 'a4';

export const SHEET_PAPERS: Readonly<Record<PaperName, SheetPaper>> = {
  letter: { words: 'Letter', widthPt: 612, heightPt: 792, pageSize: 'letter' },
  a4: { words: 'A4', widthPt: 595.27, heightPt: 841.89, pageSize: 'A4' },
};

/** Clear paper on all sides: more than the edge that office printers cannot reach. */
const MARGIN = 24;
/** Between the blocks of the page, and between two that stand side by side. */
export const GAP = 5;
export const BESIDE = 12;

/** Type and the line it stands on. Nothing on the page is smaller than `NOTE`. */
export interface Type {
  readonly size: number;
  readonly line: number;
}
export const TITLE: Type = { size: 13, line: 16 };
export const BODY: Type = { size: 8, line: 9 };
export const NOTE: Type = { size: 7, line: 7.9 };
/** A table's or a paragraph's heading with the rule under it. */
export const CAPTION: Type = { size: 8.5, line: 11.5 };
/** What a table row takes beyond its lines: the hairline under it and the air above. */
export const ROW_AIR = 1.2;
/** Clear paper at the right of every cell. */
export const CELL_AIR = 4;

/** Room inside the margins. One point is kept free, so that no rounding of a printer's starts a second page. */
export const roomOn = (paper: SheetPaper): { readonly width: number; readonly height: number } => ({
  width: paper.widthPt - 2 * MARGIN,
  height: paper.heightPt - 2 * MARGIN - 1,
});
