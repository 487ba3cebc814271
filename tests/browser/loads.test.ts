import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import type { LoadPicture } from '../../src/engine/load-pictures/picture.ts';
import { roofPictures, type RoofPictures } from '../../src/engine/load-pictures.ts';
import type { Project } from '../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../support/files.ts';
import { closeBrowser } from './support/browser.ts';
import { openLink } from './support/cord.ts';
import { eventually } from './support/eventually.ts';
import { demo, figuresOf } from './support/figures.ts';
import { openExample } from './support/files.ts';
import { openDemo, PHONE } from './support/workbench.ts';

afterAll(closeBrowser);

function drawnOf(project: Project): RoofPictures {
  const answer = roofPictures(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer;
}
const picturesOf = (project: Project): readonly LoadPicture[] => drawnOf(project).pictures;

const openLoads = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'loads', exact: true }).first().click();
  await page.locator('.loads-name').waitFor();
};

const caseList = (page: Page) => page.getByRole('combobox', { name: 'Load case' });

/** Words of the loads on one of the two views. */
const written = (page: Page, view: 'section' | 'plan'): Promise<string[]> =>
  page
    .locator('.loads-views > .drawing')
    .nth(view === 'section' ? 0 : 1)
    .locator('text.text-load')
    .allTextContents();

/** A printed pressure or force as a number; what lifts is less than nothing. */
function numberIn(text: string): number {
  const digits = /[\d,]+(\.\d+)?/.exec(text)?.[0] ?? 'none';
  const lifts = text.includes('lifts') || text.includes('−');
  return (lifts ? -1 : 1) * Number(digits.replaceAll(',', ''));
}

const inOrder = (numbers: readonly number[]): readonly number[] => numbers.toSorted((a, b) => a - b);
const tenth = (value: number): number => Number(value.toFixed(1));

/** Pressures that a plan must print: one for an even strip, one at each end of another. */
const pressuresOf = ({ strips }: LoadPicture): readonly number[] =>
  inOrder(
    strips.flatMap(({ lowPsf, highPsf }) =>
      (Math.abs(lowPsf - highPsf) < 1e-6 ? [lowPsf] : [lowPsf, highPsf]).map(tenth),
    ),
  );
const pushesOf = ({ pushes }: LoadPicture): readonly number[] =>
  inOrder(pushes.map(({ alongLb }) => Math.abs(Math.round(alongLb))));

/** Every case by its keys, and what the plan prints of it. */
async function walk(page: Page, pictures: readonly LoadPicture[]): Promise<void> {
  await caseList(page).selectOption({ index: 0 });
  await page.getByRole('button', { name: 'next case' }).focus();
  for (const [at, picture] of pictures.entries()) {
    await eventually(() => page.locator('.loads-name').innerText()).toContain(`${at + 1} of ${pictures.length}: `);
    const texts = await written(page, 'plan');
    const pressures = texts.filter((text) => !text.includes('lb')).map(numberIn);
    const pushed = texts.filter((text) => text.endsWith(' lb') && picture.pushes.length > 0).map(numberIn);
    expect([picture.id, inOrder(pressures)]).toEqual([picture.id, pressuresOf(picture)]);
    expect([picture.id, inOrder(pushed)]).toEqual([picture.id, pushesOf(picture)]);
    const section = (await written(page, 'section')).filter((text) => text.includes('psf')).map(numberIn);
    expect(section.filter((psf) => !pressuresOf(picture).includes(psf))).toEqual([]);
    expect(section.length > 0).toBe(picture.strips.length > 0);
    await page.keyboard.press('ArrowRight');
  }
  await eventually(() => page.locator('.loads-name').innerText()).toContain(`1 of ${pictures.length}: `);
}

describe('loads on section and plan', () => {
  it('steps through every case of the demo by the arrow keys, and prints the numbers of the engine', async () => {
    const { page, complaints, close } = await openDemo();
    await openLoads(page);
    await walk(page, picturesOf(demo()));
    expect(complaints).toEqual([]);
    await close();
  });

  it('does so under a taller building, where the drift lies in a triangle', async () => {
    const project = soundProject(exampleText('lean-to'));
    const pictures = picturesOf(project);
    expect(pictures.some(({ strips }) => strips.some((s) => s.lowPsf !== s.highPsf))).toBe(true);
    const { page, close } = await openDemo();
    await openExample(page, 'Lean-to against a house', project.title.name);
    await openLoads(page);
    await walk(page, pictures);
    await close();
  });

  it('shows what governs an opened check: its combination with factors, each case to be looked at', async () => {
    const { page, close } = await openDemo();
    await openLink(page, 'beam A');
    await page.locator('.gives .ratio').first().click();
    await page.getByRole('button', { name: 'show the load that governs' }).click();
    const governing = page.getByRole('region', { name: 'What governs' });
    await governing.waitFor();
    const key = (await page.locator('.gives tr.check').first().getAttribute('data-check')) ?? '';
    const { checks, loads } = figuresOf(demo());
    const { combinationId } = checks.find((row) => row.key === key)!;
    const { factors } = loads.combinations.find(({ id }) => id === combinationId)!;
    const said = await governing.locator('li').allInnerTexts();
    expect(said.map((text) => Number(/^[\d.]+/.exec(text)?.[0]))).toEqual(Object.values(factors));
    await governing.getByRole('button', { name: /dead load/ }).click();
    await eventually(() => page.locator('.loads-name').innerText()).toContain('Dead load');
    await page.getByRole('button', { name: 'back to the views' }).click();
    await page.getByRole('heading', { name: 'Front view' }).waitFor();
    await eventually(() =>
      page
        .locator('.show-loads')
        .first()
        .evaluate((each) => each === document.activeElement),
    ).toBe(true);
    await close();
  });

  it('names what does not apply, each with its reason, and says the picture in words', async () => {
    const { page, close } = await openDemo();
    await openLoads(page);
    const left = [...figuresOf(demo()).loads.leftOut, ...drawnOf(demo()).leftOut];
    expect(await page.locator('.loads-words > ul > li').count()).toBe(left.length);
    const image = page.locator('.loads-views svg[role="img"]').first();
    expect(await image.locator('title').textContent()).toContain('Snow, balanced');
    expect(await image.locator('desc').textContent()).toContain('Presses on the roof with');
    await close();
  });

  for (const { words, options } of [
    { words: 'on a desk', options: {} },
    { words: 'on a telephone', options: PHONE },
    { words: 'in the dark theme', options: { colorScheme: 'dark' as const } },
  ]) {
    it(`finds nothing for the checker of accessibility ${words}, and does not scroll sideways`, async () => {
      const { page, close } = await openDemo(options);
      if (options === PHONE) await page.getByText('Section', { exact: true }).tap();
      await openLoads(page);
      for (const name of ['Wind from the left', 'Push across', 'on sheet and screws']) {
        const option = caseList(page).locator('option', { hasText: name }).first();
        await caseList(page).selectOption({ value: (await option.getAttribute('value')) ?? '' });
        const { violations } = await new AxeBuilder({ page }).include('.drawing-sheet').analyze();
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect(over).toBeLessThanOrEqual(0);
      }
      await close();
    });
  }
});
