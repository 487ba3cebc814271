import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import type { CheckRow } from '../../src/engine/evaluation.ts';
import { isWorse } from '../../src/engine/check.ts';
import { explain, explainPressures, explainValues } from '../../src/engine/explain.ts';
import type { Step } from '../../src/engine/note.ts';
import type { Project } from '../../src/engine/project/model.ts';
import { pieceNames } from '../../src/ui/sheet/piece-names.ts';
import { EXAMPLES, exampleText, soundProject, type Example } from '../support/files.ts';
import {
  clippedOnPaper,
  openPrintOf,
  pagesOfPdf,
  readPaper,
  TELLING_MS,
  wordsOutside,
  type PaperRows,
} from './calculation-paper.ts';
import { choosePaper, hasPdfText, pageCount } from './sheet-page.ts';
import { closeBrowser } from './support/browser.ts';
import { figuresOf, roundedUp } from './support/figures.ts';
import { openWorkbench, PHONE } from './support/workbench.ts';

const isLong = process.env['LONG'] === '1';
const PRINTED: readonly Example[] = isLong ? EXAMPLES : ['lean-to', 'undersized-shed'];
const PAPERS = isLong ? (['Letter', 'A4'] as const) : (['Letter'] as const);
const patience = { timeout: TELLING_MS };
/** At least four figures are printed. */
const SHOWN = 5.01e-4;

afterAll(closeBrowser);

const toldPages = (page: Page) => page.locator('.paper').waitFor(patience);

async function printedFile(page: Page): Promise<{ readonly clipped: readonly string[]; readonly pdf: Buffer }> {
  await page.emulateMedia({ media: 'print' });
  const clipped = await page.evaluate(clippedOnPaper);
  const pdf = await page.pdf({ preferCSSPageSize: true, tagged: true, outline: true });
  await page.emulateMedia({ media: null });
  return { clipped, pdf };
}

/** The worst row of each rule for each group of alike members, found by sorting. */
function governingOf(project: Project, checks: readonly CheckRow[]): readonly CheckRow[] {
  const names = pieceNames(project, figuresOf(project));
  const worst = new Map<string, CheckRow>();
  const ranked = [...checks].sort((a, b) => (isWorse(a, b) ? -1 : isWorse(b, a) ? 1 : 0));
  for (const row of ranked) {
    const group = row.memberId === 'site' ? row.key : `${row.ruleId} ${names.pieceOf(row.memberId).key}`;
    if (!worst.has(group)) worst.set(group, row);
  }
  return [...worst.values()];
}

/** Every number that the engine tells, by the symbol it is told under. */
function toldNumbers(project: Project, keys: readonly string[]): ReadonlyMap<string, readonly number[]> {
  const numbers = new Map<string, number[]>();
  const note = (symbol: string, value: number): void => {
    const known = numbers.get(symbol);
    if (known) known.push(value);
    else numbers.set(symbol, [value]);
  };
  const walk = (steps: readonly Step[]): void => {
    for (const { symbol, result, put } of steps) {
      note(symbol, result.value);
      for (const each of put) {
        note(each.symbol, each.value);
        walk(each.from ?? []);
      }
    }
  };
  for (const steps of Object.values(explainPressures(project) ?? {})) walk(steps);
  for (const { logId } of figuresOf(project).logs) {
    const steps = explainValues(project, logId);
    for (const symbol of ['Fb', 'Fv', 'Fcp', 'Fc', 'Ft', 'E', 'Emin'] as const) walk(steps?.(symbol) ?? []);
  }
  for (const key of keys) {
    const answer = explain(project, key);
    if (answer.ok) walk(answer.steps);
  }
  return numbers;
}

/** The number at the head of a printed quantity: `−1,234.5 lb`, `45°`, `1.2 × 10^-9`, `no limit`. */
function readNumber(shown: string): number {
  if (shown.startsWith('no limit')) return Infinity;
  const [, digits = '', power = '0'] = /^(−?[\d,]*\.?\d+)(?: × 10\^(-\d+))?/.exec(shown) ?? [];
  return digits === '' ? Number.NaN : Number(`${digits.replaceAll(',', '').replace('−', '-')}e${power}`);
}

/** What a machine's rounding leaves of zero: browser and Node need not agree on it. */
const RESIDUE = 1e-6;
const isToldAs = (shown: number, told: readonly number[] | undefined): boolean =>
  told?.some(
    (value) =>
      shown === value ||
      Math.abs(shown - value) <= Math.abs(value) * SHOWN ||
      Math.max(Math.abs(shown), Math.abs(value)) < RESIDUE,
  ) ?? false;

