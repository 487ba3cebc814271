import { MisuseError } from '../errors.ts';
import { listMaker } from '../lists.ts';
import { readyBalance } from './balance.ts';
import type { ReadyElement } from './element.ts';
import { PER_FORCE, PER_LOAD, writeEndForces, writeUnbalanced } from './end-forces.ts';
import type { FrameModel, FrameState, LoadState } from './model.ts';
import type { Skyline } from './skyline.ts';
import { PER_NODE, type Unknowns } from './unknowns.ts';

/** Out of balance by no more than rounding: good enough to stop. */
const GOOD_BALANCE = 1e-12;
/** The first round is the answer; a short element beside a long one may need a second, which settles what is left. */
const ROUNDS = 4;

/**
 * The solver of load states of a factored frame. What is prescribed is put on first with all else at rest; the forces
 * then missing at the nodes are what the factored matrix answers.
 * @throws MisuseError (the solver)  for a node or element that is not there, a load that is not finite, a moment where
 *   only bars meet, a shift of a node that no support holds in u
 */
export function stateSolver(
  model: FrameModel,
  unknowns: Unknowns,
  elements: readonly ReadyElement[],
  matrix: Skyline,
): (load: LoadState) => FrameState {
  const { ends, carrier, equation, movement } = unknowns;
  const balance = readyBalance(model, unknowns);
  const heldInU = new Set(model.supports.filter((s) => s.u).map((s) => carrier[unknowns.indexOf(s.node)]!));
  const heldInTurn = new Set(model.supports.filter((s) => s.turn === true).map((s) => unknowns.indexOf(s.node)));

  const newMoves = listMaker(PER_NODE * model.nodes.length);
  const newForces = listMaker(PER_FORCE * elements.length);

  // working room, shared by all states
  const nodeLoads = new Float64Array(PER_NODE * model.nodes.length);
  const alongLoads = new Float64Array(PER_LOAD * elements.length);
  const unbalanced = new Float64Array(nodeLoads.length);
  const side = new Float64Array(unknowns.count);
  const stepMoves = new Float64Array(nodeLoads.length);
  const stepForces = new Float64Array(PER_FORCE * elements.length);
  const noLoads = new Float64Array(alongLoads.length);

  const readLoads = (load: LoadState): void => {
    nodeLoads.fill(0);
    for (const { node, u, w, turn = 0 } of load.nodes) {
      const at = unknowns.indexOf(node);
      nodeLoads[PER_NODE * carrier[at]!]! += u;
      nodeLoads[PER_NODE * carrier[at]! + 1]! += w;
      nodeLoads[PER_NODE * at + 2]! += turn;
      if (turn !== 0 && equation[PER_NODE * at + 2]! < 0 && !heldInTurn.has(at))
        throw new MisuseError('moment on a node that only bars meet', node, 'a node of a beam');
    }
    alongLoads.fill(0);
    for (const { element, fromU, toU, fromW, toW } of load.elements) {
      const i = unknowns.elementIndexOf(element);
      const { cos, sin } = elements[i]!;
      const at = PER_LOAD * i;
      alongLoads[at]! += fromW * cos - fromU * sin;
      alongLoads[at + 1]! += toW * cos - toU * sin;
      alongLoads[at + 2]! += fromU * cos + fromW * sin;
      alongLoads[at + 3]! += toU * cos + toW * sin;
    }
  };

  const shifted = (load: LoadState): Float64Array => {
    const moves = newMoves();
    for (const { node, u } of load.shifts ?? []) {
      const at = carrier[unknowns.indexOf(node)]!;
      if (!heldInU.has(at)) throw new MisuseError('shift of a node that is not held in u', node, 'a node held in u');
      carrier.forEach((other, i) => {
        if (other === at) moves[PER_NODE * i] = u;
      });
    }
    return moves;
  };

  /** Answers what is out of balance at the nodes, and adds the answer to moves and forces. */
  const answerUnbalanced = (moves: Float64Array, forces: Float64Array): void => {
    for (let row = 0; row < side.length; row++) side[row] = unbalanced[movement[row]!]!;
    matrix.solve(side);
    for (let i = 0; i < moves.length; i++) {
      stepMoves[i] = equation[i]! < 0 ? 0 : side[equation[i]!]!;
      moves[i]! += stepMoves[i]!;
    }
    // added as forces, not worked out again from the sum of moves: beside a short element a move cannot be written
    // finely enough to hold its force
    writeEndForces(stepForces, elements, ends, stepMoves, noLoads);
    for (let i = 0; i < forces.length; i++) forces[i]! += stepForces[i]!;
  };

  return (load) => {
    readLoads(load);
    const moves = shifted(load);
    const forces = newForces();
    writeEndForces(forces, elements, ends, moves, alongLoads);
    writeUnbalanced(unbalanced, elements, unknowns, nodeLoads, forces);
    let answer: Pick<FrameState, 'reactions' | 'residual'> = { reactions: noLoads, residual: Infinity };
    for (let round = 0; round < ROUNDS && answer.residual > GOOD_BALANCE; round++) {
      answerUnbalanced(moves, forces);
      writeUnbalanced(unbalanced, elements, unknowns, nodeLoads, forces);
      answer = balance(load, moves, unbalanced);
    }
    if (!Number.isFinite(answer.residual)) throw new MisuseError('loads of a frame', answer.residual, 'finite numbers');
    return { moves, forces, ...answer };
  };
}
