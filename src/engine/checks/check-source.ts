import type { CheckRow } from '../evaluation.ts';
import { isWorse } from '../check.ts';
import { stepsOf, type Step } from '../note.ts';
import { rowsOf, siteKey, verdictAt, type CheckGroup } from './site-of-check.ts';

/** Rows, and the way back from a row to its steps; groups of unlike responses stand side by side behind it. */
export interface CheckSource {
  readonly rows: () => readonly CheckRow[];
  /**
   * Steps of a row in one combination, the governing one without; empty where a rule ends before any number,
   * null where this source has no such row or combination.
   */
  readonly explain: (key: string, combinationId?: string) => readonly Step[] | null;
}

/** A group as a source. The worst response of a combination tells its steps where several scenarios share it. */
export function checkSource<R>(group: CheckGroup<R>): CheckSource {
  return {
    rows: () => rowsOf(group),
    explain: (key, combinationId) => {
      const site = group.sites.find((candidate) => siteKey(candidate) === key);
      if (!site) return null;
      const asked = group.responses.filter(
        (r) =>
          (combinationId === undefined || group.name(r).combinationId === combinationId) &&
          (site.applies === undefined || site.applies(r)),
      );
      const judged = asked.map((response) => ({ response, verdict: verdictAt(site, response) }));
      const first = judged[0];
      if (!first) return null;
      const worst = judged.reduce((a, b) => (isWorse(b.verdict, a.verdict) ? b : a), first);
      return stepsOf((note) => verdictAt(site, worst.response, note)).steps;
    },
  };
}

/** Rows that no load decides. */
export function plainSource(rows: readonly CheckRow[]): CheckSource {
  return { rows: () => rows, explain: (key) => (rows.some((row) => row.key === key) ? [] : null) };
}
