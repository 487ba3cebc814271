import { LINKS, RULES } from '../data/rules.ts';
import { assembleLine, type Givens, type LineParts } from './assemble-lines.ts';
import type { CheckSource } from './checks/check-source.ts';
import { plainSource } from './checks/check-source.ts';
import { roofChecks } from './checks/roof/roof-checks.ts';
import { beamAcrossChecks } from './checks/beam/tie-across.ts';
import { siteRows } from './checks/site-rows.ts';
import { heldBack, unknownLoads } from './checks/unknown-loads.ts';
import { withWindDepartures } from './checks/wind-departures.ts';
import { ratedAlongRows } from './checks/sway/rated-along.ts';
import { swayAcrossRows } from './checks/sway/sway-checks.ts';
import type { Status } from './check.ts';
import { EngineError } from './errors.ts';
import type { CheckRow, EvaluateAnswer, Evaluation } from './evaluation.ts';
import { placeShelter } from './geometry/place-shelter.ts';
import { loadReport } from './load-report.ts';
import { acrossForce } from './loads/across.ts';
import { earthquakeOf, highestFt } from './loads/earthquake.ts';
import { rafterRun, type RafterRun } from './loads/rafter-run.ts';
import { roofFormOf, type RoofCase, type RunOf } from './loads/roof-cases.ts';
import { snowCases } from './loads/snow-cases.ts';
import { windCases } from './loads/wind-cases.ts';
import { sitePressures, type SitePressures } from './loads/site/site-pressures.ts';
import { solidityBeyondTable } from './loads/solid-wind.ts';
import { memberWeights } from './loads/weights.ts';
import { materialsOf, type Materials } from './material-of.ts';
import { message, type Fault, type Message } from './message.ts';
import type { Step } from './note.ts';
import { fingerprint } from './project/fingerprint.ts';
import type { Project } from './project/model.ts';
import type { RafterGeometry, Shelter } from './geometry/shelter.ts';
import { assumptionsOf } from './assumptions.ts';
import { DATA_VERSION, PROGRAM_VERSION } from './versions.ts';

interface Assembled extends Givens {
  readonly lines: readonly LineParts[];
  readonly sources: readonly CheckSource[];
  readonly form: ReturnType<typeof roofFormOf>;
}

/**
 * The whole shelter, judged: geometry, loads, frames, checks. Total: never throws, never answers a number that is not
 * finite as a pass. Faults name fields that make the shelter impossible to place.
 */
export function evaluate(project: Project): EvaluateAnswer {
  return guarded(() => {
    const assembled = assemble(project);
    return 'faults' in assembled
      ? { ok: false, faults: assembled.faults }
      : { ok: true, evaluation: report(assembled) };
  });
}

export type ExplainAnswer =
  { readonly ok: true; readonly steps: readonly Step[] } | { readonly ok: false; readonly reason: Message };

/**
 * The steps of one check in one combination (the governing one when none is named), made by the formulas that judged it.
 */
export function explain(project: Project, key: string, combinationId?: string): ExplainAnswer {
  const answer = guarded<ExplainAnswer | { readonly ok: false; readonly faults: readonly Fault[] }>(() => {
    const assembled = assemble(project);
    if ('faults' in assembled) return { ok: false, faults: assembled.faults };
    for (const source of assembled.sources) {
      const steps = source.explain(key, combinationId);
      if (steps) return { ok: true, steps };
    }
    return { ok: false, reason: message('noSuchCheck', { key }) };
  });
  if (answer.ok || 'reason' in answer) return answer;
  return { ok: false, reason: answer.faults[0] ?? message('engineFault', { detail: '' }) };
}

/** A broken promise inside becomes a typed problem at the door. */
function guarded<A>(work: () => A): A | { readonly ok: false; readonly faults: readonly Fault[] } {
  try {
    return work();
  } catch (error) {
    const detail =
      error instanceof EngineError
        ? error.message
        : error instanceof Error
          ? `${error.name}: ${error.message}`
          : String(error);
    return { ok: false, faults: [{ path: '', ...message('engineFault', { detail }) }] };
  }
}