/** The check of equilibrium divides a residue by its limit. */
const isRounding = (put: string): boolean =>
  put.startsWith('demand = ') && Math.abs(readNumber(put.slice('demand = '.length))) < RESIDUE;

/** What is printed of steps and was never told by the engine. */
function inventedNumbers({ steps }: PaperRows, told: ReadonlyMap<string, readonly number[]>): readonly string[] {
  return steps.flatMap(({ number, what, puts, result }) => {
    if (puts.some(isRounding)) return [];
    const formula = what.slice(what.lastIndexOf(' | ') + 3);
    const symbol = formula.split(' = ')[0] ?? '';
    const wrong = isToldAs(readNumber(result), told.get(symbol)) ? [] : [`step ${number}: ${formula}: ${result}`];
    const wrongPuts = puts.flatMap((line) => {
      const [, put, shown] = /^(.*?) = (.*)$/.exec(line) ?? /^(\S+ ×) (.*)$/.exec(line) ?? [];
      if (put === undefined || shown === undefined) return [];
      return isToldAs(readNumber(shown), told.get(put)) ? [] : [`step ${number}: ${line}`];
    });
    return [...wrong, ...wrongPuts];
  });
}

describe('the printed calculation', () => {
  for (const name of PRINTED) {
    it(`has the figures of the engine, row by row, and no other: ${name}`, patience, async () => {
      const project = soundProject(exampleText(name));
      const evaluation = figuresOf(project);
      const governing = governingOf(project, evaluation.checks);
      const { page, complaints, close } = await openWorkbench();
      await openPrintOf(page, project, 'The calculation');
      await toldPages(page);
      for (const paper of PAPERS) {
        await choosePaper(page, paper);
        await toldPages(page);
        const rows = await page.evaluate(readPaper);

        // the list of checks is that of the evaluation: key by key, each ratio rounded up
        expect(rows.index.map(({ key }) => key).toSorted()).toEqual(governing.map(({ key }) => key).toSorted());
        const byKey = new Map(governing.map((row) => [row.key, row]));
        expect(rows.index.map(({ key, ratio }) => [key, ratio])).toEqual(
          rows.index.map(({ key }) => [key, roundedUp(byKey.get(key)?.ratio ?? null)]),
        );
        const unlike = rows.checks.filter(({ key, said }) => {
          const { ratio = null } = byKey.get(key) ?? {};
          return ratio !== null && !said.includes(`ratio ${roundedUp(ratio)}`);
        });
        expect(unlike).toEqual([]);

        // steps: numbered through, every number told by the engine
        expect(rows.steps.map(({ number }) => number)).toEqual(rows.steps.map((_, i) => i + 1));
        expect(rows.steps.length).toBeGreaterThan(100);
        const told = toldNumbers(
          project,
          governing.map(({ key }) => key),
        );
        expect(inventedNumbers(rows, told)).toEqual([]);

        const { clipped, pdf } = await printedFile(page);
        expect(clipped).toEqual([]);
        expect(pageCount(pdf)).toBe(rows.pages);
        if (hasPdfText) comparePages(pagesOfPdf(pdf), rows, project);
        expect(wordsOutside(pdf)).toEqual([]);

        // heads and tags, for those who hear the file
        expect(rows.heads.scoped).toBe(rows.heads.all);
        expect(pdf.toString('latin1')).toMatch(/\/StructTreeRoot/);
        expect(pdf.toString('latin1')).toMatch(/\/Marked true/);
      }
      expect(complaints).toEqual([]);
      await close();
    });
  }

  it('is read at 390 px without sideways scroll, and the checker finds nothing serious', patience, async () => {
    const { page, close } = await openWorkbench(PHONE);
    await openPrintOf(page, soundProject(exampleText('lean-to')), 'The calculation');
    await toldPages(page);
    const { sideways, least } = await page.evaluate(readability);
    expect(sideways).toBeLessThanOrEqual(0);
    expect(least).toBeGreaterThanOrEqual(11);
    const { violations } = await new AxeBuilder({ page }).include('.sheet-place').analyze();
    const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    expect(serious.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await close();
  });

  it('can be left while its steps are told, and is not printed before', patience, async () => {
    const { page, close } = await openWorkbench();
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', 'yes');
    });
    await openPrintOf(page, soundProject(exampleText('gable')), 'The calculation');
    await page.getByText(/^Telling the steps: \d+ of \d+ checks\.$/).waitFor();
    await page.getByRole('button', { name: 'Print the calculation' }).click();
    expect(await page.locator('body').getAttribute('data-printed')).toBeNull();
    await page.getByRole('link', { name: 'The one page' }).click();
    await page.locator('.sheet').waitFor();
    expect(await page.locator('.paper').count()).toBe(0);
    await close();
  });

  it('is not printed from an unfinished entry', patience, async () => {
    const { page, close } = await openWorkbench();
    await openPrintOf(page, soundProject(exampleText('lean-to')), 'Before you start');
    await page.locator('.paper').waitFor();
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', 'yes');
    });
    await page.getByText('Write down what they said').click();
    await page.getByRole('textbox', { name: 'Ground snow here?', exact: true }).fill('much');
    const print = page.getByRole('button', { name: 'Print this page' });
    await print.click();
    expect(await page.locator('body').getAttribute('data-printed')).toBeNull();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.paper').isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
    await page.getByRole('textbox', { name: 'Ground snow here?', exact: true }).fill('61 psf');
    await page.locator('.paper').getByText('61 psf').waitFor();
    await print.click();
    expect(await page.locator('body').getAttribute('data-printed')).toBe('yes');
    await close();
  });
});

