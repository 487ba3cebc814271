import { MisuseError } from '../errors.ts';
import { jointsOf, type Joints } from './joints.ts';
import type { FrameModel, Support } from './model.ts';
import { narrowOrder } from './numbering.ts';

/** Three movements of a node: u, w, turn. Movement `3 * node + 2` is the turn of a node. */
export const PER_NODE = 3;

/** Which movements of the frame are unknown, and in which order they are solved. */
export interface Unknowns {
  readonly indexOf: Joints['indexOf'];
  readonly carrier: Joints['carrier'];
  /** @throws MisuseError  for an element that is not there */
  readonly elementIndexOf: (elementId: string) => number;
  /** node indexes of each element's start and end, one pair after the other */
  readonly ends: Int32Array;
  readonly count: number;
  /** per node u, w, turn: number of the equation; -1 where held, or where nothing could ever turn the node */
  readonly equation: Int32Array;
  /** per equation: the movement it stands for, of the node that carries it */
  readonly movement: Int32Array;
}

/** Stiffness of a support against turning; infinite when fixed [lb·in/rad]. */
export function turnStiffness(turn: Support['turn']): number {
  return typeof turn === 'boolean' ? (turn ? Infinity : 0) : turn.lbInPerRad;
}

const HELD = 1;
const IDLE = 2;

/** @throws MisuseError  for an id used twice or unknown, when one movement is held by two supports, or a turn stiffness is below zero */
export function unknownsOf(model: FrameModel): Unknowns {
  const { indexOf, carrier } = jointsOf(model);
  const ends = new Int32Array(2 * model.elements.length);
  model.elements.forEach((element, i) => {
    ends[2 * i] = indexOf(element.from);
    ends[2 * i + 1] = indexOf(element.to);
  });

  const role = roles(model, indexOf, carrier, ends);
  const equation = new Int32Array(PER_NODE * model.nodes.length).fill(-1);
  const movement: number[] = [];
  for (const node of nodeOrder(carrier, ends)) {
    for (let k = 0; k < PER_NODE; k++) {
      const own = PER_NODE * node + k;
      if (role[own] || (k < 2 && carrier[node] !== node)) continue;
      equation[own] = movement.length;
      movement.push(own);
    }
  }
  carrier.forEach((at, node) => {
    equation[PER_NODE * node] = equation[PER_NODE * at]!;
    equation[PER_NODE * node + 1] = equation[PER_NODE * at + 1]!;
  });
  const elementIndexOf = elementIndexes(model);
  return {
    indexOf,
    carrier,
    elementIndexOf,
    ends,
    count: movement.length,
    equation,
    movement: Int32Array.from(movement),
  };
}

function elementIndexes({ elements }: FrameModel): (elementId: string) => number {
  const byId = new Map<string, number>();
  elements.forEach(({ id }, i) => {
    if (byId.has(id)) throw new MisuseError('two elements with one id', id, 'each id once');
    byId.set(id, i);
  });
  return (elementId) => {
    const i = byId.get(elementId);
    if (i === undefined) throw new MisuseError('unknown element', elementId, 'an element of the frame');
    return i;
  };
}

function roles(
  model: FrameModel,
  indexOf: Joints['indexOf'],
  carrier: readonly number[],
  ends: Int32Array,
): Uint8Array {
  const role = new Uint8Array(PER_NODE * model.nodes.length);
  for (let node = 0; node < model.nodes.length; node++) role[PER_NODE * node + 2] = IDLE;
  model.elements.forEach((element, i) => {
    if (element.kind === 'bar') return;
    role[PER_NODE * ends[2 * i]! + 2] = 0;
    role[PER_NODE * ends[2 * i + 1]! + 2] = 0;
  });
  const hold = (own: number, support: Support) => {
    if (role[own] === HELD) throw new MisuseError('movement held twice', support.node, 'one support for each movement');
    role[own] = HELD;
  };
  for (const support of model.supports) {
    const node = indexOf(support.node);
    const stiffness = turnStiffness(support.turn);
    if (!(stiffness >= 0)) throw new MisuseError('turn stiffness', stiffness, 'zero or more');
    if (support.u) hold(PER_NODE * carrier[node]!, support);
    if (support.w) hold(PER_NODE * carrier[node]! + 1, support);
    if (stiffness === Infinity) hold(PER_NODE * node + 2, support);
    else if (stiffness > 0) role[PER_NODE * node + 2] = 0;
  }
  return role;
}

/** Nodes in an order that keeps the matrix narrow; a hinged node directly beside the one it shares u and w with. */
function nodeOrder(carrier: readonly number[], ends: Int32Array): number[] {
  const neighbours = carrier.map((): Set<number> => new Set());
  const sharing = carrier.map((): number[] => []);
  carrier.forEach((at, node) => sharing[at]!.push(node));
  for (let i = 0; i < ends.length; i += 2) {
    const from = carrier[ends[i]!]!;
    const to = carrier[ends[i + 1]!]!;
    if (from === to) continue;
    neighbours[from]!.add(to);
    neighbours[to]!.add(from);
  }
  return narrowOrder(neighbours.map((set) => [...set])).flatMap((joint) => sharing[joint]!);
}
