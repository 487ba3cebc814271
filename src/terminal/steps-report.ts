import { RULES } from '../data/rules.ts';
import { say } from '../data/words/say.ts';
import type { CheckRow } from '../engine/evaluation.ts';
import type { Put, Step } from '../engine/note.ts';
import { columns } from './columns.ts';
import { amount, clauseText, ratioText } from './figures.ts';

/** The steps of one check, one under the other; what a number comes from stands below it, farther in. */
export function stepsReport(row: CheckRow, steps: readonly Step[], combinationId: string | undefined): string {
  const asked = combinationId ?? row.combinationId;
  return [
    `${row.key}: ${RULES[row.ruleId].words}, ${clauseText(row.clause)}`,
    ...(asked === '' ? [] : [`in combination ${asked}${combinationId === undefined ? `, ${row.scenario}` : ''}`]),
    `ratio ${ratioText(combinationId === undefined ? row.ratio : ratioIn(row, combinationId))}`,
    ...(row.reason ? [say(row.reason)] : []),
    ...(steps.length === 0 ? ['No number is computed for this row.'] : steps.flatMap((s) => ['', ...stepLines(s, 0)])),
  ].join('\n');
}

/** Worst ratio of a row in one combination, over the scenarios that were judged; null where it asked nothing. */
function ratioIn({ ratios }: CheckRow, combinationId: string): number | null {
  const values = ratios.labels.flatMap((label, i) => {
    const value = ratios.values[i];
    return label.startsWith(`${combinationId}|`) && value !== undefined && Number.isFinite(value) ? [value] : [];
  });
  return values.length > 0 ? Math.max(...values) : null;
}

function stepLines(step: Step, depth: number): readonly string[] {
  const margin = '    '.repeat(depth);
  const heads = columns(step.put.map((p) => [`${margin}    ${p.symbol}`, `= ${amount(p)}`, p.words]));
  return [
    `${margin}${step.symbol} = ${step.formula}`,
    `${margin}  ${step.words}`,
    ...step.put.flatMap((p: Put, i) => [heads[i]!, ...(p.from ?? []).flatMap((s) => stepLines(s, depth + 2))]),
    `${margin}  = ${amount(step.result)}    ${clauseText(step.clause)}`,
  ];
}
