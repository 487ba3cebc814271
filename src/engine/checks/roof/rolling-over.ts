import type { SawnStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import type { Note } from '../../note.ts';
import { beamStabilityFactor, effectiveBeamLength, type LoadedLength } from '../wood/beam-stability.ts';

/** How far a stick that is bent on edge is from rolling over. */
export interface Rolling {
  readonly CL: number;
  /** stress at which it would buckle sideways [psi]; Infinity where it cannot */
  readonly FbE: number;
  /** its slenderness ratio is past the clause */
  readonly outside: boolean;
}

/** Held along its pressed edge, or no deeper than wide. */
export const HELD: Rolling = { CL: 1, FbE: Infinity, outside: false };

/**
 * A stick deeper than wide whose pressed edge is held at places only.
 * @param unbracedLengthIn between those places [in]
 * @source NDS 3.3.3
 */
export function rollingOver(
  { breadthIn, depthIn }: Pick<SawnStick, 'breadthIn' | 'depthIn'>,
  { FbPsi, EminPsi }: Pick<DesignValues, 'FbPsi' | 'EminPsi'>,
  unbracedLengthIn: number,
  rule: LoadedLength,
  CD: number,
  note?: Note,
): Rolling {
  const factor = beamStabilityFactor(
    { breadthIn, depthIn, unbracedLengthIn, effectiveLengthRule: rule, EminPsi, FbStarPsi: FbPsi * CD },
    note,
  );
  const le = effectiveBeamLength(rule, unbracedLengthIn, depthIn);
  return { ...factor, FbE: (1.2 * EminPsi * breadthIn * breadthIn) / (le * depthIn) };
}
