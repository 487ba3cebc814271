import { LINKS, RULES } from '../data/rules.ts';
import { assemble, type Assembled } from './assemble.ts';
import { heldBack, unknownLoads } from './checks/unknown-loads.ts';
import { withWindDepartures } from './checks/wind-departures.ts';
import type { Status } from './check.ts';
import type { CheckRow, EvaluateAnswer, Evaluation } from './evaluation.ts';
import { guarded } from './guarded.ts';
import { loadReport } from './load-report.ts';
import { fingerprint } from './project/fingerprint.ts';
import type { Project } from './project/model.ts';
import { assumptionsOf } from './assumptions.ts';
import { residualOf, rowReport } from './transverse/row-report.ts';
import { DATA_VERSION, PROGRAM_VERSION } from './versions.ts';

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

const LINK_ORDER = new Map(LINKS.map((link, i) => [link, i]));
const byPath = (a: CheckRow, b: CheckRow): number =>
  LINK_ORDER.get(RULES[a.ruleId].link)! - LINK_ORDER.get(RULES[b.ruleId].link)!;

function report(assembled: Assembled): Evaluation {
  const { project, lines, frames } = assembled;
  const rows = assembled.sources.flatMap((s) => s.rows());
  const unknown = unknownLoads(assembled.site, assembled.form);
  const judged = heldBack(rows, unknown);
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
    rows: frames.rows.map(rowReport),
    ledgers: assembled.ledgers.map((l) => ({ ...l, reason: l.reason ?? unknown?.reason ?? null })),
    checks,
    sections: assembled.sources.flatMap((s) => s.sections ?? []),
    counts: { pass: count('pass'), fail: count('fail'), notGiven: count('notGiven'), outside: count('outside') },
    // a row of which nothing is asked says why, but departs from nothing
    departures: checks.filter((c) => c.status === 'pass' && c.capacity !== null && c.reason !== undefined).length,
    residual: Math.max(0, ...lines.map((l) => l.residual), ...frames.rows.map(residualOf)),
    assumptions: assumptionsOf(project, assembled.site, assembled.form, frames.rows),
  };
}
