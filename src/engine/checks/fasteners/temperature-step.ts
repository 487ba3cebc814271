import { remembered } from '../../../data/sources.ts';
import { givenStep } from '../../material/citation.ts';
import type { Step } from '../../note.ts';

/** Ct of every connection: a shelter in the open is never held hot for long. @source NDS 11.3.4, from memory */
export const TEMPERATURE_AT_ONE: Step = givenStep(
  'Ct',
  'temperature: never held above 100 °F for long',
  1,
  '1',
  remembered('NDS', '11.3.4'),
  'stated value',
);
