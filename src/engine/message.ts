import type { MessageCode } from '../data/words/en.ts';

/** What the engine says: a code and the values that fill its sentence. The sentences live in `src/data/words`. */
export interface Message {
  readonly code: MessageCode;
  readonly values: Readonly<Record<string, string | number>>;
}

/** A fault in what a person typed, with the path of the field and what would mend it. */
export interface Fault extends Message {
  /** path by id, for example `members[post-2].xIn` */
  readonly path: string;
}

export const message = (code: MessageCode, values: Record<string, string | number> = {}): Message => ({ code, values });

export const fault = (path: string, code: MessageCode, values: Record<string, string | number> = {}): Fault => ({
  path,
  code,
  values,
});
