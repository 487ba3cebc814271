import { useEffect, useRef } from 'react';
import type { SheetPaper } from '../sheet/page-format.ts';
import { BlockView } from './block-view.tsx';
import type { Block } from './blocks.ts';
import { bodyWidthOn } from './page-room.ts';
import type { BlockHeight } from './paginate.ts';

interface GaugeProps {
  readonly blocks: readonly Block[];
  readonly paper: SheetPaper;
  readonly onMeasured: (heights: readonly BlockHeight[]) => void;
}

const NO_PAGES = new Map<string, number>();

/** Every block once, as wide as on paper and out of sight, so that its height can be read off. */
export function Gauge({ blocks, paper, onMeasured }: GaugeProps) {
  const column = useRef<HTMLDivElement>(null);
  useEffect(() => {
    let isWanted = true;
    void fontsOfPaper().then(() => {
      if (isWanted && column.current) onMeasured(heightsIn(column.current, blocks));
    });
    return () => {
      isWanted = false;
    };
  }, [blocks, onMeasured]);
  return (
    <div className="paper-gauge" aria-hidden="true">
      <div ref={column} className="on-paper" style={{ width: `${bodyWidthOn(paper)}pt` }}>
        {blocks.map((block, i) => (
          <div key={i} className="gauged">
            <BlockView
              block={block}
              from={0}
              to={block.kind === 'table' ? block.rows.length : 1}
              pages={NO_PAGES}
              isCopy
            />
          </div>
        ))}
      </div>
    </div>
  );
}

/** A block measured before its type is there would come out otherwise on paper. */
const fontsOfPaper = (): Promise<unknown> =>
  Promise.all(
    ['400 8pt "IBM Plex Sans Condensed"', '600 8pt "IBM Plex Sans Condensed"', '600 13pt "IBM Plex Sans"'].map((font) =>
      document.fonts.load(font).catch(() => undefined),
    ),
  );

const heightOf = (element: Element | null): number => element?.getBoundingClientRect().height ?? 0;

function heightsIn(column: HTMLElement, blocks: readonly Block[]): readonly BlockHeight[] {
  return [...column.children].map((holder, i): BlockHeight => {
    const block = blocks[i]!;
    if (block.kind !== 'table') {
      return {
        kind: block.kind,
        height: heightOf(holder),
        leads: block.kind === 'text' && block.leads === true,
      };
    }
    const label = heightOf(holder.querySelector('caption'));
    const rows = [...holder.querySelectorAll('tbody > tr')].map(heightOf);
    // what is neither label nor row: the heads, and the air around a table
    const head = heightOf(holder) - label - rows.reduce((sum, height) => sum + height, 0);
    return { kind: 'table', label, head, rows };
  });
}
