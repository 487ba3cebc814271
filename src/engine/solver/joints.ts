import { MisuseError } from '../errors.ts';
import type { FrameModel, FrameNode } from './model.ts';

/** Hinged nodes lie on the node they share u and w with; a thousandth of an inch is a fault of the caller. */
const SAME_PLACE_IN = 1e-3;

/** Nodes by id, and for each the node whose u and w it moves with (itself unless hinged to another). */
export interface Joints {
  readonly indexOf: (nodeId: string) => number;
  /** per node: index of the node that carries its u and w */
  readonly carrier: readonly number[];
}

/** @throws MisuseError  for an id used twice, a node that is not there, a hinge onto itself or between two places */
export function jointsOf(model: FrameModel): Joints {
  const byId = new Map<string, number>();
  model.nodes.forEach((node, i) => {
    if (byId.has(node.id)) throw new MisuseError('two nodes with one id', node.id, 'each id once');
    if (!Number.isFinite(node.u) || !Number.isFinite(node.w))
      throw new MisuseError('place of a node', node.id, 'finite u and w');
    byId.set(node.id, i);
  });
  const indexOf = (nodeId: string): number => {
    const i = byId.get(nodeId);
    if (i === undefined) throw new MisuseError('unknown node', nodeId, 'a node of the frame');
    return i;
  };
  const carrierOf = (start: FrameNode): number => {
    let node = start;
    for (let hops = 0; hops <= model.nodes.length; hops++) {
      if (node.hingedTo === undefined) {
        if (Math.hypot(node.u - start.u, node.w - start.w) > SAME_PLACE_IN)
          throw new MisuseError('hinge between two places', start.id, `the place of ${node.id}`);
        return indexOf(node.id);
      }
      node = model.nodes[indexOf(node.hingedTo)]!;
    }
    throw new MisuseError('hinges in a circle', start.id, 'a node that is hinged to no other');
  };
  return { indexOf, carrier: model.nodes.map(carrierOf) };
}
