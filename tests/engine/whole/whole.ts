import { evaluate } from '../../../src/engine/evaluate.ts';
import type { CheckRow, Evaluation } from '../../../src/engine/evaluation.ts';
import type { Project } from '../../../src/engine/project/model.ts';

/** The evaluation of a project that must be placeable. @throws Error  with its faults if it is not */
export function evaluated(project: Project): Evaluation {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
}

export const rowOf = (evaluation: Evaluation, key: string): CheckRow => {
  const row = evaluation.checks.find((c) => c.key === key);
  if (!row) throw new Error(`no row ${key}`);
  return row;
};

/** How far a value is off, as a share of what is expected. */
export const off = (value: number, expected: number): number => Math.abs(value / expected - 1);

/** Few runs on every commit, many with LONG=1. */
export const runs = (few: number, many: number): number => (process.env['LONG'] ? many : few);

/** A property over whole shelters takes its time on a busy machine [ms]. */
export const PATIENCE_MS = runs(60_000, 1_800_000);
