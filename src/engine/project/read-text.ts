import { type Fault, fault } from '../message.ts';

/** Largest project file that is read; a shelter of every allowed size is well under it [characters]. */
const LONGEST_TEXT = 2_000_000;

export type TextAnswer = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly fault: Fault };

/** Reads the text of a project file as JSON; tells a cut-off file from one that never was a project. */
export function readProjectText(text: string): TextAnswer {
  const refused = (reason: Fault): TextAnswer => ({ ok: false, fault: reason });
  if (text.length > LONGEST_TEXT) {
    return refused(fault('', 'fileTooLarge', { got: megabytes(text.length), limit: megabytes(LONGEST_TEXT) }));
  }
  const body = text.replace(/^\uFEFF/, '').trim();
  if (body === '') return refused(fault('', 'fileEmpty'));
  try {
    return { ok: true, value: JSON.parse(body) };
  } catch (error) {
    if (isCutOff(body)) return refused(fault('', 'fileCutOff', { length: body.length }));
    return refused(fault('', 'notJson', { detail: error instanceof Error ? error.message.slice(0, 120) : '' }));
  }
}

const megabytes = (characters: number): string => `${(characters / 1e6).toFixed(1)} MB`;

/** True when the text starts like a project and ends inside a word, a list or an object that was never closed. */
function isCutOff(body: string): boolean {
  let open = 0;
  let isInWord = false;
  for (let i = 0; i < body.length; i++) {
    const c = body[i];
    if (isInWord) {
      if (c === '\\') i += 1;
      else if (c === '"') isInWord = false;
    } else if (c === '"') isInWord = true;
    else if (c === '{' || c === '[') open += 1;
    else if (c === '}' || c === ']') open -= 1;
  }
  return body.startsWith('{') && (isInWord || open > 0);
}
