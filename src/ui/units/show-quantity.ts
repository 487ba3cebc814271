import { METRIC } from '../../data/metric.ts';
import type { Quantity, Unit } from '../../engine/units.ts';
import type { UnitSystem } from './system.ts';

interface Showing {
  readonly per: number;
  readonly unit: string;
  readonly decimals: number;
}

/** How each unit of the engine reads; decimals keep three figures or more in the range a shelter meets. */
const FEET: Readonly<Record<Unit, Omit<Showing, 'per'>>> = {
  in: { unit: 'in', decimals: 2 },
  ft: { unit: 'ft', decimals: 1 },
  in2: { unit: 'in²', decimals: 1 },
  in3: { unit: 'in³', decimals: 1 },
  in4: { unit: 'in⁴', decimals: 0 },
  ft2: { unit: 'ft²', decimals: 1 },
  ft3: { unit: 'ft³', decimals: 2 },
  lb: { unit: 'lb', decimals: 0 },
  'lb·in': { unit: 'lb·in', decimals: 0 },
  'lb/in': { unit: 'lb/in', decimals: 1 },
  'lb/ft': { unit: 'lb/ft', decimals: 1 },
  psi: { unit: 'psi', decimals: 0 },
  psf: { unit: 'psf', decimals: 1 },
  pcf: { unit: 'lb/ft³', decimals: 1 },
  'psf/ft': { unit: 'psf per ft', decimals: 0 },
  mph: { unit: 'mph', decimals: 0 },
  deg: { unit: '°', decimals: 1 },
  '%': { unit: '%', decimals: 0 },
  '1': { unit: '', decimals: 3 },
};

const isMetric = (unit: Unit): unit is keyof typeof METRIC => Object.hasOwn(METRIC, unit);

/** How a unit reads in the chosen system: what one of ours is worth, its name, its usual decimals. */
export const showing = (unit: Unit, system: UnitSystem): Showing =>
  (system === 'metric' && isMetric(unit) ? METRIC[unit] : null) ?? { per: 1, ...FEET[unit] };

/** The unit's name in the chosen system, for column heads. */
export const showUnit = (unit: Unit, system: UnitSystem): string => showing(unit, system).unit;

/** The number alone, for a column whose head names the unit. */
export function showAmount({ value, unit }: Quantity, system: UnitSystem): string {
  const { per, decimals } = showing(unit, system);
  return showNumber(value * per, decimals);
}

/** A number with its unit, rounded for the eye only: `1,274 psi`, `8.78 MPa`. */
export function showQuantity(quantity: Quantity, system: UnitSystem): string {
  const { unit } = showing(quantity.unit, system);
  const amount = showAmount(quantity, system);
  return unit === '' || amount === '' ? amount : unit === '°' ? `${amount}°` : `${amount} ${unit}`;
}

/** A number with more zeros behind its point than anybody counts is written with a power of ten. */
const LEAST_WRITTEN_OUT = 1e-6;

/** Grouped by thousands; a small number that would round to nothing keeps two figures. */
export function showNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return '';
  if (value !== 0 && Math.abs(value) < LEAST_WRITTEN_OUT)
    return value.toExponential(1).replaceAll('-', '−').replace('e', ' × 10^');
  const tiny = value !== 0 && Math.abs(value) < 0.5 * 10 ** -decimals;
  const shown = tiny ? Number(value.toPrecision(2)) : Number(value.toFixed(decimals));
  const text = Math.abs(shown).toLocaleString('en-US', {
    minimumFractionDigits: tiny ? 0 : decimals,
    maximumFractionDigits: tiny ? 20 : decimals,
  });
  return shown < 0 ? `−${text}` : text;
}

/** Demand over capacity, always rounded up: 1.00 is shown only when it is at most 1. */
export function showRatio(ratio: number): string {
  if (!Number.isFinite(ratio)) return '';
  const hundredths = Math.round(ratio * 100);
  return ((hundredths / 100 < ratio ? hundredths + 1 : hundredths) / 100).toFixed(2);
}
