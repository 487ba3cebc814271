import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import { closeBrowser } from './support/browser.ts';
import { linkNames, openLink, rowsOfOpenLink } from './support/cord.ts';
import { PHONE, openDemo } from './support/workbench.ts';

afterAll(closeBrowser);

const sidewaysScroll = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** What of these is lower than a thumb needs, each with its height [px]. Half a pixel is the browser's own rounding. */
const tooLow = (page: Page, selector: string): Promise<string[]> =>
  page.locator(selector).evaluateAll((controls) =>
    controls
      .filter((each) => each.checkVisibility())
      .map((each) => ({ words: each.textContent, px: each.getBoundingClientRect().height }))
      .filter(({ px }) => px < 43.5)
      .map(({ words, px }) => `${words} ${px}`),
  );

/** How far the page scrolls sideways, and which of its controls a thumb would miss. */
async function fitOf(page: Page, controls: string): Promise<typeof FITS> {
  return { isTooWide: (await sidewaysScroll(page)) > 0, tooLow: await tooLow(page, controls) };
}
const FITS: { readonly isTooWide: boolean; readonly tooLow: readonly string[] } = { isTooWide: false, tooLow: [] };

const PLACES = ['Frame', 'Try-outs', 'Woodlot', 'Cut sheets', 'Check sheet'];
const CONTROLS = '.places a, .tools > .tool, .units label, .chooser label, .link-head, .print';
const OPENED = '.link-body .opens, .link-body .tool, .link-body .chooser label';

describe('a telephone 390 px wide', () => {
  it('scrolls sideways in no place, and its controls are as tall as a thumb', async () => {
    const { page, complaints, close } = await openDemo(PHONE);
    for (const place of PLACES) {
      await page.getByRole('link', { name: place, exact: true }).tap();
      await page.locator('.places [aria-current]').getByText(place, { exact: true }).waitFor();
      await page.locator('.frame-place, .sheet, .coming').first().waitFor();
      expect({ place, ...(await fitOf(page, CONTROLS)) }).toEqual({ place, ...FITS });
    }
    expect(complaints).toEqual([]);
    await close();
  });

  it('scrolls sideways with no link open, its rows unfolded and steps shown, in either unit', async () => {
    const { page, close } = await openDemo(PHONE);
    for (const units of ['feet and inches, pounds', 'metres, kilonewtons']) {
      await page.getByText(units).click({ force: true });
      for (const name of await linkNames(page)) {
        await openLink(page, name);
        await rowsOfOpenLink(page);
        const ratio = page.locator('.gives .ratio');
        if ((await ratio.count()) > 0) await ratio.first().tap();
        expect({ name, units, ...(await fitOf(page, OPENED)) }).toEqual({ name, units, ...FITS });
      }
    }
    await close();
  });

  it('shows one view at a time, and the keys that a number pad lacks write into the field', async () => {
    const { page, close } = await openDemo(PHONE);
    expect(await page.locator('.view').count()).toBe(1);
    await page.getByRole('group', { name: 'View' }).getByText('Plan', { exact: true }).tap();
    await page.getByRole('img', { name: /^Plan/ }).waitFor();
    expect(await page.locator('.view').count()).toBe(1);

    await openLink(page, 'beam A');
    const tip = page.getByRole('textbox', { name: 'beam A: diameter at the tip', exact: true });
    await tip.tap();
    const keys = page.locator('.key-row');
    await keys.waitFor();
    await page.keyboard.type('9');
    await keys.getByRole('button', { name: 'space' }).tap();
    await page.keyboard.type('1');
    await keys.getByRole('button', { name: '/', exact: true }).tap();
    await page.keyboard.type('4');
    expect(await tip.inputValue()).toBe('9 1/4');
    expect(await tooLow(page, '.key-row button')).toEqual([]);
    expect(await tip.evaluate((box) => box === document.activeElement)).toBe(true);
    await close();
  });

  it('leads back from an open link to the drawing with one tap', async () => {
    const { page, close } = await openDemo(PHONE);
    await openLink(page, 'pier');
    await page.locator('.gives tr').last().scrollIntoViewIfNeeded();
    const drawing = page.locator('.drawing-sheet .large.view');
    const topOf = (): Promise<number> => drawing.evaluate((each) => each.getBoundingClientRect().top);
    expect(await topOf()).toBeLessThan(-300);
    await page.getByRole('button', { name: 'drawing', exact: true }).tap();
    const header = await page.locator('.top').evaluate((each) => each.getBoundingClientRect().bottom);
    expect(await topOf()).toBeGreaterThanOrEqual(header);
    await close();
  });
});
