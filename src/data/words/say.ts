import { MESSAGES, type MessageCode } from './en.ts';
import { fillIn } from './fill-in.ts';

/** The sentence of a message, its blanks filled. */
export const say = (said: {
  readonly code: MessageCode;
  readonly values: Readonly<Record<string, string | number>>;
}): string => fillIn(MESSAGES[said.code], said.values);
