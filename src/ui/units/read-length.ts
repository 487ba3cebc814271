import { PER } from '../../data/metric.ts';
import type { Inches } from '../../engine/units.ts';
import { inches } from '../../engine/units.ts';
import { NUMBER, plainMarks, readNumberText, refused, type Reading } from './reading.ts';

export type BareUnit = 'in' | 'ft' | 'mm' | 'm';
type Read = {
  readonly ok: true;
  readonly value: Inches;
  /** how it was measured: round the log or across it */
  readonly read: 'diameter' | 'girth';
};
type LengthReading = Read | Extract<Reading, { ok: false }>;

const UNIT_WORDS: Readonly<Record<string, number>> = {
  "'": 12, ft: 12, foot: 12, feet: 12,
  '"': 1, in: 1, ins: 1, inch: 1, inches: 1,
  mm: 1 / PER.mmPerInch, millimetre: 1 / PER.mmPerInch, millimetres: 1 / PER.mmPerInch, millimeters: 1 / PER.mmPerInch,
  cm: 10 / PER.mmPerInch, centimetres: 10 / PER.mmPerInch, centimeters: 10 / PER.mmPerInch,
  m: 1000 / PER.mmPerInch, metre: 1000 / PER.mmPerInch, metres: 1000 / PER.mmPerInch, meter: 1000 / PER.mmPerInch, meters: 1000 / PER.mmPerInch,
}; // prettier-ignore
const GIRTH = /\b(girth|around|round)\b/;
const TERM = new RegExp(String.raw`^(${NUMBER})\s*(?:('|"|[a-z]+)\.?)?\s*`);

interface Term {
  readonly value: number;
  readonly whole: boolean;
  readonly unit: string | null;
  readonly text: string;
}

const exampleFor = (bare: BareUnit): string => (bare === 'mm' || bare === 'm' ? '4.1 m or 340 mm' : '13 ft 6 1/2 in');
const inchesPer = (unit: string): number => UNIT_WORDS[unit] ?? Number.NaN;
const isFeet = (term: Term): boolean => term.unit !== null && inchesPer(term.unit) === 12;

/**
 * Reads a length as a builder writes it: `13' 6-1/2"`, `13 ft 6 in`, `13.5 ft`, `6 1/2`, `25 1/8 in`, `4.1 m`, `340 mm`,
 * `girth 28 in` (the diameter of a round log with that girth).
 * @param bare the unit of a number that carries none, the one in which the field shows its value
 * @param example what a refusal offers to write instead
 * @returns inches, or a message with what is wrong and an example; an unknown unit is named for the larger table
 */
export function readLength(text: string, bare: BareUnit, example = exampleFor(bare)): LengthReading {
  const got = text.trim();
  const plain = plainMarks(text);
  if (plain === '') return refused('fieldEmpty', { example });
  if (plain.includes(',')) return refused('fieldComma', { got, example });
  const girth = GIRTH.test(plain);
  const unsigned = plain.replace(GIRTH, ' ').trim();
  const negative = unsigned.startsWith('-');
  const terms = readTerms(unsigned.replace(/^[-+]\s*/, ''), got, example);
  if (!('terms' in terms)) return terms;
  const sum = addUp(terms.terms, bare, got, example);
  if (!sum.ok) return sum;
  const signed = negative ? -sum.value : sum.value;
  return girth
    ? { ok: true, value: inches(signed / Math.PI), read: 'girth' }
    : { ok: true, value: inches(signed), read: 'diameter' };
}

function readTerms(plain: string, got: string, example: string) {
  const terms: Term[] = [];
  let rest = plain;
  while (rest !== '') {
    const match = TERM.exec(rest);
    if (!match) return refused('fieldNotRead', { got, example });
    const number = readNumberText(match[1] ?? '', got, example);
    if (!number.ok) return number;
    const unit = match[2] ?? null;
    if (unit !== null && !(unit in UNIT_WORDS)) {
      return { ...refused('fieldUnitUnknown', { unit, example }), unknownUnit: unit };
    }
    terms.push({ value: number.value, whole: number.whole, unit, text: match[1] ?? '' });
    rest = rest.slice(match[0].length).replace(/^-\s*(?=\d)/, ''); // 13'-6": the dash ties, it does not subtract
  }
  return terms.length > 0 ? { terms } : refused('fieldNotRead', { got, example });
}

function addUp(terms: readonly Term[], bare: BareUnit, got: string, example: string): Reading {
  const [first, second] = terms;
  if (!first || terms.length > 2) return refused('fieldNotRead', { got, example });
  if (!second) return { ok: true, value: first.value * inchesPer(first.unit ?? bare) };
  if (first.unit === null && (second.unit === null || inchesPer(second.unit) === 1)) {
    return refused('fieldWhichIsFeet', { got, suggestion: `${first.text} ft ${second.text} in` });
  }
  const secondIsInches = second.unit === null || inchesPer(second.unit) === 1;
  if (!isFeet(first) || !secondIsInches) return refused('fieldNotRead', { got, example });
  if (!first.whole) return refused('fieldFeetAndFraction', { got, example });
  if (second.value >= 12) {
    const suggestion = `${first.value + Math.floor(second.value / 12)} ft ${Number((second.value % 12).toFixed(4))} in`;
    return refused('fieldInchesPastFoot', { inches: second.text, suggestion });
  }
  return { ok: true, value: first.value * 12 + second.value };
}
