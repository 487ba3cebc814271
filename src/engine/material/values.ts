import type { Message } from '../message.ts';
import type { Step } from '../note.ts';

/** How far design values can be trusted, in the three phrases the sheet knows. */
export type ValuesBasis = 'derived' | 'poles' | 'typed' | 'graded' | 'homeSawn';

/** Values by the symbols under which their steps are asked for. */
export type ValueSymbol = 'Fb' | 'Fv' | 'Fcp' | 'Fc' | 'Ft' | 'E' | 'Emin';

/**
 * Reference design values of one stick [psi], before duration, stability and section factors; wet service where it
 * applies is already in (its steps say so). `cForColumns` is c of the column-stability factor.
 */
export interface DesignValues {
  readonly basis: ValuesBasis;
  readonly FbPsi: number;
  readonly FvPsi: number;
  readonly FcPerpPsi: number;
  readonly FcPsi: number;
  readonly FtPsi: number;
  readonly EPsi: number;
  readonly EminPsi: number;
  readonly cForColumns: 0.8 | 0.85;
  /** specific gravity for fasteners */
  readonly specificGravity: number;
  /** strength ratio in bending and compression used, null where it does not apply */
  readonly strengthRatioBending: number | null;
  readonly strengthRatioCompression: number | null;
  /** how a value came about, told anew whenever it is asked */
  readonly steps: (of: ValueSymbol) => readonly Step[];
  /** cautions that go on screen and sheet */
  readonly cautions: readonly Message[];
}

/** Either values, or why there are none: a species without a needed value, a log past the method. */
export type MaterialAnswer =
  | { readonly ok: true; readonly values: DesignValues }
  | { readonly ok: false; readonly status: 'notGiven' | 'outside'; readonly reason: Message };

export interface WoodWeight {
  readonly heavyPcf: number;
  readonly lightPcf: number;
  readonly heavySteps: () => readonly Step[];
  readonly lightSteps: () => readonly Step[];
}
export type WeightAnswer =
  { readonly ok: true; readonly weight: WoodWeight } | { readonly ok: false; readonly reason: Message };
