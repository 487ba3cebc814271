import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];
const TEN_MINUTES = 600_000;

/** True when the program answers to `--version`; a file that is there but broken does not count. */
const runs = (/** @type {string} */ path) =>
  spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 20_000 }).status === 0;

/** @returns {string | null} full path of a program on PATH */
function onPath(/** @type {string} */ name) {
  for (const folder of (process.env['PATH'] ?? '').split(delimiter)) {
    const file = join(folder, name);
    try {
      accessSync(file, constants.X_OK);
      return file;
    } catch {
      // not in this folder: look in the next
    }
  }
  return null;
}

const firstOnPath = () => NAMES.map(onPath).find((path) => path !== null && runs(path)) ?? null;

/** The browser that the playwright library would bring along, if someone has fetched it. */
async function playwrightsOwn() {
  const { chromium } = await import('playwright');
  const path = chromium.executablePath();
  return existsSync(path) && runs(path) ? path : null;
}

/** Debian and its kin, as root: the distribution's own package. */
function fromApt() {
  if (process.getuid?.() !== 0 || !onPath('apt-get')) return null;
  console.error('No Chromium found: installing the package chromium ...');
  const apt = (/** @type {string[]} */ ...words) =>
    spawnSync('apt-get', ['-o', 'DPkg::Lock::Timeout=300', ...words], {
      stdio: ['ignore', 2, 2],
      timeout: TEN_MINUTES,
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    }).status === 0;
  return apt('update', '-q') && apt('install', '-y', '-q', '--no-install-recommends', 'chromium')
    ? firstOnPath()
    : null;
}

async function fetchedByPlaywright() {
  console.error("Trying the playwright library's own download ...");
  spawnSync('npx', ['playwright', 'install', 'chromium'], {
    stdio: ['ignore', 2, 2],
    timeout: TEN_MINUTES,
    shell: process.platform === 'win32',
  });
  return playwrightsOwn();
}

/**
 * Path of a Chromium that runs, in this order: the CHROMIUM variable (which must then run), PATH, the playwright
 * library's own, the distribution's package when we are root, the playwright library's download.
 * @throws Error with what to do when none is found
 */
export async function findChromium() {
  const named = process.env['CHROMIUM'];
  if (named) {
    if (runs(named)) return named;
    throw new Error(`CHROMIUM names ${named}, which does not run. Correct it, or unset it to search for a browser.`);
  }
  const found = firstOnPath() ?? (await playwrightsOwn()) ?? fromApt() ?? (await fetchedByPlaywright());
  if (found) return found;
  throw new Error(
    'The browser tests need Chromium and none was found. Install it (Debian: apt-get install chromium), or set the ' +
      'variable CHROMIUM to the full path of a Chromium or Chrome.',
  );
}
