import type { AnalysedLine } from './analysed-line.ts';
import { beamSites } from './checks/beam/beam-checks.ts';
import { braceSites } from './checks/brace/brace-checks.ts';
import { braceFitRows } from './checks/brace/brace-fit.ts';
import { balanceRow, scenarioOf } from './checks/frame-rows.ts';
import { checkSource, plainSource, type CheckSource } from './checks/check-source.ts';
import { postResponses, type LineCheckContext, type PostInRow } from './checks/line-context.ts';
import { pierSites, footRows } from './checks/pier/pier-checks.ts';
import { postSites } from './checks/post/post-checks.ts';
import { handCutRows, typedRows } from './checks/not-judged.ts';
import { plainRow } from './checks/site-of-check.ts';
import type { HeldLine } from './checks/sway/rated-along.ts';
import { lineBucklingSite } from './checks/sway/line-buckling-site.ts';
import { alongSystem, swayAlongRows, swayAlongSites, swayForce } from './checks/sway/sway-checks.ts';
import { breaks, notGiven, outside } from './check.ts';
import type { CheckRow, LineReport } from './evaluation.ts';
import { buckledLine } from './frame/buckled-shape.ts';
import type { LineMembers } from './frame/line-mesh.ts';
import type { LineGeometry } from './geometry/shelter.ts';
import type { Givens } from './givens.ts';
import { lineReport } from './line-report.ts';
import type { Combination } from './loads/combination.ts';
import type { LoadCase } from './loads/cases.ts';
import { stretchesOf } from './loads/stretches.ts';
import type { Project } from './project/model.ts';
import { acrossOnLine } from './transverse/pressed-responses.ts';
import type { Blocked } from './why-not-analysed.ts';

export interface LineParts {
  readonly source: readonly CheckSource[];
  readonly report: LineReport;
  /** false where something of it is not known: it then judges nothing */
  readonly isAnalysed: boolean;
  readonly cases: readonly LoadCase[];
  readonly combinations: readonly Combination[];
  readonly residual: number;
  /** one per cent of its dead load, or the earthquake on all that it shakes, strength level [lb] */
  readonly inertiaLb: number;
  /** null where the line holds itself or nobody has said what holds it */
  readonly held: HeldLine | null;
}

/**
 * Checks of one frame line; a line that is not analysed says why and judges nothing.
 * @param inRows  posts that stand in frames across
 */
export function assembleLine(
  givens: Givens,
  analysed: AnalysedLine,
  inRows: ReadonlyMap<string, PostInRow>,
): LineParts {
  const { members, cases, combinations, inertiaLb, answer } = analysed;
  const { line } = members;
  const { project, shelter, site } = givens;
  const known = { cases, combinations, inertiaLb };
  if (!answer.ok) return { ...known, ...unanalysed(givens, members, answer.blocked) };

  const { frame, share } = answer;
  const system = alongSystem(project.lateral.along, line);
  const across = acrossOnLine(frame, inRows, share);
  const context: LineCheckContext = {
    project,
    shelter,
    line,
    frame,
    site,
    stretches: stretchesOf(line, members.posts),
    alongLb: analysed.alongLb,
    valuesOf: givens.materials.of,
    ...(across ? { across } : {}),
  };
  const ofLine = {
    responses: frame.responses,
    scenario: scenarioOf,
    sites: [
      ...beamSites(context),
      ...braceSites(context),
      ...swayAlongSites(context, analysed.holdsItself),
      lineBucklingSite(context),
    ],
  };
  const ofPosts = {
    responses: postResponses(context),
    scenario: scenarioOf,
    sites: [...postSites(context), ...pierSites(context)],
  };
  return {
    ...known,
    source: [
      { ...checkSource(ofLine), sections: [{ of: 'line', context }] },
      checkSource(ofPosts),
      plainSource([
        ...typedRows(members),
        ...braceFitRows(members),
        ...handCutRows(project, members),
        ...footRows(project, members.posts),
        ...swayAlongRows(context, system),
        balanceRow('frame.balance', line.id, frame.residual),
      ]),
    ],
    report: lineReport(context, () => buckledLine(frame, share)),
    isAnalysed: true,
    residual: frame.residual,
    held: heldByOthers(project, line, swayForce(context).value),
  };
}

/** The line as something outside the frame holds it along; null where nothing does. */
function heldByOthers(project: Project, line: LineGeometry, demandLb: number | null): HeldLine | null {
  const system = alongSystem(project.lateral.along, line);
  const isHeld = system?.by === 'building' || system?.by === 'ratedWalls';
  return isHeld ? { lineId: line.id, label: line.label, system, demandLb } : null;
}

/** Rows that stand for every check of a line that was not analysed. */
function unanalysed(
  givens: Givens,
  members: LineMembers,
  blocked: Blocked,
): Omit<LineParts, 'cases' | 'combinations' | 'inertiaLb'> {
  const whole = { kind: 'whole', name: '' } as const;
  const verdict = blocked.status === 'outside' ? outside(blocked.reason) : notGiven(blocked.reason);
  const rows: CheckRow[] = [
    // a mechanism is a broken rule; its forces are what the method does not reach
    plainRow(
      'frame.stands',
      members.line.id,
      whole,
      blocked.reason.code === 'lineIsMechanism' ? breaks(blocked.reason) : verdict,
    ),
    ...members.beams.map((b) => plainRow('beam.bending', b.id, whole, verdict)),
    ...members.posts.map((p) => plainRow('post.push', p.id, whole, verdict)),
    ...members.braces.map((b) => plainRow('brace.push', b.id, whole, verdict)),
    ...members.posts.map((p) => plainRow('pier.bearing', p.id, whole, verdict)),
    ...footRows(givens.project, members.posts),
  ];
  return {
    source: [plainSource(rows)],
    report: {
      lineId: members.line.id,
      stands: false,
      reason: blocked.reason,
      posts: [],
      members: [],
      braces: [],
      holdingLb: 0,
      buckled: null,
    },
    isAnalysed: false,
    residual: 0,
    held: heldByOthers(givens.project, members.line, null),
  };
}
