import { clause, remembered } from '../../data/sources.ts';
import type { ClearWoodSpecies } from '../../data/wood/species.ts';
import {
  DIVISORS,
  RING_DIVISOR,
  SHEAR_RATIO,
  STABILITY_SHARE,
  STIFFNESS_QUALITY,
  TENSION_SHARE,
} from '../../data/wood/strength-ratios.ts';
import type { Message } from '../message.ts';
import { put, stepsOf, type Note, type Step } from '../note.ts';
import { psi, quantity, type Psi } from '../units.ts';
import { cited, givenStep } from './citation.ts';
import { crushingStressOf, exclusionLimit, meanStiffness } from './green-strength.ts';
import type { DesignValues, ValueSymbol } from './values.ts';

/** Strength ratios of one stick with the steps that led to them. */
export interface Ratios {
  readonly bending: number;
  readonly compression: number;
  readonly bendingSteps: () => readonly Step[];
  readonly compressionSteps: () => readonly Step[];
}

const DIVISOR_CLAUSE = cited(DIVISORS.source, DIVISORS.where, DIVISORS.seen);

/**
 * Design values of a green log or home-sawn stick from clear wood of its species and its own strength ratios.
 * Values are wet already; no seasoning gain and no form factor are taken.
 * @param sizeFactor writes its steps and returns the size factor in bending
 * @source D245, D2555 (5 % limit, divisors), D2899 (size, shear ratio, rings); own rules for knots and unseen logs
 * @limits  seasoned or pressure-treated wood gains or loses nothing here
 */
export function derivedValues(
  basis: 'derived' | 'homeSawn',
  species: ClearWoodSpecies,
  ratios: Ratios,
  sizeFactor: (note?: Note) => number,
  cautions: readonly Message[],
): DesignValues {
  const Fb = allowableBending(species, ratios, sizeFactor);
  const E = stiffness(species, ratios.bending);
  const steps = (of: ValueSymbol): readonly Step[] => stepsOf(made[of]).steps;
  const made: Readonly<Record<ValueSymbol, (note?: Note) => Psi>> = {
    Fb: (note) => allowableBending(species, ratios, sizeFactor, note),
    Fv: (note) => allowableShear(species, note),
    Fcp: (note) => allowableAcross(species, note),
    Fc: (note) => allowableCompression(species, ratios, note),
    Ft: (note) => allowableTension(Fb, () => steps('Fb'), note),
    E: (note) => stiffness(species, ratios.bending, note),
    Emin: (note) => stabilityStiffness(E, () => steps('E'), note),
  };
  return {
    basis,
    FbPsi: Fb,
    FvPsi: made.Fv(),
    FcPerpPsi: made.Fcp(),
    FcPsi: made.Fc(),
    FtPsi: made.Ft(),
    EPsi: E,
    EminPsi: made.Emin(),
    cForColumns: 0.8,
    specificGravity: species.green.specificGravity,
    strengthRatioBending: ratios.bending,
    strengthRatioCompression: ratios.compression,
    steps,
    cautions,
  };
}

function allowableBending(
  species: ClearWoodSpecies,
  ratios: Ratios,
  sizeFactor: (note?: Note) => number,
  note?: Note,
): Psi {
  const limit = exclusionLimit(species, 'bending', note);
  if (note) for (const step of ratios.bendingSteps()) note(step);
  const size = sizeFactor(note);
  const divisor = DIVISORS[species.kind].bending;
  const Fb = (limit * ratios.bending * size) / divisor;
  note?.({
    symbol: 'Fb',
    words: 'allowable bending stress',
    formula: `X_05 × SR_b × C_size / ${divisor}`,
    put: [
      put('X_05', limit, 'psi', '5 % exclusion limit in bending'),
      put('SR_b', ratios.bending, '1', 'strength ratio in bending'),
      put('C_size', size, '1', 'size'),
    ],
    result: quantity(Fb, 'psi'),
    clause: DIVISOR_CLAUSE,
  });
  return psi(Fb);
}

function allowableShear(species: ClearWoodSpecies, note?: Note): Psi {
  const limit = exclusionLimit(species, 'shear', note);
  note?.(
    givenStep('SR_v', 'strength ratio in shear: checks are in every log', SHEAR_RATIO, '1', clause('D2899', 'shear')),
  );
  return divided('Fv', 'allowable shear stress', limit, 'SR_v', SHEAR_RATIO, DIVISORS[species.kind].shear, note);
}

