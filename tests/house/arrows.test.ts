import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { importsOf, sourceModules } from './sources.ts';

/** Which folders of `src` a module may import from. The arrows point one way: ui -> engine -> data. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  data: ['data'],
  engine: ['engine', 'data'],
  ui: ['ui', 'engine', 'data'],
  terminal: ['terminal', 'engine', 'data'],
};
/** Packages that the engine may use: they compute, they draw and store nothing. */
const ENGINE_PACKAGES = /^(zod|@noble\/hashes)(\/|$)/;

const roomOf = (path: string): string => path.split('/')[1] ?? '';
const isRelative = (asked: string): boolean => asked.startsWith('.');

/** One line for every import of a module that goes against the arrows. */
function wrongWay(path: string, text: string): readonly string[] {
  const room = roomOf(path);
  return importsOf(text).flatMap((asked) => {
    if (isRelative(asked)) {
      const target = posix.join(posix.dirname(path), asked);
      // the screen opens on the demo, which therefore travels inside it
      const isExample = room === 'ui' && target.startsWith('public/examples/');
      const fine = isExample || (target.startsWith('src/') && MAY_IMPORT[room]?.includes(roomOf(target)));
      return fine ? [] : [`${path} -> ${target}`];
    }
    if (room === 'data') return [`${path} -> package ${asked}`];
    return room === 'engine' && !ENGINE_PACKAGES.test(asked) ? [`${path} -> package ${asked}`] : [];
  });
}

describe('the arrows of the house', () => {
  const modules = sourceModules();

  it('has the rooms that the arrows speak of, and no other', () => {
    expect(modules.length).toBeGreaterThan(10);
    expect(modules.map(({ path }) => roomOf(path)).filter((room) => !(room in MAY_IMPORT))).toEqual([]);
  });

  it('every import goes ui -> engine -> data', () => {
    expect(modules.flatMap(({ path, text }) => wrongWay(path, text))).toEqual([]);
  });

  it('every import of our own names its file with the extension', () => {
    const without = modules.flatMap(({ path, text }) =>
      importsOf(text)
        .filter((asked) => isRelative(asked) && !/\.(ts|tsx|css|json)(\?\w+)?$/.test(asked))
        .map((asked) => `${path} -> ${asked}`),
    );
    expect(without).toEqual([]);
  });

  it('no folder has a barrel', () => {
    expect(modules.map(({ path }) => path).filter((path) => /\/index\.tsx?$/.test(path))).toEqual([]);
  });

  it('the reader of imports sees every way to write one', () => {
    const text = [
      "import { a } from '../ui/a.ts';",
      "import type {\n  B,\n} from '../ui/b.ts';",
      "import '../ui/c.css';",
      "export * from '../ui/d.ts';",
      "const e = await import('../ui/e.ts');",
    ].join('\n');
    expect(wrongWay('src/engine/sample.ts', text)).toHaveLength(5);
    expect(wrongWay('src/ui/sample.ts', "import { a } from '../engine/a.ts';")).toEqual([]);
    expect(wrongWay('src/engine/sample.ts', "import { create } from 'zustand';")).toHaveLength(1);
  });
});
