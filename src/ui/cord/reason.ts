import { SITE_FIELDS } from '../../data/words/sheet.ts';
import { say } from '../../data/words/say.ts';
import type { Message } from '../../engine/message.ts';
import type { UnitSystem } from '../units/system.ts';
import { valuesInWords } from './naming.ts';
import type { Names } from './places.ts';

/** A reason as a sentence: values of the site, members and lines by what they are called, not by path or id. */
export function reasonInWords({ code, values }: Message, names: Names, system: UnitSystem): string {
  const named = new Map([...Object.entries(SITE_FIELDS), ...names]);
  return say({ code, values: valuesInWords(values, named) }, system);
}
