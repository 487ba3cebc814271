import type { ReactNode } from 'react';
import { PAPER_WORDS } from '../../data/words/calculation.ts';
import { SHEET_PAPERS } from '../sheet/page-format.ts';
import { usePaper } from '../sheet/paper-choice.ts';
import { PrintRow } from '../sheet/print-row.tsx';
import { usePageSize } from '../sheet/use-page-size.ts';
import { useUnfinished } from '../sheet/use-unfinished.ts';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import type { Block } from './blocks.ts';
import { Gauge } from './gauge.tsx';
import { PaperPages } from './paper-pages.tsx';
import { usePages } from './use-pages.ts';
import '../styles/sheet-font.css';
import './paper.css';

interface PrintedBlocksProps {
  readonly title: string;
  readonly printWords: string;
  /** null while they are not there yet */
  readonly blocks: readonly Block[] | null;
  /** how far that is */
  readonly waiting?: string | null;
  /** stands above the pages, on the screen alone */
  readonly children?: ReactNode;
}

/** Blocks on pages of the chosen paper, with the row that prints them. Nothing stale and nothing half told is printed. */
export function PrintedBlocks({ title, printWords, blocks, waiting, children }: PrintedBlocksProps) {
  const project = useOpenProject();
  const evaluation = useWorkbench((state) => state.evaluation);
  const unfinished = useUnfinished();
  const paper = SHEET_PAPERS[usePaper()];
  usePageSize(paper.pageSize);
  const { pages, onMeasured } = usePages(blocks, paper);
  return (
    <section className="sheet-place" aria-label={title}>
      <PrintRow words={printWords} unfinished={unfinished ?? (pages === null ? PAPER_WORDS.notYet : null)} />
      {children}
      {pages === null && (
        <output className="waiting">{blocks === null && waiting ? waiting : PAPER_WORDS.setting}</output>
      )}
      {blocks && pages === null && <Gauge blocks={blocks} paper={paper} onMeasured={onMeasured} />}
      {blocks && pages && evaluation && (
        <div className={unfinished === null ? 'sheet-desk' : 'sheet-desk unfinished'}>
          <PaperPages
            title={title}
            project={project}
            evaluation={evaluation}
            blocks={blocks}
            pages={pages}
            paper={paper}
          />
        </div>
      )}
    </section>
  );
}
