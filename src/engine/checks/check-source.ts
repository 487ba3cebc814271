import { RULES } from '../../data/rules.ts';
import type { ClauseRef } from '../../data/sources.ts';
import type { CheckRow } from '../evaluation.ts';
import { isWorse, type Verdict } from '../check.ts';
import { put, stepsOf, type Step } from '../note.ts';
import { quantity, type Unit } from '../units.ts';
import type { JudgedSections } from './judged-sections.ts';
import { isAsked, rowsOf, siteKey, verdictAt, type Asked, type CheckGroup, type CheckSite } from './site-of-check.ts';

/** Rows, and the way back from a row to its steps; groups of unlike responses stand side by side behind it. */
export interface CheckSource {
  readonly rows: () => readonly CheckRow[];
  /**
   * Steps of a row in one combination, the governing one without; the last one is the ratio. Empty where a rule ends
   * before any number, null where this source has no such row or combination.
   */
  readonly explain: (key: string, combinationId?: string) => readonly Step[] | null;
  /** what a row asks in each combination, whatever holds it; left out where no load decides, null without such a row */
  readonly asked?: (key: string) => AskedOf | null;
  /** round members whose sections it judges; left out where it judges none */
  readonly sections?: readonly JudgedSections[];
}

/** The greatest demand of a row in each combination, of all its scenarios. */
export interface AskedOf {
  readonly unit: Unit;
  readonly combinations: readonly {
    readonly id: string;
    readonly durationFactor: number;
    readonly demand: number;
  }[];
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
    asked: (key) => {
      const site = group.sites.find((candidate) => siteKey(candidate) === key);
      return site ? greatestDemands(site, group.responses) : null;
    },
  };
}

function greatestDemands<R extends Asked>(site: CheckSite<R>, responses: readonly R[]): AskedOf {
  const greatest = new Map<string, AskedOf['combinations'][number]>();
  for (const r of responses) {
    if (!isAsked(site, r)) continue;
    const { id, durationFactor } = r.combination;
    const demand = site.demand(r);
    const known = greatest.get(id);
    if (!known || demand > known.demand) greatest.set(id, { id, durationFactor, demand });
  }
  return { unit: site.unit, combinations: [...greatest.values()] };
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
