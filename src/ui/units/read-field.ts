import type { FieldKind } from './field-kind.ts';
import { MEASURES } from './measures.ts';
import { readOtherUnit } from './other-units.ts';
import { readLength, type BareUnit } from './read-length.ts';
import { readMeasure } from './read-measure.ts';
import { readGrainSlope, readRise, readShare } from './read-slope.ts';
import { refused, type Reading } from './reading.ts';
import type { UnitSystem } from './system.ts';

/** What a field's text says: a value for the project, with what else was learned from how it was written. */
export type FieldReading =
  | { readonly ok: true; readonly value: number | string; readonly read?: 'diameter' | 'girth' }
  | Extract<Reading, { ok: false }>;

/** Reads a field's text in the chosen system; a unit that our own tables lack is looked up in the larger one if loaded. */
export function readField(kind: FieldKind, text: string, system: UnitSystem): FieldReading {
  switch (kind) {
    case 'text':
      return { ok: true, value: text };
    case 'length': {
      const reading = readAnyLength(text, bareUnit(text, system));
      if (!reading.ok || reading.read === 'diameter') return reading;
      return refused('fieldGirthHere', { example: system === 'metric' ? '4.1 m' : '13 ft 6 in' });
    }
    case 'diameter':
      return system === 'metric'
        ? readAnyLength(text, 'mm', '290 mm or girth 910 mm')
        : readAnyLength(text, 'in', '11 1/2 in or girth 36 in');
    case 'risePer12':
      return readRise(text);
    case 'grainSlope':
      return readGrainSlope(text);
    case 'share':
      return readShare(text);
    default: {
      const reading = readMeasure(kind, text, system);
      return reading.ok ? reading : elsewhere(reading, text, MEASURES[kind].stored);
    }
  }
}

/** A girth in the field of girths, whether the word stands before it or not. */
export function readGirth(text: string, system: UnitSystem): FieldReading {
  const reading = readAnyLength(text, bareUnit(text, system), system === 'metric' ? '910 mm' : '36 in');
  return reading.ok && reading.read === 'girth' ? { ...reading, value: reading.value * Math.PI } : reading;
}

function readAnyLength(text: string, bare: BareUnit, example?: string) {
  const reading = readLength(text, bare, example);
  if (reading.ok) return reading;
  const other = elsewhere(reading, text, 'inch');
  return other.ok ? { ...other, read: 'diameter' as const } : other;
}

/** In metric a bare number is millimetres; with a decimal point below 30 it can only be the metres the field shows. */
function bareUnit(text: string, system: UnitSystem): BareUnit {
  if (system === 'feet') return 'in';
  return text.includes('.') && Math.abs(Number(text)) < 30 ? 'm' : 'mm';
}

function elsewhere(reading: Extract<Reading, { ok: false }>, text: string, wanted: string | null): Reading {
  const value = reading.unknownUnit === undefined || wanted === null ? null : readOtherUnit(text, wanted);
  return value === null ? reading : { ok: true, value };
}
