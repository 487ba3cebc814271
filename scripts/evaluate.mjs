// The terminal door: `npm run --silent evaluate -- FILE [--json] [--steps KEY [--combination ID]]`.
// Only the program itself writes to stdout; its exit code (0, 1, 2, 3) is passed through, 4 means it could not be built.
import { spawnSync } from 'node:child_process';
import { bootstrap } from './bootstrap.mjs';
import { buildForNode } from './node-build.mjs';

bootstrap();
try {
  const program = await buildForNode('src/terminal/evaluate.ts', ['src']);
  // npm runs scripts from the top folder; FILE is meant from where the person stands
  const here = process.env['npm_lifecycle_event'] === 'evaluate' ? process.env['INIT_CWD'] : undefined;
  const run = spawnSync(process.execPath, [program, ...process.argv.slice(2)], {
    cwd: here ?? process.cwd(),
    stdio: 'inherit',
  });
  process.exitCode = run.status ?? 4;
} catch (error) {
  console.error('The terminal program could not be built:', error instanceof Error ? error.message : error);
  process.exitCode = 4;
}
