import { MESSAGES, type MessageCode } from './en.ts';

/** The sentence of a message, its blanks filled; numbers are shortened to three decimals for reading. */
export function say(said: {
  readonly code: MessageCode;
  readonly values: Readonly<Record<string, string | number>>;
}): string {
  const sentence: string = MESSAGES[said.code];
  return sentence.replace(/\{(\w+)\}/g, (blank, name: string) => {
    const value = said.values[name];
    if (value === undefined) return blank;
    return typeof value === 'number' ? String(Number(value.toFixed(3))) : value;
  });
}
