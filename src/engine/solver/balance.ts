import { listMaker } from '../lists.ts';
import type { FrameModel, FrameState, LoadState } from './model.ts';
import { PER_NODE, turnStiffness, type Unknowns } from './unknowns.ts';

/** Sums of forces u and w and of their moment about the frame's first node, and of their sizes. */
class ForceSum {
  u = 0;
  w = 0;
  moment = 0;
  size = 0;
  add(u: number, w: number, moment: number): void {
    this.u += u;
    this.w += w;
    this.moment += moment;
  }
}

/**
 * Reactions, and how far the solved state is out of balance: the largest of the three sums over the whole frame and of
 * what is left at any node, over the sum of absolute loads. Moments count as moment over the size of the frame. In a
 * state with support shifts the reactions count as loads.
 * @param unbalanced  loads on each node less what the elements take
 */
export function readyBalance(
  model: FrameModel,
  unknowns: Unknowns,
): (load: LoadState, moves: Float64Array, unbalanced: Float64Array) => Pick<FrameState, 'reactions' | 'residual'> {
  const { carrier, indexOf, elementIndexOf, ends, equation } = unknowns;
  const size = frameSize(model);
  const origin = model.nodes[0] ?? { u: 0, w: 0 };
  const armU = model.nodes.map((node) => node.u - origin.u);
  const armW = model.nodes.map((node) => node.w - origin.w);
  const supports = model.supports.map((support) => {
    const node = indexOf(support.node);
    const stiffness = turnStiffness(support.turn);
    return {
      node,
      u: support.u ? PER_NODE * carrier[node]! : -1,
      w: support.w ? PER_NODE * carrier[node]! + 1 : -1,
      turn: PER_NODE * node + 2,
      turnHeld: stiffness === Infinity,
      turnSpring: stiffness === Infinity ? 0 : stiffness,
    };
  });

  const newReactions = listMaker(PER_NODE * supports.length);

  const addLoads = (sum: ForceSum, load: LoadState): void => {
    for (const { node, u, w, turn = 0 } of load.nodes) {
      const at = indexOf(node);
      sum.add(u, w, armU[at]! * w - armW[at]! * u + turn);
      sum.size += Math.abs(u) + Math.abs(w) + Math.abs(turn) / size;
    }
    for (const { element, fromU, toU, fromW, toW } of load.elements) {
      const i = elementIndexOf(element);
      const from = ends[2 * i]!;
      const to = ends[2 * i + 1]!;
      const du = armU[to]! - armU[from]!;
      const dw = armW[to]! - armW[from]!;
      const L = Math.hypot(du, dw);
      const u = (L * (fromU + toU)) / 2;
      const w = (L * (fromW + toW)) / 2;
      // a load straight from a to b has its moment about the start L(a + 2b)/6 times the arm to the end
      const moment =
        armU[from]! * w - armW[from]! * u + (du * L * (fromW + 2 * toW)) / 6 - (dw * L * (fromU + 2 * toU)) / 6;
      sum.add(u, w, moment);
      sum.size += (L * (Math.abs(fromU) + Math.abs(toU) + Math.abs(fromW) + Math.abs(toW))) / 2;
    }
  };

  return (load, moves, unbalanced) => {
    const reactions = newReactions();
    const sum = new ForceSum();
    addLoads(sum, load);
    let worst = 0;
    supports.forEach(({ node, u, w, turn, turnHeld, turnSpring }, i) => {
      const ru = u < 0 ? 0 : -unbalanced[u]!;
      const rw = w < 0 ? 0 : -unbalanced[w]!;
      const rt = turnHeld ? -unbalanced[turn]! : -turnSpring * moves[turn]!;
      reactions[PER_NODE * i] = ru;
      reactions[PER_NODE * i + 1] = rw;
      reactions[PER_NODE * i + 2] = rt;
      sum.add(ru, rw, armU[node]! * rw - armW[node]! * ru + rt);
      if (load.shifts?.length) sum.size += Math.abs(ru) + Math.abs(rw) + Math.abs(rt) / size;
      // what a spring takes is no longer out of balance
      unbalanced[turn]! += rt;
    });
    for (let i = 0; i < equation.length; i++) {
      if (equation[i]! < 0) continue;
      // u and w of a hinged node stand with the node that carries them; a number that is none stays one
      worst = Math.max(worst, Math.abs(unbalanced[i]!) / (i % PER_NODE === 2 ? size : 1));
    }
    worst = Math.max(worst, Math.abs(sum.u), Math.abs(sum.w), Math.abs(sum.moment) / size);
    return { reactions, residual: sum.size > 0 ? worst / sum.size : worst };
  };
}

/** Larger side of the rectangle round all nodes: makes turns comparable with shifts [in]. */
function frameSize(model: FrameModel): number {
  const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  return Math.max(span(model.nodes.map((n) => n.u)), span(model.nodes.map((n) => n.w))) || 1;
}
