import { useCallback, useState } from 'react';
import type { SheetPaper } from '../sheet/page-format.ts';
import type { Block } from './blocks.ts';
import { bodyHeightOn } from './page-room.ts';
import { paginate, type BlockHeight, type Page } from './paginate.ts';

interface PagesSet {
  readonly blocks: readonly Block[];
  readonly paper: SheetPaper;
  readonly pages: readonly Page[];
}

/** The pages of these blocks on this paper; null until they are measured by a gauge, which tells what it found. */
export function usePages(blocks: readonly Block[] | null, paper: SheetPaper) {
  const [set, setSet] = useState<PagesSet | null>(null);
  const onMeasured = useCallback(
    (heights: readonly BlockHeight[]) => {
      if (blocks) setSet({ blocks, paper, pages: paginate(heights, bodyHeightOn(paper)) });
    },
    [blocks, paper],
  );
  return { pages: set?.blocks === blocks && set?.paper === paper ? set.pages : null, onMeasured };
}
