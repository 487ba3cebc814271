import type { LineMesh } from './line-mesh.ts';
import type { Chain } from './mesh-builder.ts';
import type { Superposition } from './superposition.ts';

/** One face of a node of a member: where it is and where its forces stand in a response. */
export interface SectionAt {
  /** from the member's start [in] */
  readonly atIn: number;
  readonly diameterIn: number;
  /** N (tension +), V, M (sagging +; on a post tension on its +x side +) */
  readonly axial: number;
  readonly shear: number;
  readonly moment: number;
  /** move of the node: u then w */
  readonly move: number;
}

/** Both faces of every element of a member, in order along it. */
export function sectionsOf(chain: Chain, layout: Superposition): readonly SectionAt[] {
  const sections: SectionAt[] = [];
  for (let i = 0; i < chain.count; i++) {
    const element = (chain.firstElement + i) * 6;
    for (const face of [0, 1] as const) {
      const at = element + face * 3;
      sections.push({
        atIn: chain.atIn[i + face]!,
        diameterIn: chain.diameterIn[i + face]!,
        axial: at,
        shear: at + 1,
        moment: at + 2,
        move: layout.movesAt + chain.nodes[i + face]! * 3,
      });
    }
  }
  return sections;
}

export type PostChain = LineMesh['posts'][number];

/** Where the push of brace j stands in a response (compression +). */
export const pushIndex = (layout: Superposition, j: number): number => layout.bracesAt + j;

/** Where a post's foot reactions on the frame stand: u, w, turn. */
export const footIndex = (layout: Superposition, post: PostChain): number => layout.reactionsAt + post.support * 3;

/** Where the force that holds the line sideways stands. */
export const holdIndex = (layout: Superposition, mesh: LineMesh): number => layout.reactionsAt + mesh.holdSupport * 3;

/** Force of a beam on a post top, along the post: down on the post + . With one beam it is the push in the post's top. */
export interface PinForce {
  readonly down: (values: Float64Array) => number;
  readonly along: (values: Float64Array) => number;
}

/**
 * Pin between a beam and a post top. Where one beam passes over, everything goes into the post's last element. Where two
 * beams meet, each seat takes what the other beam's end does not bring: a load hung on the pin itself counts for both
 * (safe side).
 */
export function pinForce(mesh: LineMesh, post: PostChain, beamId: string): PinForce {
  const top = (post.firstElement + post.count - 1) * 6;
  const other = post.beamNodes.find((b) => b.beamId !== beamId);
  // a post runs upward: its N (tension +) at the top is the pull of the beam on it
  if (!other) return { down: (v) => -v[top + 3]!, along: (v) => v[top + 4]! };
  const end = endShear(mesh, other);
  const own = endShear(
    mesh,
    post.beamNodes.find((b) => b.beamId === beamId)!,
  );
  return { down: (v) => -v[top + 3]! - end.sign * v[end.shear]!, along: (v) => v[own.axial]! };
}

/** Shear of a beam's end on a shared pin; V = dM/ds, so it is minus the support's push where the beam ends there. */
function endShear(
  mesh: LineMesh,
  at: PostChain['beamNodes'][number],
): { readonly shear: number; readonly axial: number; readonly sign: 1 | -1 } {
  const beam = mesh.beams.find((b) => b.memberId === at.beamId)!;
  const endsHere = beam.nodes[beam.nodes.length - 1] === at.node;
  const face = (beam.firstElement + (endsHere ? beam.count - 1 : 0)) * 6 + (endsHere ? 3 : 0);
  return { shear: face + 1, axial: face, sign: endsHere ? -1 : 1 };
}
