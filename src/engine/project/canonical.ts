import { nameFieldOf } from './paths.ts';

/** Lists whose order says something: lines from high to low, stations from butt to tip. Elsewhere it has no meaning. */
const ORDERED: ReadonlySet<string> = new Set(['onLines', 'stations']);

/**
 * One text for one meaning: keys sorted, named elements sorted by name and other lists by their text, absent and
 * undefined alike. Two files that differ only in order or spacing have the same canonical text.
 */
export function canonicalText(value: unknown, list = ''): string {
  if (Array.isArray(value)) return `[${sorted(value, list).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const entries = Object.entries(value).filter(([, inside]) => inside !== undefined);
  const texts = entries
    .sort(([a], [b]) => compare(a, b))
    .map(([key, inside]) => `${JSON.stringify(key)}:${canonicalText(inside, key)}`);
  return `{${texts.join(',')}}`;
}

function sorted(elements: readonly unknown[], list: string): readonly string[] {
  const field = nameFieldOf(list);
  const texts = elements.map((element) => ({ text: canonicalText(element), name: nameIn(element, field) }));
  if (!ORDERED.has(list)) texts.sort((a, b) => compare(a.name, b.name) || compare(a.text, b.text));
  return texts.map(({ text }) => text);
}

const nameIn = (element: unknown, field: string | undefined): string =>
  field !== undefined && typeof element === 'object' && element !== null
    ? String((element as Readonly<Record<string, unknown>>)[field])
    : '';

/** By code unit, the same on every machine and in every language. */
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
