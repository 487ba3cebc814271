import { afterAll, describe, expect, it } from 'vitest';
import { closeBrowser } from '../browser/support/browser.ts';
import { firstLoad } from '../browser/support/first-load.ts';
import { openWorkbench } from '../browser/support/workbench.ts';

const LIMIT_BYTES = 200 * 1024;

afterAll(closeBrowser);

describe('first load', () => {
  it('of an empty profile moves at most 200 KiB, gzip', async () => {
    const { page, close } = await openWorkbench();
    await page.waitForLoadState('networkidle');
    const { files, bytes } = await firstLoad(page);
    const kib = (n: number): string => `${(n / 1024).toFixed(1).padStart(8)} KiB`;
    console.log(
      [
        ...files.map((f) => `${kib(f.bytes)}  ${f.path}${f.isLate ? '  (after first paint)' : ''}`),
        `${kib(bytes)}  first load, gzip, of ${LIMIT_BYTES / 1024} allowed`,
      ].join('\n'),
    );
    expect(files.length).toBeGreaterThan(2);
    expect(bytes).toBeLessThanOrEqual(LIMIT_BYTES);
    await close();
  });
});
