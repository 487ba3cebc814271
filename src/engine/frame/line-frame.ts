import type { Message } from '../message.ts';
import { message } from '../message.ts';
import type { Combination } from '../loads/combination.ts';
import type { LineCase, LineLoads } from '../loads/cases.ts';
import { factorFrame } from '../solver/factor.ts';
import type { FrameState, LoadState } from '../solver/model.ts';
import type { LineBuckling } from './line-buckling.ts';
import { loadState, unitPush, unitShift } from './line-states.ts';
import { meshLine, type LineMembers, type LineMesh } from './line-mesh.ts';
import { Superposition } from './superposition.ts';
import { pushOnly } from './push-only.ts';
import type { WorkingSet } from './working-set.ts';

/** Which braces work, and how: both ways; only pushing; idle (green logs shrink, housings open); there are none. */
export type BraceModel = 'bothWays' | 'pushOnly' | 'idle' | 'noBraces';

/** Forces and moves of a line in one combination and brace model; `values` stands as the frame's layout says. */
export interface LineResponse {
  readonly combination: Combination;
  readonly braceModel: BraceModel;
  /** held sideways at the beam by something else than the line itself */
  readonly held: boolean;
  readonly working: readonly boolean[];
  readonly values: Float64Array;
  /** so many braces that only push have let go besides, since dead load, taken as it harms, would pull them */
  readonly letGo?: number;
  /** how the line buckles under the thrust of this response; none where only sag is asked */
  readonly buckling?: LineBuckling;
  /** set where a free line's sway counts more than once, for what the loads do on the moved frame */
  readonly secondOrder?: {
    readonly times: number;
    /** the same response without it */
    readonly first: LineResponse;
  };
  /** set where a frame across presses or lifts the posts beside what the line itself does */
  readonly across?: {
    readonly way: 'pressed' | 'lifted';
    /** the same response as the line alone has it */
    readonly own: LineResponse;
  };
}

/** A response without second order. */
export const firstOrderOf = (r: LineResponse): LineResponse => r.secondOrder?.first ?? r;

/** A response as the line alone has it. */
export const ownOf = (r: LineResponse): LineResponse => r.across?.own ?? r;

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
 * given, and pushing only. Where all braces push anyway, and the line is held alike, both ways stands for pushing only:
 * the two are the same numbers. First order; `withSecondOrder` adds the rest.
 */
export function analyseLine(
  members: LineMembers,
  loads: LineLoads,
  combinations: readonly Combination[],
  elasticity: (memberId: string) => number,
  setting: LineSetting,
): LineAnswer {
  const cases = [...loads.dead.map((d) => d.heavy), ...loads.dead.map((d) => d.light), ...loads.cases];
  const loadX = [...new Set(cases.flatMap(placesOnBeams))];
  const mesh = meshLine(
    members,
    elasticity,
    loadX,
    cases.flatMap((c) => c.atPosts),
  );
  const factored = factorFrame(mesh.model);
  if (!factored.ok) return { ok: false, reason: message('lineIsMechanism', { line: members.line.label }) };
  let residual = 0;
  const solve = (load: LoadState): FrameState => {
    const state = factored.solve(load);
    residual = Math.max(residual, state.residual);
    return state;
  };
  const layout = new Superposition(
    mesh,
    {
      cases: cases.map((c) => solve(loadState(mesh, c))),
      unitPush: mesh.braces.map((_, j) => solve(unitPush(mesh, j))),
      unitShift: factored.solve(unitShift(mesh)),
    },
    {
      pieces: loads.dead.map((d) => d.piece),
      indexOf: new Map(loads.cases.map((c, i) => [c.caseId, 2 * loads.dead.length + i])),
    },
  );
  const { responses, unheld } = responsesOf(members, mesh, layout, combinations, setting);
  return { ok: true, frame: { members, mesh, layout, responses, unheld, residual } };
}

/** Where loads stand or step on the beams: the mesh has a node at each. */
const placesOnBeams = ({ points, onSlope = [] }: LineCase): readonly number[] => [
  ...points.map((p) => p.xIn),
  ...onSlope.flatMap(({ from, to }) => [from.xIn, to.xIn]),
];

function responsesOf(
  { line }: LineMembers,
  mesh: LineMesh,
  layout: Superposition,
  combinations: readonly Combination[],
  { pullGiven, holdsItself }: LineSetting,
): Pick<LineFrame, 'responses' | 'unheld'> {
  const responses: LineResponse[] = [];
  const unheld: { combination: Combination; reason: Message }[] = [];
  const all = mesh.braces.map(() => true);
  const none = mesh.braces.map(() => false);
  const add = (combination: Combination, braceModel: BraceModel, set: WorkingSet | null): void => {
    if (!set) return;
    const { working, free } = set;
    responses.push({ combination, braceModel, held: !free, working, values: set.combine(combination) });
  };

  for (const combination of combinations) {
    const { gravityOnly, swaysAlong } = combination;
    if (mesh.braces.length === 0) {
      const free = layout.with(none, holdsItself);
      if (!free) unheld.push({ combination, reason: message('nothingHoldsSideways', { line: line.label }) });
      add(combination, 'noBraces', free ?? layout.with(none, false));
      continue;
    }
    const bothWays = gravityOnly || pullGiven ? layout.with(all, holdsItself) : null;
    const pushing = pushOnly(layout, combination, all, holdsItself && swaysAlong);
    if (!bothWays && !pushing)
      unheld.push({ combination, reason: message('nothingHoldsWhilePulled', { line: line.label }) });
    add(combination, 'bothWays', bothWays);
    if (pushing !== bothWays) add(combination, 'pushOnly', pushing);
    if (gravityOnly) add(combination, 'idle', layout.with(none, false));
  }
  return { responses, unheld };
}
