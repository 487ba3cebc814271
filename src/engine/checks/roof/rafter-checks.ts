import type { RuleId } from '../../../data/rules.ts';
import type { RafterGeometry } from '../../geometry/shelter.ts';
import { nominalDepth } from '../../geometry/sticks.ts';
import { notGiven, type Verdict } from '../../check.ts';
import { message } from '../../message.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { plainRow, type CheckGroup, type CheckSite } from '../site-of-check.ts';
import { bearerOn, rafterTieCapacity } from './bearers.ts';
import { handCut, purlinsOn, refused, unasked, weightProblem, writtenPlane, type RoofCheckContext } from './context.ts';
import { pullSite } from './pull-site.ts';
import { rafterBendingSite } from './rafter-bending.ts';
import { alikeRafters, rafterLoading, type RafterLoading } from './rafter-loading.ts';
import { influenceOf, rafterResponses, type Influence, type RafterResponse } from './rafter-responses.ts';
import { tellReaction } from './rafter-telling.ts';
import { rafterSagSites } from './rafter-sag.ts';
import { rafterSeatSite } from './rafter-seat.ts';
import { rafterSeatShearSites, rafterShearSite, typedRafterShearSite } from './rafter-shear.ts';
import { rafterStations } from './rafter-stations.ts';
import { typedRafterBendingSite } from './rafter-typed.ts';

const RAFTER_RULES: readonly RuleId[] = [
  'rafter.bending',
  'rafter.shear',
  'rafter.sag',
  'rafter.sagLongTerm',
  'rafter.seat',
  'rafter.tie',
];

/** A rafter's own combinations, kept for what hangs on its reactions: strip and ledger. */
export interface AnalysedRafter {
  readonly rafter: RafterGeometry;
  readonly loading: RafterLoading;
  readonly influence: Influence;
  readonly responses: readonly RafterResponse[];
}

export interface RafterChecks {
  readonly sources: readonly CheckSource[];
  readonly analysed: readonly AnalysedRafter[];
  /** why some rafter could not be analysed; null when all are */
  readonly problem: Verdict | null;
}

type SiteOf = (rafter: RafterGeometry) => CheckSite<RafterResponse>;

/** Every rule of every rafter; rafters that are alike share one analysis, each keeps its own rows and ties. */
export function rafterChecks(context: RoofCheckContext): RafterChecks {
  const sources: CheckSource[] = [];
  const analysed: AnalysedRafter[] = [];
  let problem: Verdict | null = null;
  for (const alike of alikeRafters(context.shelter.rafters)) {
    const unweighed = deadProblem(context, alike[0]!);
    if (unweighed) {
      problem ??= unweighed;
      sources.push(plainSource(alike.flatMap((r) => unasked(RAFTER_RULES, r.id, unweighed))));
      continue;
    }
    const loading = rafterLoading(context, alike[0]!);
    const influence = influenceOf(loading);
    const responses = rafterResponses(loading, influence, context.project.calculation.kcr);
    analysed.push(...alike.map((rafter) => ({ rafter, loading, influence, responses })));
    sources.push(...sourcesOf(context, alike, loading, influence, responses));
  }
  return { sources, analysed, problem };
}

function sourcesOf(
  context: RoofCheckContext,
  alike: readonly RafterGeometry[],
  loading: RafterLoading,
  influence: Influence,
  responses: readonly RafterResponse[],
): readonly CheckSource[] {
  const { wind } = loading;
  const member = memberSites(context, loading, influence);
  const ties = tieSites(context, loading, influence);
  const group = (sites: CheckGroup<RafterResponse>['sites']): CheckSource =>
    checkSource({ responses, name: (r) => ({ combinationId: r.combination.id, scenario: '' }), sites });
  return alike.flatMap((rafter): readonly CheckSource[] => {
    const cut = handCut(context, rafter);
    const own = 'verdict' in member ? member.verdict : cut;
    const rules = RAFTER_RULES.filter((ruleId) => ruleId !== 'rafter.tie');
    const stick =
      own || 'verdict' in member
        ? [plainSource(own ? unasked(rules, rafter.id, own) : [])]
        : [group(member.sites.map((of) => of(rafter))), plainSource(member.rows(rafter))];
    // a tie without wind figures would pass on gravity alone
    const tied = wind.ok
      ? group(ties.map((of) => of(rafter)))
      : plainSource(
          loading.run.supportLines.map((line) =>
            plainRow('rafter.tie', rafter.id, { kind: 'support', name: line }, refused(wind)),
          ),
        );
    return [...stick, tied];
  });
}

