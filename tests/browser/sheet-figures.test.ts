import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { parseProject } from '../../src/engine/project/parse.ts';
import type { Project } from '../../src/engine/project/model.ts';
import { closeBrowser } from './support/browser.ts';
import { openWorkbench } from './support/workbench.ts';
import { choosePaper, hasPdfText, openSheetOf, pageCount, pdfText, printed } from './sheet-page.ts';

const EXAMPLES = ['firewood-shed', 'lean-to', 'snow-lean-to', 'gable', 'undersized-shed'];

function example(name: string): Project {
  const parsed = parseProject(readFileSync(`public/examples/${name}.shelter.json`, 'utf8'));
  if (!parsed.ok) throw new Error(`${name} is refused`);
  return parsed.project;
}

/** Rounded up to hundredths, independently of the program: the least of them that is not below the ratio. */
function roundedUp(ratio: number): string {
  let hundredths = Math.floor(ratio * 100) - 1;
  while (hundredths / 100 < ratio) hundredths++;
  return (hundredths / 100).toFixed(2);
}

afterAll(closeBrowser);

describe('the figures of the printed sheet', () => {
  for (const name of EXAMPLES) {
    it(`prints the ratios of the evaluation, and as many failures: ${name}`, async () => {
      const project = example(name);
      const answer = evaluate(project);
      if (!answer.ok) throw new Error(`${name} has no figures`);
      const { checks, counts, fingerprint } = answer.evaluation;
      const ratioOf = new Map(checks.map((c) => [c.key, c.ratio]));
      const { page, close } = await openWorkbench();
      await openSheetOf(page, project);
      await choosePaper(page, 'Letter');
      const rows = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('.sheet tr[data-check]')].map((tr) => ({
          key: tr.dataset['check'] ?? '',
          ratio: tr.querySelector('[data-head="ratio"]')?.textContent?.trim() ?? '',
        })),
      );
      expect(rows.length).toBeGreaterThan(8);
      const computed = rows.map(({ key }) => {
        const ratio = ratioOf.get(key);
        return { key, ratio: ratio === undefined ? 'no such check' : ratio === null ? '' : roundedUp(ratio) };
      });
      expect(rows).toEqual(computed);
      const { pdf } = await printed(page);
      expect(pageCount(pdf)).toBe(1);
      const text = hasPdfText ? pdfText(pdf, '-layout') : await page.locator('.sheet').innerText();
      for (const { ratio } of rows) expect(text).toContain(ratio);
      expect(text).toContain(fingerprint);
      expect(text).toContain(counts.fail > 0 ? `Does not pass: ${counts.fail} check` : 'Not complete: ');
      await close();
    });
  }

  it('says how many checks stand elsewhere: printed, told at the head and further ones make all', async () => {
    const project = example('undersized-shed');
    const answer = evaluate(project);
    if (!answer.ok) throw new Error('no figures');
    const { page, close } = await openWorkbench();
    await openSheetOf(page, project);
    const said = await page.locator('.sheet .checks .note').allInnerTexts();
    const further = Number(/^(\d+) further checks/.exec(said.join(' '))?.[1]);
    const rows = await page.locator('.sheet tr[data-check]').count();
    const more = Number(/and (\d+) more/.exec(await page.locator('.sheet .more').innerText())?.[1]);
    const open = answer.evaluation.checks.filter((c) => c.status !== 'pass').length;
    const told = open - more;
    expect(further).toBeLessThanOrEqual(answer.evaluation.checks.length - rows);
    expect(further).toBeGreaterThanOrEqual(answer.evaluation.checks.length - rows - told);
    await close();
  });

  it('is not printed from an unfinished entry, and says why', async () => {
    const { page, close } = await openWorkbench();
    await openSheetOf(page, example('firewood-shed'));
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', 'yes');
    });
    const print = page.getByRole('button', { name: 'Print the check sheet' });
    await print.click();
    expect(await page.locator('body').getAttribute('data-printed')).toBe('yes');

    await page.evaluate(() => document.body.removeAttribute('data-printed'));
    await page.getByRole('textbox', { name: 'Date of the revision' }).fill('the day after');
    await print.click();
    expect(await page.locator('body').getAttribute('data-printed')).toBeNull();
    await expect.poll(() => page.locator('.print-refusal').innerText()).toContain('Date of the revision');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.sheet').isVisible()).toBe(false);
    expect(await page.locator('.print-refusal').isVisible()).toBe(true);
    await close();
  });

  it('can be read at 390 px without sideways scroll', async () => {
    const { page, close } = await openWorkbench({ viewport: { width: 390, height: 844 } });
    await openSheetOf(page, example('firewood-shed'));
    const { sideways, least } = await page.evaluate(() => {
      const texts = [...document.querySelectorAll<HTMLElement>('.sheet *')].filter(
        (e) =>
          e.checkVisibility() && [...e.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.textContent?.trim()),
      );
      return {
        sideways: document.documentElement.scrollWidth - window.innerWidth,
        least: Math.min(...texts.map((e) => Number.parseFloat(getComputedStyle(e).fontSize))),
      };
    });
    expect(sideways).toBeLessThanOrEqual(0);
    expect(least).toBeGreaterThanOrEqual(11);
    await close();
  });
});
