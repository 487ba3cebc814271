import { analysedLine } from './analysed-line.ts';
import { assembleLine, type LineParts } from './assemble-lines.ts';
import { beamRollingChecks } from './checks/beam/rolling.ts';
import { beamAcrossChecks } from './checks/beam/tie-across.ts';
import { plainSource, type CheckSource } from './checks/check-source.ts';
import { roofChecks } from './checks/roof/roof-checks.ts';
import { siteRows } from './checks/site-rows.ts';
import { ratedAlongRows } from './checks/sway/rated-along.ts';
import { swayAcrossRows } from './checks/sway/sway-checks.ts';
import type { LedgerReport } from './evaluation.ts';
import { givensOf, type Prepared } from './givens.ts';
import { acrossForce } from './loads/across.ts';
import type { Fault } from './message.ts';
import type { Project } from './project/model.ts';
import { framesAcrossOf, type FramesAcross } from './transverse/frames-across.ts';
import { postsInRows } from './transverse/posts-in-rows.ts';
import { acrossSources } from './transverse/row-source.ts';

/** A shelter with its lines analysed and every source of checks, before anything is judged. */
export interface Assembled extends Prepared {
  readonly lines: readonly LineParts[];
  readonly frames: FramesAcross;
  readonly ledgers: readonly LedgerReport[];
  readonly sources: readonly CheckSource[];
}

/** Both doors, `evaluate` and `explain`, start from this; faults where the shelter cannot be placed. */
export function assemble(project: Project): Assembled | { readonly faults: readonly Fault[] } {
  const givens = givensOf(project);
  if ('faults' in givens) return givens;
  const { shelter, site, form, roof, runOf, weights, materials } = givens;
  const analysed = shelter.lines.filter((l) => l.kind === 'frame').map((line) => analysedLine(givens, line));
  const frames = framesAcrossOf(givens, analysed);
  const inRows = postsInRows(frames.rows);
  const lines = analysed.map((line) => assembleLine(givens, line, inRows));
  const inertiaLb = lines.reduce((sum, l) => sum + l.inertiaLb, 0);
  const across = acrossForce(project, shelter, site, roof, runOf, inertiaLb);
  const joints = { project, shelter, valuesOf: materials.of };
  const ofRoof = roofChecks({ ...joints, site, form, runOf, weights });
  const sources = [
    plainSource(siteRows(project, shelter, site, form)),
    ...ofRoof.sources,
    ...lines.flatMap((l) => l.source),
    plainSource(ratedAlongRows(lines.flatMap((l) => l.held ?? []))),
    beamAcrossChecks(joints, across, new Set(lines.flatMap((l) => (l.isAnalysed ? [l.report.lineId] : [])))),
    ...beamRollingChecks(
      joints,
      across,
      lines.filter((l) => l.isAnalysed),
    ),
    ...acrossSources(frames, shelter),
    plainSource(swayAcrossRows(project.lateral.across, across.asdLb, frames.rows.length > 0)),
  ];
  return { ...givens, lines, frames, ledgers: ofRoof.ledgers, sources };
}