type MemberSites =
  | { readonly verdict: Verdict }
  | { readonly sites: readonly SiteOf[]; readonly rows: (rafter: RafterGeometry) => ReturnType<typeof unasked> };

/** Bending, shear, seats and sag of the stick itself, or why there are none. */
function memberSites(context: RoofCheckContext, loading: RafterLoading, influence: Influence): MemberSites {
  const { rafter, run } = loading;
  const { stick } = rafter;
  // an end no longer past its support than the rafter is deep is no overhang that could sag (own rule)
  const stubIn = nominalDepth(stick);
  const sag = run.segments
    .filter((s) => s.kind === 'span' || s.toIn - s.fromIn > stubIn)
    .flatMap((s) => rafterSagSites(loading, influence, s, context.project.calculation.kcr));
  if (stick?.kind === 'typed') {
    const verdict = notGiven(message('typedWithoutBearing', { name: stick.name }));
    return {
      sites: [
        ...run.segments.map((s) => typedRafterBendingSite(loading, influence, stick, s)),
        ...run.segments.map((s) => typedRafterShearSite(loading, influence, stick, s)),
        ...sag,
      ],
      rows: (r) =>
        run.supportLines.map((line) => plainRow('rafter.seat', r.id, { kind: 'support', name: line }, verdict)),
    };
  }
  const answer = context.valuesOf(rafter.id);
  if (!answer.ok) return { verdict: refused(answer) };
  if (!stick) return { verdict: notGiven(message('memberNotGiven', { member: rafter.label })) };
  const { values } = answer;
  const stations = rafterStations(loading, stick);
  return {
    sites: [
      ...run.segments.map((s) => rafterBendingSite(context, loading, influence, stations, stick, values, s)),
      ...run.segments.map((s) => rafterShearSite(loading, influence, stations, stick, values, s)),
      ...rafterSeatShearSites(loading, influence, stations, stick, values),
      ...sag,
      ...run.supportLines.map((line, i) =>
        rafterSeatSite(loading, influence, i, bearerOn(context, line), stick, values),
      ),
    ],
    rows: () => [],
  };
}

/** Pull of each tie: the least that the support can have to hold, however the level part of the wind is held. */
function tieSites(context: RoofCheckContext, loading: RafterLoading, influence: Influence): readonly SiteOf[] {
  return loading.run.supportLines.map((lineId, support) => (rafter) => {
    const line = context.project.supportLines.find((l) => l.id === lineId)!;
    return pullSite<RafterResponse>({
      ruleId: 'rafter.tie',
      memberId: rafter.id,
      place: { kind: 'support', name: lineId },
      capacity: rafterTieCapacity(context, rafter, line),
      unit: 'lb',
      pull: (r, note) => {
        if (note) tellReaction(loading, influence, r, support, 'least', note);
        return pullAt(r, support);
      },
    });
  });
}

/** Net pull of a rafter on the tie at one of its supports, never below zero [lb]. */
export const pullAt = (r: RafterResponse, support: number): number => Math.max(0, -r.least[support]!);

/** Why the dead load of a rafter is not known; null when it is. */
function deadProblem(context: RoofCheckContext, rafter: RafterGeometry): Verdict | null {
  const { dead } = writtenPlane(context, rafter.plane);
  const typed: readonly string[] = dead.by === 'total' ? dead.includes : [];
  const weighed = [
    ...(typed.includes('rafters') ? [] : [rafter]),
    ...(typed.includes('purlins') ? [] : purlinsOn(context, rafter.plane)),
  ];
  return weighed.reduce<Verdict | null>((found, member) => found ?? weightProblem(context, member), null);
}
