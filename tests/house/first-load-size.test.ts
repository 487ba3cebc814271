import { afterAll, describe, expect, inject, it } from 'vitest';
import { closeBrowser, launchBrowser } from '../browser/support/browser.ts';
import { firstLoad, noteFirstRatio } from '../browser/support/first-load.ts';
import { figuresShown } from '../browser/support/workbench.ts';

const LIMIT_BYTES = 200 * 1024;
/** `program` brings the engine, the others are opened by a hand */
const LATE_PARTS = ['program', 'link-body', 'menu-list', 'sheet-place'];
const TOLD = { awaited: '', late: '  (after the first ratio)', font: '  (font: nothing waits for it)' } as const;

afterAll(closeBrowser);

describe('first load', () => {
  it('of an empty profile moves at most 200 KiB, gzip, until the first ratio is shown', async () => {
    const context = await (await launchBrowser()).newContext();
    const page = await context.newPage();
    await noteFirstRatio(page);
    await page.goto(inject('workbenchAddress'));
    await figuresShown(page);
    // a busy machine comes to rest late: the wait is for the parts themselves
    await page.waitForFunction((parts) => {
      const names = performance.getEntriesByType('resource').map(({ name }) => name);
      return parts.every((part) => names.some((name) => name.includes(part) && name.endsWith('.js')));
    }, LATE_PARTS);
    const { files, bytes, fontBytes } = await firstLoad(page);
    const kib = (n: number): string => `${(n / 1024).toFixed(1).padStart(8)} KiB`;
    console.log(
      [
        ...files.map((f) => `${kib(f.bytes)}  ${f.path}${TOLD[f.kind]}`),
        `${kib(bytes)}  first load, gzip, of ${LIMIT_BYTES / 1024} allowed`,
        `${kib(fontBytes)}  fonts beside it`,
      ].join('\n'),
    );
    const pathsOf = (kind: string): readonly string[] => files.filter((f) => f.kind === kind).map(({ path }) => path);
    // page, code and style are among what is counted; what is opened by a hand is not, but it comes without being asked
    for (const end of ['/', '.js', '.css']) {
      expect(pathsOf('awaited').filter((path) => path.endsWith(end)).length).toBeGreaterThan(0);
    }
    for (const part of LATE_PARTS) {
      expect(pathsOf('late').filter((path) => path.includes(part) && path.endsWith('.js'))).toHaveLength(1);
    }
    expect(pathsOf('font')).toHaveLength(3);
    expect(bytes).toBeLessThanOrEqual(LIMIT_BYTES);
    await context.close();
  });
});
