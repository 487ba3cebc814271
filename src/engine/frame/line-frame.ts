import type { Message } from '../message.ts';
import { message } from '../message.ts';
import type { Combination } from '../loads/combination.ts';
import type { LineLoads } from '../loads/cases.ts';
import { factorFrame } from '../solver/factor.ts';
import type { SolvedStates } from './brace-sets.ts';
import { loadState, unitPush, unitShift } from './line-states.ts';
import { meshLine, type LineMembers, type LineMesh } from './line-mesh.ts';
import { Superposition } from './superposition.ts';
import { pushOnly } from './push-only.ts';

/** Which braces work, and how: both ways; only pushing; idle (green logs shrink, housings open); there are none. */
export type BraceModel = 'bothWays' | 'pushOnly' | 'idle' | 'noBraces';

/** Forces and moves of a line in one combination and brace model; `values` is laid out as {@link Superposition} says. */
export interface LineResponse {
  readonly combination: Combination;
  readonly braceModel: BraceModel;
  /** held sideways at the beam by something else than the line itself */
  readonly held: boolean;
  readonly working: readonly boolean[];
  readonly values: Float64Array;
}

export interface LineFrame {
  readonly members: LineMembers;
  readonly mesh: LineMesh;
  readonly layout: Superposition;
  readonly responses: readonly LineResponse[];
  /** combinations in which nothing holds the line sideways */
  readonly unheld: readonly { readonly combination: Combination; readonly reason: Message }[];
  readonly residual: number;
}

export type LineAnswer =
  { readonly ok: true; readonly frame: LineFrame } | { readonly ok: false; readonly reason: Message };

export interface LineSetting {
  /** a pull capacity is given at every brace joint of the line */
  readonly pullGiven: boolean;
  /** its own braces or fixed feet hold it along; else it is held at the beam and the force reported */
  readonly holdsItself: boolean;
}

/**
 * Analyses one frame line for every combination in every brace model that applies.
 * Gravity is judged with braces both ways, pushing only and idle; wind and sway with braces both ways where pull is
 * given, and pushing only. First order.
 */
export function analyseLine(
  members: LineMembers,
  loads: LineLoads,
  combinations: readonly Combination[],
  elasticity: (memberId: string) => number,
  setting: LineSetting,
): LineAnswer {
  const allCases = [...loads.dead.map((d) => d.heavy), ...loads.dead.map((d) => d.light), ...loads.cases];
  const loadX = [...new Set(allCases.flatMap((c) => c.points.map((p) => p.xIn)))];
  const mesh = meshLine(members, elasticity, loadX);
  const factored = factorFrame(mesh.model);
  if (!factored.ok) return { ok: false, reason: message('lineIsMechanism', { line: members.line.label }) };
  const solved = allCases.map((c) => factored.solve(loadState(mesh, c)));
  const states: SolvedStates = {
    cases: solved,
    unitPush: mesh.braces.map((_, j) => factored.solve(unitPush(mesh, j))),
    unitShift: factored.solve(unitShift(mesh)),
  };
  const layout = new Superposition(
    mesh,
    states,
    loads.dead.map((d) => d.piece),
    new Map(loads.cases.map((c, i) => [c.caseId, i])),
  );

  const responses: LineResponse[] = [];
  const unheld: { combination: Combination; reason: Message }[] = [];
  const all = mesh.braces.map(() => true);
  const none = mesh.braces.map(() => false);
  const add = (
    combination: Combination,
    braceModel: BraceModel,
    working: readonly boolean[],
    free: boolean,
  ): boolean => {
    const values = layout.combine(combination, working, free);
    if (!values) return false;
    responses.push({ combination, braceModel, held: !free, working, values });
    return true;
  };

  for (const combination of combinations) {
    if (mesh.braces.length === 0) {
      if (!add(combination, 'noBraces', none, setting.holdsItself)) {
        unheld.push({ combination, reason: message('nothingHoldsSideways', { line: members.line.label }) });
        add(combination, 'noBraces', none, false);
      }
      continue;
    }
    const bothWaysCounts = combination.gravityOnly || setting.pullGiven;
    const bothWays = bothWaysCounts && add(combination, 'bothWays', all, setting.holdsItself);
    const free = setting.holdsItself && combination.swaysAlong;
    const working = pushOnly(mesh, layout, combination, free);
    const pushing = working !== null && add(combination, 'pushOnly', working, free);
    if (!pushing && !bothWays)
      unheld.push({ combination, reason: message('nothingHoldsWhilePulled', { line: members.line.label }) });
    if (combination.gravityOnly) add(combination, 'idle', none, false);
  }
  const residual = Math.max(0, ...[...solved, ...states.unitPush].map((s) => s.residual));
  return { ok: true, frame: { members, mesh, layout, responses, unheld, residual } };
}
