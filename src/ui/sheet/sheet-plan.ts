import type { SheetPaper } from './page-format.ts';
import type { FittedTable } from './sheet-table.ts';

/** A heading with lines of text under it. */
export interface TextBlock {
  readonly caption: string;
  readonly lines: readonly string[];
}

export interface DrawingOnSheet {
  readonly view: 'front' | 'section' | 'plan';
  /** of a front view */
  readonly lineId: string;
  readonly caption: string;
  readonly width: number;
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
  readonly sideways: TextBlock;
  readonly notCovered: TextBlock;
  readonly logs: FittedTable;
  readonly checks: FittedTable;
  readonly joints: FittedTable;
  readonly footWidths: readonly [number, number];
  readonly assumed: TextBlock;
  readonly cautions: TextBlock;
  readonly footer: readonly [string, string, string];
  readonly height: number;
}

/** How much of each part is shown: rows, lines, points of height. */
export interface Amounts {
  readonly complaints: number;
  readonly checks: number;
  readonly joints: number;
  readonly logs: number;
  readonly posts: number;
  readonly assumed: number;
  readonly drawing: number;
}
