import { message, type Message } from '../../engine/message.ts';
import type { MessageCode } from '../../data/words/en.ts';

/** What a reader answers: the number in the stored unit, or a sentence that says what is wrong and shows an example. */
export type Reading =
  | { readonly ok: true; readonly value: number }
  | {
      readonly ok: false;
      readonly message: Message;
      /** the unit that our own table lacks; the larger table, loaded after first paint, may know it */
      readonly unknownUnit?: string;
    };

export const refused = (code: MessageCode, values: Record<string, string | number>) =>
  ({ ok: false, message: message(code, values) }) as const;

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8', '⅓': '1/3', '⅔': '2/3',
}; // prettier-ignore

/** One spelling for marks that keyboards and pasted text write in several ways. */
export function plainMarks(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (mark) => ` ${VULGAR[mark] ?? ''}`)
    .replace(/[′’‘`´]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .replace(/[−–—‑]/g, '-')
    .replace(/⁄/g, '/')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/[·×]/g, '*')
    .replace(/(\d),(?=\d{3}(?!\d))/g, '$1') // 1,200: thousands, as printed tables group them
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

type NumberRead = { readonly ok: true; readonly value: number; readonly whole: boolean } | ReturnType<typeof refused>;

/** `12`, `12.5`, `.5`, `5/8`, `6 1/2`, `6-1/2`; a sign is the caller's. */
export const NUMBER = String.raw`\d+(?:\s+|-)\d+\/\d+|\d+\/\d+|\d+\.?\d*|\.\d+`;

/** Value of a text that matches `NUMBER`. */
export function readNumberText(text: string, got: string, example: string): NumberRead {
  const mixed = /^(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)$/.exec(text);
  if (!mixed) {
    const value = Number(text);
    if (!Number.isFinite(value) || value > 1e12) return refused('fieldTooLarge', { got, example });
    return { ok: true, value, whole: Number.isInteger(value) };
  }
  const [over, under] = [Number(mixed[2]), Number(mixed[3])];
  if (under === 0) return refused('fieldZeroBelow', { got, example });
  if (mixed[1] !== undefined && over >= under) return refused('fieldFractionTooLarge', { got, example });
  return { ok: true, value: Number(mixed[1] ?? 0) + over / under, whole: false };
}
