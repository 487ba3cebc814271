import { lowestMode } from './line-buckling.ts';
import type { LineFrame, LineResponse } from './line-frame.ts';

/** A log as it stands and how its axis moves when the line buckles; the farthest move of the line is 1. */
export interface BuckledMember {
  readonly memberId: string;
  readonly points: readonly {
    readonly xIn: number;
    readonly zIn: number;
    readonly moveX: number;
    readonly moveZ: number;
  }[];
}

/** In which combination a line buckles soonest, and how it then looks. */
export interface BuckledLine {
  readonly combinationId: string;
  readonly braceModel: LineResponse['braceModel'];
  /** so many times the loads of that combination, at least */
  readonly factor: number;
  readonly members: readonly BuckledMember[];
}

/** The response that buckles soonest, drawn out; null where nothing is pushed. */
export function buckledLine(frame: LineFrame, stabilityShare: (memberId: string) => number): BuckledLine | null {
  let soonest: LineResponse | null = null;
  for (const r of frame.responses) {
    if (!r.buckling || r.braceModel === 'idle' || !Number.isFinite(r.buckling.factor)) continue;
    if (!soonest || r.buckling.factor < soonest.buckling!.factor) soonest = r;
  }
  if (!soonest) return null;
  const { mesh, mode } = lowestMode(frame, stabilityShare, soonest);
  const { nodes } = mesh.model;
  return {
    combinationId: soonest.combination.id,
    braceModel: soonest.braceModel,
    factor: soonest.buckling!.factor,
    members: mesh.memberNodes.map(({ memberId, nodes: own }) => ({
      memberId,
      points: own.map((n) => ({
        xIn: nodes[n]!.u,
        zIn: nodes[n]!.w,
        moveX: mode.moves[3 * n]!,
        moveZ: mode.moves[3 * n + 1]!,
      })),
    })),
  };
}
