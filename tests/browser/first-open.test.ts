import { afterAll, describe, expect, it } from 'vitest';
import { closeBrowser } from './support/browser.ts';
import { linkHead, linkNames } from './support/cord.ts';
import { countsToShow, demo, figuresOf } from './support/figures.ts';
import { openDemo, openWorkbench } from './support/workbench.ts';

afterAll(closeBrowser);

describe('the first visit', () => {
  it('opens on the demo with its figures, one main landmark, and complains about nothing', async () => {
    const { page, complaints, close } = await openDemo();
    await page.waitForLoadState('networkidle');

    expect(await page.title()).toBe('Log shelter workbench');
    expect(await page.getByRole('main').count()).toBe(1);
    expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
    expect(await page.getByRole('textbox', { name: 'Name of the project' }).inputValue()).toBe(demo().title.name);
    expect(await page.locator('.cord .counts').innerText()).toBe(countsToShow(figuresOf(demo())));
    expect(complaints).toEqual([]);
    await close();
  });

  it('walks the cord from site to sway by keys and opens a link by keys', async () => {
    const { page, close } = await openDemo();
    const names = await linkNames(page);
    expect(names[0]).toBe('site');
    expect(names.at(-1)).toBe('sway across');

    await linkHead(page, 'site').focus();
    for (let i = 1; i < names.length; i++) await page.keyboard.press('ArrowDown');
    const focused = page.locator('.link-head:focus .link-name');
    expect(await focused.innerText()).toBe('sway across');
    await page.keyboard.press('Home');
    await page.keyboard.press('Enter');
    expect(await page.locator('.link.open .link-name').innerText()).toBe('site');
    await close();
  });

  it('carries a policy that refuses inline script and other hosts', async () => {
    const { page, complaints, close } = await openWorkbench();
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain('unsafe');

    const inlineRan = await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'document.documentElement.dataset.inlineRan = "yes"';
      document.head.append(script);
      return document.documentElement.dataset['inlineRan'] === 'yes';
    });
    expect(inlineRan).toBe(false);
    // which also shows that a complaint of the page is heard
    expect(complaints.join('\n')).toContain('Content Security Policy');
    await close();
  });

  it('asks nobody but the host it came from', async () => {
    const { page, close } = await openDemo();
    await page.waitForLoadState('networkidle');
    const hosts = await page.evaluate(() => [
      ...new Set(performance.getEntriesByType('resource').map(({ name }) => new URL(name).host)),
    ]);
    expect(hosts).toEqual([new URL(page.url()).host]);
    await close();
  });
});