describe('the page before the start', () => {
  it('is one page of every example on both papers, with nothing cut off', async () => {
    const { page, complaints, close } = await openWorkbench();
    for (const name of EXAMPLES) {
      await openPrintOf(page, soundProject(exampleText(name)), 'Before you start');
      for (const paper of ['Letter', 'A4'] as const) {
        await choosePaper(page, paper);
        await page.locator('.paper').waitFor();
        const { clipped, pdf } = await printedFile(page);
        expect([name, paper, clipped, pageCount(pdf)]).toEqual([name, paper, [], 1]);
      }
    }
    expect(complaints).toEqual([]);
    await close();
  });
});

describe('paper that is filled with the longest texts', () => {
  it('cuts nothing off, in letters of any width', async () => {
    const project = soundProject(exampleText('firewood-shed'));
    const { page, close } = await openWorkbench();
    for (const letter of ['W', '森']) {
      const revision = { number: letter.repeat(20), date: '2026-12-31' };
      const title = { ...project.title, name: letter.repeat(120), preparedBy: letter.repeat(120), revision };
      const code = { ...project.code, building: { ...project.code.building, value: letter.repeat(120) } };
      await openPrintOf(page, { ...project, title, code }, 'Before you start');
      await page.locator('.paper').waitFor();
      const { clipped, pdf } = await printedFile(page);
      expect([letter, clipped]).toEqual([letter, []]);
      expect([letter, wordsOutside(pdf)]).toEqual([letter, []]);
    }
    await close();
  });
});

/** Every page says which of how many it is; what is named stands on the page that is said; every ratio is on paper. */
function comparePages(pages: readonly string[], rows: PaperRows, project: Project): void {
  expect(pages).toHaveLength(rows.pages);
  pages.forEach((words, i) => expect(words).toContain(`page ${i + 1} of ${rows.pages}`));
  const plain = pages.map((words) => words.replace(/\s+/g, ' '));
  const headings = rows.named.filter(({ id }) => !id.startsWith('paper-check-'));
  expect(headings.length).toBeGreaterThan(15);
  for (const { words, page } of headings) expect([words, plain[page - 1]?.includes(words)]).toEqual([words, true]);
  expect(rows.named.every(({ page }) => page >= 1 && page <= rows.pages)).toBe(true);
  const whole = plain.join(' ');
  for (const { ratio } of rows.index) expect(whole).toContain(ratio);
  const ids = [...project.members, ...project.supportLines, ...project.logs].map(({ id }) => id);
  expect(ids.filter((id) => /-\d/.test(id) && whole.includes(` ${id} `))).toEqual([]);
}

/** Runs in the page. */
function readability(): { readonly sideways: number; readonly least: number } {
  const texts = [...document.querySelectorAll<HTMLElement>('.paper *')].filter(
    (e) => e.checkVisibility() && [...e.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.textContent?.trim()),
  );
  return {
    sideways: document.documentElement.scrollWidth - window.innerWidth,
    least: Math.min(...texts.map((e) => Number.parseFloat(getComputedStyle(e).fontSize))),
  };
}
