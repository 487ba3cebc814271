import type { Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import type { SheetPaper } from '../sheet/page-format.ts';
import { pageFoot } from '../sheet/page-foot.ts';
import { BlockView, type PageNumbers } from './block-view.tsx';
import type { Block } from './blocks.ts';
import { bodyWidthOn } from './page-room.ts';
import type { Page } from './paginate.ts';

interface PaperPagesProps {
  /** what the pages are, for those who hear them */
  readonly title: string;
  readonly project: Project;
  readonly evaluation: Evaluation;
  readonly blocks: readonly Block[];
  readonly pages: readonly Page[];
  readonly paper: SheetPaper;
}

/** The pages as they are printed, one below the other. What stands on each was measured; here it is only set. */
export function PaperPages({ title, project, evaluation, blocks, pages, paper }: PaperPagesProps) {
  const numbers = pageNumbers(blocks, pages);
  return (
    <article className="paper" aria-label={title}>
      {pages.map((page, i) => (
        <section
          key={i}
          className="paper-page on-paper"
          aria-label={`Page ${i + 1}`}
          // a point less than the paper: no rounding of a printer's starts another page
          style={{ width: `${paper.widthPt}pt`, height: `${paper.heightPt - 1}pt` }}
        >
          <div className="paper-body">
            {page.map(({ block, from, to }) => (
              <BlockView key={block} block={blocks[block]!} from={from} to={to} pages={numbers} />
            ))}
          </div>
          <footer className="paper-foot">
            {pageFoot(project, evaluation, bodyWidthOn(paper), { at: i + 1, of: pages.length }).map((words, part) => (
              <span key={part}>{words}</span>
            ))}
          </footer>
        </section>
      ))}
    </article>
  );
}

/** The page of every heading. */
const pageNumbers = (blocks: readonly Block[], pages: readonly Page[]): PageNumbers =>
  new Map(
    pages.flatMap((page, i) =>
      page.flatMap((piece): readonly (readonly [string, number])[] => {
        const block = blocks[piece.block];
        return block?.kind === 'heading' ? [[block.id, i + 1]] : [];
      }),
    ),
  );
