import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright';

/** these are compressed already: a web server sends them as they are */
const PACKED = /\.(woff2|png|jpg|webp)$/;
const MARK = 'first-ratio';

export interface LoadedFile {
  readonly path: string;
  readonly bytes: number;
  /** the first ratio waits for it, it comes after it, or it is a font: text stands in another type until that is there */
  readonly kind: 'awaited' | 'late' | 'font';
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
 * would send it, gzip: page, style, scripts and data. Fonts are told beside it, for nothing waits for them.
 */
export async function firstLoad(page: Page): Promise<{
  readonly files: readonly LoadedFile[];
  readonly bytes: number;
  readonly fontBytes: number;
}> {
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
    const kind = path.endsWith('.woff2') ? 'font' : startTime > shown ? 'late' : 'awaited';
    files.push({ path, bytes, kind });
  }
  const sum = (kind: LoadedFile['kind']): number =>
    files.reduce((so, file) => so + (file.kind === kind ? file.bytes : 0), 0);
  return { files, bytes: sum('awaited'), fontBytes: sum('font') };
}
