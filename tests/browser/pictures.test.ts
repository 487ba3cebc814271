import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import { closeBrowser } from './support/browser.ts';
import { openLink } from './support/cord.ts';
import { DESK, PHONE, openDemo } from './support/workbench.ts';

afterAll(closeBrowser);

const FOLDER = 'tests/browser/pictures';
const isToBeDrawn = process.env['UPDATE_PICTURES'] === '1';

const PICTURES = [
  {
    file: 'frame-desk.png',
    options: { ...DESK, colorScheme: 'light' },
    show: async (page: Page): Promise<void> => {
      await openLink(page, 'beam A');
      await page.getByRole('group', { name: 'Drawn on the logs' }).getByText('bending', { exact: true }).click();
      await page.evaluate(() => scrollTo(0, 0));
    },
    widthPx: 1440,
    heightPx: 900,
  },
  { file: 'frame-phone.png', options: { ...PHONE, colorScheme: 'light' }, show: null, widthPx: 780, heightPx: 1688 },
] as const;

/** Width and height stand in the first chunk of the file (ISO/IEC 15948, 11.2.2). */
const sizeOfPng = (file: Buffer): readonly [number, number] => [file.readUInt32BE(16), file.readUInt32BE(20)];

describe('a picture of the workbench that the papers show', () => {
  for (const { file, options, show, widthPx, heightPx } of PICTURES) {
    it(`is there, in its size (drawn anew with UPDATE_PICTURES=1): ${file}`, async () => {
      const path = `${FOLDER}/${file}`;
      if (isToBeDrawn) {
        const { page, close } = await openDemo(options);
        await show?.(page);
        await page.mouse.move(0, 0);
        await page.evaluate(() => document.fonts.ready);
        mkdirSync(FOLDER, { recursive: true });
        await page.screenshot({ path, animations: 'disabled', caret: 'hide' });
        await close();
      }
      expect(existsSync(path)).toBe(true);
      expect(sizeOfPng(readFileSync(path))).toEqual([widthPx, heightPx]);
    });
  }

  it('stands in the README', () => {
    expect(readFileSync('README.md', 'utf8')).toContain(`(${FOLDER}/frame-desk.png)`);
  });
});
