import { greatestShares } from './buckling-lanczos.ts';
import { thrustForces } from './buckling-push.ts';
import { readyElement } from './element.ts';
import type { FrameModel } from './model.ts';
import { assembleStiffness, equationsOf } from './stiffness.ts';
import { PER_NODE, unknownsOf } from './unknowns.ts';

/** One way in which a frame buckles. */
export interface BucklingMode {
  /** times the thrust that was asked about; zero where the frame moves under no load at all */
  readonly factor: number;
  /** per node of the model: u, w, turn; the farthest shift of a node is 1 */
  readonly moves: Float64Array;
}

export interface BucklingFrame {
  /**
   * @param thrust  of every element, in the order of the model: push +, pull - [lb]; alike all along it
   * @param count  how many modes are wanted at most
   * @param idle  elements that give no stiffness and carry nothing, by number in the model
   * @returns the modes of the lowest positive factors, lowest first; none where no thrust can make the frame buckle
   */
  readonly modes: (thrust: ArrayLike<number>, count: number, idle?: ReadonlySet<number>) => readonly BucklingMode[];
}

/**
 * Makes a plane frame ready to be asked at which multiple of its thrust it buckles: (K - factor G) moves = 0, with the
 * elastic stiffness K and G, what a thrust of one takes away from it.
 * @throws MisuseError  when the model contradicts itself, as {@link unknownsOf} and {@link readyElement} say
 * @limits  linear elastic, thrust held in proportion; within an element a member bows as a cubic: five of them between
 *   joints are good to 0.5 % (too high) while its ends there differ by a factor of two, to 0.54 % at three
 * @source  MECHANICS linearized buckling of a plane frame by the stiffness method
 */
export function readyBuckling(model: FrameModel): BucklingFrame {
  const unknowns = unknownsOf(model);
  const elements = model.elements.map((element, i) =>
    readyElement(element, model.nodes[unknowns.ends[2 * i]!]!, model.nodes[unknowns.ends[2 * i + 1]!]!),
  );
  const equations = equationsOf(elements, unknowns);

  const movesOfNodes = (moves: Float64Array): Float64Array => {
    const all = Float64Array.from(unknowns.equation, (row) => (row < 0 ? 0 : moves[row]!));
    const farthest = farthestShift(all) || 1; // a single element may bow between nodes that stay
    return all.map((move) => move / farthest);
  };

  return {
    modes: (thrust, count, idle) => {
      const working = idle?.size ? elements.map((e, i) => (idle.has(i) ? { ...e, stretch: 0 } : e)) : elements;
      const matrix = assembleStiffness(model, unknowns, working, equations);
      const free = matrix.factor();
      if (free) return [{ factor: 0, moves: movesOfNodes(free) }];
      const pairs = greatestShares(
        {
          count: unknowns.count,
          solve: (side) => matrix.solve(side),
          push: (moves) => thrustForces(elements, equations, thrust, moves),
        },
        count,
      );
      return pairs.map(({ share, moves }) => ({ factor: 1 / share, moves: movesOfNodes(moves) }));
    },
  };
}

/** Greatest distance that a node moves. */
function farthestShift(moves: Float64Array): number {
  let most = 0;
  for (let i = 0; i < moves.length; i += PER_NODE) most = Math.max(most, Math.hypot(moves[i]!, moves[i + 1]!));
  return most;
}
