// `npm test`: everything that CI runs. `npm test -- unit` or `-- build browser` runs only the steps named.
// The last line alone tells the counts: `N passed, N failed`. A step that breaks without a test counts as one failure.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { bootstrap, TOP } from './bootstrap.mjs';
import { findChromium } from './chromium.mjs';

bootstrap();
const RESULTS = join(TOP, 'test-results');
mkdirSync(RESULTS, { recursive: true });

/** @typedef {{ passed: number, failed: number }} Count */

/** The script of an installed package, so that no shell and no `npx` stands between. */
function bin(/** @type {string} */ name, /** @type {string} */ inPackage = name) {
  const home = join(TOP, 'node_modules', inPackage);
  const about = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'));
  return join(home, typeof about.bin === 'string' ? about.bin : about.bin[name]);
}

function runs(/** @type {string} */ program, /** @type {string[]} */ ...words) {
  return spawnSync(process.execPath, [program, ...words], { cwd: TOP, stdio: 'inherit' }).status === 0;
}

/** A tool that says yes or no. @returns {Count} */
const tool = (/** @type {boolean} */ ok) => ({ passed: 0, failed: ok ? 0 : 1 });

/** A run of tests: its counts come from its own report. @returns {Count} */
function tests(/** @type {string} */ config, /** @type {string} */ report) {
  const file = join(RESULTS, report);
  rmSync(file, { force: true });
  const ok = runs(
    bin('vitest'),
    'run',
    '--config',
    config,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  );
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(file, 'utf8'));
  // a file that breaks before its first test leaves no failed test behind, yet the run has failed
  return { passed: numPassedTests, failed: Math.max(numFailedTests, ok ? 0 : 1) };
}

/** @type {Record<string, { words: string, run: () => Count | Promise<Count> }>} */
const STEPS = {
  types: { words: 'Types', run: () => tool(runs(bin('tsc', 'typescript'), '--noEmit', '-p', '.')) },
  lint: { words: 'Lint', run: () => tool(runs(bin('oxlint'), '--deny-warnings')) },
  format: { words: 'Format', run: () => tool(runs(bin('prettier'), '--check', '--log-level', 'warn', '.')) },
  unused: { words: 'Unused code', run: () => tool(runs(bin('knip'), '--no-progress')) },
  proof: { words: 'Proofs', run: () => tool(runs(join(TOP, 'scripts/proof.mjs'))) },
  unit: { words: 'Tests of engine, data, screen parts and house', run: () => tests('vitest.config.ts', 'unit.json') },
  build: { words: 'Build', run: () => tool(runs(bin('vite'), 'build', '--logLevel', 'warn')) },
  browser: {
    words: 'Tests in Chromium',
    run: async () => {
      process.env['CHROMIUM'] = await findChromium();
      return tests('vitest.browser.config.ts', 'browser.json');
    },
  },
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in STEPS));
if (unknown.length > 0) {
  console.error(`No such step: ${unknown.join(', ')}. Steps: ${Object.keys(STEPS).join(', ')}.`);
  process.exit(1);
}

const total = { passed: 0, failed: 0 };
/** @type {string[]} */
const broken = [];
for (const [name, step] of Object.entries(STEPS)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  console.log(`\n== ${step.words}`);
  const started = performance.now();
  /** @type {Count} */
  let count;
  try {
    count = await step.run();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    count = { passed: 0, failed: 1 };
  }
  console.log(`   ${count.failed > 0 ? 'FAILED' : 'in order'}, ${((performance.now() - started) / 1000).toFixed(1)} s`);
  total.passed += count.passed;
  total.failed += count.failed;
  if (count.failed > 0) broken.push(name);
}
if (broken.length > 0) console.log(`\nFailed in: ${broken.join(', ')}`);
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 ? 1 : 0;
