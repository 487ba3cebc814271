import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { projectFiles } from './sources.ts';

const TEXT = /\.(ts|tsx|mjs|json|md|html|css|svg|yml|webmanifest)$|^(\.npmrc|\.ci\/run|LICENSE)$/;
const files = projectFiles().filter((path) => TEXT.test(path));

/** `path: the words found`, for every place where a pattern occurs. */
const places = (paths: readonly string[], pattern: RegExp): readonly string[] =>
  paths.flatMap((path) => [...readFileSync(path, 'utf8').matchAll(pattern)].map(([found]) => `${path}: ${found}`));

/** Patterns are put together from parts, so that this file does not find itself. */
const words = (...parts: readonly string[]): string => parts.join('');

describe('what the project promises', () => {
  it('looks at every kind of file it has', () => {
    expect(files.length).toBeGreaterThan(30);
    expect(files).toContain('package-lock.json');
  });

  it('the product never promises safety', () => {
    const said = files.filter((path) => /^(src|public)\/|^README|^index\.html/.test(path));
    expect(places(said, /\b(is|are)\s+(structurally\s+)?safe\b|\bguarante(e[ds]?|es)\b/gi)).toEqual([]);
  });

  it('no file names the address of a package registry', () => {
    const host = new RegExp(
      words('https?://[^\\s"\']*\\b(', 'regis', 'try|npm', 'js|yarn', 'pkg|', 'verdaccio)\\b'),
      'gi',
    );
    const setting = new RegExp(words('\\bregis', 'try\\s*=\\s*\\S+'), 'gi');
    expect(places(files, host)).toEqual([]);
    expect(places(files, setting)).toEqual([]);
  });

  it('the lock file keeps no download address', () => {
    expect(places(['package-lock.json'], /"resolved"/g)).toEqual([]);
    expect(readFileSync('.npmrc', 'utf8')).toContain('omit-lockfile-registry-resolved=true');
  });

  it('packages are named by exact version', () => {
    const about = JSON.parse(readFileSync('package.json', 'utf8')) as Record<string, Record<string, string>>;
    const versions = Object.entries({ ...about['dependencies'], ...about['devDependencies'] });
    expect(versions.length).toBeGreaterThan(5);
    expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  it('nothing slips past the type checker or the linter', () => {
    const code = files.filter((path) => /\.(ts|tsx|mjs)$/.test(path));
    const escapes = [
      words('@ts-', '(ignore|nocheck|expect-error)'),
      words('(es', 'lint|ox', 'lint)-dis', 'able'),
      words('\\bas\\s+', 'unknown\\s+as\\b'),
      words('\\bas\\s+', 'any\\b'),
    ];
    expect(places(code, new RegExp(escapes.join('|'), 'g'))).toEqual([]);
  });

  it('no test is skipped, focused or left to do', () => {
    const tests = files.filter((path) => /^tests\/.*\.tsx?$/.test(path));
    const pattern = new RegExp(words('\\b(it|test|describe)\\.(sk', 'ip|on', 'ly|to', 'do|fa', 'ils)\\b'), 'g');
    expect(tests.length).toBeGreaterThan(3);
    expect(places(tests, pattern)).toEqual([]);
  });
});
