import type { MouseEvent } from 'react';
import type { Block, Cell, Heading, Row, Table, Text } from './blocks.ts';

/** On which page each heading stands; empty while the pages are measured. */
export type PageNumbers = ReadonlyMap<string, number>;

interface BlockViewProps {
  readonly block: Block;
  /** rows of a table that stand here */
  readonly from: number;
  readonly to: number;
  readonly pages: PageNumbers;
  /** a copy that is only measured has no places to go to */
  readonly isCopy?: boolean;
}

/** A block, or the piece of a table that stands on this page. */
export function BlockView({ block, from, to, pages, isCopy = false }: BlockViewProps) {
  switch (block.kind) {
    case 'heading':
      return <HeadingView heading={block} isCopy={isCopy} />;
    case 'text':
      return <TextView block={block} />;
    case 'table':
      return <TableView table={block} from={from} to={to} pages={pages} isContinued={from > 0 || isCopy} />;
  }
}

const idOnPage = (id: string): string => `paper-${id}`;

function HeadingView({ heading, isCopy }: { readonly heading: Heading; readonly isCopy: boolean }) {
  const Level = `h${heading.level}` as const;
  return <Level id={isCopy ? undefined : idOnPage(heading.id)}>{heading.words}</Level>;
}

const TextView = ({ block }: { readonly block: Text }) => (
  <p className={block.tone} data-check={block.checkKey}>
    {block.words}
  </p>
);

interface TableViewProps {
  readonly table: Table;
  readonly from: number;
  readonly to: number;
  readonly pages: PageNumbers;
  readonly isContinued: boolean;
}

function TableView({ table, from, to, pages, isContinued }: TableViewProps) {
  const whole = table.columns.reduce((sum, { share }) => sum + share, 0);
  return (
    <table>
      <caption className={isContinued ? undefined : 'unseen'}>
        {table.label}
        {isContinued && ', continued'}
      </caption>
      <colgroup>
        {table.columns.map(({ head, share }) => (
          <col key={head} style={{ width: `${(share / whole) * 100}%` }} />
        ))}
      </colgroup>
      <thead>
        <tr>
          {table.columns.map(({ head, align }) => (
            <th key={head} scope="col" className={align}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {table.rows.slice(from, to).map((row, i) => (
          <RowView key={from + i} row={row} table={table} pages={pages} />
        ))}
      </tbody>
    </table>
  );
}

interface RowViewProps {
  readonly row: Row;
  readonly table: Table;
  readonly pages: PageNumbers;
}

function RowView({ row, table, pages }: RowViewProps) {
  return (
    <tr data-step={row.step} data-check={row.checkKey}>
      {row.cells.map((cell, i) => {
        const { head = '', align } = table.columns[i] ?? {};
        const lines = <Lines cell={cell} pages={pages} />;
        const isEmpty = cell.every((each) => each.text === '' && each.pageOf === undefined);
        return i === 0 && !isEmpty ? (
          <th key={head} scope="row" className={align}>
            {lines}
          </th>
        ) : (
          <td key={head} className={align} data-head={head} data-empty={isEmpty || undefined}>
            {lines}
          </td>
        );
      })}
    </tr>
  );
}

function Lines({ cell, pages }: { readonly cell: Cell; readonly pages: PageNumbers }) {
  return cell.map(({ text, tone, pageOf }, i) => (
    <span key={i} className={tone === undefined ? 'cell-line' : `cell-line ${tone}`}>
      {pageOf === undefined ? text : <PageOf id={pageOf} pages={pages} />}{' '}
    </span>
  ));
}

/** A page number that leads there; while pages are measured, as wide as the widest. */
function PageOf({ id, pages }: { readonly id: string; readonly pages: PageNumbers }) {
  const page = pages.get(id);
  return page === undefined ? (
    '000'
  ) : (
    <a href={`#${idOnPage(id)}`} onClick={goTo}>
      {page}
    </a>
  );
}

/** The address names the place of the workbench, so the way to a heading leaves it alone. */
function goTo(event: MouseEvent<HTMLAnchorElement>): void {
  event.preventDefault();
  const id = event.currentTarget.hash.slice(1);
  document.getElementById(decodeURIComponent(id))?.scrollIntoView();
}
