import type { LineGeometry } from '../../geometry/shelter.ts';
import { stickOf } from '../../geometry/sticks.ts';
import type { Combination } from '../../loads/combination.ts';
import { levelReactions } from '../../loads/rafter-reactions.ts';
import { alongForces } from '../../loads/sway.ts';
import { weightAlong } from '../../loads/weights.ts';
import type { LedgerLine } from '../../project/model.ts';
import type { RoofCheckContext } from './context.ts';
import type { AnalysedRafters } from './rafter-checks.ts';
import type { RafterLoading } from './rafter-loading.ts';
import { shakenPush } from './rafter-shaken.ts';
import type { RafterResponse } from './rafter-responses.ts';

/** What one combination asks of each foot of a ledger [lb/ft]. None is below zero. */
export interface LedgerResponse {
  readonly combination: Combination;
  readonly downPlf: number;
  readonly upPlf: number;
  /** away from the wall */
  readonly outPlf: number;
  readonly alongPlf: number;
}

/**
 * Forces on a ledger from the component runs of its rafters, the hardest foot of it. Own rules, safe side: wind along
 * the wall is added to every wind combination; an earthquake pushes with the whole of each rafter's strip, outward and
 * along; the ledger's own weight counts downward only; being pressed against its
 * wall asks nothing of the fixings.
 * @source MECHANICS equilibrium of each rafter; ASCE7 2.4.1 (7-16)
 */
export function ledgerResponses(
  context: RoofCheckContext,
  line: LedgerLine,
  geometry: LineGeometry,
  rafters: readonly AnalysedRafters[],
): readonly LedgerResponse[] {
  const lengthFt = (line.toXIn - line.fromXIn) / 12;
  const strengthAlongPlf =
    alongForces(context.project, context.shelter, geometry, [], [], context.site).totalLb / lengthFt;
  const ownPlf = ledgerWeight(context, line);
  const byCombination = new Map<string, LedgerResponse>();
  for (const { loading, responses } of rafters) {
    const support = loading.run.supportLines.indexOf(line.id);
    const widthFt = loading.rafter.tributaryWidthIn / 12;
    for (const r of responses) {
      if (r.combination.purpose !== 'strength') continue;
      const known = byCombination.get(r.combination.id);
      const windFactor = r.combination.factors.find((f) => f.caseId.startsWith('wind'))?.factor ?? 0;
      const shakenPlf = shakenPush(loading.shaken, r.combination) / widthFt;
      byCombination.set(r.combination.id, {
        combination: r.combination,
        downPlf: Math.max(known?.downPlf ?? 0, r.greatest[support]! / widthFt + ownPlf),
        upPlf: Math.max(known?.upPlf ?? 0, -r.least[support]! / widthFt),
        outPlf: Math.max(known?.outPlf ?? 0, outwardLb(line, loading, r, support) / widthFt, shakenPlf),
        alongPlf: Math.max(known?.alongPlf ?? 0, windFactor * strengthAlongPlf, shakenPlf),
      });
    }
  }
  return [...byCombination.values()];
}

/** What comes to one place of a ledger from so much of its length [lb]. */
export const onFixing = (plf: number, widthIn: number): number => (plf * widthIn) / 12;

/** Heavy weight of the ledger itself; a ledger nobody described weighs nothing here, its own row says so [lb/ft]. */
function ledgerWeight({ project }: RoofCheckContext, line: LedgerLine): number {
  const stick = stickOf(project, line.stock, line.toXIn - line.fromXIn);
  const weight = stick ? weightAlong(project, stick) : null;
  return weight?.ok ? weight.at(0).heavy * 12 : 0;
}

/**
 * Level part of the wind on a rafter that its ledger may have to hold, away from the wall +. Wind that presses the roof
 * pushes it up the slope, wind that lifts it pulls it down the slope.
 */
function outwardLb(
  line: LedgerLine,
  { run, plane, rafter }: RafterLoading,
  { windLoads }: RafterResponse,
  support: number,
): number {
  const heldBy = plane.horizontalHeldBy === 'worse' ? line.id : plane.horizontalHeldBy;
  const downSlope = -levelReactions(run, windLoads, heldBy)[support]!;
  const awayFromWall = Math.sign(line.yIn - line.wallFaceYIn) || rafter.downY;
  return downSlope * rafter.downY * awayFromWall;
}
