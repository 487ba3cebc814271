import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright';

/** these are compressed already: a web server sends them as they are */
const PACKED = /\.(woff2|png|jpg|webp)$/;
const MARK = 'first-ratio';

export interface LoadedFile {
  readonly path: string;
  readonly bytes: number;
  /** asked for after the first ratio was shown, on purpose */
  readonly isLate: boolean;
}

/** Called before the page is opened: notes the moment at which the first ratio stands on it. */
export const noteFirstRatio = (page: Page): Promise<void> =>
  page
    .addInitScript((mark) => {
      const watch = new MutationObserver(() => {
        const numbers = [...document.querySelectorAll('.link-head .number')];
        if (!numbers.some((each) => /\d/.test(each.textContent))) return;
        watch.disconnect();
        performance.mark(mark);
      });
      watch.observe(document, { childList: true, subtree: true, characterData: true });
    }, MARK)
    .then(() => undefined);

/**
 * What the page has moved since it was opened with an empty profile until it showed the first ratio, as a web server
 * would send it, gzip. Fonts belong to the first view also where the browser asks for them a moment later.
 */
export async function firstLoad(
  page: Page,
): Promise<{ readonly files: readonly LoadedFile[]; readonly bytes: number }> {
  const { shown, entries } = await page.evaluate(
    (mark) => ({
      shown: performance.getEntriesByName(mark)[0]?.startTime ?? Infinity,
      entries: [
        { name: location.href, startTime: 0 },
        ...performance.getEntriesByType('resource').map(({ name, startTime }) => ({ name, startTime })),
      ],
    }),
    MARK,
  );
  if (shown === Infinity) throw new Error('No ratio was shown, or nobody watched for it.');
  const files: LoadedFile[] = [];
  for (const { name, startTime } of entries) {
    const path = new URL(name).pathname;
    const body = await (await page.request.get(name)).body();
    const bytes = PACKED.test(path) ? body.length : gzipSync(body, { level: 9 }).length;
    files.push({ path, bytes, isLate: startTime > shown && !path.endsWith('.woff2') });
  }
  return { files, bytes: files.reduce((sum, f) => sum + (f.isLate ? 0 : f.bytes), 0) };
}
