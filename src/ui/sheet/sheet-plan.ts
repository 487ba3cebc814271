import type { LoadPicture } from '../../engine/load-pictures/picture.ts';
import type { SheetPaper } from './page-format.ts';
import type { FittedTable } from './sheet-table.ts';

/** A text with its heading run in: the first line begins behind it. */
export interface TextBlock {
  readonly caption: string;
  /** room of the heading [pt] */
  readonly indent: number;
  readonly lines: readonly string[];
}

export interface DrawingOnSheet {
  readonly view: 'front' | 'section' | 'plan';
  /** of a front view */
  readonly lineId: string;
  readonly caption: string;
  /** under the caption: what holds it that way, what its lengths are taken between */
  readonly says: readonly string[];
  readonly width: number;
}

/** One case of snow on the roof's section. */
export interface SnowOnSheet {
  readonly picture: LoadPicture;
  readonly caption: string;
  readonly title: string;
  readonly description: string;
}
/** Cases of snow beside one another, drawn to one scale. */
export interface SnowRow {
  readonly cases: readonly SnowOnSheet[];
  readonly width: number;
  readonly height: number;
}

export interface HeadOnSheet {
  readonly width: number;
  readonly title: readonly string[];
  readonly verdict: readonly string[];
  readonly complaints: readonly (readonly string[])[];
  readonly more: string | null;
  readonly blockWidth: number;
  readonly prepared: readonly string[];
  readonly block: readonly { readonly asked: string; readonly answer: readonly string[] }[];
}

/**
 * Everything that stands on the page, fitted: no text is wider than its place, and all of it is no higher than the page.
 * Lengths in points.
 */
export interface SheetPlan {
  readonly paper: SheetPaper;
  readonly head: HeadOnSheet;
  readonly drawingHeight: number;
  readonly drawings: readonly (readonly DrawingOnSheet[])[];
  readonly sideWidths: readonly [number, number];
  readonly site: FittedTable;
  readonly posts: FittedTable;
  readonly snow: SnowRow;
  /** texts under the posts, and those at the foot of the page */
  readonly sideTexts: readonly TextBlock[];
  readonly logs: FittedTable;
  readonly checks: FittedTable;
  readonly joints: FittedTable;
  readonly footWidths: readonly [number, number];
  readonly footTexts: readonly TextBlock[];
  readonly footer: readonly [string, string, string];
  readonly height: number;
}

/** How much of each part is shown: rows, lines, points of height. */
export interface Amounts {
  readonly complaints: number;
  readonly site: number;
  readonly checks: number;
  readonly joints: number;
  readonly logs: number;
  readonly posts: number;
  readonly assumed: number;
  readonly drawing: number;
}
