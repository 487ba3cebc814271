import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, parseSync } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { quickEngine, withoutTelling } from '../../scripts/quick-engine.ts';
import type * as QuickDoor from '../../src/engine/evaluate.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import type * as WholeDoor from '../../src/engine/explain.ts';
import { explain, explainPressures, explainValues } from '../../src/engine/explain.ts';
import { EXAMPLES, exampleText, soundProject } from '../support/files.ts';

const outDir = mkdtempSync(join(tmpdir(), 'quick-engine-'));
afterAll(() => rmSync(outDir, { recursive: true }));

let quick: typeof QuickDoor;
let whole: typeof WholeDoor;
/** code of every built chunk: of the engine without its telling, and of the whole one */
const code = { quick: '', whole: '' };
/** chunks that hold modules of both */
const mixed: string[] = [];

beforeAll(async () => {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    plugins: [quickEngine()],
    ssr: { noExternal: true },
    build: {
      ssr: true,
      outDir,
      emptyOutDir: true,
      copyPublicDir: false,
      rolldownOptions: {
        input: { quick: 'src/engine/evaluate.ts', whole: 'src/engine/explain.ts' },
        output: { entryFileNames: '[name].mjs', chunkFileNames: '[name].mjs' },
      },
    },
  });
  if (!('output' in built)) throw new Error('one output was asked for');
  for (const chunk of built.output) {
    if (chunk.type !== 'chunk') continue;
    const isWhole = chunk.moduleIds.some((id) => id.endsWith('?whole'));
    if (isWhole && chunk.moduleIds.some((id) => /src\/engine\/[^?]*$/.test(id))) mixed.push(chunk.fileName);
    code[isWhole ? 'whole' : 'quick'] += chunk.code;
  }
  const imported = async (name: string) => import(/* @vite-ignore */ pathToFileURL(join(outDir, `${name}.mjs`)).href);
  quick = await imported('quick');
  whole = await imported('whole');
});

const unlike = (a: object, b: object): readonly string[] => {
  const others = new Map(Object.entries(b));
  return Object.entries(a).flatMap(([key, value]) =>
    JSON.stringify(value) === JSON.stringify(others.get(key)) ? [] : [key],
  );
};

describe('the engine of the first figures', () => {
  it('tells nothing, and the one that comes late tells everything', () => {
    expect(mixed).toEqual([]);
    expect(code.quick).not.toMatch(/\bnote(\?\.)?\(/);
    expect(code.whole).toMatch(/\bnote(\?\.)?\(/);
    const words = '5 % exclusion limit in bending';
    expect([code.whole.includes(words), code.quick.includes(words)]).toEqual([true, false]);
  });

  it.each(EXAMPLES)('judges %s to the last digit as the whole engine does', (name) => {
    const project = soundProject(exampleText(name));
    const [ours, theirs] = [quick.evaluate(project), evaluate(project)];
    if (!ours.ok || !theirs.ok) throw new Error('figures expected');
    expect(unlike(theirs.evaluation, ours.evaluation)).toEqual([]);
    expect(Object.keys(ours.evaluation)).toEqual(Object.keys(theirs.evaluation));
    // numbers that were not asked are NaN, which JSON does not know
    expect(ours.evaluation.checks.map(({ ratios }) => ratios.values)).toEqual(
      theirs.evaluation.checks.map(({ ratios }) => ratios.values),
    );
  });

  it.each(EXAMPLES)('leaves the steps of %s to the whole engine, which tells them as the source does', (name) => {
    const project = soundProject(exampleText(name));
    const answer = evaluate(project);
    if (!answer.ok) throw new Error('figures expected');
    const { checks, logs } = answer.evaluation;
    const some = [...new Map(checks.map((check) => [check.ruleId, check.key])).values()].filter((_, i) => i % 6 === 0);
    expect(some.length).toBeGreaterThan(3);
    for (const key of some) expect(whole.explain(project, key)).toEqual(explain(project, key));
    expect(whole.explainPressures(project)).toEqual(explainPressures(project));
    for (const { logId } of logs) {
      expect(whole.explainValues(project, logId)?.('Fb')).toEqual(explainValues(project, logId)?.('Fb'));
    }
  });
});

const stripped = (source: string): string => withoutTelling(source, parseSync('formula.js', source).program);

describe('taking the telling out of a formula', () => {
  it.each([
    ['note?.({ symbol: next() }); keep();', '; keep();'],
    ['if (note) { told(); } keep();', '; keep();'],
    ['if (!note) return a;', 'return a;'],
    ['x = note ? told() : keep();', 'x = (keep());'],
    ['f(a, note); g(note); h(note, b);', 'f(a); g(); h(void 0, b);'],
    ['const f = (a, note) => note?.(a);', 'const f = (a) => {};'],
    ['const f = (note) => g(a, note);', 'const f = () => g(a);'],
    ['row.note = 1; keep({ note: 2 });', 'row.note = 1; keep({ note: 2 });'],
  ])('%s', (source, expected) => {
    const inside = (body: string): string => `function outer(a, b, note) { ${body} }`;
    expect(stripped(inside(source))).toBe(`function outer(a, b) { ${expected} }`);
  });

  it.each([
    'const note = listen();',
    'tell({ note });',
    'x = note;',
    'y = note.length;',
    'if (note || keep()) told();',
    'if (note) told(); else keep();',
  ])('refuses %s, since what is judged could hang on it', (source) => {
    expect(() => stripped(source)).toThrow('no quick form');
  });
});
