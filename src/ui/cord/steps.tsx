import { useMemo, useState } from 'react';
import { SOURCES } from '../../data/source-list.ts';
import type { ClauseRef } from '../../data/sources.ts';
import type { Put, Step } from '../../engine/note.ts';
import { useWorkbench } from '../state/use-workbench.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { formulaText, stepWords } from './step-words.ts';

/** A calculation line by line: formula, the numbers put in, the result, the clause. Numbers that were computed open further. */
export function StepList({ steps, label }: { readonly steps: readonly Step[]; readonly label: string }) {
  const system = useWorkbench((state) => state.system);
  const evaluation = useWorkbench((state) => state.evaluation);
  const inWords = useMemo(() => stepWords(evaluation), [evaluation]);
  return (
    <ol className="steps" aria-label={label}>
      {steps.map((step, i) => (
        <OneStep key={`${step.symbol}-${i}`} step={step} system={system} inWords={inWords} />
      ))}
    </ol>
  );
}

interface OneStepProps {
  readonly step: Step;
  readonly system: UnitSystem;
  readonly inWords: (words: string) => string;
}

function OneStep({ step, system, inWords }: OneStepProps) {
  const [open, setOpen] = useState<number | null>(null);
  const opened = open === null ? undefined : step.put[open];
  // a force that comes from the frame has no formula of its own: its value and where it comes from say it all
  const isTaken = step.formula === step.symbol && step.put.every(({ from }) => from === undefined);
  return (
    <li>
      <p className="step-words">{inWords(step.words)}</p>
      <p className="step-formula">
        <var>{step.symbol}</var> ={isTaken ? ' ' : ` ${formulaText(step.formula)} = `}
        <strong>{showQuantity(step.result, system)}</strong>
        {isTaken && <span className="quiet"> {step.put.map(({ words }) => inWords(words)).join(', ')}</span>}
      </p>
      {!isTaken && step.put.length > 0 && (
        <ul className="step-puts">
          {step.put.map((put, i) => (
            <li key={`${put.symbol}-${i}`}>
              <var>{put.symbol}</var>{' '}
              <PutValue put={put} system={system} isOpen={open === i} onOpen={() => setOpen(open === i ? null : i)} />{' '}
              <span className="quiet">{inWords(put.words)}</span>
            </li>
          ))}
        </ul>
      )}
      {opened?.from && <StepList steps={opened.from} label={`Steps of ${opened.words}`} />}
      <p className="step-clause">{clauseInWords(step.clause)}</p>
    </li>
  );
}

interface PutValueProps {
  readonly put: Put;
  readonly system: UnitSystem;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
}

function PutValue({ put, system, isOpen, onOpen }: PutValueProps) {
  const shown = showQuantity({ value: put.value, unit: put.unit }, system);
  if (!put.from) return <span>{shown}</span>;
  return (
    <button type="button" className="opens" aria-expanded={isOpen} onClick={onOpen}>
      {shown}
      <span className="unseen">, how it came about</span>
    </button>
  );
}

/** Source, edition and clause; a figure from memory says so. */
function clauseInWords({ source, clause, memory }: ClauseRef): string {
  const { title, edition } = SOURCES[source];
  const where = edition === '-' ? `${title}: ${clause}` : `${title}, ${edition}, ${clause}`;
  return memory === true ? `${where}. Figure not compared with the printed edition.` : where;
}
