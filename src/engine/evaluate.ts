import { LINKS, RULES } from '../data/rules.ts';
import { assembleLine, type LineParts } from './assemble-lines.ts';
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
import type { CheckRow, EvaluateAnswer, Evaluation } from './evaluation.ts';
import { givensOf, type Prepared } from './givens.ts';
import { guarded } from './guarded.ts';
import { loadReport } from './load-report.ts';
import { acrossForce } from './loads/across.ts';
import { message, type Fault, type Message } from './message.ts';
import type { Step } from './note.ts';
import { fingerprint } from './project/fingerprint.ts';
import type { Project } from './project/model.ts';
import { assumptionsOf } from './assumptions.ts';
import { DATA_VERSION, PROGRAM_VERSION } from './versions.ts';

interface Assembled extends Prepared {
  readonly lines: readonly LineParts[];
  readonly sources: readonly CheckSource[];
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

function assemble(project: Project): Assembled | { readonly faults: readonly Fault[] } {
  const givens = givensOf(project);
  if ('faults' in givens) return givens;
  const { shelter, site, form, roof, runOf, weights, materials } = givens;
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
  return { ...givens, lines, sources };
}

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
