import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { TOP } from './bootstrap.mjs';

const CACHE = join(TOP, 'dist-cli');
const ONE_HOUR_MS = 3_600_000;

/** Every file below a folder, in a fixed order. @returns {string[]} */
const filesBelow = (/** @type {string} */ folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();

/** Fingerprint of everything that the built program can depend on. */
function sourceHash(/** @type {string[]} */ folders) {
  const hash = createHash('sha256');
  const files = folders.flatMap((folder) => filesBelow(join(TOP, folder)));
  for (const file of [...files, join(TOP, 'package-lock.json')]) hash.update(file).update(readFileSync(file));
  return hash.digest('hex').slice(0, 16);
}

/** Builds of older sources go after an hour; a younger one may still be running in another window. */
function forgetOld(/** @type {string} */ name, /** @type {string} */ keep) {
  for (const folder of readdirSync(CACHE)) {
    const path = join(CACHE, folder);
    if (folder.startsWith(`${name}-`) && path !== keep && Date.now() - statSync(path).mtimeMs > ONE_HOUR_MS) {
      rmSync(path, { recursive: true, force: true });
    }
  }
}

/**
 * Builds a TypeScript entry into a program that plain Node runs, or finds the one built before from the same sources.
 * Built aside and renamed into place, so that two commands at once never see half a program.
 * @param {string} entry path from the top folder, for example `src/terminal/evaluate.ts`
 * @param {string[]} folders folders that the entry may import from
 * @returns {Promise<string>} path of the program
 */
export async function buildForNode(entry, folders) {
  const name = basename(entry, '.ts');
  const home = join(CACHE, `${name}-${sourceHash(folders)}`);
  const program = join(home, `${name}.js`);
  if (existsSync(program)) return program;

  mkdirSync(CACHE, { recursive: true });
  const aside = join(CACHE, `${name}-building-${process.pid}`);
  const { build } = await import('vite');
  await build({
    root: TOP,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    build: {
      ssr: entry,
      outDir: aside,
      emptyOutDir: true,
      target: 'node20',
      rollupOptions: { output: { entryFileNames: '[name].js' } },
    },
  });
  try {
    renameSync(aside, home);
  } catch (error) {
    rmSync(aside, { recursive: true, force: true });
    if (!existsSync(program)) throw error; // else another command was quicker with the same sources
  }
  forgetOld(name, home);
  return program;
}
