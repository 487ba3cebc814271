import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Evaluation } from '../../../src/engine/evaluation.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject, type Example } from '../../support/files.ts';

export interface Opened {
  readonly project: Project;
  readonly evaluation: Evaluation;
}

/** A sound project with its figures. */
export function figuresFor(project: Project): Opened {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return { project, evaluation: answer.evaluation };
}

export const openedExample = (name: Example): Opened => figuresFor(soundProject(exampleText(name)));
