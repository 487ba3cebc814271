import { FETCHING_MESSAGES } from '../../data/words/fetching.ts';
import { fillIn } from '../../data/words/fill-in.ts';
import type { Message } from '../../engine/message.ts';
import type { UnitSystem } from '../units/system.ts';
import type { Doors } from './doors.ts';

const EARLY: Readonly<Partial<Record<Message['code'], string>>> = FETCHING_MESSAGES;
const ON_ITS_WAY = 'The reason is on its way with a part of this program.';

/** A message as it reads. Most sentences come with the program, which is what gives cause to say them. */
export const sayIn = (doors: Pick<Doors, 'program'>, said: Message, system: UnitSystem): string =>
  doors.program()?.say(said, system) ?? fillIn(EARLY[said.code] ?? ON_ITS_WAY, said.values, system);
