import { parseProject } from '../../engine/project/parse.ts';
import { saveText } from '../../engine/project/save-text.ts';
import type { ProjectCode } from './doors.ts';
import { setAtTouched } from './not-yet-yours.ts';

/** Everything that carries the schema of the file, fetched in one piece after the first figures. */
export const projectCode: ProjectCode = { parse: parseProject, setAt: setAtTouched, saveText };
