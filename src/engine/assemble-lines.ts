import { beamSites } from './checks/beam/beam-checks.ts';
import { braceSites } from './checks/brace/brace-checks.ts';
import { braceFitRows } from './checks/brace/brace-fit.ts';
import { balanceRow, MODEL_WORDS } from './checks/frame-rows.ts';
import { checkSource, plainSource, type CheckSource } from './checks/check-source.ts';
import type { LineCheckContext } from './checks/line-context.ts';
import { pierSites, footRows } from './checks/pier/pier-checks.ts';
import { postSites } from './checks/post/post-checks.ts';
import { handCutRows, typedRows } from './checks/not-judged.ts';
import { plainRow } from './checks/site-of-check.ts';
import { thinnestOfLine } from './checks/thinnest-of-line.ts';
import type { HeldLine } from './checks/sway/rated-along.ts';
import { lineBucklingSite } from './checks/sway/line-buckling-site.ts';
import { alongSystem, swayAlongRows, swayAlongSites, swayForce } from './checks/sway/sway-checks.ts';
import { breaks, notGiven, outside } from './check.ts';
import type { CheckRow, LineReport } from './evaluation.ts';
import { buckledLine } from './frame/buckled-shape.ts';
import { withSecondOrder } from './frame/second-order.ts';
import { analyseLine, type LineResponse } from './frame/line-frame.ts';
import { membersOfLine, type LineMembers } from './frame/line-mesh.ts';
import type { LineGeometry } from './geometry/shelter.ts';
import type { Givens } from './givens.ts';
import { lineReport } from './line-report.ts';
import { elasticity, stabilityShare } from './line-stiffness.ts';
import { combine, serviceCombinations } from './loads/combine.ts';
import type { Combination } from './loads/combination.ts';
import type { LoadCase } from './loads/cases.ts';
import { lineLoads } from './loads/line-loads.ts';
import { stretchesOf } from './loads/stretches.ts';
import type { Project } from './project/model.ts';
import { pullIsGiven } from './pull-is-given.ts';
import { whyNotAnalysed, type Blocked } from './why-not-analysed.ts';

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

/** Loads, frame and checks of one frame line; a line that cannot be analysed says why and judges nothing. */
export function assembleLine(givens: Givens, line: LineGeometry): LineParts {
  const { project, shelter, site } = givens;
  const members = membersOfLine(shelter, line);
  const loading = lineLoads(project, shelter, line, site, givens.roof, givens.runOf, givens.weights, givens.earthquake);
  const combinations = combine(loading.cases);
  const { inertiaLb } = loading.loads;
  const blocked = whyNotAnalysed(givens, members);
  if (blocked) return unanalysed(givens, members, blocked, loading.cases, combinations, inertiaLb);

  const system = alongSystem(project.lateral.along, line);
  const fixedFeet = members.posts.some((p) => p.foot.fixity.along !== 'pinned');
  const held = heldByOthers(project, line, null);
  const holdsItself = !held && (members.braces.length > 0 || fixedFeet);
  const answer = analyseLine(
    members,
    loading.loads,
    [...combinations, ...serviceCombinations(loading.cases, project.calculation.kcr)],
    elasticity(givens, members),
    {
      pullGiven: pullIsGiven(project, members.braces),
      // not decided: held for now, and a row says that it is not given
      holdsItself:
        holdsItself || system?.by === 'kneeBraces' || system?.by === 'embeddedPosts' || system?.by === 'none',
    },
  );
  if (!answer.ok)
    return unanalysed(
      givens,
      members,
      { status: 'outside', reason: answer.reason },
      loading.cases,
      combinations,
      inertiaLb,
    );

  const share = stabilityShare(givens, members);
  const frame = withSecondOrder(answer.frame, share);
  const context: LineCheckContext = {
    project,
    shelter,
    line,
    frame,
    site,
    stretches: stretchesOf(line, members.posts),
    alongLb: loading.loads.alongLb,
    valuesOf: givens.materials.of,
  };
  const group = {
    responses: frame.responses,
    scenario: (r: LineResponse) => MODEL_WORDS[r.braceModel],
    sites: [
      ...beamSites(context),
      ...braceSites(context),
      ...postSites(context),
      ...pierSites(context),
      ...swayAlongSites(context, holdsItself),
      lineBucklingSite(context),
    ],
  };
  return {
    source: [
      { ...checkSource(group), thinnest: () => thinnestOfLine(context) },
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
    cases: loading.cases,
    combinations,
    residual: frame.residual,
    inertiaLb,
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
  cases: readonly LoadCase[],
  combinations: readonly Combination[],
  inertiaLb: number,
): LineParts {
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
    cases,
    combinations,
    residual: 0,
    inertiaLb,
    held: heldByOthers(givens.project, members.line, null),
  };
}
