import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { TOP } from './bootstrap.mjs';

/** What can stand behind a rule; the first three are proofs of an equation. */
export const PROOF_KINDS = /** @type {const} */ ({
  printed: '(a) printed number',
  'closed-form': '(b) closed form',
  'second-source': '(c) second source',
  'no-equation': 'states a fact, no equation',
});

/** @typedef {keyof typeof PROOF_KINDS} ProofKind */
/** @typedef {{ rule: string, kind: string, words: string, file: string, hasTest: boolean }} Proof */
/** @typedef {{ proofs: readonly Proof[], testsOf: ReadonlyMap<string, number> }} Found */

const COMMENT = /\/\/\s*proof\s+\[([\w.]+)\]:\s*([\w-]+)\s*(?:-\s*(.*))?$/gm;
const TITLE = /\b(?:it|test)(?:\.each\([^)]*\)|\.each`[^`]*`|\.prop\([^)]*\))?\(\s*(['"`])((?:\\.|(?!\1).)*)\1/gs;
const NAMED_RULE = /\[([a-z]\w*\.\w+)\]/g;

/**
 * Reads the proofs that one test file claims: `// proof [beam.bending]: printed - NDS 2018 table 4A` beside a test whose
 * title begins with `[beam.bending]`. A comment without such a test in the same file proves nothing.
 * @param {string} text
 * @param {string} file name for the report
 * @returns {{ proofs: Proof[], titled: string[] }}
 */
export function proofsIn(text, file) {
  const titles = [...text.matchAll(TITLE)].map((match) => match[2] ?? '');
  const titled = titles.flatMap((title) => [...title.matchAll(NAMED_RULE)].map((match) => match[1] ?? ''));
  const proofs = [...text.matchAll(COMMENT)].map(([, rule = '', kind = '', words = '']) => ({
    rule,
    kind,
    words: words.trim(),
    file,
    hasTest: titled.includes(rule),
  }));
  return { proofs, titled };
}

/** TypeScript files below a folder of the project, words of messages left out. @returns {string[]} */
export const sourceFiles = (/** @type {string} */ folder) =>
  readdirSync(join(TOP, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !entry.parentPath.endsWith('words'))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();

/** @returns {Found} every proof and the number of tests that name each rule, over the whole tests folder */
export function scanTests() {
  /** @type {Proof[]} */
  const proofs = [];
  /** @type {Map<string, number>} */
  const testsOf = new Map();
  for (const path of sourceFiles('tests')) {
    const file = relative(TOP, path);
    // tests of the house talk about proofs, they are none
    if (!/\.test\.tsx?$/.test(path) || file.startsWith(join('tests', 'house'))) continue;
    const found = proofsIn(readFileSync(path, 'utf8'), file);
    proofs.push(...found.proofs);
    for (const rule of found.titled) testsOf.set(rule, (testsOf.get(rule) ?? 0) + 1);
  }
  return { proofs, testsOf };
}

/**
 * Counts, in everything a data module exports, the rows marked as known from memory: `seen: 'memory'` or `memory: true`.
 * @param {unknown} root
 * @param {Set<object>} visited rows counted before, so that a row exported twice counts once
 * @returns {number}
 */
export function countFromMemory(root, visited) {
  if (typeof root !== 'object' || root === null || visited.has(root)) return 0;
  visited.add(root);
  const marked = ('seen' in root && root.seen === 'memory') || ('memory' in root && root.memory === true);
  const parts = root instanceof Map ? [...root.values()] : Object.values(root);
  return parts.reduce((sum, part) => sum + countFromMemory(part, visited), marked ? 1 : 0);
}
