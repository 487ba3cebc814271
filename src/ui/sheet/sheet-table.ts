import { SHEET_WORDS } from '../../data/words/sheet.ts';
import { CAPTION, CELL_AIR, NOTE, ROW_AIR, type Type } from './page-format.ts';
import { cutToFit, wrapToFit } from './fit-text.ts';
import { lineWidth } from './type-width.ts';

/**
 * A column as it is asked for. One with a share holds texts: it takes its part of what the others leave, and a text that
 * is too long is cut or takes more lines. One without holds figures and short words, which are never cut.
 */
export interface Column {
  readonly head: string;
  readonly share?: number;
  /** greatest number of lines of a text */
  readonly lines?: number;
  readonly align?: 'right';
  /** set in semibold */
  readonly strong?: boolean;
}
/** A row of plain texts, not fitted yet. `below` runs under it over the whole width of the table. */
export interface PlainRow {
  readonly cells: readonly string[];
  readonly below?: string;
  /** the check whose ratio the row prints */
  readonly checkKey?: string;
}
export interface PlainTable {
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly PlainRow[];
  /** said under the table of the rows that found no room */
  readonly further: (left: number) => string;
}

export interface FittedRow {
  readonly cells: readonly (readonly string[])[];
  readonly below: readonly string[];
  readonly checkKey: string | null;
}
/** A table whose every text fits its column. */
export interface FittedTable {
  readonly caption: string;
  /** of heads and cells */
  readonly type: Type;
  readonly columns: readonly (Column & { readonly width: number })[];
  readonly rows: readonly FittedRow[];
  readonly notes: readonly string[];
}

/** `4 more joints in the calculation.` */
export const leftOut = (left: number, one: string, of = ''): string =>
  `${left} more ${left === 1 ? one : `${one}s`}${of} ${SHEET_WORDS.inCalculation}`;

/** Greatest number of lines of what runs under a row. */
const MOST_BELOW = 4;

const rowHeight = (row: FittedRow, { line }: Type): number =>
  Math.max(1, ...row.cells.map((c) => c.length)) * line + row.below.length * NOTE.line + ROW_AIR;

/** Caption, heads, rows and notes. */
export const tableHeight = (table: FittedTable): number =>
  CAPTION.line +
  table.type.line +
  ROW_AIR +
  table.rows.reduce((sum, row) => sum + rowHeight(row, table.type), 0) +
  table.notes.length * NOTE.line;

/** The table with only the rows that are wanted, fitted to them; how many were left out is said under it. */
export type TableWith = (shows: (row: PlainRow, index: number) => boolean, notes?: readonly string[]) => FittedTable;

export function fitTable(table: PlainTable, width: number, type: Type): TableWith {
  return (shows, notes = []) => {
    const rows = table.rows.filter(shows);
    const columns = fitColumns(table.columns, rows, width, type.size);
    const left = table.rows.length - rows.length;
    return {
      caption: table.caption,
      type,
      columns,
      rows: rows.map((row) => ({
        cells: row.cells.map((text, i) => fitCell(text, columns[i]!, type.size)),
        below: row.below === undefined ? [] : wrapToFit(row.below, width - CELL_AIR, NOTE.size, MOST_BELOW),
        checkKey: row.checkKey ?? null,
      })),
      notes: [left > 0 ? table.further(left) : '', ...notes]
        .filter((note) => note !== '')
        .flatMap((note) => wrapToFit(note, width, NOTE.size, 3)),
    };
  };
}

/** Between a column of figures and the next one. */
const FIGURE_AIR = 4;

const cutOf = (column: Column) => (column.strong ? 'caption' : 'narrow');

function fitColumns(
  columns: readonly Column[],
  rows: readonly PlainRow[],
  width: number,
  size: number,
): FittedTable['columns'] {
  const needed = columns.map((column, i) =>
    column.share === undefined
      ? Math.max(
          lineWidth(column.head, size),
          ...rows.map(({ cells }) => lineWidth(cells[i] ?? '', size, cutOf(column))),
        ) +
        CELL_AIR +
        FIGURE_AIR
      : 0,
  );
  const left = width - needed.reduce((sum, n) => sum + n, 0);
  const shares = columns.reduce((sum, { share = 0 }) => sum + share, 0);
  return columns.map((column, i) => {
    const own = needed[i]! + (left * (column.share ?? 0)) / shares;
    return { ...column, width: own, head: cutToFit(column.head, own - CELL_AIR, size) };
  });
}

function fitCell(text: string, column: FittedTable['columns'][number], size: number): readonly string[] {
  const room = column.width - CELL_AIR;
  return (column.lines ?? 1) === 1
    ? [cutToFit(text, room, size, cutOf(column))]
    : wrapToFit(text, room, size, column.lines ?? 1);
}
