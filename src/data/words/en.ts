import { CHECK_MESSAGES } from './checks.ts';
import { FETCHING_MESSAGES } from './fetching.ts';
import { FIELD_MESSAGES } from './fields.ts';
import { GEOMETRY_MESSAGES } from './geometry.ts';
import { LOAD_PICTURE_MESSAGES } from './load-pictures.ts';
import { LOAD_MESSAGES } from './loads.ts';
import { PROJECT_MESSAGES } from './project.ts';
import { ROOF_MESSAGES } from './roof.ts';
import { WOOD_MESSAGES } from './wood.ts';

/** Every sentence that the engine can say, by code; `{name}` is filled from the message's values. */
export const MESSAGES = {
  ...PROJECT_MESSAGES,
  ...GEOMETRY_MESSAGES,
  ...LOAD_MESSAGES,
  ...LOAD_PICTURE_MESSAGES,
  ...CHECK_MESSAGES,
  ...ROOF_MESSAGES,
  ...WOOD_MESSAGES,
  ...FIELD_MESSAGES,
  ...FETCHING_MESSAGES,
} as const;
export type MessageCode = keyof typeof MESSAGES;
