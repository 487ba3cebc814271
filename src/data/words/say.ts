import { MESSAGES, type MessageCode } from './en.ts';
import { fillIn } from './fill-in.ts';

/** The sentence of a message, its blanks filled, sizes in the units of the reader. */
export const say = (
  said: {
    readonly code: MessageCode;
    readonly values: Readonly<Record<string, string | number>>;
  },
  sizes?: 'feet' | 'metric',
): string => fillIn(MESSAGES[said.code], said.values, sizes);
