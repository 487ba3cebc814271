import { afterAll, describe, expect, it } from 'vitest';
import { exampleText, soundProject } from '../support/files.ts';
import { closeBrowser } from './support/browser.ts';
import { eventually } from './support/eventually.ts';
import { openExample } from './support/files.ts';
import { DESK, figuresShown, openDemo, PHONE } from './support/workbench.ts';
import { choosePaper, openSheetOf, pageCount, printed } from './sheet-page.ts';

afterAll(closeBrowser);

const gable = soundProject(exampleText('gable'));

describe('a gable', () => {
  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'opens from the menu with three lines to look at, nothing wider than the screen: %s',
    async (_, device) => {
      const { page, complaints, close } = await openDemo(device);
      await openExample(page, 'Hay under a gable, on a windy bench', gable.title.name);
      const lines = page.getByRole('group', { name: /line/i }).first();
      for (const label of ['A', 'B', 'C']) expect(await lines.getByText(label, { exact: true }).count()).toBe(1);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      expect(complaints).toEqual([]);
      await close();
    },
  );

  it('prints on one page of either paper, with nothing clipped, and says that nothing pushes outward', async () => {
    const { page, complaints, close } = await openDemo();
    await openSheetOf(page, gable);
    for (const paper of ['Letter', 'A4'] as const) {
      await choosePaper(page, paper);
      const { measured, pdf } = await printed(page);
      expect([paper, measured.problems, pageCount(pdf)]).toEqual([paper, [], 1]);
      const words = (await page.locator('.sheet').innerText()).replaceAll(/\s+/g, ' ');
      expect(words).toContain('they push nothing outward at the eaves');
    }
    expect(complaints).toEqual([]);
    await close();
  });

  it('can be paced out: two slopes, with the posts under the ridge asked for', async () => {
    const { page, complaints, close } = await openDemo();
    await page.getByRole('button', { name: 'file', exact: true }).click();
    await page.getByRole('button', { name: 'Pace out your own' }).click();
    const pace = page.getByRole('dialog', { name: 'A shelter of your own, paced out' });
    await pace.getByText('free, two slopes', { exact: true }).click();
    await pace.getByRole('textbox', { name: /across to those under the ridge/ }).fill('7\' 6"');
    await pace.getByRole('button', { name: 'draw it' }).click();
    await figuresShown(page);
    await eventually(() => page.getByRole('textbox', { name: 'Name of the project' }).inputValue()).toBe('New gable');
    expect(complaints).toEqual([]);
    await close();
  });
});
