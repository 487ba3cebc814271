import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright';

/** these are compressed already: a web server sends them as they are */
const PACKED = /\.(woff2|png|jpg|webp)$/;

export interface LoadedFile {
  readonly path: string;
  readonly bytes: number;
  /** code asked for after the first paint is loaded late on purpose; fonts and the demo are part of the first view */
  readonly isLate: boolean;
}

/** What the page has moved since it was opened with an empty profile, as a web server would send it, gzip. */
export async function firstLoad(
  page: Page,
): Promise<{ readonly files: readonly LoadedFile[]; readonly bytes: number }> {
  const { painted, entries } = await page.evaluate(() => ({
    painted: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Infinity,
    entries: [
      { name: location.href, startTime: 0 },
      ...performance.getEntriesByType('resource').map(({ name, startTime }) => ({ name, startTime })),
    ],
  }));
  if (painted === Infinity) throw new Error('Nothing was painted.');
  const files: LoadedFile[] = [];
  for (const { name, startTime } of entries) {
    const path = new URL(name).pathname;
    const body = await (await page.request.get(name)).body();
    const bytes = PACKED.test(path) ? body.length : gzipSync(body, { level: 9 }).length;
    files.push({ path, bytes, isLate: startTime > painted && /\.(js|css)$/.test(path) });
  }
  return { files, bytes: files.reduce((sum, f) => sum + (f.isLate ? 0 : f.bytes), 0) };
}