function allowableCompression(species: ClearWoodSpecies, ratios: Ratios, note?: Note): Psi {
  const limit = exclusionLimit(species, 'compressionAlong', note);
  if (note) for (const step of ratios.compressionSteps()) note(step);
  const divisor = DIVISORS[species.kind].compression;
  return divided('Fc', 'allowable compression along the grain', limit, 'SR_c', ratios.compression, divisor, note);
}

function divided(
  symbol: string,
  words: string,
  limit: Psi,
  ratioSymbol: string,
  ratio: number,
  divisor: number,
  note?: Note,
): Psi {
  const stress = (limit * ratio) / divisor;
  note?.({
    symbol,
    words,
    formula: `X_05 × ${ratioSymbol} / ${divisor}`,
    put: [put('X_05', limit, 'psi', '5 % exclusion limit'), put(ratioSymbol, ratio, '1', 'strength ratio')],
    result: quantity(stress, 'psi'),
    clause: DIVISOR_CLAUSE,
  });
  return psi(stress);
}

/** Across the grain the mean counts, knots do not weaken it, and load duration does not change it. */
function allowableAcross(species: ClearWoodSpecies, note?: Note): Psi {
  const crushing = crushingStressOf(species, note);
  const stress = crushing / RING_DIVISOR;
  note?.({
    symbol: 'Fcp',
    words: 'allowable compression across the grain',
    formula: `X_04 / ${RING_DIVISOR}`,
    put: [put('X_04', crushing, 'psi', 'stress at 0.04 in. of crushing')],
    result: quantity(stress, 'psi'),
    clause: clause('D2899', 'compression across the grain'),
  });
  return psi(stress);
}

/**
 * Tension along the grain as a share of bending: Fb holds strength ratio and size already, no second one.
 * @source D245, from memory
 */
export function allowableTension(Fb: Psi, from: () => readonly Step[], note?: Note): Psi {
  const Ft = TENSION_SHARE * Fb;
  note?.({
    symbol: 'Ft',
    words: 'allowable tension along the grain',
    formula: `${TENSION_SHARE} × Fb`,
    put: [put('Fb', Fb, 'psi', 'allowable bending stress', from())],
    result: quantity(Ft, 'psi'),
    clause: remembered('D245', 'tension from bending'),
  });
  return psi(Ft);
}

const QUALITY_CLAUSE = cited(STIFFNESS_QUALITY.source, STIFFNESS_QUALITY.where, STIFFNESS_QUALITY.seen);

function stiffness(species: ClearWoodSpecies, bendingRatio: number, note?: Note): Psi {
  const mean = meanStiffness(species, note);
  const share = (STIFFNESS_QUALITY.rows.find((row) => bendingRatio >= row.fromRatio) ?? STIFFNESS_QUALITY.rows[2])
    .share;
  const E = mean * share;
  note?.({
    symbol: 'E',
    words: `stiffness; ${share} for a strength ratio in bending of ${bendingRatio.toFixed(2)}`,
    formula: `E_mean × ${share}`,
    put: [put('E_mean', mean, 'psi', 'mean of clear green wood')],
    result: quantity(E, 'psi'),
    clause: QUALITY_CLAUSE,
  });
  return psi(E);
}

/**
 * Stiffness for buckling, rounded down to 10,000 psi.
 * @departs the tables round to the nearest 10,000: down is the safe side, up to 10,000 psi lower
 * @source NDS (2018) Appendix D with a coefficient of variation of 0.25
 */
export function stabilityStiffness(E: Psi, from: () => readonly Step[], note?: Note): Psi {
  const Emin = Math.floor((STABILITY_SHARE * E) / 10_000) * 10_000;
  note?.({
    symbol: 'Emin',
    words: 'stiffness for buckling, rounded down to 10,000 psi',
    formula: `floor(${STABILITY_SHARE} × E / 10000) × 10000`,
    put: [put('E', E, 'psi', 'stiffness', from())],
    result: quantity(Emin, 'psi'),
    clause: remembered('NDS', 'Appendix D'),
  });
  return psi(Emin);
}
