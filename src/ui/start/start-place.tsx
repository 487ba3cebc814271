import { useMemo } from 'react';
import { OFFICE_QUESTIONS, START_WORDS } from '../../data/words/start.ts';
import { GivenLine } from '../cord/pieces/given-line.tsx';
import { PrintedBlocks } from '../paper/printed-blocks.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { startBlocks } from './start-blocks.ts';
import '../styles/link-body.css';

/** What to ask and to mind before the work begins: a page to take along, and the fields for what was said. */
export function StartPlace() {
  const project = useOpenProject();
  const evaluation = useWorkbench((state) => state.evaluation);
  const system = useWorkbench((state) => state.system);
  const blocks = useMemo(
    () => (evaluation ? startBlocks(project, evaluation, system) : null),
    [project, evaluation, system],
  );
  return (
    <PrintedBlocks title={START_WORDS.title} printWords="Print this page" blocks={blocks}>
      <details className="screen-only">
        <summary>{START_WORDS.fill}</summary>
        <ul className="asked">
          {OFFICE_QUESTIONS.map(([path, words]) => (
            <GivenLine key={path} path={path} words={words} />
          ))}
        </ul>
      </details>
    </PrintedBlocks>
  );
}
