import { Lines } from './lines.tsx';
import { NOTE } from './page-format.ts';
import type { FittedRow, FittedTable } from './sheet-table.ts';

/** A table whose columns are as wide as its texts were fitted to. */
export function SheetTable({ table, name }: { readonly table: FittedTable; readonly name: string }) {
  const { columns, rows, notes, type } = table;
  return (
    <div className={`block ${name}${type === NOTE ? ' dense' : ''}`}>
      <table>
        <caption>{table.caption}</caption>
        <colgroup>
          {columns.map(({ width }, i) => (
            <col key={i} style={{ width: `${width}pt` }} />
          ))}
        </colgroup>
        <thead>
          <tr>
            {columns.map(({ head, align }, i) => (
              <th key={i} scope="col" className={align}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <Row key={i} row={row} columns={columns} />
          ))}
        </tbody>
      </table>
      {notes.map((note, i) => (
        <p key={i} className="note line">
          {note}
        </p>
      ))}
    </div>
  );
}

function Row({ row, columns }: { readonly row: FittedRow; readonly columns: FittedTable['columns'] }) {
  return (
    <>
      <tr data-check={row.checkKey ?? undefined} className={row.below.length === 0 ? undefined : 'with-more'}>
        {row.cells.map((lines, i) => {
          const { head, align, strong } = columns[i]!;
          const text = <Lines lines={lines} />;
          return i === 0 ? (
            <th key={i} scope="row" className={align}>
              {text}
            </th>
          ) : (
            <td
              key={i}
              className={strong ? 'strong' : align}
              data-head={head}
              data-empty={lines.length === 0 || lines[0] === '' || undefined}
            >
              {text}
            </td>
          );
        })}
      </tr>
      {row.below.length > 0 && (
        <tr>
          <td colSpan={columns.length} className="below">
            <Lines lines={row.below} />
          </td>
        </tr>
      )}
    </>
  );
}
