import { chromium, type Browser } from 'playwright';
import { findChromium } from '../../../scripts/chromium.mjs';

const QUIET = [
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

let browser: Promise<Browser> | undefined;

/** One browser for all tests of a file; each test gets its own empty profile in it. */
export const launchBrowser = (): Promise<Browser> =>
  (browser ??= findChromium().then((executablePath) => chromium.launch({ executablePath, args: QUIET })));

/** Call in `afterAll` of every file that opens the workbench. */
export async function closeBrowser(): Promise<void> {
  const opened = await browser;
  browser = undefined;
  await opened?.close();
}
