import type { SawnStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import type { Note } from '../../note.ts';
import { beamStabilityFactor } from '../wood/beam-stability.ts';

/** CL of one stretch by load duration, and whether it is too slender for the rule. */
export type StretchStability = (CD: number, note?: Note) => { readonly CL: number; readonly outside: boolean };

const HELD = { CL: 1, outside: false } as const;

/** A log cannot roll over: no deeper than wide. @source NDS 3.3.3.1 */
export const roundStability: StretchStability = () => HELD;

/**
 * Beam stability factor of a sawn beam over one stretch. Neither edge counts as held between the posts: a strip that
 * rafters stand on is shimmed, not fixed sideways to anything stiff (safe side). An overhang counts as loaded at its tip.
 * @source NDS 3.3.3; Table 3.3.3, last line for spans
 */
export function sawnStability(
  { breadthIn, depthIn }: SawnStick,
  values: DesignValues,
  kind: 'span' | 'overhang',
  lengthIn: number,
): StretchStability {
  return (CD, note) =>
    beamStabilityFactor(
      {
        breadthIn,
        depthIn,
        unbracedLengthIn: lengthIn,
        effectiveLengthRule: kind === 'span' ? 'any' : 'cantileverTip',
        EminPsi: values.EminPsi,
        FbStarPsi: values.FbPsi * CD,
      },
      note,
    );
}
