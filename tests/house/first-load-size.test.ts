import { gzipSync } from 'node:zlib';
import { afterAll, describe, expect, it } from 'vitest';
import { closeBrowser } from '../browser/support/browser.ts';
import { openWorkbench } from '../browser/support/workbench.ts';

const LIMIT_BYTES = 200 * 1024;
/** these are compressed already: a web server sends them as they are */
const PACKED = /\.(woff2|png|jpg|webp)$/;

afterAll(closeBrowser);

describe('first load', () => {
  it('of an empty profile moves at most 200 KiB, gzip', async () => {
    const { page, close } = await openWorkbench();
    await page.waitForLoadState('networkidle');

    const loaded = await page.evaluate(() => {
      const painted = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Infinity;
      const files = performance.getEntriesByType('resource').map(({ name, startTime }) => ({ name, startTime }));
      return { painted, files: [{ name: location.href, startTime: 0 }, ...files] };
    });

    let total = 0;
    const report: string[] = [];
    const tell = (bytes: number, words: string): unknown =>
      report.push(`${(bytes / 1024).toFixed(1).padStart(8)} KiB  ${words}`);
    for (const { name, startTime } of loaded.files) {
      const path = new URL(name).pathname;
      // Code asked for after the first paint is loaded late on purpose; fonts and the demo are part of the first view.
      const late = startTime > loaded.painted && /\.(js|css)$/.test(path);
      const body = await (await page.request.get(name)).body();
      const bytes = PACKED.test(path) ? body.length : gzipSync(body, { level: 9 }).length;
      if (!late) total += bytes;
      tell(bytes, `${path}${late ? '  (after first paint)' : ''}`);
    }
    tell(total, `first load, gzip, of ${LIMIT_BYTES / 1024} allowed`);
    console.log(report.join('\n'));

    expect(loaded.files.length).toBeGreaterThan(2);
    expect(loaded.painted).toBeLessThan(Infinity);
    expect(total).toBeLessThanOrEqual(LIMIT_BYTES);
    await close();
  });
});
