import { RULES } from '../../data/rules.ts';
import type { Status } from '../../engine/check.ts';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { showRatio } from '../units/show-quantity.ts';

const STATUS_WORDS: Readonly<Record<Status, string>> = {
  pass: 'passes',
  fail: 'fails',
  notGiven: 'not given',
  outside: 'outside the method',
};

/** Every check of the open shelter in the order of the load path, with its word and its ratio. */
export function FramePlace() {
  const project = useOpenProject();
  const evaluation = useWorkbench((state) => state.evaluation);
  const stale = useWorkbench((state) => state.stale);
  return (
    <section className="coming" aria-labelledby="frame-title">
      <h2 id="frame-title">Checks of {project.title.name}</h2>
      {stale && <p className="quiet">from your last valid entry</p>}
      <ul>
        {evaluation?.checks.map(({ key, ruleId, memberId, status, ratio }) => (
          <li key={key}>
            {memberId}: {RULES[ruleId].words} {STATUS_WORDS[status]} {ratio !== null && showRatio(ratio)}
          </li>
        ))}
      </ul>
    </section>
  );
}
