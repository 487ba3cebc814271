import { CHECK_MESSAGES } from './checks.ts';
import { PROJECT_MESSAGES } from './project.ts';

/** Every sentence that the engine can say, by code; `{name}` is filled from the message's values. */
export const MESSAGES = { ...PROJECT_MESSAGES, ...CHECK_MESSAGES } as const;
export type MessageCode = keyof typeof MESSAGES;
