import type { Cited } from '../wood/cited.ts';
import type { PulledKind } from './kind.ts';

/** Pull per inch of what holds: coefficient × G^gravityPower × D^diameterPower, in pounds, G and inches. */
interface PullPerInch extends Cited {
  readonly coefficient: number;
  readonly gravityPower: number;
  readonly diameterPower: number;
}

const PLAIN_SHANK: PullPerInch = {
  coefficient: 1380,
  gravityPower: 2.5,
  diameterPower: 1,
  source: 'NDS',
  where: '12.2.3, Table 12.2C',
  seen: 'memory',
};

/** What one inch of thread, or of a plain shank, holds against pull in side grain. @source NDS 12.2.1 to 12.2.3 */
export const WITHDRAWAL: Readonly<Record<PulledKind, PullPerInch>> = {
  lag: {
    coefficient: 1800,
    gravityPower: 1.5,
    diameterPower: 0.75,
    source: 'NDS',
    where: '12.2.1, Table 12.2A',
    seen: 'public copy',
  },
  screw: {
    coefficient: 2850,
    gravityPower: 2,
    diameterPower: 1,
    source: 'NDS',
    where: '12.2.2, Table 12.2B',
    seen: 'memory',
  },
  nail: PLAIN_SHANK,
  spike: PLAIN_SHANK,
};

/** Specific gravities for which withdrawal is printed; the equations hold within them. @source NDS 12.2.1.1, Table 12.2A */
export const PRINTED_GRAVITY: Cited & { readonly least: number; readonly most: number } = {
  least: 0.31,
  most: 0.73,
  source: 'NDS',
  where: '12.2.1.1, Table 12.2A',
  seen: 'public copy',
};

/** What a pull along the grain leaves of a lag screw; nails and wood screws hold nothing there. @source NDS 12.2.1.2 */
export const LAG_IN_END_GRAIN: Cited & { readonly Ceg: number } = {
  Ceg: 0.75,
  source: 'NDS',
  where: '12.2.1.2',
  seen: 'public copy',
};

/** A nail driven slantwise through the end of one stick into the side of the other. @source NDS 12.5.4 */
export const TOE_NAIL: Cited & { readonly Ctn: number } = {
  Ctn: 0.67,
  source: 'NDS',
  where: '12.5.4.1',
  seen: 'memory',
};

/**
 * Least penetration in diameters: of a lag screw without its tip, of the others with it. The clauses ask it of shanks
 * that are pushed sideways; we ask it of pulled ones too (own rule).
 */
export const LEAST_HOLD: Cited & Readonly<Record<PulledKind, number>> = {
  lag: 4,
  screw: 6,
  nail: 6,
  spike: 6,
  source: 'NDS',
  where: '12.1.4.6, 12.1.5.6, 12.1.6.5',
  seen: 'memory',
};

/** Length of the point of a wood screw in diameters, where nothing else is known. @source NDS 12.3.5.3 */
export const SCREW_POINT: Cited & { readonly diameters: number } = {
  diameters: 2,
  source: 'NDS',
  where: '12.3.5.3',
  seen: 'memory',
};

/**
 * A round head pulled through the side stick: `thin` × π × D × G² × t up to a thickness of `thickFrom` head diameters,
 * from there on `thick` × π × D² × G², pounds.
 * @source NDS 12.2.5
 */
export const HEAD_PULL_THROUGH: Cited & {
  readonly thin: number;
  readonly thick: number;
  readonly thickFrom: number;
} = {
  thin: 690,
  thick: 1725,
  thickFrom: 2.5,
  source: 'NDS',
  where: '12.2.5',
  seen: 'memory',
};

/** Specific gravity for fasteners of a wood that has a row of its own beside the lumber groups. */
interface GravityRow extends Cited {
  readonly species: string;
  readonly specificGravity: number;
}

/** @source NDS Table 12.3.3A (assigned specific gravities) */
export const ASSIGNED_GRAVITY: readonly GravityRow[] = [
  {
    species: 'Northern white-cedar',
    specificGravity: 0.31,
    source: 'NDS',
    where: 'Table 12.3.3A',
    seen: 'memory',
  },
];
