import type { LineCase, SlopeLoad } from '../loads/cases.ts';
import type { ElementLoad, LoadState, NodeLoad } from '../solver/model.ts';
import type { LineMesh } from './line-mesh.ts';
import { SAME_PLACE_IN, type Chain } from './mesh-builder.ts';

/** A load case of the line as loads on nodes and elements of its mesh. */
export function loadState(mesh: LineMesh, lineCase: LineCase): LoadState {
  const nodes: NodeLoad[] = [];
  const elements: ElementLoad[] = [];
  const nodeId = (index: number): string => mesh.model.nodes[index]!.id;

  for (const point of lineCase.points) {
    const node = beamNodeAt(mesh, point.xIn);
    if (node !== null) nodes.push({ node: nodeId(node), u: point.alongLb, w: -point.downLb });
  }
  if (lineCase.onBeam.length > 1)
    for (const beam of mesh.beams) elements.push(...beamLoads(mesh, beam, lineCase.onBeam));
  for (const part of lineCase.onSlope ?? [])
    for (const beam of mesh.beams) elements.push(...slopeLoads(mesh, beam, part));
  for (const on of lineCase.onPosts) {
    const post = mesh.posts.find((p) => p.memberId === on.postId);
    if (!post) continue;
    const from = post.atIn[0]!;
    const span = post.atIn[post.atIn.length - 1]! - from;
    const down = (at: number): number =>
      on.footDownLbPerIn + ((at - from) / span) * (on.topDownLbPerIn - on.footDownLbPerIn);
    for (let i = 0; i < post.count; i++) {
      elements.push({
        element: mesh.model.elements[post.firstElement + i]!.id,
        fromU: on.alongLbPerIn,
        toU: on.alongLbPerIn,
        fromW: -down(post.atIn[i]!),
        toW: -down(post.atIn[i + 1]!),
      });
    }
  }
  for (const on of lineCase.atPosts) {
    const post = mesh.posts.find((p) => p.memberId === on.postId);
    const node = post && nearestNode(mesh, post, on.zIn);
    if (node !== undefined) nodes.push({ node: nodeId(node), u: on.alongLb, w: -on.downLb });
  }
  for (const on of lineCase.onBraces) {
    const link = mesh.braces.find((b) => b.brace.id === on.braceId);
    if (!link) continue;
    for (const node of [link.postNode, link.topNode])
      nodes.push({ node: nodeId(node), u: on.alongLb / 2, w: -on.downLb / 2 });
  }
  return { nodes, elements };
}

/** The node of a chain that lies nearest to a level; the mesh has one at every load on a post. */
function nearestNode(mesh: LineMesh, chain: Chain, zIn: number): number {
  const off = (node: number): number => Math.abs(mesh.model.nodes[node]!.w - zIn);
  return chain.nodes.reduce((best, node) => (off(node) < off(best) ? node : best));
}

/** A pound of push in a brace: its ends are pressed apart, the brace itself is not in the mesh. */
export function unitPush(mesh: LineMesh, j: number): LoadState {
  const link = mesh.braces[j]!;
  return {
    nodes: [
      { node: mesh.model.nodes[link.postNode]!.id, u: -link.du, w: -link.dw },
      { node: mesh.model.nodes[link.topNode]!.id, u: link.du, w: link.dw },
    ],
    elements: [],
  };
}

export function unitShift(mesh: LineMesh): LoadState {
  return { nodes: [], elements: [], shifts: [{ node: mesh.model.nodes[mesh.holdNode]!.id, u: 1 }] };
}

/** Node on a beam at x; where two beams meet, the first (they share the pin). */
function beamNodeAt(mesh: LineMesh, xIn: number): number | null {
  for (const beam of mesh.beams) {
    for (const node of beam.nodes) if (Math.abs(mesh.model.nodes[node]!.u - xIn) <= SAME_PLACE_IN) return node;
  }
  return null;
}

function beamLoads(mesh: LineMesh, beam: Chain, profile: LineCase['onBeam']): readonly ElementLoad[] {
  const first = profile[0]!.xIn;
  const last = profile[profile.length - 1]!.xIn;
  const result: ElementLoad[] = [];
  for (let i = 0; i < beam.count; i++) {
    const element = mesh.model.elements[beam.firstElement + i]!;
    const from = mesh.model.nodes[beam.nodes[i]!]!.u;
    const to = mesh.model.nodes[beam.nodes[i + 1]!]!.u;
    if (from < first - SAME_PLACE_IN || to > last + SAME_PLACE_IN) continue;
    result.push({
      element: element.id,
      fromU: 0,
      toU: 0,
      fromW: -profileAt(profile, from),
      toW: -profileAt(profile, to),
    });
  }
  return result;
}

/** A part of the load on every element whose middle lies on it; the mesh has a node wherever a part ends. */
function slopeLoads(mesh: LineMesh, beam: Chain, { from, to }: SlopeLoad): readonly ElementLoad[] {
  const shareAt = (x: number): number => Math.min(1, Math.max(0, (x - from.xIn) / (to.xIn - from.xIn)));
  const along = (x: number): number => from.alongLbPerIn + shareAt(x) * (to.alongLbPerIn - from.alongLbPerIn);
  const up = (x: number): number => -from.downLbPerIn - shareAt(x) * (to.downLbPerIn - from.downLbPerIn);
  const result: ElementLoad[] = [];
  for (let i = 0; i < beam.count; i++) {
    const start = mesh.model.nodes[beam.nodes[i]!]!;
    const end = mesh.model.nodes[beam.nodes[i + 1]!]!;
    const middle = (start.u + end.u) / 2;
    if (middle < from.xIn || middle > to.xIn) continue;
    const { id } = mesh.model.elements[beam.firstElement + i]!;
    // from inches on the level to inches of the element
    const cos = (end.u - start.u) / Math.hypot(end.u - start.u, end.w - start.w);
    result.push({
      element: id,
      fromU: along(start.u) * cos,
      toU: along(end.u) * cos,
      fromW: up(start.u) * cos,
      toW: up(end.u) * cos,
    });
  }
  return result;
}

function profileAt(profile: LineCase['onBeam'], xIn: number): number {
  for (let i = 1; i < profile.length; i++) {
    const a = profile[i - 1]!;
    const b = profile[i]!;
    if (xIn <= b.xIn + 1e-9)
      return a.downLbPerIn + ((xIn - a.xIn) / (b.xIn - a.xIn || 1)) * (b.downLbPerIn - a.downLbPerIn);
  }
  return profile[profile.length - 1]!.downLbPerIn;
}
