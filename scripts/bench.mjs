// `npm run bench [-- --json]`: time of a whole evaluation in Node, and from key press to repainted ratio in Chromium.
import { spawnSync } from 'node:child_process';
import { bootstrap, TOP } from './bootstrap.mjs';
import { findChromium } from './chromium.mjs';
import { buildForNode } from './node-build.mjs';

bootstrap();
const { build } = await import('vite');
await build({ root: TOP, logLevel: 'error' });
const program = await buildForNode('tests/bench/bench.ts', ['src', 'tests/bench', 'tests/browser/support', 'scripts']);
const run = spawnSync(process.execPath, [program, ...process.argv.slice(2)], {
  cwd: TOP,
  stdio: 'inherit',
  env: { ...process.env, CHROMIUM: await findChromium() },
});
process.exitCode = run.status ?? 1;
