import { MEASURES, tableName, type MeasureKind } from './measures.ts';
import { showNumber } from './show-quantity.ts';
import type { UnitSystem } from './system.ts';

const SHOWN_AS: Readonly<Record<string, string>> = { 'lb/ft3': 'lb/ft³', 'kN/m3': 'kN/m³' };

/** The stored number as the field shows it, in words that `readMeasure` reads back. */
export function showMeasure(kind: MeasureKind, value: number, system: UnitSystem): string {
  const measure = MEASURES[kind];
  const unit = measure.bare[system];
  const factor = measure.units[tableName(unit)] ?? 1;
  const digits = measure.decimals[system];
  // trailing zeros say nothing in a field: 55 psf, not 55.00 psf
  const amount = showNumber(Number((value / factor).toFixed(digits)), shortest(value / factor, digits));
  if (unit === '') return amount;
  return unit === '°' ? `${amount}°` : `${amount} ${SHOWN_AS[unit] ?? unit}`;
}

function shortest(value: number, most: number): number {
  const text = String(Number(value.toFixed(most)));
  const point = text.indexOf('.');
  return point < 0 || text.includes('e') ? 0 : text.length - point - 1;
}
