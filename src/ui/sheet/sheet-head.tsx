import { NUMBER_WIDTH, ASKED_WIDTH } from './lay-out-page.ts';
import { Lines } from './lines.tsx';
import type { HeadOnSheet } from './sheet-plan.ts';

/** What this is, whether it passes, what stands in the way; beside it the title block. */
export function SheetHead({ head }: { readonly head: HeadOnSheet }) {
  return (
    <header className="sheet-head">
      <div style={{ width: `${head.width}pt` }}>
        <h2 className="sheet-title">
          <Lines lines={head.title} />
        </h2>
        <p className="verdict">
          <Lines lines={head.verdict} />
        </p>
        <ol className="complaints">
          {head.complaints.map((lines, i) => (
            <li key={i} style={{ paddingInlineStart: `${NUMBER_WIDTH}pt` }}>
              <span className="number">{i + 1}.</span>
              <Lines lines={lines} />
            </li>
          ))}
        </ol>
        {head.more !== null && <p className="more">{head.more}</p>}
      </div>
      <div style={{ width: `${head.blockWidth}pt` }}>
        <table className="title-block">
          <caption className="unseen">Title block</caption>
          <colgroup>
            <col style={{ width: `${ASKED_WIDTH}pt` }} />
            <col />
          </colgroup>
          <tbody>
            {head.block.map(({ asked, answer }) => (
              <tr key={asked}>
                <th scope="row">{asked}</th>
                <td>
                  <Lines lines={answer} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className="note">
          <Lines lines={head.prepared} />
        </p>
      </div>
    </header>
  );
}
