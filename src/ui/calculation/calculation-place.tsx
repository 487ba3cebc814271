import { useMemo } from 'react';
import { CALCULATION_WORDS } from '../../data/words/calculation.ts';
import { fillIn } from '../../data/words/fill-in.ts';
import { PrintedBlocks } from '../paper/printed-blocks.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { composeCalculation } from './compose.ts';
import { useTold } from './use-told.ts';

/** What stands behind the sheet, page by page, as it will be printed. */
export function CalculationPlace() {
  const project = useOpenProject();
  const evaluation = useWorkbench((state) => state.evaluation);
  const system = useWorkbench((state) => state.system);
  const { told, progress } = useTold(project, evaluation);
  const blocks = useMemo(
    () => (evaluation && told ? composeCalculation(project, evaluation, told, system) : null),
    [project, evaluation, told, system],
  );
  return (
    <PrintedBlocks
      title={CALCULATION_WORDS.title}
      printWords="Print the calculation"
      blocks={blocks}
      waiting={progress && fillIn(CALCULATION_WORDS.telling, { done: progress.done, of: progress.of })}
    />
  );
}
