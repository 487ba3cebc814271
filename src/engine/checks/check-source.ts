import { RULES } from '../../data/rules.ts';
import type { ClauseRef } from '../../data/sources.ts';
import type { CheckRow } from '../evaluation.ts';
import { isWorse, type Verdict } from '../check.ts';
import { put, stepsOf, type Step } from '../note.ts';
import { quantity } from '../units.ts';
import type { JudgedSections } from './judged-sections.ts';
import { isAsked, rowsOf, siteKey, verdictAt, type Asked, type CheckGroup } from './site-of-check.ts';

/** Rows, and the way back from a row to its steps; groups of unlike responses stand side by side behind it. */
export interface CheckSource {
  readonly rows: () => readonly CheckRow[];
  /**
   * Steps of a row in one combination, the governing one without; the last one is the ratio. Empty where a rule ends
   * before any number, null where this source has no such row or combination.
   */
  readonly explain: (key: string, combinationId?: string) => readonly Step[] | null;
  /** round members whose sections it judges; left out where it judges none */
  readonly sections?: readonly JudgedSections[];
}

/** A group as a source. The worst response of a combination tells its steps where several scenarios share it. */
export function checkSource<R extends Asked>(group: CheckGroup<R>): CheckSource {
  return {
    rows: () => rowsOf(group),
    explain: (key, combinationId) => {
      const site = group.sites.find((candidate) => siteKey(candidate) === key);
      if (!site) return null;
      const asked = group.responses.filter(
        (r) => (combinationId === undefined || r.combination.id === combinationId) && isAsked(site, r),
      );
      const judged = asked.map((response) => ({ response, verdict: verdictAt(site, response) }));
      const first = judged[0];
      if (!first) return null;
      const worst = judged.reduce((a, b) => (isWorse(b.verdict, a.verdict) ? b : a), first);
      const { value, steps } = stepsOf((note) => verdictAt(site, worst.response, note));
      return [...steps, ...ratioSteps(value, site.clause ?? RULES[site.ruleId].clause)];
    },
  };
}

/** Rows that no load decides. */
export function plainSource(rows: readonly CheckRow[]): CheckSource {
  return {
    rows: () => rows,
    explain: (key) => {
      const row = rows.find((candidate) => candidate.key === key);
      return row ? ratioSteps(row, row.clause) : null;
    },
  };
}

/** How a judged row ends: its demand over its capacity. */
function ratioSteps({ demand, capacity, ratio }: Verdict, clause: ClauseRef): readonly Step[] {
  if (!demand || !capacity || ratio === null) return [];
  return [
    {
      symbol: 'ratio',
      words: 'passes where it is at most 1',
      formula: 'demand / capacity',
      put: [
        put('demand', demand.value, demand.unit, 'what is asked'),
        put('capacity', capacity.value, capacity.unit, 'what may be asked'),
      ],
      result: quantity(ratio, '1'),
      clause,
    },
  ];
}
