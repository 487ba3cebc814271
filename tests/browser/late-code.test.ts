import type { BrowserContext, Page } from 'playwright';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { closeBrowser, launchBrowser } from './support/browser.ts';
import { field, linkHead, openLink, type } from './support/cord.ts';
import { keptProject } from './support/device.ts';
import { eventually } from './support/eventually.ts';
import { openFile } from './support/files.ts';
import { exampleText } from '../support/files.ts';
import { DESK, figuresShown } from './support/workbench.ts';

afterAll(closeBrowser);

/** The demo on the screen while whatever comes after the first figures is held back until the test lets it go. */
async function openHeldBack(): Promise<{
  readonly page: Page;
  readonly context: BrowserContext;
  readonly letGo: (how: 'come' | 'fail') => Promise<void>;
}> {
  const context = await (await launchBrowser()).newContext({ locale: 'en-US', ...DESK });
  const page = await context.newPage();
  let held: ((how: 'come' | 'fail') => Promise<void>)[] = [];
  let isHolding = true;
  await page.route(/\/assets\/(project-code|link-body|menu-list|help-text)-.*\.js$/, (route) => {
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

describe('while the code behind the first figures is on its way', () => {
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
});
