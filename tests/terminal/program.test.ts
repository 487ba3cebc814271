import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';

/** The built program itself, as a person starts it. */
const run = (...words: readonly string[]) =>
  spawnSync(process.execPath, ['scripts/evaluate.mjs', ...words], { encoding: 'utf8', maxBuffer: 64 * 1024 ** 2 });

describe('npm run evaluate', () => {
  it('ends with the number of the answer and writes figures to one stream, refusals to the other', () => {
    const passes = run('tests/fixtures/everything-given.shelter.json');
    expect([passes.status, passes.stderr]).toEqual([0, '']);
    expect(passes.stdout).toContain('Worst of each link');

    const fails = run('public/examples/undersized-shed.shelter.json', '--json');
    expect(fails.status).toBe(1);
    expect(JSON.parse(fails.stdout)).toMatchObject({ formatVersion: 1 });

    const refused = run('package.json');
    expect([refused.status, refused.stdout]).toEqual([2, '']);
    expect(refused.stderr).toContain('package.json is refused');
  }, 120_000);
});
