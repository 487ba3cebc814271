import { afterAll, describe, expect, it } from 'vitest';
import { closeBrowser } from './support/browser.ts';
import { openWorkbench } from './support/workbench.ts';

afterAll(closeBrowser);

describe('the built page', () => {
  it('opens with one main landmark and complains about nothing', async () => {
    const { page, complaints, close } = await openWorkbench();
    await page.waitForLoadState('networkidle');

    expect(await page.title()).toBe('Log shelter workbench');
    expect(await page.getByRole('main').count()).toBe(1);
    expect(complaints).toEqual([]);
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

  it('has no sideways scroll at 390 px', async () => {
    const { page, close } = await openWorkbench({ viewport: { width: 390, height: 844 } });
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    await close();
  });
});
