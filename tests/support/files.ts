import { readFileSync } from 'node:fs';
import type { Project } from '../../src/engine/project/model.ts';
import { parseProject } from '../../src/engine/project/parse.ts';

export const EXAMPLES = [
  'firewood-shed',
  'framed-shed',
  'lean-to',
  'snow-lean-to',
  'gable',
  'undersized-shed',
] as const;
export type Example = (typeof EXAMPLES)[number];

const textOf = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

export const exampleText = (name: Example): string => textOf(`public/examples/${name}.shelter.json`);
/** A shed that knee braces hold along and that nothing holds across, its joints rated: smaller than the demo. */
export const bracedShedText = (): string => textOf('tests/fixtures/braced-shed.shelter.json');
export const everythingGivenText = (): string => textOf('tests/fixtures/everything-given.shelter.json');
export const jsonSchemaText = (): string => textOf('public/shelter.schema.json');

/** A file that must be sound. @throws Error  with its faults if it is not */
export function soundProject(text: string): Project {
  const answer = parseProject(text);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.project;
}
