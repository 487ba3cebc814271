// `npm run proof`: what stands behind each rule, and how many figures nobody compared with a printed edition. Fails on a rule
// without a proof.
import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { bootstrap, TOP } from './bootstrap.mjs';
import { countFromMemory, PROOF_KINDS, scanTests, sourceFiles } from './proof-scan.mjs';

bootstrap();
const { runnerImport } = await import('vite');
const load = async (/** @type {string} */ path) =>
  (await runnerImport(path, { root: TOP, configFile: false, logLevel: 'error' })).module;

/** @typedef {{ words: string, clause: { source: string, clause: string, memory?: true } }} Rule */
const { RULES } = /** @type {{ RULES: Record<string, Rule> }} */ (await load(join(TOP, 'src/data/rules.ts')));
const { proofs, testsOf } = scanTests();

const faults = proofs.flatMap(({ rule, kind, file, hasTest }) => [
  ...(rule in RULES ? [] : [`${file}: there is no rule ${rule}`]),
  ...(kind in PROOF_KINDS ? [] : [`${file}: ${kind} is no kind of proof; use ${Object.keys(PROOF_KINDS).join(', ')}`]),
  ...(hasTest ? [] : [`${file}: a proof of ${rule} is claimed, but no test title there names [${rule}]`]),
]);

/** @type {string[]} */
const unproved = [];
console.log('Rule, tests that name it, what proves it\n');
for (const [rule, { clause }] of Object.entries(RULES)) {
  const own = proofs.filter((proof) => proof.rule === rule && proof.hasTest && proof.kind in PROOF_KINDS);
  const mark = clause.memory ? '  (clause from memory)' : '';
  console.log(
    `${rule.padEnd(22)} ${String(testsOf.get(rule) ?? 0).padStart(3)}  ${own.length === 0 ? 'NONE' : ''}${mark}`,
  );
  for (const { kind, words } of own) {
    console.log(`${' '.repeat(28)}${PROOF_KINDS[/** @type {keyof typeof PROOF_KINDS} */ (kind)]}: ${words}`);
  }
  if (own.length === 0) unproved.push(rule);
}

console.log('\nNot compared with a printed edition: rows and clauses so marked, constants whose @source says so\n');
let fromMemory = 0;
const visited = new Set();
for (const path of sourceFiles('src/data').concat(sourceFiles('src/engine'))) {
  const text = readFileSync(path, 'utf8');
  const isData = path.startsWith(join(TOP, 'src/data'));
  // tables are loaded and counted row by row; a formula marks its clause where it stands
  const rows = isData ? countFromMemory(await load(path), visited) : [...text.matchAll(/\bremembered\(/g)].length;
  const constants = [...text.matchAll(/@source[^\n]*from memory/g)].length;
  fromMemory += rows + constants;
  if (rows + constants > 0) {
    console.log(`${String(rows).padStart(5)} rows ${String(constants).padStart(4)} constants  ${relative(TOP, path)}`);
  }
}

const rules = Object.keys(RULES).length;
console.log(`\n${rules - unproved.length} of ${rules} rules proved; ${fromMemory} marks from memory.`);
if (unproved.length > 0) console.log(`Without a proof: ${unproved.join(', ')}`);
for (const fault of faults) console.error(fault);
process.exitCode = faults.length + unproved.length > 0 ? 1 : 0;
