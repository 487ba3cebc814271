import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import { closeBrowser } from './support/browser.ts';
import { field, openLink, type } from './support/cord.ts';
import { openFile } from './support/files.ts';
import { PHONE, openDemo } from './support/workbench.ts';

afterAll(closeBrowser);

/** What the checker finds serious or worse, each with the places where it sits. */
async function serious(page: Page, part = 'body'): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).include(part).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(
      ({ id, help, nodes }) =>
        `${id}: ${help}: ${nodes
          .map(({ html }) => html)
          .slice(0, 3)
          .join(' | ')}`,
    );
}

/** A link open with the steps of its worst ratio and one number inside them opened further. */
async function openSteps(page: Page): Promise<void> {
  await openLink(page, 'beam A');
  await page.locator('.gives tr.check', { hasText: 'Bending' }).first().locator('.ratio').click();
  await page.locator('.explained .steps .opens').first().click();
  await page.locator('.explained .steps .steps').first().waitFor();
}

const VIEWS = [
  { words: 'on a desk', options: {} },
  { words: 'on a telephone', options: PHONE },
  { words: 'in the dark theme', options: { colorScheme: 'dark' } },
] as const;

describe('the checker for accessibility finds nothing serious', () => {
  for (const { words, options } of VIEWS) {
    it(`in Frame ${words}, with a link and steps open and an entry that cannot be used`, async () => {
      const { page, close } = await openDemo(options);
      await openSteps(page);
      await type(page, 'beam A: diameter at the tip', 'thin');
      await page.keyboard.press('Enter');
      await field(page, 'beam A: diameter at the butt').focus();
      await page.locator('.notices .unfinished').waitFor();
      expect(await serious(page)).toEqual([]);
      await close();
    });
  }

  it('in any link of the cord', async () => {
    const { page, close } = await openDemo();
    for (const name of ['site', 'sheet', 'rafter', 'brace', 'post', 'pier', 'sway across']) {
      await openLink(page, name);
      expect([name, ...(await serious(page, '.link.open'))]).toEqual([name]);
    }
    await close();
  });

  it('in the other places', async () => {
    const { page, close } = await openDemo();
    for (const place of ['Check sheet', 'Try-outs', 'Woodlot', 'Cut sheets']) {
      await page.getByRole('link', { name: place, exact: true }).click();
      await page.locator('.sheet, .coming').first().waitFor();
      expect([place, ...(await serious(page))]).toEqual([place]);
    }
    await close();
  });

  it('in the dialogs and the menu', async () => {
    const { page, close } = await openDemo();
    await page.getByRole('button', { name: 'file', exact: true }).click();
    await page.locator('.menu').getByText('Save to a file').waitFor();
    expect(['menu', ...(await serious(page))]).toEqual(['menu']);
    await page.getByRole('button', { name: 'Pace out your own' }).click();
    const pace = page.getByRole('dialog', { name: 'A shelter of your own, paced out' });
    await pace.waitFor();
    expect(['pacing out', ...(await serious(page))]).toEqual(['pacing out']);
    await pace.getByRole('button', { name: 'close' }).click();
    await page.getByRole('button', { name: 'help', exact: true }).click();
    await page.getByRole('dialog', { name: 'How to read this' }).waitFor();
    expect(['help', ...(await serious(page))]).toEqual(['help']);
    await page.keyboard.press('Escape');
    await openFile(page, 'bad.json', '{');
    await page.getByRole('dialog', { name: 'bad.json was not opened' }).waitFor();
    expect(['refusal', ...(await serious(page))]).toEqual(['refusal']);
    await close();
  });
});
