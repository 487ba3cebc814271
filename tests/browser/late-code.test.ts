import type { BrowserContext, Page } from 'playwright';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { closeBrowser, launchBrowser } from './support/browser.ts';
import { field, linkHead, openLink, type } from './support/cord.ts';
import { keptProject } from './support/device.ts';
import { eventually } from './support/eventually.ts';
import { countsToShow, demo, figuresOf } from './support/figures.ts';
import { openFile } from './support/files.ts';
import { exampleText, soundProject } from '../support/files.ts';
import { DESK, figuresShown, saved } from './support/workbench.ts';

afterAll(closeBrowser);

/** The demo on the screen while the program and what a hand opens are held back until the test lets them go. */
async function openHeldBack(): Promise<{
  readonly page: Page;
  readonly context: BrowserContext;
  readonly letGo: (how: 'come' | 'fail') => Promise<void>;
}> {
  const context = await (await launchBrowser()).newContext({ locale: 'en-US', ...DESK });
  const page = await context.newPage();
  let held: ((how: 'come' | 'fail') => Promise<void>)[] = [];
  let isHolding = true;
  await page.route(/\/assets\/(program|link-body|menu-list|help-text)-.*\.js$/, (route) => {
    const go = (how: 'come' | 'fail') => (how === 'come' ? route.continue() : route.abort());
    if (isHolding) held.push(go);
    else void go('come');
  });
  await page.goto(inject('workbenchAddress'));
  await figuresShown(page);
  return {
    page,
    context,
    letGo: async (how) => {
      await eventually(() => held.length).toBeGreaterThan(0);
      isHolding = how === 'fail';
      const all = held;
      held = [];
      await Promise.all(all.map((go) => go(how)));
    },
  };
}

/** Everything that the folded cord says. */
const cordText = async (page: Page): Promise<readonly string[]> => [
  await page.locator('.cord .counts').innerText(),
  ...(await page.locator('.cord .link-head').allInnerTexts()),
];

describe('while the program is on its way', () => {
  it('the figures prepared with the page stand, and not one changes when the engine has come', async () => {
    const { page, context, letGo } = await openHeldBack();
    const before = await cordText(page);
    expect(before[0]).toBe(countsToShow(figuresOf(demo())));
    expect(before.length).toBeGreaterThan(8);
    await letGo('come');
    await openLink(page, 'beam A');
    await page.locator('.link.open tr[data-check]').first().waitFor();
    expect(await cordText(page)).toEqual(before);
    await context.close();
  });

  it('and does not come, the page says that it is not complete, and tries again when it is told to', async () => {
    const { page, context, letGo } = await openHeldBack();
    const before = await cordText(page);
    await letGo('fail');
    await eventually(() => page.locator('.notices').innerText()).toContain('The program is not complete yet.');
    expect(await cordText(page)).toEqual(before);
    await page.locator('.notices').getByRole('button', { name: 'try again' }).click();
    await letGo('come');
    await openLink(page, 'beam A');
    expect(await page.locator('.notices').innerText()).toBe('');
    await context.close();
  });

  it('what is typed waits beside the figures, then is in them and on the device', async () => {
    const { page, context, letGo } = await openHeldBack();
    await type(page, 'Post to post', '12 ft');
    await eventually(() => page.locator('.cord .stale').count()).toBe(1);
    expect(await field(page, 'Post to post').inputValue()).toBe('12 ft');
    await letGo('come');
    await eventually(() => page.locator('.cord .stale').count()).toBe(0);
    expect(await field(page, 'Post to post').inputValue()).toBe('12 ft');
    const { project } = await keptProject(page);
    expect(project.members.find(({ id }) => id === 'post-2')).toMatchObject({ xIn: 144 });
    await context.close();
  });

  it('a link that is opened says so in words, and opens when it can', async () => {
    const { page, context, letGo } = await openHeldBack();
    await linkHead(page, 'beam A').click();
    await eventually(() => page.locator('.link.open').innerText()).toContain('opening');
    await letGo('come');
    await page.locator('.link.open .link-body').waitFor();
    expect(await page.locator('.link.open').innerText()).toContain('What it gives');
    await context.close();
  });

  it('a file waits, and is opened', async () => {
    const { page, context, letGo } = await openHeldBack();
    await openFile(page, 'lean-to.shelter.json', exampleText('lean-to'));
    expect(await field(page, 'Name of the project').inputValue()).toBe('Firewood and tools');
    await letGo('come');
    await eventually(() => field(page, 'Name of the project').inputValue()).not.toBe('Firewood and tools');
    await context.close();
  });

  it('what was typed is kept when it does not come, is said to be waiting, and is read at the next visit', async () => {
    const { page, context, letGo } = await openHeldBack();
    await type(page, 'Post to post', '12 ft');
    await letGo('fail');
    await eventually(() => page.locator('.notices').innerText()).toContain('could not be fetched');
    expect(await field(page, 'Post to post').inputValue()).toBe('12 ft');
    await page.unrouteAll();
    await page.reload();
    await figuresShown(page);
    const { project } = await keptProject(page);
    expect(project.members.find(({ id }) => id === 'post-2')).toMatchObject({ xIn: 144 });
    await openLink(page, 'beam A');
    await context.close();
  });

  it('the project that was open last is opened at the visit after the one at which it did not come', async () => {
    const { page, context, letGo } = await openHeldBack();
    await letGo('come');
    await openFile(page, 'lean-to.shelter.json', exampleText('lean-to'));
    const { name } = soundProject(exampleText('lean-to')).title;
    await eventually(() => field(page, 'Name of the project').inputValue()).toBe(name);
    await saved(page);
    await page.unrouteAll();
    await page.route(/\/assets\/program-.*\.js$/, (route) => route.abort());
    await page.reload();
    await page.getByRole('dialog').waitFor();
    expect(await page.getByRole('dialog').innerText()).toContain('could not be fetched');
    await page.unrouteAll();
    await page.reload();
    await figuresShown(page);
    expect(await field(page, 'Name of the project').inputValue()).toBe(name);
    await context.close();
  });
});
