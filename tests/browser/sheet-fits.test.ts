import * as fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Project } from '../../src/engine/project/model.ts';
import { randomProject } from '../support/random-project.ts';
import { closeBrowser } from './support/browser.ts';
import { openWorkbench } from './support/workbench.ts';
import {
  choosePaper,
  chooseUnits,
  hasPdfText,
  openSheetOf,
  pageCount,
  pdfText,
  printed,
  type PaperWords,
} from './sheet-page.ts';

const isLong = process.env['LONG'] === '1';
const PROJECTS = isLong ? 200 : 6;
const PAPERS: readonly PaperWords[] = ['Letter', 'A4'];
const LEAST_TYPE_PT = 7;
/** A page is looked at in the browser's pixels, which cannot hold 7 pt exactly. */
const ROUNDING_PT = 0.01;

/** Every text of the title as long as the file allows: one unbroken word, or letters of another script. */
const withLongTexts = (project: Project, letter: string): Project => ({
  ...project,
  title: {
    id: project.title.id,
    name: letter.repeat(120),
    parcel: letter.repeat(120),
    preparedBy: letter.repeat(120),
    revision: { number: letter.repeat(20), date: '2026-12-31' },
  },
});

const LETTERS = [null, 'W', null, '森'];

/** Sound projects that have figures; every other one with the longest texts. */
function samples(): readonly Project[] {
  return fc
    .sample(randomProject(), { seed: 20261125, numRuns: PROJECTS * 2 })
    .filter((project) => evaluate(project).ok)
    .slice(0, PROJECTS)
    .map((project, i) => {
      const letter = LETTERS[i % LETTERS.length];
      return letter ? withLongTexts(project, letter) : project;
    });
}

/** Words of the printed file that lie outside its page, as the other program sees them. */
function wordsOutside(pdf: Buffer): readonly string[] {
  const layout = pdfText(pdf, '-bbox');
  const page = /<page width="([\d.]+)" height="([\d.]+)"/.exec(layout);
  const [width, height] = [Number(page?.[1]), Number(page?.[2])];
  return [...layout.matchAll(/<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*)<\/word>/g)]
    .filter(
      ([, xMin, yMin, xMax, yMax]) =>
        Number(xMin) < 0 || Number(yMin) < 0 || Number(xMax) > width || Number(yMax) > height,
    )
    .map((match) => match[5]!);
}

afterAll(closeBrowser);

describe('the check sheet of random sound shelters', () => {
  it(
    `is one page with nothing clipped and no type below ${LEAST_TYPE_PT} pt, on both papers`,
    { timeout: 20_000 + PROJECTS * 10_000 },
    async () => {
      const projects = samples();
      expect(projects.length).toBe(PROJECTS);
      const { page, complaints, close } = await openWorkbench();
      const failures: string[] = [];
      for (const [i, project] of projects.entries()) {
        await openSheetOf(page, project);
        await chooseUnits(page, i % 3 === 2 ? 'm' : 'ft in');
        for (const paper of PAPERS) {
          await choosePaper(page, paper);
          const { measured, pdf } = await printed(page);
          const found = [
            ...measured.problems,
            ...(measured.texts < 100 ? [`only ${measured.texts} texts`] : []),
            ...(measured.leastTypePt < LEAST_TYPE_PT - ROUNDING_PT ? [`type of ${measured.leastTypePt} pt`] : []),
            ...(pageCount(pdf) === 1 ? [] : [`${pageCount(pdf)} pages`]),
            ...(hasPdfText ? wordsOutside(pdf).map((word) => `printed outside: ${word}`) : []),
          ];
          failures.push(...found.map((problem) => `project ${i} on ${paper}: ${problem}`));
        }
      }
      expect(failures).toEqual([]);
      expect(complaints).toEqual([]);
      await close();
    },
  );

  it('is measured by something that sees a text that is too long, one that is too small and a page too full', async () => {
    const { page, close } = await openWorkbench();
    await openSheetOf(page, samples()[0]!);
    const cases: readonly (readonly [selector: string, change: 'longer' | 'smaller' | 'fuller'])[] = [
      ['.checks tbody td .line', 'longer'],
      ['.note .line', 'smaller'],
      ['.last .note', 'fuller'],
    ];
    for (const [selector, change] of cases) {
      const undo = await page.evaluateHandle(
        ([where, how]) => {
          const element = document.querySelector<HTMLElement>(where!)!;
          const before = element.innerHTML;
          if (how === 'longer') element.textContent = 'longer than any column '.repeat(8);
          if (how === 'smaller') element.style.fontSize = '6pt';
          if (how === 'fuller') element.innerHTML = before.repeat(4);
          return () => {
            element.innerHTML = before;
            element.style.fontSize = '';
          };
        },
        [selector, change],
      );
      const { measured } = await printed(page);
      const seen =
        change === 'smaller' ? measured.leastTypePt < LEAST_TYPE_PT - ROUNDING_PT : measured.problems.length > 0;
      expect([change, seen]).toEqual([change, true]);
      await page.evaluate((back) => back(), undo);
    }
    await close();
  });
});
