import type { Message } from '../../engine/message.ts';
import type { Names } from './places.ts';

/** An id inside a longer text is known by its hyphen or its digit; without one it may be a word of the language. */
const ID_IN_TEXT = /[A-Za-z]\w*(?:-\w+)+|[A-Za-z]+\d\w*/g;

/** The values of a message with names in place of ids. A sentence that says the kind itself (`line {line}`) says it once. */
export function valuesInWords(values: Message['values'], names: Names): Message['values'] {
  return Object.fromEntries(Object.entries(values).map(([key, value]) => [key, inWords(key, value, names)]));
}

function inWords(key: string, value: string | number, names: Names): string | number {
  if (typeof value === 'number') return value;
  const name = names.get(value);
  if (name === undefined) return value.replace(ID_IN_TEXT, (word) => names.get(word) ?? word);
  return name.startsWith(`${key} `) ? name.slice(key.length + 1) : name;
}
