import type { LoadDuration } from '../../data/loads/combinations.ts';
import type { Message } from '../message.ts';

/**
 * Factors on cases. Dead is one factor on all of it: `heavy` takes every piece at its heavy weight; `light` is the
 * uplift rule, piece by piece (BASIS of the uplift combination in DEVELOPERS.md).
 */
export interface Combination {
  readonly id: string;
  /** strength; sag at once; sag that comes after years ((Kcr - 1) x dead + live or snow) */
  readonly purpose: 'strength' | 'sag' | 'sagLongTerm';
  readonly words: Message;
  readonly dead: { readonly factor: number; readonly weight: 'heavy' | 'light' };
  readonly factors: readonly { readonly caseId: string; readonly factor: number }[];
  readonly duration: LoadDuration;
  readonly durationFactor: number;
  /** no wind, no notional sway, no earthquake */
  readonly gravityOnly: boolean;
  readonly swaysAlong: boolean;
}
