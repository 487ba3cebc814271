import type { RoundStick, SawnStick } from '../../geometry/shelter.ts';
import { repetitiveFactor } from '../../material/repetitive-factor.ts';
import type { DesignValues } from '../../material/values.ts';
import type { Note } from '../../note.ts';
import { beamStabilityFactor, type LoadedLength } from '../wood/beam-stability.ts';
import { adjustedBending } from '../wood/bending.ts';
import { purlinsOn, raftersOn, type RoofCheckContext } from './context.ts';
import type { RafterLoading, Segment } from './rafter-loading.ts';

/** Which edge the moment presses together. */
export type PressedEdge = 'top' | 'bottom';

/** Allowable bending of a segment for each pressed edge; remembered by load duration, since few durations occur. */
export class SegmentBending {
  readonly #known = new Map<string, { readonly FbPsi: number; readonly rolls: boolean }>();
  readonly #repetitive: number;
  readonly #topHeldIn: number | null;

  constructor(
    context: RoofCheckContext,
    { rafter, plane }: RafterLoading,
    private readonly stick: RoundStick | SawnStick,
    private readonly values: DesignValues,
    private readonly segment: Segment,
  ) {
    const count = raftersOn(context, rafter.plane).length;
    this.#repetitive = stick.kind === 'sawn' ? repetitiveFactor(stick, rafter.spacingIn, count) : 1;
    const lengthIn = segment.toIn - segment.fromIn;
    const gapIn = greatestGap(purlinsOn(context, rafter.plane).map((p) => p.upSlopeIn));
    this.#topHeldIn = plane.sheetOn === 'rafters' ? null : Math.min(gapIn, lengthIn);
  }

  allowable(edge: PressedEdge, CD: number, note?: Note): number {
    return note ? this.#judge(edge, CD, note).FbPsi : this.#remembered(edge, CD).FbPsi;
  }

  rollsOver(edge: PressedEdge, CD: number): boolean {
    return this.#remembered(edge, CD).rolls;
  }

  #remembered(edge: PressedEdge, CD: number): { readonly FbPsi: number; readonly rolls: boolean } {
    const key = `${edge} ${CD}`;
    const known = this.#known.get(key);
    if (known) return known;
    const answer = this.#judge(edge, CD);
    this.#known.set(key, answer);
    return answer;
  }

  #judge(edge: PressedEdge, CD: number, note?: Note): { readonly FbPsi: number; readonly rolls: boolean } {
    const { FbPsi, EminPsi } = this.values;
    const held = edge === 'top' ? this.#topHeldIn : this.segment.toIn - this.segment.fromIn;
    const { CL, outside: rolls } =
      this.stick.kind === 'round' || held === null
        ? { CL: 1, outside: false }
        : beamStabilityFactor(
            {
              breadthIn: this.stick.breadthIn,
              depthIn: this.stick.depthIn,
              unbracedLengthIn: held,
              effectiveLengthRule: this.#lengthRule(edge),
              EminPsi,
              FbStarPsi: FbPsi * CD * this.#repetitive,
            },
            note,
          );
    return { FbPsi: adjustedBending(FbPsi, CD, CL, this.#repetitive, note), rolls };
  }

  #lengthRule(edge: PressedEdge): LoadedLength {
    return this.segment.kind === 'overhang' && edge === 'bottom' ? 'cantileverUniform' : 'any';
  }
}

/** Widest gap between neighbours; without two of them nothing holds the edge. */
export function greatestGap(places: readonly number[]): number {
  const sorted = [...places].sort((a, b) => a - b);
  return sorted.length < 2 ? Infinity : Math.max(...sorted.slice(1).map((at, i) => at - sorted[i]!));
}
