import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Evaluation } from '../../../src/engine/evaluation.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';

export const demo = (): Project => soundProject(exampleText('firewood-shed'));

/** The engine's figures in Node, for what a screen shows. */
export function figuresOf(project: Project): Evaluation {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
}

/** Rounded up to hundredths, independently of the program: the least of them that is not below the ratio. */
export function roundedUp(ratio: number | null): string {
  if (ratio === null) return '';
  let hundredths = Math.floor(ratio * 100) - 1;
  while (hundredths / 100 < ratio) hundredths++;
  return (hundredths / 100).toFixed(2);
}

/** By key: each ratio as it must read. */
export const ratiosToShow = ({ checks }: Pick<Evaluation, 'checks'>): ReadonlyMap<string, string> =>
  new Map(checks.map(({ key, ratio }) => [key, roundedUp(ratio)]));

export const countsToShow = ({ checks, counts }: Evaluation): string =>
  `${checks.length} checks: ${counts.pass} pass, ${counts.fail} fail, ${counts.notGiven} not given, ` +
  `${counts.outside} outside the method.`;
