import {
  BEAMS_ON_THE_FLAT,
  FLAT_USE,
  SIZE_FACTORS,
  SOUTHERN_PINE_SIZE,
  TIMBER_SIZE,
  WET_SERVICE,
} from '../../data/wood/lumber-factors.ts';
import type { LumberRow } from '../../data/wood/lumber.ts';
import { DataError } from '../errors.ts';
import { put, type Step } from '../note.ts';
import { quantity } from '../units.ts';
import { cited, givenStep } from './citation.ts';
import type { LumberSize } from './lumber-size.ts';

/** Factors on the base values of graded lumber, each with its step; the list may be empty. */
export interface LumberFactors {
  readonly Fb: readonly Step[];
  readonly Fv: readonly Step[];
  readonly Fcp: readonly Step[];
  readonly Fc: readonly Step[];
  readonly Ft: readonly Step[];
  readonly E: readonly Step[];
}

/**
 * Size, flat use and wet service of one graded stick. Load duration, stability and the repetitive factor are not here.
 * @throws DataError  when a table has no row for a nominal size it should cover
 * @source NDS_SUPPLEMENT Tables 4A, 4B, 4D, adjustment factors
 */
export function lumberFactors(row: LumberRow, size: LumberSize, use: 'wet' | 'dry'): LumberFactors {
  const sized = row.size === 'dimension' ? dimensionSize(row, size) : timberSize(size);
  const flat = size.isOnTheFlat ? flatUse(row, size) : NONE;
  const wet = use === 'wet' ? wetService(row, sized) : NONE;
  const keys = ['Fb', 'Fv', 'Fcp', 'Fc', 'Ft', 'E'] as const;
  const all = (key: (typeof keys)[number]): readonly Step[] => [...sized[key], ...flat[key], ...wet[key]];
  return { Fb: all('Fb'), Fv: all('Fv'), Fcp: all('Fcp'), Fc: all('Fc'), Ft: all('Ft'), E: all('E') };
}

const NONE: LumberFactors = { Fb: [], Fv: [], Fcp: [], Fc: [], Ft: [], E: [] };

function rowFor<R extends { readonly upToNominalIn: number }>(rows: readonly R[], nominalIn: number): R {
  const row = rows.find((candidate) => nominalIn <= candidate.upToNominalIn);
  if (!row) throw new DataError('nominalSize', nominalIn, 'a row of the factor table');
  return row;
}

function dimensionSize(row: LumberRow, size: LumberSize): LumberFactors {
  const table = row.table === '4B' ? SOUTHERN_PINE_SIZE : SIZE_FACTORS;
  const factors = rowFor(table.rows, size.nominalWidthIn);
  const words = `size, nominal width ${size.nominalWidthIn} in.`;
  const step = (value: number): readonly Step[] => [
    givenStep('CF', words, value, '1', cited(table.source, table.where, table.seen)),
  ];
  return {
    ...NONE,
    Fb: step(size.nominalThicknessIn === 4 ? factors.bendingThick : factors.bending),
    Ft: step(factors.tension),
    Fc: step(factors.compression),
  };
}

function timberSize(size: LumberSize): LumberFactors {
  if (size.depthIn <= TIMBER_SIZE.depthIn) return NONE;
  const factor = (TIMBER_SIZE.depthIn / size.depthIn) ** TIMBER_SIZE.exponent;
  const step: Step = {
    symbol: 'CF',
    words: 'size, timber deeper than 12 in.',
    formula: `(${TIMBER_SIZE.depthIn} / d)^(1/9)`,
    put: [put('d', size.depthIn, 'in', 'depth along the load')],
    result: quantity(factor, '1'),
    clause: cited(TIMBER_SIZE.source, TIMBER_SIZE.where, TIMBER_SIZE.seen),
  };
  return { ...NONE, Fb: [step] };
}

/** Dimension lumber gains on the flat; beams and stringers lose; posts and timbers are graded for both. */
function flatUse(row: LumberRow, size: LumberSize): LumberFactors {
  if (row.size === 'posts') return NONE;
  if (row.size === 'dimension') {
    const factors = rowFor(FLAT_USE.rows, size.nominalWidthIn);
    const value = size.nominalThicknessIn === 4 ? factors.thick : factors.thin;
    const where = cited(FLAT_USE.source, FLAT_USE.where, FLAT_USE.seen);
    return { ...NONE, Fb: [givenStep('Cfu', 'loaded on the wide face', value, '1', where)] };
  }
  const factors = BEAMS_ON_THE_FLAT.rows.find((candidate) => candidate.grade === row.grade);
  if (!factors) throw new DataError('beamsOnTheFlat', row.grade, 'a grade of Table 4D');
  const where = cited(BEAMS_ON_THE_FLAT.source, BEAMS_ON_THE_FLAT.where, BEAMS_ON_THE_FLAT.seen);
  const step = (value: number): readonly Step[] => [
    givenStep('Cfu', 'beam or stringer loaded on the wide face', value, '1', where),
  ];
  return { ...NONE, Fb: step(factors.bending), E: step(factors.stiffness) };
}

function wetService(row: LumberRow, sized: LumberFactors): LumberFactors {
  const factors = row.size === 'dimension' ? WET_SERVICE.dimension : WET_SERVICE.timber;
  const where = cited(WET_SERVICE.source, WET_SERVICE.where, WET_SERVICE.seen);
  const step = (value: number, words = 'used wet, above 19 % moisture'): readonly Step[] => [
    givenStep('CM', words, value, '1', where),
  ];
  /** weak grades keep their dry value: the printed limit is on the value times its size factor */
  const unless = (value: number, belowPsi: number | null, basePsi: number, size: readonly Step[]): readonly Step[] => {
    const sizedPsi = size.reduce((product, factor) => product * factor.result.value, basePsi);
    if (belowPsi === null || sizedPsi > belowPsi) return step(value);
    return step(1, `used wet; no loss where value times size is at or under ${belowPsi} psi`);
  };
  return {
    Fb: unless(factors.bending, factors.bendingKeepsBelowPsi, row.FbPsi, sized.Fb),
    Fc: unless(factors.compressionAlong, factors.compressionKeepsBelowPsi, row.FcPsi, sized.Fc),
    Fv: step(factors.shear),
    Fcp: step(factors.compressionAcross),
    Ft: step(factors.tension),
    E: step(factors.stiffness),
  };
}
