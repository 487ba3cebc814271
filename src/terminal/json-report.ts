import { RULES } from '../data/rules.ts';
import type { CheckRow, Evaluation, LineReport, LogReport } from '../engine/evaluation.ts';
import type { Project } from '../engine/project/model.ts';
import { thinnestLogs } from '../engine/thinnest.ts';
import { spelled } from './figures.ts';

/** Grows only by new fields; a field that changes its meaning raises it. */
const FORMAT_VERSION = 1;

/** The whole evaluation for machines. A number that was not computed or not asked is null. */
export function jsonReport(project: Project, evaluation: Evaluation): string {
  const { loads, counts } = evaluation;
  const report = {
    formatVersion: FORMAT_VERSION,
    project: { id: project.title.id, name: project.title.name },
    fingerprint: evaluation.fingerprint,
    programVersion: evaluation.programVersion,
    dataVersion: evaluation.dataVersion,
    counts,
    departures: evaluation.departures,
    residual: evaluation.residual,
    loads: {
      pressures: loads.pressures.map(({ name, value, unit }) => ({ name, value, unit })),
      gustFactor: loads.gustFactor,
      flows: loads.flows,
      cases: loads.cases.map((c) => ({ ...c, words: spelled(c.words).words })),
      combinations: loads.combinations.map((c) => ({ ...c, words: spelled(c.words).words })),
      leftOut: loads.leftOut.map(spelled),
    },
    logs: evaluation.logs.map(logOf),
    lines: evaluation.lines.map(lineOf),
    rows: evaluation.rows.map(({ frame, ...row }) => ({ ...row, frame: frame && lineOf(frame) })),
    ledgers: evaluation.ledgers.map(({ reason, ...ledger }) => ({ ...ledger, reason: reason && spelled(reason) })),
    checks: evaluation.checks.map(checkOf),
    thinnest: thinnestLogs(evaluation),
    assumptions: evaluation.assumptions.map(spelled),
  };
  return JSON.stringify(report);
}

/** Design values of a log without the steps that made them. */
const logOf = ({ logId, memberIds, values, reason, heldBackBy }: LogReport) => ({
  logId,
  memberIds,
  values: values && {
    FbPsi: values.FbPsi,
    FvPsi: values.FvPsi,
    FcPerpPsi: values.FcPerpPsi,
    FcPsi: values.FcPsi,
    FtPsi: values.FtPsi,
    EPsi: values.EPsi,
    EminPsi: values.EminPsi,
  },
  reason: reason && spelled(reason),
  heldBackBy: heldBackBy && spelled(heldBackBy),
});

/** Reactions of every post in every combination and brace model, forces along members, forces in braces. */
const lineOf = ({ reason, ...line }: LineReport) => ({ ...line, reason: reason && spelled(reason) });

const checkOf = ({ ratios, reason, clause, ...row }: CheckRow) => ({
  ...row,
  link: RULES[row.ruleId].link,
  words: RULES[row.ruleId].words,
  clause,
  reason: reason ? spelled(reason) : null,
  ratios: Object.fromEntries(ratios.labels.map((label, i) => [label, finiteOrNull(ratios.values[i])])),
});

const finiteOrNull = (value: number | undefined): number | null =>
  value !== undefined && Number.isFinite(value) ? value : null;
