import type { CheckRow } from '../../engine/evaluation.ts';

/** Rows of one rule with one status: the worst of them stands for all, the others are one touch away. */
export interface Folded {
  readonly key: string;
  readonly worst: CheckRow;
  readonly others: readonly CheckRow[];
}

/** @param rows  worst first; the order of the answer */
export function foldAlike(rows: readonly CheckRow[]): readonly Folded[] {
  const sets = new Map<string, CheckRow[]>();
  for (const row of rows) {
    // what stops a row is part of what it says: another reason is another row
    const key = [row.ruleId, row.status, row.ratio === null ? (row.reason?.code ?? '') : ''].join('|');
    const set = sets.get(key);
    if (set) set.push(row);
    else sets.set(key, [row]);
  }
  return [...sets].flatMap(([key, [worst, ...others]]) => (worst ? [{ key, worst, others }] : []));
}
