import type { RuleId } from '../../../data/rules.ts';
import type { RafterGeometry } from '../../geometry/shelter.ts';
import { nominalDepth } from '../../geometry/sticks.ts';
import { notGiven, type Verdict } from '../../check.ts';
import { ownPatches } from '../../loads/own-on-rafters.ts';
import { mayHoldLevel } from '../../loads/rafter-reactions.ts';
import { message } from '../../message.ts';
import { plainSource, type CheckSource } from '../check-source.ts';
import type { JudgedSections } from '../judged-sections.ts';
import { plainRow, type CheckSite } from '../site-of-check.ts';
import { snowAlong } from '../../loads/snow-cases.ts';
import { boredRows } from '../joints/bored-members.ts';
import { alikeSets, alikeSource, nearly } from './alike.ts';
import { bearerOn, rafterTieCapacity } from './bearers.ts';
import { handCut, purlinsOn, refused, unasked, weightProblem, writtenPlane, type RoofCheckContext } from './context.ts';
import { rafterBendingSite } from './rafter-bending.ts';
import { rafterLoading, rafterZones, type RafterLoading } from './rafter-loading.ts';
import { influenceOf, type Influence } from './rafter-influence.ts';
import { rafterResponses, type RafterResponse } from './rafter-responses.ts';
import { rafterSagSites } from './rafter-sag.ts';
import { rafterSeatSite } from './rafter-seat.ts';
import { rafterSeatShearSites, rafterShearSite, typedRafterShearSite } from './rafter-shear.ts';
import { rafterStations } from './rafter-stations.ts';
import { rafterTieSites } from './rafter-ties.ts';
import { typedRafterBendingSite } from './rafter-typed.ts';

const STICK_RULES: readonly RuleId[] = [
  'rafter.bending',
  'rafter.shear',
  'rafter.sag',
  'rafter.sagLongTerm',
  'rafter.seat',
];

const TIE_RULES: readonly RuleId[] = ['rafter.tie', 'rafter.tieAcross', 'rafter.tieAlong'];

/** Alike rafters with their combinations, kept for what hangs on their reactions: strip and ledger. */
export interface AnalysedRafters {
  readonly loading: RafterLoading;
  readonly responses: readonly RafterResponse[];
}

export interface RafterChecks {
  readonly sources: readonly CheckSource[];
  readonly analysed: readonly AnalysedRafters[];
  /** why some rafter could not be analysed; null when all are */
  readonly problem: Verdict | null;
}

type Site = CheckSite<RafterResponse>;

/** Every rule of every rafter; rafters that are alike in all that the checks see share one analysis. */
export function rafterChecks(context: RoofCheckContext): RafterChecks {
  const sources: CheckSource[] = [];
  const analysed: AnalysedRafters[] = [];
  let problem: Verdict | null = null;
  for (const alike of alikeSets(context.shelter.rafters, (r) => likeness(context, r))) {
    const ids = alike.map((r) => r.id);
    const unweighed = deadProblem(context, alike[0]!);
    if (unweighed) {
      problem ??= unweighed;
      sources.push(plainSource(ids.flatMap((id) => unasked([...STICK_RULES, ...TIE_RULES], id, unweighed))));
      continue;
    }
    const loading = rafterLoading(context, alike[0]!);
    const influence = influenceOf(loading);
    const responses = rafterResponses(loading, influence, context.project.calculation.kcr);
    analysed.push({ loading, responses });
    const stick = stickSites(context, loading, influence);
    const ties = loading.wind.ok ? rafterTieSites(context, loading, influence) : [];
    const sites = [...('verdict' in stick ? [] : stick), ...ties];
    sources.push(
      { ...alikeSource({ responses, sites }, ids), sections: judgedPoles(context, { loading, responses }, ids) },
      plainSource(ids.flatMap((id) => unjudged(loading, stick, id))),
    );
  }
  return { sources, analysed, problem };
}

