import { useDeferredValue, useMemo, useState } from 'react';
import { BASIS_PHRASES } from '../../data/words/sheet.ts';
import { explainStrengthRatio } from '../../engine/explain.ts';
import type { Log } from '../../engine/project/model.ts';
import { StepList } from '../cord/steps.tsx';
import { say, useWorkbench } from '../state/use-workbench.ts';

/** What the log is worth: how far its values can be trusted, what holds it back, its strength ratio with the steps. */
export function Worth({ log }: { readonly log: Log }) {
  const wood = useWorkbench(({ project }) => project?.woods.find(({ id }) => id === log.woodId));
  const report = useWorkbench(({ evaluation }) => evaluation?.logs.find(({ logId }) => logId === log.id));
  const [isOpen, setOpen] = useState(false);
  const settled = useDeferredValue(log);
  const steps = useMemo(() => (isOpen ? explainStrengthRatio(settled) : null), [isOpen, settled]);
  if (!wood) return null;
  const ratio = report?.values?.strengthRatioBending ?? null;
  return (
    <>
      <p>
        {wood.species}; values {BASIS_PHRASES[wood.basis.kind]}. Not stamped unless a stamp is typed.{' '}
        {report?.heldBackBy && say(report.heldBackBy)}{' '}
        {report?.reason && <span className="marked">{say(report.reason)}</span>}
      </p>
      {ratio !== null && (
        <p>
          Strength ratio in bending{' '}
          <button type="button" className="opens" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            {ratio.toFixed(2)}
            <span className="unseen">, its steps</span>
          </button>{' '}
          of clear wood.
        </p>
      )}
      {steps && <StepList steps={steps.bending} label="Steps of the strength ratio" />}
    </>
  );
}
