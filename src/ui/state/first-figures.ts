import type { CheckRow, EvaluateAnswer, Evaluation } from '../../engine/evaluation.ts';
import { fingerprint } from '../../engine/project/fingerprint.ts';
import type { Project } from '../../engine/project/model.ts';
import { DATA_VERSION, PROGRAM_VERSION } from '../../engine/versions.ts';

/** What the first view reads of an evaluation: everything but its long lists. */
export interface FirstFigures extends Omit<Evaluation, 'lines' | 'sections' | 'rows' | 'checks'> {
  readonly checks: readonly Omit<CheckRow, 'ratios'>[];
}

const NO_RATIOS: CheckRow['ratios'] = { labels: [], values: new Float64Array() };

/**
 * Figures that the engine made while the page was built, as an evaluation whose long lists are empty: for the project that
 * they were made of, by this program and its data; null for any other.
 */
export function preparedAnswer(text: string, project: Project): EvaluateAnswer | null {
  const { checks, ...rest }: FirstFigures = JSON.parse(text);
  const isOurs = rest.programVersion === PROGRAM_VERSION && rest.dataVersion === DATA_VERSION;
  if (!isOurs || rest.fingerprint !== fingerprint(project)) return null;
  const rows = checks.map((row) => ({ ...row, ratios: NO_RATIOS }));
  return { ok: true, evaluation: { ...rest, checks: rows, lines: [], sections: [], rows: [] } };
}
