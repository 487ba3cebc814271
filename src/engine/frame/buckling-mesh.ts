import type { BarElement, BeamElement, FrameModel, FrameNode } from '../solver/model.ts';
import type { LineMesh } from './line-mesh.ts';
import type { Chain } from './mesh-builder.ts';

/** Elements between joints: five keep the buckling load of any stretch within half of a per cent. */
const LEAST_PIECES = 5;
/** Nothing this short is cut: it cannot bow, and the solver wants no slivers [in]. */
const SHORTEST_IN = 2;
/** Of a brace whose give is not known: it counts as rigid when forces are found, and here [lb]. */
const RIGID_LB = 1e9;

/** A frame line as its buckling sees it: finer than for forces, with the braces as bars. */
export interface BucklingMesh {
  readonly model: FrameModel;
  /** per element of a log: the element of the line's mesh that it is a part of, and which part, from 0 to 1 */
  readonly parts: readonly { readonly element: number; readonly from: number; readonly to: number }[];
  /** number of the first brace in the model; the others follow */
  readonly firstBrace: number;
  /** per post its nodes, from the foot to the pin under the beam */
  readonly postNodes: readonly (readonly number[])[];
  /** nodes of every beam and post, from its start */
  readonly memberNodes: readonly { readonly memberId: string; readonly nodes: readonly number[] }[];
}

/**
 * The line's mesh cut finer, its braces put in as bars, with the stiffness that stability is judged by.
 * @param stabilityShare  Emin over E of a member
 * @param free  nothing but the line itself holds it sideways
 */
export function bucklingMesh(
  mesh: LineMesh,
  stabilityShare: (memberId: string) => number,
  free: boolean,
): BucklingMesh {
  const nodes: FrameNode[] = [...mesh.model.nodes];
  const elements: (BeamElement | BarElement)[] = [];
  const parts: { element: number; from: number; to: number }[] = [];
  const joints = jointNodes(mesh);

  const addChain = (chain: Chain): readonly number[] => {
    const share = stabilityShare(chain.memberId);
    const pieces = piecesOf(chain, joints);
    const own = [chain.nodes[0]!];
    pieces.forEach((count, i) => {
      const element = chain.firstElement + i;
      const whole = mesh.model.elements[element]! as BeamElement;
      let from = mesh.model.nodes[chain.nodes[i]!]!;
      const end = mesh.model.nodes[chain.nodes[i + 1]!]!;
      const start = from;
      for (let k = 0; k < count; k++) {
        const span = { from: k / count, to: (k + 1) / count };
        const isLast = k === count - 1;
        const to = isLast ? end : nodeBetween(`${whole.id}/${k}`, start, end, span.to);
        if (!isLast) nodes.push(to);
        own.push(isLast ? chain.nodes[i + 1]! : nodes.length - 1);
        elements.push(partOf(whole, `${whole.id}/${k}`, share, from.id, to.id, span));
        parts.push({ element, ...span });
        from = to;
      }
    });
    return own;
  };
  const beamNodes = mesh.beams.map(addChain);
  const postNodes = mesh.posts.map(addChain);
  const firstBrace = elements.length;
  for (const { brace, postNode, topNode, flexibility } of mesh.braces) {
    const [a, b] = [mesh.model.nodes[postNode]!, mesh.model.nodes[topNode]!];
    const EA = flexibility > 0 ? (Math.hypot(b.u - a.u, b.w - a.w) / flexibility) * stabilityShare(brace.id) : RIGID_LB;
    elements.push({ kind: 'bar', id: `brace ${brace.id}`, from: a.id, to: b.id, EA });
  }
  const memberNodes = [
    ...mesh.beams.map(({ memberId }, i) => ({ memberId, nodes: beamNodes[i]! })),
    ...mesh.posts.map(({ memberId }, i) => ({ memberId, nodes: postNodes[i]! })),
  ];
  const supports = mesh.model.supports.filter((_, i) => !free || i !== mesh.holdSupport);
  return { model: { nodes, elements, supports }, parts, firstBrace, postNodes, memberNodes };
}

/** Where members meet, by node: feet, pins under a beam, ends of braces. Seats and places of loads are not joints. */
function jointNodes({ posts, braces }: LineMesh): ReadonlySet<number> {
  return new Set([
    ...posts.flatMap((p) => [p.nodes[0]!, p.nodes[p.count]!, ...p.beamNodes.map((b) => b.node)]),
    ...braces.flatMap((b) => [b.postNode, b.topNode]),
  ]);
}

/** How many parts each element of a chain is cut into, so that no part is longer than its share of a stretch. */
function piecesOf(chain: Chain, joints: ReadonlySet<number>): readonly number[] {
  const pieces: number[] = [];
  let first = 0;
  for (let i = 0; i < chain.count; i++) {
    if (i < chain.count - 1 && !joints.has(chain.nodes[i + 1]!)) continue;
    const longest = Math.max(SHORTEST_IN, (chain.atIn[i + 1]! - chain.atIn[first]!) / LEAST_PIECES);
    for (; first <= i; first++)
      pieces.push(Math.max(1, Math.ceil((chain.atIn[first + 1]! - chain.atIn[first]!) / longest - 1e-9)));
  }
  return pieces;
}

const nodeBetween = (id: string, a: FrameNode, b: FrameNode, t: number): FrameNode => ({
  id,
  u: a.u + t * (b.u - a.u),
  w: a.w + t * (b.w - a.w),
});

function partOf(
  whole: BeamElement,
  id: string,
  share: number,
  from: string,
  to: string,
  span: { readonly from: number; readonly to: number },
): BeamElement {
  const { section } = whole;
  const E = whole.E * share;
  if (section.kind === 'prismatic') return { kind: 'beam', id, from, to, E, section };
  const at = (t: number): number => section.fromDiameterIn + t * (section.toDiameterIn - section.fromDiameterIn);
  return {
    kind: 'beam',
    id,
    from,
    to,
    E,
    section: { kind: 'round', fromDiameterIn: at(span.from), toDiameterIn: at(span.to) },
  };
}
