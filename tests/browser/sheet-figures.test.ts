import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import type { Evaluation } from '../../src/engine/evaluation.ts';
import { once } from '../../src/engine/once.ts';
import type { Project } from '../../src/engine/project/model.ts';
import { EXAMPLES, exampleText, soundProject, type Example } from '../support/files.ts';
import { closeBrowser } from './support/browser.ts';
import { figuresOf, roundedUp } from './support/figures.ts';
import { openWorkbench } from './support/workbench.ts';
import { choosePaper, hasPdfText, openSheetOf, pageCount, pdfText, printed, type PaperWords } from './sheet-page.ts';

const example = (name: Example): Project => soundProject(exampleText(name));

/** Every row of the page, table by table, cell by cell, as it stands there; `under` runs under the row. */
const rowsOn = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.sheet .block tbody tr:not(:has(.below))')].map((tr) => {
      const cells = [...tr.querySelectorAll<HTMLElement>('th, td')];
      const heads = [...tr.closest('table')!.querySelectorAll('thead th')].map((th) => th.textContent ?? '');
      const linesOf = (cell: Element): string[] =>
        [...cell.querySelectorAll('.line')].map((line) => line.textContent?.trim() ?? '').filter((text) => text !== '');
      return {
        table: tr.closest('.block')!.className.replace(/^block | dense$/g, ''),
        key: tr.dataset['check'] ?? '',
        cells: Object.fromEntries(cells.map((cell, i) => [heads[i] ?? '', linesOf(cell).join(' ')])),
        lines: [...cells, ...(tr.nextElementSibling?.querySelectorAll('.below') ?? [])].flatMap(linesOf),
      };
    }),
  );

/** A number as it was printed. */
const printedNumber = (text: string): number => Number(text.replaceAll(',', '').replace('−', '-'));
/** Half of the last printed place. */
const halfPlace = (text: string): number => 0.5 * 10 ** -(text.split('.')[1]?.length ?? 0) + 1e-9;
const isAsPrinted = (text: string, value: number | undefined): boolean =>
  value !== undefined && Math.abs(printedNumber(text) - value) <= halfPlace(text);

/** How the sheet must begin, put together here. */
function headOf({ pass, fail, notGiven, outside }: Evaluation['counts']): string {
  if (fail > 0) return `Does not pass: ${fail} check`;
  return notGiven + outside > 0 ? 'Not complete: ' : `All ${pass} checks pass.`;
}

/** One page for all sheets that are only read; each is there when its own fingerprint stands at its foot. */
const reader = once(openWorkbench);
async function readSheetOf(
  project: Project,
  { fingerprint }: Pick<Evaluation, 'fingerprint'>,
  paper: PaperWords,
): Promise<Page> {
  const { page } = await reader();
  await openSheetOf(page, project);
  await choosePaper(page, paper);
  await page.locator('.sheet-foot').getByText(fingerprint).waitFor();
  return page;
}

afterAll(closeBrowser);

