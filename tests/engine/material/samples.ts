import type { SawnStick } from '../../../src/engine/geometry/shelter.ts';
import type { Log, Seen, Wood, WoodBasis } from '../../../src/engine/project/model.ts';
import type { DesignValues, MaterialAnswer, ValueSymbol } from '../../../src/engine/material/values.ts';

export const aSeen = (changes: Partial<Seen> = {}): Seen => ({
  worstKnotIn: 0.5,
  knotsInWorstFootIn: [0.5],
  grainSlope1In: 20,
  spiral: 'none',
  checks: 'hairline',
  straightIn: 0.5,
  by: 'the owner',
  date: null,
  ...changes,
});

export const aLog = (changes: Partial<Log> = {}): Log => ({
  id: 'log-1',
  woodId: 'wood-1',
  stands: 'log',
  how: 'measured',
  errorIn: 0.25,
  bark: 'off',
  stations: [
    { fromButtIn: 0, diameterIn: 12 },
    { fromButtIn: 240, diameterIn: 10 },
  ],
  seen: aSeen(),
  crownIn: 0,
  ...changes,
});

export const aWood = (species = 'Western larch', basis: WoodBasis = { kind: 'derived' }): Wood => ({
  id: 'wood-1',
  species,
  basis,
  weight: { by: 'species' },
});

export const typedBasis = (changes: Partial<Extract<WoodBasis, { kind: 'typed' }>> = {}): WoodBasis => ({
  kind: 'typed',
  by: 'a grader',
  date: null,
  published: 'wet',
  asPoles: false,
  factorsHeld: [],
  FbPsi: 1000,
  FvPsi: 100,
  FcpPsi: 400,
  FcPsi: 900,
  FtPsi: 550,
  EPsi: 1_200_000,
  EminPsi: 440_000,
  ...changes,
});

export const aStick = (changes: Partial<SawnStick> = {}): SawnStick => ({
  kind: 'sawn',
  breadthIn: 1.5,
  depthIn: 7.25,
  lay: 'edge',
  plies: 1,
  species: 'Douglas Fir-Larch',
  grade: 'No.1',
  use: 'dry',
  ...changes,
});

/** The values of an answer that must have some. */
export function valuesIn(answer: MaterialAnswer): DesignValues {
  if (!answer.ok) throw new Error(`no values: ${answer.status}, ${answer.reason.code}`);
  return answer.values;
}

const SYMBOLS: readonly ValueSymbol[] = ['Fb', 'Fv', 'Fcp', 'Fc', 'Ft', 'E', 'Emin'];

/** The values with the steps of each told, so that two answers can be compared whole. */
export function toldIn(answer: MaterialAnswer) {
  const values = valuesIn(answer);
  return { ...values, steps: SYMBOLS.map((symbol) => values.steps(symbol)) };
}

/** Status and reason of an answer that must have no values. */
export function refusalIn(answer: MaterialAnswer): readonly [string, string] {
  if (answer.ok) throw new Error('values where none were expected');
  return [answer.status, answer.reason.code];
}

/** A stand-in for a deep freeze: whoever writes into the givens throws. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach((inner) => frozen(inner));
  }
  return value;
}
