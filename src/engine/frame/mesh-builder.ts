import type { PostGeometry, Stick } from '../geometry/shelter.ts';
import type { BarElement, BeamElement, FrameModel, FrameNode, Support } from '../solver/model.ts';

/** Places closer together than this share a node [in]; the solver wants elements no shorter than 1/32. */
export const SAME_PLACE_IN = 1 / 16;

/** One member of the frame as a chain of elements, from its start. */
export interface Chain {
  readonly memberId: string;
  readonly role: 'beam' | 'post';
  /** index of its first element in the model, and how many */
  readonly firstElement: number;
  readonly count: number;
  /** distance from the member's start at each node of the chain [in] */
  readonly atIn: readonly number[];
  readonly nodes: readonly number[];
  /** diameter at each node; depth of a sawn stick [in] */
  readonly diameterIn: readonly number[];
}

interface ChainPoint {
  readonly at: number;
  readonly u: number;
  readonly w: number;
  readonly diameterIn: number;
}

/** Collects nodes, elements and supports of one line. */
export class MeshBuilder {
  readonly #nodes: FrameNode[] = [];
  readonly #elements: (BeamElement | BarElement)[] = [];
  readonly #supports: Support[] = [];

  chain(memberId: string, role: 'beam' | 'post', E: number, stick: Stick | null, points: readonly ChainPoint[]): Chain {
    const firstElement = this.#elements.length;
    const nodes = points.map((p, i) => {
      this.#nodes.push({ id: `${memberId}#${i}`, u: p.u, w: p.w });
      return this.#nodes.length - 1;
    });
    for (let i = 1; i < points.length; i++) {
      this.#elements.push({
        kind: 'beam',
        id: `${memberId}#${i - 1}-${i}`,
        from: `${memberId}#${i - 1}`,
        to: `${memberId}#${i}`,
        E,
        section: sectionOf(stick, E, points[i - 1]!.diameterIn, points[i]!.diameterIn),
      });
    }
    return {
      memberId,
      role,
      firstElement,
      count: points.length - 1,
      atIn: points.map((p) => p.at),
      nodes,
      diameterIn: points.map((p) => p.diameterIn),
    };
  }

  nodeAt(chain: Chain, at: number): number | null {
    const i = chain.atIn.findIndex((a) => Math.abs(a - at) <= SAME_PLACE_IN);
    return i < 0 ? null : chain.nodes[i]!;
  }

  /** Unit vector from one node to another. */
  direction(from: number, to: number): { readonly du: number; readonly dw: number } {
    const u = this.#nodes[to]!.u - this.#nodes[from]!.u;
    const w = this.#nodes[to]!.w - this.#nodes[from]!.w;
    const length = Math.hypot(u, w);
    return { du: u / length, dw: w / length };
  }

  /** A post turns freely at a beam, as a rule under it; a second beam that meets there is on the same pin. */
  hinge(onPost: number, beamNodes: readonly number[]): void {
    const [first, ...others] = beamNodes;
    for (const node of [onPost, ...others])
      this.#nodes[node] = { ...this.#nodes[node]!, hingedTo: this.#nodes[first!]!.id };
  }

  support(node: number, post: PostGeometry): number {
    const fixity = post.foot.fixity.along;
    const turn = fixity === 'pinned' ? false : fixity === 'fixed' ? true : { lbInPerRad: fixity.lbInPerRad };
    this.#supports.push({ node: this.#nodes[node]!.id, u: true, w: true, turn });
    return this.#supports.length - 1;
  }

  hold(node: number): number {
    this.#supports.push({ node: this.#nodes[node]!.id, u: true, w: false, turn: false });
    return this.#supports.length - 1;
  }

  model(): FrameModel {
    return { nodes: this.#nodes, elements: this.#elements, supports: this.#supports };
  }
}

/** A typed section gives only EI; its axial stiffness is taken as that of a 100 in2 stick (it carries almost no push). */
const TYPED_AREA_IN2 = 100;

function sectionOf(
  stick: Stick | null,
  E: number,
  fromDiameterIn: number,
  toDiameterIn: number,
): BeamElement['section'] {
  if (stick?.kind === 'sawn')
    return {
      kind: 'prismatic',
      areaIn2: stick.breadthIn * stick.depthIn,
      inertiaIn4: (stick.breadthIn * stick.depthIn ** 3) / 12,
    };
  if (stick?.kind === 'typed') return { kind: 'prismatic', areaIn2: TYPED_AREA_IN2, inertiaIn4: stick.EIPsiIn4 / E };
  return { kind: 'round', fromDiameterIn, toDiameterIn };
}
