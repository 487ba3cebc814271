import { useMemo } from 'react';
import { YoursChoice } from '../fields/choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { SHEET_PAPERS } from './page-format.ts';
import { usePaper } from './paper-choice.ts';
import { planSheet } from './plan-sheet.ts';
import { PrintRow } from './print-row.tsx';
import { SheetPage } from './sheet-page.tsx';
import { usePageSize } from './use-page-size.ts';
import { useUnfinished } from './use-unfinished.ts';

/** The page for the building department, as it will be printed, with the few things that only it needs. */
export function OneSheet() {
  const project = useOpenProject();
  const evaluation = useWorkbench((state) => state.evaluation);
  const system = useWorkbench((state) => state.system);
  const unfinished = useUnfinished();
  const paper = SHEET_PAPERS[usePaper()];
  usePageSize(paper.pageSize);
  const plan = useMemo(
    () => evaluation && planSheet(project, evaluation, paper, system),
    [project, evaluation, paper, system],
  );
  return (
    <section className="sheet-place" aria-label="Check sheet and its print">
      <TitleSentences />
      <PrintRow words="Print the check sheet" unfinished={unfinished} />
      {plan && evaluation && (
        <div className={unfinished === null ? 'sheet-desk' : 'sheet-desk unfinished'}>
          <SheetPage plan={plan} project={project} shelter={evaluation.shelter} system={system} />
        </div>
      )}
    </section>
  );
}

/** Asked here because only the sheet needs it. */
function TitleSentences() {
  return (
    <p className="sheet-sentences">
      For the parcel <Yours path="title.parcel" label="Parcel" kind="text" />, prepared by{' '}
      <Yours path="title.preparedBy" label="Prepared by" kind="text" />, revision{' '}
      <Yours path="title.revision.number" label="Revision number" kind="text" /> of{' '}
      <Yours path="title.revision.date" label="Date of the revision, year-month-day" kind="text" />. The building code
      adopted here is <Yours path="code.building.value" label="Building code adopted here" kind="text" />, as told by{' '}
      <YoursChoice path="code.building.givenBy" label="Who told which building code" choices={TOLD_BY} />.
    </p>
  );
}

const TOLD_BY = [
  { value: 'department', words: 'the building department' },
  { value: 'map', words: 'a map or list' },
  { value: 'owner', words: 'the owner' },
  { value: 'guess', words: 'nobody: a guess' },
] as const;
