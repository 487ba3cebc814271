import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import { SOURCES } from '../../src/data/source-list.ts';
import { explain } from '../../src/engine/explain.ts';
import type { Step } from '../../src/engine/note.ts';
import { closeBrowser } from './support/browser.ts';
import { openLink, rowsOfOpenLink } from './support/cord.ts';
import { demo, figuresOf } from './support/figures.ts';
import { openDemo } from './support/workbench.ts';

afterAll(closeBrowser);

const isFocused = (page: Page, selector: string): Promise<boolean> =>
  page.locator(selector).evaluate((each) => each === document.activeElement);

function stepsOf(key: string): readonly Step[] {
  const answer = explain(demo(), key);
  if (!answer.ok) throw new Error(answer.reason.code);
  return answer.steps;
}

/** Squares, cubes and fourth powers as they are written by hand. */
const byHand = (formula: string): string => formula.replaceAll('^2', '²').replaceAll('^3', '³').replaceAll('^4', '⁴');

function worstBending(): string {
  const rows = figuresOf(demo()).checks.filter(({ key }) => key.startsWith('beam.bending/beam-high/'));
  const worst = rows.reduce((a, b) => ((b.ratio ?? 0) > (a.ratio ?? 0) ? b : a));
  return worst.key;
}

describe('a ratio opened into its steps', () => {
  it('shows formula, numbers and clause of each step of the engine, and gives the focus back when it closes', async () => {
    const { page, complaints, close } = await openDemo();
    const key = worstBending();
    const ratio = `.gives tr[data-check="${key}"] .ratio`;
    await openLink(page, 'beam A');
    await page.locator(ratio).focus();
    await page.keyboard.press('Enter');

    const steps = stepsOf(key);
    const shown = page.locator('.explained > .steps > li');
    await shown.first().waitFor();
    expect(await shown.count()).toBe(steps.length);
    for (const [i, step] of steps.entries()) {
      const text = await shown.nth(i).innerText();
      expect(text).toContain(step.words);
      expect(text).toContain(`${step.symbol} = ${byHand(step.formula)} = `);
      expect(text).toContain(SOURCES[step.clause.source].title);
      expect(text).toContain(step.clause.clause);
      for (const { symbol } of step.put) expect(text).toContain(`${symbol} `);
    }
    expect(await page.locator(ratio).getAttribute('aria-expanded')).toBe('true');

    await page.getByRole('button', { name: 'close the steps' }).click();
    expect(await page.locator('.explained').count()).toBe(0);
    expect(await isFocused(page, ratio)).toBe(true);
    expect(complaints).toEqual([]);
    await close();
  });

  it('opens a number inside further, and Escape leads out step by step', async () => {
    const { page, close } = await openDemo();
    const key = worstBending();
    const ratio = `.gives tr[data-check="${key}"] .ratio`;
    await openLink(page, 'beam A');
    await page.locator(ratio).click();
    const [at, put] = stepsOf(key)
      .flatMap((step, i) => step.put.map((each) => [i, each] as const))
      .find(([, each]) => each.from !== undefined) ?? [0, undefined];
    if (!put) throw new Error('no number of this check opens further');

    const inner = page
      .locator('.explained > .steps > li')
      .nth(at)
      .getByRole('button', { name: 'how it came about' })
      .first();
    await inner.click();
    const innerSteps = page.getByRole('list', { name: `Steps of ${put.words}` });
    await innerSteps.waitFor();
    expect(await innerSteps.locator(':scope > li').count()).toBe(put.from?.length);
    expect(await innerSteps.locator(':scope > li .step-words').first().innerText()).toBe(put.from?.[0]?.words);
    await inner.click();
    expect(await innerSteps.count()).toBe(0);
    expect(await isFocused(page, '.explained [aria-expanded="true"], .explained :focus')).toBe(true);

    await page.keyboard.press('Escape');
    expect(await page.locator('.explained').count()).toBe(0);
    expect(await isFocused(page, ratio)).toBe(true);
    await page.keyboard.press('Escape');
    expect(await isFocused(page, '.link.open .link-head')).toBe(true);
    await close();
  });

  it('exists for every ratio of every link: none opens into an excuse', async () => {
    const { page, complaints, close } = await openDemo();
    for (const link of await page.locator('.link-name').allTextContents()) {
      await openLink(page, link);
      const rows = await rowsOfOpenLink(page);
      const judged = [...rows].filter(([, ratio]) => ratio !== '');
      // one of each link: every step of every row is compared by the tests of the engine
      const [key] = judged[0] ?? [];
      if (key === undefined) continue;
      await page.locator(`.gives tr[data-check="${key}"] .ratio`).click();
      await page.locator('.explained .steps > li').first().waitFor();
      expect(await page.locator('.explained > .steps > li').count()).toBe(stepsOf(key).length);
    }
    expect(complaints).toEqual([]);
    await close();
  });
});
