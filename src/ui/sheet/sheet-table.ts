import { BODY, CAPTION, CELL_AIR, NOTE, ROW_AIR } from './page-format.ts';
import { cutToFit, wrapToFit } from './fit-text.ts';
import { lineWidth } from './type-width.ts';

/**
 * A column as it is asked for: its share of the table's width and how many lines a cell may take. Figures (to the right)
 * and the words of a status (strong) are never cut: their column grows at the cost of the texts.
 */
export interface Column {
  readonly head: string;
  readonly share: number;
  readonly align?: 'right';
  readonly lines?: number;
  /** never cut, like a figure */
  readonly whole?: boolean;
  /** set in semibold; never cut */
  readonly strong?: boolean;
}
/** A row of plain texts, not fitted yet. `below` is a second line over the whole width of the table. */
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
  readonly below: string | null;
  readonly checkKey: string | null;
}
/** A table whose every text fits its column. */
export interface FittedTable {
  readonly caption: string;
  readonly columns: readonly (Column & { readonly width: number })[];
  readonly rows: readonly FittedRow[];
  readonly notes: readonly string[];
}

const rowHeight = (row: FittedRow): number =>
  Math.max(1, ...row.cells.map((c) => c.length)) * BODY.line + (row.below === null ? 0 : NOTE.line) + ROW_AIR;

/** Caption, heads, rows and notes. */
export const tableHeight = (table: FittedTable): number =>
  CAPTION.line +
  BODY.line +
  ROW_AIR +
  table.rows.reduce((sum, row) => sum + rowHeight(row), 0) +
  table.notes.length * NOTE.line;

/** A fitted table with only the rows that are wanted; how many were left out is said under it. */
export type TableWith = (shows: (row: FittedRow, index: number) => boolean, notes?: readonly string[]) => FittedTable;

/** Every text is fitted to its column once; which rows are shown is decided later. */
export function fitTable(table: PlainTable, width: number): TableWith {
  const columns = fitColumns(table, width);
  const rows = table.rows.map((row): FittedRow => ({
    cells: row.cells.map((text, i) => fitCell(text, columns[i]!)),
    below: row.below === undefined ? null : cutToFit(row.below, width - CELL_AIR, NOTE.size),
    checkKey: row.checkKey ?? null,
  }));
  return (shows, notes = []) => {
    const shown = rows.filter(shows);
    const further = shown.length < rows.length ? table.further(rows.length - shown.length) : '';
    return {
      caption: table.caption,
      columns,
      rows: shown,
      notes: [further, ...notes].filter((n) => n !== '').flatMap((note) => wrapToFit(note, width, NOTE.size, 3)),
    };
  };
}

const cutOf = (column: Column) => (column.strong ? 'caption' : 'narrow');
const isWhole = (column: Column): boolean =>
  column.align === 'right' || column.strong === true || column.whole === true;

function fitColumns({ columns, rows }: PlainTable, width: number): FittedTable['columns'] {
  const shares = columns.reduce((sum, c) => sum + c.share, 0);
  const wanted = columns.map((column, i) => {
    const share = (column.share / shares) * width;
    if (!isWhole(column)) return share;
    const widest = Math.max(
      lineWidth(column.head, BODY.size),
      ...rows.map(({ cells }) => lineWidth(cells[i] ?? '', BODY.size, cutOf(column))),
    );
    return Math.max(share, widest + CELL_AIR);
  });
  const texts = columns.reduce((sum, column, i) => (isWhole(column) ? sum : sum + wanted[i]!), 0);
  const left = texts - (wanted.reduce((sum, w) => sum + w, 0) - width);
  return columns.map((column, i) => ({ ...column, width: isWhole(column) ? wanted[i]! : (wanted[i]! * left) / texts }));
}

function fitCell(text: string, column: FittedTable['columns'][number]): readonly string[] {
  const room = column.width - CELL_AIR;
  return (column.lines ?? 1) === 1
    ? [cutToFit(text, room, BODY.size, cutOf(column))]
    : wrapToFit(text, room, BODY.size, column.lines ?? 1);
}
