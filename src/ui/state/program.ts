import { say } from '../../data/words/say.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { parseProject } from '../../engine/project/parse.ts';
import { saveText } from '../../engine/project/save-text.ts';
import { readField } from '../units/read-field.ts';
import type { Program } from './doors.ts';
import { setAtTouched } from './not-yet-yours.ts';

/** Fetched in one piece after the first paint. */
export const program: Program = { evaluate, parse: parseProject, readField, setAt: setAtTouched, saveText, say };