describe('the figures of the printed sheet', () => {
  for (const name of EXAMPLES) {
    it(`stands in the printed file row by row as the engine has it: ${name}`, async () => {
      const project = example(name);
      const evaluation = figuresOf(project);
      const { checks, lines, logs } = evaluation;
      const byKey = new Map(checks.map((c) => [c.key, c]));
      const page = await readSheetOf(project, evaluation, 'A4');
      const rows = await rowsOn(page);
      for (const table of ['site', 'posts', 'logs', 'checks', 'joints'])
        expect([table, rows.some((row) => row.table === table)]).toEqual([table, true]);
      const wrong: string[] = [];
      const hold = (isRight: boolean, what: string): void => {
        if (!isRight) wrong.push(what);
      };
      const reactions = lines.flatMap((line) => line.posts);
      const asked = checks.flatMap(({ demand, capacity }) => (demand ? [{ demand, capacity }] : []));
      const perFoot = checks.flatMap(({ reason }) => Object.values(reason?.code === 'ledgerAsks' ? reason.values : {}));
      for (const { table, key, cells } of rows) {
        const said = JSON.stringify(cells);
        if (table === 'checks') {
          const row = byKey.get(key);
          for (const [head, value] of [
            ['demand', row?.demand],
            ['capacity', row?.capacity],
          ] as const)
            hold(value ? isAsPrinted(cells[head]!, value.value) : cells[head] === '', said);
          hold(
            cells['unit'] === (row?.demand?.unit === '1' ? '–' : (row?.demand?.unit ?? row?.capacity?.unit ?? '')),
            said,
          );
        }
        if (table === 'posts')
          for (const [head, of] of [
            ['down, lb', 'greatestDownLb'],
            ['up, lb', 'greatestUpLb'],
            ['along, lb', 'greatestAlongLb'],
            ['across, lb', 'greatestAcrossLb'],
          ] as const)
            hold(
              cells[head] === 'not given'
                ? reactions.some((r) => r[of] === null)
                : reactions.some((r) => isAsPrinted(cells[head]!, r[of] ?? undefined)),
              said,
            );
        if (table === 'logs')
          hold(
            logs.some(
              ({ values }) =>
                !!values && isAsPrinted(cells['Fb']!, values.FbPsi) && isAsPrinted(cells['Fc']!, values.FcPsi),
            ),
            said,
          );
        if (table === 'joints')
          for (const head of ['pull, lb', 'along, lb', 'across, lb']) {
            const pair = /^([\d,.]+)(?: of ([\d,.]+|\?))?/.exec(cells[head] ?? '');
            if (!pair) continue;
            const [, demand = '', capacity] = pair;
            const isOfCheck = asked.some(
              (row) =>
                isAsPrinted(demand, row.demand.value) &&
                (capacity === undefined || capacity === '?'
                  ? row.capacity === null
                  : isAsPrinted(capacity, row.capacity?.value)),
            );
            hold(isOfCheck || perFoot.some((plf) => isAsPrinted(demand, Number(plf))), said);
          }
      }
      expect(wrong).toEqual([]);
      const { pdf } = await printed(page);
      const bare = (text: string): string => text.replace(/\s+/g, '');
      const text = bare(hasPdfText ? pdfText(pdf) : await page.locator('.sheet').innerText());
      const missing = rows.flatMap(({ lines: shown }) => shown.filter((words) => !text.includes(bare(words))));
      expect(missing).toEqual([]);
    });

    it(`prints the ratios of the evaluation, and as many failures: ${name}`, async () => {
      const project = example(name);
      const evaluation = figuresOf(project);
      const { checks, counts, fingerprint } = evaluation;
      const ratioOf = new Map(checks.map((c) => [c.key, c.ratio]));
      const page = await readSheetOf(project, evaluation, 'Letter');
      const rows = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('.sheet tr[data-check]')].map((tr) => ({
          key: tr.dataset['check'] ?? '',
          ratio: tr.querySelector('[data-head="ratio"]')?.textContent?.trim() ?? '',
        })),
      );
      expect(rows.length).toBeGreaterThan(8);
      const computed = rows.map(({ key }) => {
        const ratio = ratioOf.get(key);
        return { key, ratio: ratio === undefined ? 'no such check' : roundedUp(ratio) };
      });
      expect(rows).toEqual(computed);
      const { pdf } = await printed(page);
      expect(pageCount(pdf)).toBe(1);
      const text = hasPdfText ? pdfText(pdf, '-layout') : await page.locator('.sheet').innerText();
      for (const { ratio } of rows) expect(text).toContain(ratio);
      expect(text).toContain(fingerprint);
      expect(text).toContain(headOf(counts));
    });
  }

  it('says how many checks stand elsewhere: printed, told at the head and further ones make all', async () => {
    const project = example('undersized-shed');
    const evaluation = figuresOf(project);
    const { checks } = evaluation;
    const page = await readSheetOf(project, evaluation, 'Letter');
    const said = await page.locator('.sheet .checks .note').allInnerTexts();
    const further = Number(/^(\d+) more checks/.exec(said.join(' '))?.[1]);
    const rows = await page.locator('.sheet tr[data-check]').count();
    const more = Number(/and (\d+) more in the calculation/.exec(await page.locator('.sheet .more').innerText())?.[1]);
    const open = checks.filter((c) => c.status !== 'pass').length;
    const told = open - more;
    expect(further).toBeLessThanOrEqual(checks.length - rows);
    expect(further).toBeGreaterThanOrEqual(checks.length - rows - told);
  });

  it('goes to a file that is called by the project and the print, with the day of the revision at its foot', async () => {
    const project = example('firewood-shed');
    const page = await readSheetOf(project, figuresOf(project), 'Letter');
    const { pdf } = await printed(page);
    expect(pdf.toString('latin1')).toContain(`/Title (${project.title.name}, check sheet)`);
    const foot = await page.locator('.sheet-foot').first().innerText();
    expect(foot).toContain(`${project.title.name}, revision 1, ${project.title.revision.date}`);
    await page.evaluate(() => {
      location.hash = '#check-sheet/calculation';
    });
    await expect.poll(() => page.title()).toBe(`${project.title.name}, calculation`);
    await page.evaluate(() => {
      location.hash = '#frame';
    });
    await expect.poll(() => page.title()).toBe('Log shelter workbench');
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
