import { SITE_FIELDS } from '../../data/words/sheet.ts';
import { say } from '../../data/words/say.ts';
import type { Message } from '../../engine/message.ts';
import type { Names } from './places.ts';

/** A reason as a sentence: values of the site, members and lines by what they are called, not by path or id. */
export function reasonInWords(reason: Message, names: Names): string {
  const values = Object.entries(reason.values).map(([key, value]) => [
    key,
    typeof value === 'string' ? (SITE_FIELDS[value] ?? names.get(value) ?? value) : value,
  ]);
  return say({ code: reason.code, values: Object.fromEntries(values) });
}
