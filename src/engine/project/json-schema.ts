import { z } from 'zod';
import { projectSchema } from './schema.ts';

/** JSON Schema (draft 2020-12) of the saved project, for editors and other readers of the file. */
export const projectJsonSchema = (): object => ({
  ...z.toJSONSchema(projectSchema, { target: 'draft-2020-12', reused: 'ref' }),
  title: 'Log shelter project, formatVersion 1',
});