function likeness(context: RoofCheckContext, r: RafterGeometry): unknown {
  const lines = r.supports.map((s) => context.project.supportLines.find((l) => l.id === s.line)!);
  return [
    r.plane,
    r.stick,
    nearly(r.tributaryWidthIn),
    nearly(r.spacingIn),
    r.runIn,
    r.supports.map((s) => [s.line, s.atIn]),
    r.seatCutIn,
    r.blocked,
    r.continuous,
    lines.map((line) => rafterTieCapacity(context, r, line)),
    handCut(context, r),
    context.project.instead.filter((i) => i.of === r.id),
    ownPatches(context.shelter, r, context.project.ownLoads),
    rafterZones(context, r),
    snowAlong(context.site, r).map(nearly),
    boredRows(context, r.id).map(({ fromIn, toIn, upright }) => [fromIn, toIn, upright]),
  ];
}

/** Rows of what no number decides: a stick that cannot be judged, ties without wind figures, a typed section's seat. */
function unjudged({ rafter, run, wind, plane }: RafterLoading, stick: StickSites, id: string) {
  const perLine = (ruleId: RuleId, verdict: Verdict, lines = run.supportLines) =>
    lines.map((line) => plainRow(ruleId, id, { kind: 'support', name: line }, verdict));
  const holding = run.supportLines.filter((line) => mayHoldLevel(plane.horizontalHeldBy, line));
  const typed = rafter.stick?.kind === 'typed' && !('verdict' in stick) ? rafter.stick.name : null;
  return [
    ...('verdict' in stick ? unasked(STICK_RULES, id, stick.verdict) : []),
    ...(typed === null ? [] : perLine('rafter.seat', notGiven(message('typedWithoutBearing', { name: typed })))),
    // a tie without wind figures would pass on gravity alone
    ...(wind.ok
      ? []
      : TIE_RULES.flatMap((rule) =>
          perLine(rule, refused(wind), rule === 'rafter.tieAcross' ? holding : run.supportLines),
        )),
  ];
}

type StickSites = readonly Site[] | { readonly verdict: Verdict };

/** Bending, shear, sag and seats of the stick itself, or why there are none. */
function stickSites(context: RoofCheckContext, loading: RafterLoading, influence: Influence): StickSites {
  const { rafter, run } = loading;
  const { stick } = rafter;
  const cut = handCut(context, rafter);
  if (cut) return { verdict: cut };
  if (!stick) return { verdict: notGiven(message('memberNotGiven', { member: rafter.label })) };
  // an end no longer past its support than the rafter is deep is no overhang that could sag (own rule)
  const sagging = run.segments.filter((s) => s.kind === 'span' || s.toIn - s.fromIn > nominalDepth(stick));
  const sag = sagging.flatMap((s) => rafterSagSites(loading, influence, s, context.project.calculation.kcr));
  if (stick.kind === 'typed')
    return [
      ...run.segments.map((s) => typedRafterBendingSite(loading, influence, stick, s)),
      ...run.segments.map((s) => typedRafterShearSite(loading, influence, stick, s)),
      ...sag,
    ];
  const answer = context.valuesOf(rafter.id);
  if (!answer.ok) return { verdict: refused(answer) };
  const { values } = answer;
  const stations = rafterStations(loading, stick);
  return [
    ...run.segments.map((s) => rafterBendingSite(context, loading, influence, stations, stick, values, s)),
    ...run.segments.map((s) => rafterShearSite(loading, influence, stations, stick, values, s)),
    ...rafterSeatShearSites(loading, influence, stations, stick, values),
    ...sag,
    ...run.supportLines.map((line, i) => rafterSeatSite(loading, influence, i, bearerOn(context, line), stick, values)),
  ];
}

/** What judges the sections of alike pole rafters; none where the stick is no pole or is not judged. */
function judgedPoles(
  context: RoofCheckContext,
  { loading, responses }: AnalysedRafters,
  memberIds: readonly string[],
): readonly JudgedSections[] {
  const { stick } = loading.rafter;
  const answer = context.valuesOf(loading.rafter.id);
  if (stick?.kind !== 'round' || !answer.ok || handCut(context, loading.rafter)) return [];
  return [{ of: 'rafters', memberIds, loading, responses, stick, values: answer.values }];
}

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
