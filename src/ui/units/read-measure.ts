import { MEASURES, tableName, type MeasureKind } from './measures.ts';
import { NUMBER, plainMarks, readNumberText, refused, type Reading } from './reading.ts';
import type { UnitSystem } from './system.ts';

const WITH_UNIT = new RegExp(String.raw`^([-+]?)\s*(${NUMBER})\s*(.*)$`);

/**
 * Reads one number with a unit of its kind (`55 psf`, `2.6 kPa`, `1,200 lb`); a bare number takes the unit in which the
 * field is shown.
 * @returns the number in the stored unit, or a message; an unknown unit is named for the larger table
 */
export function readMeasure(kind: MeasureKind, text: string, system: UnitSystem): Reading {
  const measure = MEASURES[kind];
  const got = text.trim();
  const example = measure.example[system];
  const plain = plainMarks(text);
  if (plain === '') return refused('fieldEmpty', { example });
  if (plain.includes(',')) return refused('fieldComma', { got, example });
  const match = WITH_UNIT.exec(plain);
  if (!match) return refused('fieldNotRead', { got, example });
  const number = readNumberText(match[2] ?? '', got, example);
  if (!number.ok) return number;
  if (kind === 'count' && !number.whole) return refused('fieldWhole', { got, example });
  const unit = tableName(match[3] ?? '');
  const signed = match[1] === '-' ? -number.value : number.value;
  const factor = unit === '' ? (measure.units[tableName(measure.bare[system])] ?? 1) : measure.units[unit];
  if (factor !== undefined) return { ok: true, value: signed * factor };
  const written = (match[3] ?? '').trim();
  if (measure.stored === null) return refused('fieldUnitWrong', { unit: written, what: measure.what, example });
  return { ...refused('fieldUnitUnknown', { unit: written, example }), unknownUnit: written };
}
