import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const require = createRequire(import.meta.url);
const OXLINT = join(dirname(require.resolve('oxlint/package.json')), 'bin', 'oxlint');

/** A small house of its own with the real rules, so that a bad sample never stands among the real sources. */
let house = '';
beforeAll(() => {
  house = mkdtempSync(join(tmpdir(), 'lint-house-'));
  copyFileSync(resolve('.oxlintrc.json'), join(house, '.oxlintrc.json'));
});
afterAll(() => rmSync(house, { recursive: true, force: true }));

function lint(path: string, text: string): { readonly refused: boolean; readonly said: string } {
  const file = join(house, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
  const run = spawnSync(process.execPath, [OXLINT, '--deny-warnings', '--format=json', path], {
    cwd: house,
    encoding: 'utf8',
  });
  rmSync(file);
  return { refused: run.status !== 0, said: run.stdout + run.stderr };
}

const ENGINE = 'src/engine/sample.ts';
const REFUSED: readonly (readonly [what: string, path: string, text: string, because: string])[] = [
  ['the engine imports the screen', ENGINE, "export { a } from '../ui/a.ts';", 'ui -> engine -> data'],
  [
    'the engine imports from a deep folder',
    'src/engine/a/b/c.ts',
    "export { a } from '../../../ui/x/a.ts';",
    'Arrows point one way',
  ],
  ['the engine imports react', ENGINE, "export { useState } from 'react';", 'pure'],
  ['the engine imports the store', ENGINE, "export { create } from 'zustand';", 'pure'],
  ['the engine imports the unit library', ENGINE, "export { unit } from 'mathjs';", 'pure'],
  ['the engine reads a file', ENGINE, "export { readFileSync } from 'node:fs';", 'pure'],
  ['the engine draws lots', ENGINE, 'export const a = (): number => Math.random();', 'no randomness'],
  ['the engine looks at the clock', ENGINE, 'export const a = (): number => Date.now();', 'no clock'],
  ['the engine makes a date', ENGINE, 'export const a = (): unknown => new Date();', 'no clock'],
  ['the engine uses the window', ENGINE, 'export const a = (): number => window.innerWidth;', 'no window'],
  ['the engine uses the page', ENGINE, 'export const a = (): string => document.title;', 'no page'],
  ['the engine fetches', ENGINE, "export const a = (): unknown => fetch('x');", 'no network'],
  ['the engine stores', ENGINE, "export const a = (): unknown => localStorage.getItem('x');", 'no storage'],
  ['a table imports the engine', 'src/data/sample.ts', "export { a } from '../engine/a.ts';", 'ui -> engine -> data'],
  ['a table imports a package', 'src/data/sample.ts', "export { z } from 'zod';", 'no package'],
  ['the terminal imports the screen', 'src/terminal/sample.ts', "export { a } from '../ui/a.ts';", 'door of its own'],
  ['a type escapes', ENGINE, 'export const a = (b: any): string => String(b);', 'any'],
];
const ALLOWED: readonly (readonly [what: string, path: string, text: string])[] = [
  ['the engine imports a table', ENGINE, "export { a } from '../data/a.ts';"],
  ['the engine imports its neighbour', ENGINE, "export { a } from './geometry/a.ts';"],
  ['the screen imports the engine', 'src/ui/sample.ts', "export { a } from '../engine/a.ts';"],
  ['the screen uses the page', 'src/ui/sample.ts', 'export const a = (): string => document.title;'],
  ['a test imports everything', 'tests/sample.test.ts', "export { a } from '../src/ui/a.ts';"],
];

describe('the lint rules', () => {
  it.each(REFUSED)('refuse that %s', (_, path, text, because) => {
    const { refused, said } = lint(path, text);
    expect(said).toContain(because);
    expect(refused).toBe(true);
  });

  it.each(ALLOWED)('allow that %s', (_, path, text) => {
    const { refused, said } = lint(path, text);
    expect(said).not.toContain('error');
    expect(refused).toBe(false);
  });
});
