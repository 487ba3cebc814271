import type { Message } from '../message.ts';
import type { Step } from '../note.ts';
import type { SnowSurplus } from './snow-surplus.ts';

export type UnevenFigure = 'snowDrift' | 'snowDriftLee' | 'snowDriftWindward' | 'snowSliding' | 'snowUnbalanced';

/** Snow that lies unevenly over the whole roof, a case of its own: drifted, slid down or carried over a ridge. */
export interface UnevenSnow {
  readonly id: string;
  readonly words: Message;
  /** what lies evenly on a plane [psf of horizontal area] */
  readonly evenPsf: (planeId: string) => number;
  /** what lies on that in places */
  readonly surplus: SnowSurplus | null;
  /** what the site's list of figures says of it: most that lies on the even part, or in its place on one side */
  readonly figure: { readonly name: UnevenFigure; readonly psf: number };
  /** how all of it was worked out */
  readonly steps: () => readonly Step[];
}

/** All uneven snow of a roof, and why what is missing from it is missing. */
export interface UnevenRoofSnow {
  /** partial snow up and down the rafters is asked too */
  readonly isPartialAcross: boolean;
  readonly cases: readonly UnevenSnow[];
  /** does not apply here, and why */
  readonly leftOut: readonly Message[];
  /** would apply, but something that it needs was not given */
  readonly notGiven: readonly Message[];
}

export const NO_UNEVEN_SNOW: UnevenRoofSnow = { isPartialAcross: true, cases: [], leftOut: [], notGiven: [] };

/** What uneven snow starts from: site values and the snow that lies evenly. */
export interface EvenSnow {
  readonly groundSnowPsf: number;
  readonly is: number;
  readonly ce: number;
  /** balanced snow of the standard [psf] */
  readonly slopedPsf: number;
  /** the same, or the county's least where that is more [psf] */
  readonly balancedPsf: number;
}
