import { INPUT_IDS, INPUT_NAMES, INPUT_NONE, INPUT_VALUES } from '../../data/words/inputs.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import { quantity, type Unit } from '../../engine/units.ts';
import { showLength } from '../units/show-length.ts';
import type { UnitSystem } from '../units/system.ts';
import { showFigure } from './show-figure.ts';

export interface Reading {
  readonly system: UnitSystem;
  /** a member, line, log, wood or group by what it is called */
  readonly nameOf: (id: string) => string;
}

/**
 * Every leaf under the keys of an object in words, in the order of the file: nothing is left out and nothing is named by
 * hand. A list of objects gives a part for each, so that none grows without end.
 */
export const partsInWords = (value: object, reading: Reading): readonly string[] =>
  Object.entries(value).flatMap(([key, part]: [string, unknown]) => {
    if (part === undefined) return [];
    if (isListOfObjects(part)) {
      if (part.length === 0) return [`${nameOfKey(key)} none`];
      return part.map((item, i) => `${nameOfKey(key)} ${i + 1} (${inWords(item, key, reading)})`);
    }
    const words = inWords(part, key, reading);
    return [isLeaf(part) || Array.isArray(part) ? `${nameOfKey(key)} ${words}` : `${nameOfKey(key)} (${words})`];
  });

/** A value of the file as it is read. */
export function inWords(value: unknown, key: string, reading: Reading): string {
  if (Array.isArray(value)) {
    return value.length === 0 ? 'none' : value.map((each: unknown) => inWords(each, key, reading)).join(', ');
  }
  return typeof value === 'object' && value !== null
    ? partsInWords(value, reading).join(', ')
    : leafInWords(value, key, reading);
}

const isLeaf = (value: unknown): boolean => value === null || typeof value !== 'object';
const isListOfObjects = (value: unknown): value is readonly object[] =>
  Array.isArray(value) && value.some((item) => !isLeaf(item));

/** Ends of stored names that say the unit; the first that fits counts. */
const UNITS: readonly (readonly [end: string, unit: Unit])[] = [
  ['PsfPerFt', 'psf/ft'],
  ['In3Psi', 'lb·in'],
  ['Psi', 'psi'],
  ['Psf', 'psf'],
  ['Pcf', 'pcf'],
  ['Plf', 'lb/ft'],
  ['Mph', 'mph'],
  ['Deg', 'deg'],
  ['Ft2', 'ft2'],
  ['In2', 'in2'],
  ['Ft', 'ft'],
  ['Lb', 'lb'],
];
const unitOf = (key: string): (typeof UNITS)[number] | undefined => UNITS.find(([end]) => key.endsWith(end));

/** Ends in `In` and is no number per inch. */
const isLength = (key: string): boolean => /[a-z]In$|^[xyz]In$|[A-Z]In$/.test(key) && !key.endsWith('PerIn');

/** Thicknesses are read in inches, however many. */
const isThickness = (key: string): boolean => /diameter|across|breadth|thick|knot|^depthIn$/i.test(key);

/** `pastRafterIn` reads `past rafter`: stored names are words of the trade with their unit behind. */
export function nameOfKey(key: string): string {
  const given = INPUT_NAMES[key];
  if (given !== undefined) return given;
  const end = unitOf(key)?.[0] ?? (isLength(key) ? 'In' : '');
  return spelled(end === '' ? key : key.slice(0, -end.length));
}

/** `kneeBraces` reads `knee braces`; a text that a person wrote stays as it is. */
const spelled = (word: string): string =>
  /^[a-z]+(?:[A-Z0-9][a-z0-9]*)+$/.test(word) ? word.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`) : word;

function leafInWords(value: unknown, key: string, { system, nameOf }: Reading): string {
  if (value === null) return INPUT_NONE.has(key) ? 'none' : STATUS_WORDS.notGiven;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return numberInWords(value, key, system);
  const word = String(value);
  if (word === '') return STATUS_WORDS.notGiven;
  const known = INPUT_IDS.has(key) ? nameOf(word) : word;
  return known === word ? (INPUT_VALUES[word] ?? spelled(word)) : known;
}

/** As it was typed: a length in sixteenths where it is one, else in decimals. */
function numberInWords(value: number, key: string, system: UnitSystem): string {
  if (!isLength(key)) return showFigure(quantity(value, unitOf(key)?.[1] ?? '1'), system);
  return system === 'feet' && Number.isInteger(value * 16)
    ? showLength(value, system, { style: 'marks', nearest: 16, ...(isThickness(key) ? { feetFrom: 'never' } : {}) })
    : showFigure(quantity(value, 'in'), system);
}
