import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import { closeBrowser } from './support/browser.ts';
import { openLink, rowsOfOpenLink } from './support/cord.ts';
import { keptProject } from './support/device.ts';
import { eventually } from './support/eventually.ts';
import { figuresOf, roundedUp } from './support/figures.ts';
import { DESK, figuresShown, openDemo, PHONE, saved } from './support/workbench.ts';

afterAll(closeBrowser);

const LOWER = 'Every joint lower end of a brace';
const KEY = 'brace.tie/brace-1/bracePost';

const choose = (page: Page, label: string, words: string): Promise<string[]> =>
  page.getByRole('combobox', { name: label, exact: true }).selectOption({ label: words });

/** The brace's lower joint, unfolded where the screen is narrow. */
async function openJoint(page: Page): Promise<void> {
  await openLink(page, 'brace');
  await page.getByText('A1+', { exact: true }).first().click();
  const folded = page
    .getByRole('region', { name: 'Joint lower end of a brace of brace A1+' })
    .locator('details.folding');
  if (!(await folded.evaluate((each) => each instanceof HTMLDetailsElement && each.open)))
    await folded.locator('summary').click();
}

/** The line of a direction as it reads. */
const asked = async (page: Page, direction: string): Promise<string> => {
  const joint = page.getByRole('region', { name: 'Joint lower end of a brace of brace A1+' });
  const line = joint.locator('tr', { has: page.getByRole('rowheader', { name: direction, exact: true }) });
  return (await line.locator('td').allTextContents()).join(' | ');
};

describe('lag screws for the end of a brace', () => {
  it.each([
    ['on a desk', DESK],
    ['on a telephone', PHONE],
  ])('%s: not given turns into a ratio, is undone, redone and there after a reload', async (_, options) => {
    const { page, complaints, close } = await openDemo(options);
    await openJoint(page);
    await choose(page, `${LOWER}: what it can carry`, 'has no capacity given');
    await eventually(() => asked(page, 'pulled apart')).toMatch(/not given$/);

    await choose(page, `${LOWER}: what it can carry`, 'is held by fasteners');
    await choose(page, `${LOWER}: add fasteners`, 'lag screws');
    await choose(page, `${LOWER}: thickness`, '5/8 in');
    const { project } = await keptProject(page);
    const [row] = figuresOf(project).checks.filter(({ key }) => key === KEY);
    const ratio = roundedUp(row?.ratio ?? null);
    expect(ratio).toMatch(/^\d+\.\d\d$/);
    await eventually(() => asked(page, 'pulled apart')).toContain(` | ${ratio}`);
    expect((await rowsOfOpenLink(page)).get(KEY)).toBe(ratio);
    await page.locator('.joint-picture svg').first().waitFor();

    const overhang = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overhang).toBeLessThanOrEqual(0);
    const { violations } = await new AxeBuilder({ page }).include('.link.open').analyze();
    expect(violations.filter(({ impact }) => impact === 'serious' || impact === 'critical')).toEqual([]);

    const undo = page.getByRole('button', { name: /^undo/ });
    for (let i = 0; i < 3; i++) await undo.click();
    await eventually(() => asked(page, 'pulled apart')).toMatch(/not given$/);
    const redo = page.getByRole('button', { name: /^redo/ });
    for (let i = 0; i < 3; i++) await redo.click();
    await eventually(() => asked(page, 'pulled apart')).toContain(` | ${ratio}`);
    await saved(page);

    await page.reload();
    await figuresShown(page);
    await openJoint(page);
    await eventually(() => asked(page, 'pulled apart')).toContain(` | ${ratio}`);
    expect((await keptProject(page)).project).toEqual(project);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe('proposed fasteners', () => {
  it('are said with their ratio, taken by a word, and hold', async () => {
    const { page, complaints, close } = await openDemo();
    await openLink(page, 'purlin');
    const every = 'Every joint purlin to rafter';
    await page.getByRole('button', { name: `propose fasteners, ${every}` }).click();
    const said = page.getByRole('status', { name: `${every}: proposal` });
    await said.waitFor();
    expect(await said.innerText()).toMatch(/^The fewest that hold: \d .* Ratio 0\.\d\d at the hardest\./);
    await said.getByRole('button', { name: /take these|as proposed/ }).click();
    const { project } = await keptProject(page);
    const judged = figuresOf(project).checks.filter(({ ruleId }) => ruleId === 'purlin.tie');
    expect(judged.map(({ status }) => status)).toEqual(judged.map(() => 'pass'));
    expect(judged.length).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
    await close();
  });

  it('are not made up where none that is computed would hold: the reason stands there, and the joint is not given', async () => {
    const { page, complaints, close } = await openDemo();
    await openJoint(page);
    await choose(page, `${LOWER}: what it can carry`, 'is held by fasteners');
    await page.getByRole('button', { name: `propose fasteners, ${LOWER}` }).click();
    const said = page.getByRole('status', { name: `${LOWER}: no proposal` });
    await said.waitFor();
    expect((await said.innerText()).length).toBeGreaterThan(20);
    const { project } = await keptProject(page);
    const judged = figuresOf(project).checks.filter(({ key }) => /^brace\.tie\/.*\/bracePost$/.test(key));
    expect(judged.filter(({ status }) => status === 'notGiven').length).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
    await close();
  });
});
