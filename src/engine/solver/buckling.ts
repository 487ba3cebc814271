import { greatestShares } from './buckling-lanczos.ts';
import { thrustForces, workPerLb } from './buckling-push.ts';
import { elasticElement } from './element.ts';
import type { FrameModel } from './model.ts';
import { assembleStiffness, equationsOf } from './stiffness.ts';
import { PER_NODE, unknownsOf } from './unknowns.ts';

/** One way in which a frame buckles. */
export interface BucklingMode {
  /** times the thrust that was asked about; zero where the frame moves under no load at all */
  readonly factor: number;
  /** per node of the model: u, w, turn; the farthest shift of a node is 1 */
  readonly moves: Float64Array;
  /**
   * per element: share of one over the factor that a pound of thrust in it brings [1/lb]. For any thrust its sum with these
   * is no more than one over the lowest factor under that thrust.
   */
  readonly sharePerLb: Float64Array;
}

export interface BucklingFrame {
  /**
   * @param thrust  of every element, in the order of the model: push +, pull - [lb]; alike all along it
   * @param count  how many modes are wanted at most
   * @returns the modes of the lowest positive factors, lowest first; none where no thrust can make the frame buckle
   */
  readonly modes: (thrust: ArrayLike<number>, count: number) => readonly BucklingMode[];
}

/**
 * Makes a plane frame ready to be asked at which multiple of its thrust it buckles: (K - factor G) moves = 0, with the
 * elastic stiffness K and G, what a thrust of one takes away from it.
 * @returns the frame with all elements but those named, by number in the model, which give no stiffness and carry nothing
 * @throws MisuseError  when the model contradicts itself, as {@link unknownsOf} and {@link elasticElement} say
 * @limits  linear elastic, thrust held in proportion; within an element a member bows as a cubic: five of them between
 *   joints are good to 0.5 % (too high) while its ends there differ by a factor of two, to 0.54 % at three
 * @source  MECHANICS linearized buckling of a plane frame by the stiffness method
 */
export function readyBuckling(model: FrameModel): (idle: ReadonlySet<number>) => BucklingFrame {
  const unknowns = unknownsOf(model);
  const elements = model.elements.map((element, i) =>
    elasticElement(element, model.nodes[unknowns.ends[2 * i]!]!, model.nodes[unknowns.ends[2 * i + 1]!]!),
  );
  const equations = equationsOf(elements, unknowns);

  const modeOf = (factor: number, moves: Float64Array, energy: number): BucklingMode => {
    const all = Float64Array.from(unknowns.equation, (row) => (row < 0 ? 0 : moves[row]!));
    const farthest = farthestShift(all) || 1; // a single element may bow between nodes that stay
    return {
      factor,
      moves: all.map((move) => move / farthest),
      sharePerLb: workPerLb(elements, equations, moves).map((work) => work / energy),
    };
  };

  return (idle) => {
    const working = elements.map((element, i) => (idle.has(i) ? { ...element, stretch: 0 } : element));
    const matrix = assembleStiffness(model, unknowns, working, equations);
    const free = matrix.factor();
    if (free) return { modes: () => [modeOf(0, free, 1)] };
    const frame = (thrust: ArrayLike<number>) => ({
      count: unknowns.count,
      solve: (side: Float64Array) => matrix.solve(side),
      push: (moves: Float64Array, forces: Float64Array) => thrustForces(elements, equations, thrust, moves, forces),
    });
    return {
      modes: (thrust, count) =>
        greatestShares(frame(thrust), count).map(({ share, moves }) => modeOf(1 / share, moves, 1)),
    };
  };
}

/** Greatest distance that a node moves. */
function farthestShift(moves: Float64Array): number {
  let most = 0;
  for (let i = 0; i < moves.length; i += PER_NODE) most = Math.max(most, Math.hypot(moves[i]!, moves[i + 1]!));
  return most;
}
