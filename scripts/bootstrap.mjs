// Runs before anything is installed, so it uses nothing but what Node brings along.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's top folder, wherever the command was typed. */
export const TOP = join(dirname(fileURLToPath(import.meta.url)), '..');

const LEAST_NODE = { major: 20, minor: 19 };
const LOCK = join(TOP, 'package-lock.json');
const STAMP = join(TOP, 'node_modules', '.lock-stamp');

/**
 * @typedef {{ version?: string, integrity?: string, optional?: boolean }} LockedPackage
 * @param {string} file
 * @returns {Record<string, LockedPackage>}
 */
const packagesIn = (file) => JSON.parse(readFileSync(file, 'utf8')).packages;

/** True when what lies in node_modules is what the lock file names: then a missing stamp needs no new install. */
function installedMatchesLock() {
  const hidden = join(TOP, 'node_modules', '.package-lock.json');
  if (!existsSync(hidden)) return false;
  const installed = packagesIn(hidden);
  const locked = Object.entries(packagesIn(LOCK)).filter(([path]) => path !== '');
  const lockedPaths = new Set(locked.map(([path]) => path));
  return (
    Object.keys(installed).every((path) => lockedPaths.has(path)) &&
    locked.every(([path, entry]) => {
      const found = installed[path];
      return found ? found.version === entry.version && found.integrity === entry.integrity : entry.optional === true;
    })
  );
}

/** Runs npm by the same npm that started us, or by the one on the path; everything it says goes to stderr. */
function npm(/** @type {string[]} */ ...words) {
  const cli = process.env['npm_execpath'];
  /** @type {import('node:child_process').SpawnSyncOptions} */
  const options = { cwd: TOP, stdio: ['ignore', 2, 2] };
  const run = cli?.endsWith('.js')
    ? spawnSync(process.execPath, [cli, ...words], options)
    : spawnSync('npm', words, { ...options, shell: process.platform === 'win32' });
  return run.status === 0;
}

/**
 * Makes sure that Node is new enough and that the packages of the lock file are installed. Writes to stderr only, so
 * that a program's own output stays clean. Ends the process with a sentence when it cannot.
 */
export function bootstrap() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < LEAST_NODE.major || (major === LEAST_NODE.major && minor < LEAST_NODE.minor)) {
    console.error(
      `Node ${LEAST_NODE.major}.${LEAST_NODE.minor} or newer is needed; this is Node ${process.versions.node}.`,
    );
    process.exit(1);
  }
  const hash = createHash('sha256').update(readFileSync(LOCK)).digest('hex');
  if (existsSync(STAMP) && readFileSync(STAMP, 'utf8') === hash) return;
  if (!installedMatchesLock()) {
    console.error('Installing packages ...');
    if (!npm('ci', '--no-audit', '--no-fund', '--loglevel=error')) {
      console.error('The packages could not be installed: see the lines above. A network is needed the first time.');
      process.exit(1);
    }
  }
  writeFileSync(STAMP, hash);
}
