import type { MessageCode } from '../../../data/words/en.ts';
import { message, type Message } from '../../message.ts';

/** A fastener that may not go here, or that the equations do not reach, and why. */
export interface Refused {
  readonly ok: false;
  readonly reason: Message;
}

export const refused = (code: MessageCode, values: Record<string, string | number> = {}): Refused => ({
  ok: false,
  reason: message(code, values),
});