function assemble(project: Project): Assembled | { readonly faults: readonly Fault[] } {
  const { shelter, faults } = placeShelter(project);
  if (faults.length > 0) return { faults };
  const form = roofFormOf(shelter.planes);
  const site = withSolidity(siteOf(project, shelter, form ?? 'monoslope'), shelter);
  const materials = materialsOf(project, shelter);
  const weights = memberWeights(project, shelter);
  const runOf = cachedRuns(materials);
  const segments = shelter.rafters[0] ? runOf(shelter.rafters[0]).segments.length : 1;
  // snow needs no figure of the wind: on a roof that has none it still lies
  const roof: readonly RoofCase[] = [
    ...snowCases(site, form ?? 'monoslope', segments),
    ...(form === null ? [] : windCases(site, shelter, form)),
  ];
  const earthquake = earthquakeOf(project.site, highestFt(shelter), site.figures.balancedSnow.value);
  const givens: Givens = { project, shelter, site, roof, runOf, weights, materials, earthquake };
  const lines = shelter.lines.filter((l) => l.kind === 'frame').map((line) => assembleLine(givens, line));
  const inertiaLb = lines.reduce((sum, l) => sum + l.inertiaLb, 0);
  const across = acrossForce(project, shelter, site, roof, runOf, inertiaLb);
  const sources = [
    plainSource(siteRows(project, shelter, site, form)),
    ...roofChecks({ project, shelter, site, form, runOf, weights, valuesOf: materials.of }),
    ...lines.flatMap((l) => l.source),
    plainSource(ratedAlongRows(lines.flatMap((l) => l.held ?? []))),
    beamAcrossChecks(project, shelter, across, new Set(lines.flatMap((l) => (l.isAnalysed ? [l.report.lineId] : [])))),
    plainSource(swayAcrossRows(project.lateral.across, across.asdLb)),
  ];
  return { ...givens, lines, sources, form };
}

function siteOf(project: Project, shelter: Shelter, form: 'monoslope' | 'pitched') {
  const covering = project.roofPlanes.map((p) => p.covering);
  const typed = (what: 'kd' | 'gustFactor'): number | null =>
    project.instead.find((i) => i.what === what)?.value ?? null;
  return sitePressures(
    project.site,
    project.code,
    {
      form,
      slopeDeg: Math.max(...shelter.planes.map((p) => p.slopeDeg)),
      slippery: covering.every((c) => c.slippery),
      unobstructed: covering.every((c) => c.unobstructed),
      meanRoofHeightFt: shelter.meanRoofHeightIn / 12,
      planAlongFt: shelter.planAlongIn / 12,
      planAcrossFt: shelter.planAcrossIn / 12,
      blockedShare: project.surroundings.goods?.blockedShare ?? null,
      closedSides: project.surroundings.closed.length,
    },
    { kz: project.calculation.kz, kd: typed('kd'), gustFactor: typed('gustFactor') },
  );
}

/** A frame more solid than the table of open frames is a departure of the site's wind as well. */
function withSolidity(site: SitePressures, shelter: Shelter): SitePressures {
  const beyond = solidityBeyondTable(shelter);
  return beyond ? { ...site, departures: [...site.departures, beyond] } : site;
}

/** Rafters that are alike are solved once. */
function cachedRuns(materials: Materials): RunOf {
  const alike = new Map<string, RafterRun>();
  const runs = new Map<RafterGeometry, RafterRun>();
  return (rafter: RafterGeometry) => {
    const known = runs.get(rafter);
    if (known) return known;
    const key = likenessOf(rafter);
    const answer = materials.of(rafter.id);
    const run = alike.get(key) ?? rafterRun(rafter, answer.ok ? answer.values.EPsi : 1);
    alike.set(key, run);
    runs.set(rafter, run);
    return run;
  };
}

const likenessOf = (rafter: RafterGeometry): string =>
  JSON.stringify([
    rafter.stick,
    rafter.supports.map((s) => [s.line, s.atIn]),
    rafter.runIn,
    rafter.slopeDeg,
    rafter.continuous,
  ]);

const LINK_ORDER = new Map(LINKS.map((link, i) => [link, i]));
const byPath = (a: CheckRow, b: CheckRow): number =>
  LINK_ORDER.get(RULES[a.ruleId].link)! - LINK_ORDER.get(RULES[b.ruleId].link)!;

function report(assembled: Assembled): Evaluation {
  const { project, lines } = assembled;
  const rows = assembled.sources.flatMap((s) => s.rows());
  const judged = heldBack(rows, unknownLoads(assembled.site, assembled.form));
  const checks = [...withWindDepartures(judged, project, assembled.site)].sort(byPath);
  const count = (status: Status): number => checks.filter((c) => c.status === status).length;
  return {
    formatVersion: 1,
    fingerprint: fingerprint(project),
    programVersion: PROGRAM_VERSION,
    dataVersion: DATA_VERSION,
    shelter: assembled.shelter,
    loads: loadReport(project, assembled.shelter, assembled.site, lines),
    logs: assembled.materials.reports,
    lines: lines.map((l) => l.report),
    checks,
    counts: { pass: count('pass'), fail: count('fail'), notGiven: count('notGiven'), outside: count('outside') },
    departures: checks.filter((c) => c.status === 'pass' && c.reason !== undefined).length,
    residual: Math.max(0, ...lines.map((l) => l.residual)),
    assumptions: assumptionsOf(project, assembled.site, assembled.form),
  };
}
