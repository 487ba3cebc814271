import { useMemo, useState } from 'react';
import { YoursChoice } from '../fields/choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { SHEET_PAPERS, type PaperName } from './page-format.ts';
import { choosePaper, usePaper } from './paper-choice.ts';
import { planSheet } from './plan-sheet.ts';
import { SheetPage } from './sheet-page.tsx';
import { usePageSize } from './use-page-size.ts';

/** The page for the building department, as it will be printed, with the few things that only it needs. */
export function SheetPlace() {
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
      <PrintRow unfinished={unfinished} />
      {unfinished !== null && <p className="print-refusal">{unfinished}</p>}
      {plan && evaluation && (
        <div className={unfinished === null ? 'sheet-desk' : 'sheet-desk unfinished'}>
          <SheetPage plan={plan} project={project} shelter={evaluation.shelter} system={system} />
        </div>
      )}
    </section>
  );
}

/** Why the sheet cannot be printed now; null when it can. */
function useUnfinished(): string | null {
  const entries = useWorkbench(({ drafts }) =>
    Object.values(drafts)
      .map((d) => d.name)
      .join(', '),
  );
  const stale = useWorkbench((state) => state.stale);
  const hasFigures = useWorkbench(({ evaluation }) => evaluation !== null);
  if (!hasFigures) return 'There are no figures yet: nothing to print.';
  if (entries !== '')
    return `Not for printing: these entries are not in the figures yet: ${entries}. Finish or drop them first.`;
  return stale ? 'Not for printing: the figures are from your last valid entry.' : null;
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

function PrintRow({ unfinished }: { readonly unfinished: string | null }) {
  const chosen = usePaper();
  const [refused, setRefused] = useState(false);
  const print = (): void => {
    setRefused(unfinished !== null);
    if (unfinished === null) window.print();
  };
  return (
    <div className="print-row">
      <fieldset className="units">
        <legend className="unseen">Paper</legend>
        {(Object.keys(SHEET_PAPERS) as PaperName[]).map((name) => (
          <label key={name} className={name === chosen ? 'chosen' : undefined}>
            <input
              type="radio"
              name="paper"
              className="unseen"
              checked={name === chosen}
              onChange={() => choosePaper(name)}
            />
            {SHEET_PAPERS[name].words}
          </label>
        ))}
      </fieldset>
      <button type="button" className="print" onClick={print}>
        Print the check sheet
      </button>
      <output className="marked">{refused && unfinished !== null ? 'Not printed.' : ''}</output>
    </div>
  );
}
