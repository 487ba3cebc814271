import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

/** Every file of the project that is or is about to be committed, with `/` between folders. */
export const projectFiles = (): readonly string[] =>
  execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { encoding: 'utf8' })
    .split('\n')
    .filter((path) => path !== '' && existsSync(path));

const IMPORT = /\b(?:import|export)\s(?:[^'"`;]*?\sfrom\s)?\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)/g;

/** What a module asks for: imports, re-exports, imports for the side effect, dynamic imports. */
export const importsOf = (text: string): readonly string[] =>
  [...text.matchAll(IMPORT)].map((match) => match[1] ?? match[2] ?? '');

export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** The program's own modules. */
export const sourceModules = (): readonly SourceFile[] =>
  projectFiles()
    .filter((path) => /^src\/.*\.tsx?$/.test(path))
    .map((path) => ({ path, text: readFileSync(path, 'utf8') }));
