import { CHECK_MESSAGES } from './checks.ts';
import { FASTENER_MESSAGES } from './fasteners.ts';
import { FASTENER_PULL_MESSAGES } from './fasteners-pulled.ts';
import { FETCHING_MESSAGES } from './fetching.ts';
import { FIELD_MESSAGES } from './fields.ts';
import { GEOMETRY_MESSAGES } from './geometry.ts';
import { GROUND_MESSAGES } from './ground.ts';
import { JOINT_MESSAGES } from './joints.ts';
import { LOAD_PICTURE_MESSAGES } from './load-pictures.ts';
import { LOAD_MESSAGES } from './loads.ts';
import { PROJECT_MESSAGES } from './project.ts';
import { RAISING_MESSAGES } from './raising.ts';
import { ROOF_MESSAGES } from './roof.ts';
import { TRANSVERSE_MESSAGES } from './transverse.ts';
import { WOOD_MESSAGES } from './wood.ts';

/** Every sentence that the engine can say, by code; `{name}` is filled from the message's values. */
export const MESSAGES = {
  ...PROJECT_MESSAGES,
  ...GEOMETRY_MESSAGES,
  ...LOAD_MESSAGES,
  ...LOAD_PICTURE_MESSAGES,
  ...CHECK_MESSAGES,
  ...FASTENER_PULL_MESSAGES,
  ...FASTENER_MESSAGES,
  ...GROUND_MESSAGES,
  ...JOINT_MESSAGES,
  ...RAISING_MESSAGES,
  ...ROOF_MESSAGES,
  ...TRANSVERSE_MESSAGES,
  ...WOOD_MESSAGES,
  ...FIELD_MESSAGES,
  ...FETCHING_MESSAGES,
} as const;
export type MessageCode = keyof typeof MESSAGES;
