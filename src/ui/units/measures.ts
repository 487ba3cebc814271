import { PER } from '../../data/metric.ts';
import type { UnitSystem } from './system.ts';

/** Quantities that are read as one number with a unit (lengths have a reader of their own). */
export type MeasureKind =
  'feet' | 'psf' | 'psfPerFt' | 'lb' | 'plf' | 'psi' | 'pcf' | 'mph' | 'deg' | 'number' | 'count';

export interface Measure {
  /** what it measures, in the sentence "does not measure ..." */
  readonly what: string;
  /** stored units in one of the named unit */
  readonly units: Readonly<Record<string, number>>;
  /** the unit of a bare number, and of what is shown */
  readonly bare: Readonly<Record<UnitSystem, string>>;
  readonly decimals: Readonly<Record<UnitSystem, number>>;
  readonly example: Readonly<Record<UnitSystem, string>>;
  /** the stored unit in the larger table's spelling; null where no other unit makes sense */
  readonly stored: string | null;
}

const both = <T>(value: T): Readonly<Record<UnitSystem, T>> => ({ feet: value, metric: value });
const plain = (what: string, decimals: number, example: string): Measure => ({
  what,
  units: {},
  bare: both(''),
  decimals: both(decimals),
  example: both(example),
  stored: null,
});

/** Spellings without spaces, lower case, as `plainMarks` leaves them; `shown` spellings come first. */
export const MEASURES: Readonly<Record<MeasureKind, Measure>> = {
  feet: {
    what: 'a length',
    units: { ft: 1, foot: 1, feet: 1, "'": 1, in: 1 / 12, m: 1 / PER.metresPerFoot, km: 1000 / PER.metresPerFoot },
    bare: { feet: 'ft', metric: 'm' },
    decimals: { feet: 2, metric: 2 },
    example: { feet: '3100 ft', metric: '950 m' },
    stored: 'ft',
  },
  psf: {
    what: 'a load per area',
    units: {
      psf: 1,
      'lb/ft2': 1,
      'lb/sqft': 1,
      kpa: 1 / PER.kPaPerPsf,
      'kn/m2': 1 / PER.kPaPerPsf,
      pa: 0.001 / PER.kPaPerPsf,
      'n/m2': 0.001 / PER.kPaPerPsf,
    },
    bare: { feet: 'psf', metric: 'kPa' },
    decimals: { feet: 2, metric: 3 },
    example: { feet: '55 psf', metric: '2.6 kPa' },
    stored: 'lbf/ft^2',
  },
  psfPerFt: {
    what: 'a soil pressure per depth',
    units: {
      'psf/ft': 1,
      psfperft: 1,
      pcf: 1,
      'kpa/m': 1 / PER.kPaPerMetrePerPsfPerFoot,
      'kn/m3': 1 / PER.kPaPerMetrePerPsfPerFoot,
    },
    bare: { feet: 'psf/ft', metric: 'kPa/m' },
    decimals: { feet: 1, metric: 2 },
    example: { feet: '100 psf/ft', metric: '16 kPa/m' },
    stored: 'lbf/ft^3',
  },
  lb: {
    what: 'a force',
    units: {
      lb: 1,
      lbs: 1,
      lbf: 1,
      pounds: 1,
      pound: 1,
      '#': 1,
      kip: 1000,
      kips: 1000,
      kn: 1 / PER.kilonewtonsPerPound,
      n: 0.001 / PER.kilonewtonsPerPound,
    },
    bare: { feet: 'lb', metric: 'kN' },
    decimals: { feet: 0, metric: 3 },
    example: { feet: '1200 lb', metric: '5.3 kN' },
    stored: 'lbf',
  },
  plf: {
    what: 'a load per length',
    units: {
      'lb/ft': 1,
      plf: 1,
      'kn/m': 1 / PER.kilonewtonsPerMetrePerPlf,
      'n/m': 0.001 / PER.kilonewtonsPerMetrePerPlf,
    },
    bare: { feet: 'lb/ft', metric: 'kN/m' },
    decimals: { feet: 2, metric: 4 },
    example: { feet: '25 lb/ft', metric: '0.36 kN/m' },
    stored: 'lbf/ft',
  },
  psi: {
    what: 'a stress',
    units: {
      psi: 1,
      'lb/in2': 1,
      ksi: 1000,
      mpa: 1 / PER.MPaPerPsi,
      'n/mm2': 1 / PER.MPaPerPsi,
      gpa: 1000 / PER.MPaPerPsi,
      kpa: 0.001 / PER.MPaPerPsi,
    },
    bare: { feet: 'psi', metric: 'MPa' },
    decimals: { feet: 0, metric: 3 },
    example: { feet: '1100 psi', metric: '7.6 MPa' },
    stored: 'lbf/in^2',
  },
  pcf: {
    what: 'a weight per volume',
    units: { 'lb/ft3': 1, pcf: 1, 'lb/cuft': 1, 'kn/m3': 1 / PER.kilonewtonsPerCubicMetrePerPcf },
    bare: { feet: 'lb/ft3', metric: 'kN/m3' },
    decimals: { feet: 1, metric: 2 },
    example: { feet: '100 lb/ft3', metric: '16 kN/m3' },
    stored: 'lbf/ft^3',
  },
  mph: {
    what: 'a speed',
    units: {
      mph: 1,
      'mi/h': 1,
      'm/s': 1 / PER.metresPerSecondPerMph,
      'km/h': 1 / 3.6 / PER.metresPerSecondPerMph,
      kmh: 1 / 3.6 / PER.metresPerSecondPerMph,
    },
    bare: { feet: 'mph', metric: 'm/s' },
    decimals: { feet: 0, metric: 1 },
    example: { feet: '105 mph', metric: '47 m/s' },
    stored: 'mile/hour',
  },
  deg: {
    what: 'an angle',
    units: { '°': 1, deg: 1, degree: 1, degrees: 1, rad: 180 / Math.PI },
    bare: both('°'),
    decimals: both(2),
    example: both('45°'),
    stored: 'deg',
  },
  number: plain('a plain number', 4, '1.15'),
  count: plain('a number of pieces', 0, '2'),
};

/** `kPa` and `kN/m3` are shown with their capitals; the table is asked in one case. */
export const tableName = (unit: string): string => unit.toLowerCase().replace(/[\s^.]/g, '');
