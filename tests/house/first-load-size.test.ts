import { afterAll, describe, expect, inject, it } from 'vitest';
import { closeBrowser, launchBrowser } from '../browser/support/browser.ts';
import { firstLoad, noteFirstRatio } from '../browser/support/first-load.ts';
import { figuresShown } from '../browser/support/workbench.ts';

const LIMIT_BYTES = 200 * 1024;

afterAll(closeBrowser);

describe('first load', () => {
  it('of an empty profile moves at most 200 KiB, gzip, until the first ratio is shown', async () => {
    const context = await (await launchBrowser()).newContext();
    const page = await context.newPage();
    await noteFirstRatio(page);
    await page.goto(inject('workbenchAddress'));
    await figuresShown(page);
    await page.waitForLoadState('networkidle');
    const { files, bytes } = await firstLoad(page);
    const kib = (n: number): string => `${(n / 1024).toFixed(1).padStart(8)} KiB`;
    console.log(
      [
        ...files.map((f) => `${kib(f.bytes)}  ${f.path}${f.isLate ? '  (after the first ratio)' : ''}`),
        `${kib(bytes)}  first load, gzip, of ${LIMIT_BYTES / 1024} allowed`,
      ].join('\n'),
    );
    // code, style and the demo itself are among what is counted
    const counted = files.filter(({ isLate }) => !isLate).map(({ path }) => path);
    for (const kind of ['.js', '.css', '.shelter.json']) {
      expect(counted.filter((path) => path.endsWith(kind)).length).toBeGreaterThan(0);
    }
    expect(bytes).toBeLessThanOrEqual(LIMIT_BYTES);
    await context.close();
  });
});
