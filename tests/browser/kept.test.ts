import { afterAll, describe, expect, it } from 'vitest';
import { setAt } from '../../src/engine/project/edits/set-at.ts';
import { closeBrowser } from './support/browser.ts';
import { field, openLink, type } from './support/cord.ts';
import { keptProject, readDevice } from './support/device.ts';
import { eventually } from './support/eventually.ts';
import { countsToShow, demo, figuresOf } from './support/figures.ts';
import { figuresShown, openAnotherTab, openDemo, saved } from './support/workbench.ts';

afterAll(closeBrowser);

const TIP = 'beam A: diameter at the tip';
const TIP_PATH = 'logs[log-1].stations[2].diameterIn';

describe('what is kept on the device', () => {
  it('is on the screen again after a reload, edits, units and name, and the counter goes up', async () => {
    const { page, complaints, close } = await openDemo();
    const first = await keptProject(page);
    await type(page, 'Name of the project', 'Woodshed by the creek');
    await page.keyboard.press('Enter');
    await openLink(page, 'beam A');
    await type(page, TIP, '9 1/4');
    await page.keyboard.press('Enter');
    await page.getByText('metres, kilonewtons').click({ force: true });
    const second = await keptProject(page);
    const edited = setAt(setAt(demo(), 'title.name', 'Woodshed by the creek'), TIP_PATH, 9.25);
    expect(second.project).toEqual(edited);
    expect(second.counter).toBeGreaterThan(first.counter);

    await page.reload();
    await figuresShown(page);
    expect(await field(page, 'Name of the project').inputValue()).toBe('Woodshed by the creek');
    expect(await page.locator('.cord .counts').innerText()).toBe(countsToShow(figuresOf(edited)));
    await openLink(page, 'beam A');
    expect(await field(page, TIP).inputValue()).toBe('235 mm');
    expect(await keptProject(page)).toEqual(second);
    expect(complaints).toEqual([]);
    await close();
  });

  it('keeps what was typed a moment before the page is left', async () => {
    const { page, close } = await openDemo();
    await openLink(page, 'beam A');
    await type(page, TIP, '9 1/4');
    await page.reload();
    await figuresShown(page);
    await openLink(page, 'beam A');
    expect(await field(page, TIP).inputValue()).toBe('9 1/4 in');
    await close();
  });
});

describe('the same project in two tabs', () => {
  it('is never written over silently: the later tab is told and goes on with a copy', async () => {
    const { page: one, context, close } = await openDemo();
    const two = await openAnotherTab(context);
    await openLink(one, 'beam A');
    await type(one, TIP, '9 1/4');
    await one.keyboard.press('Enter');
    await saved(one);

    await openLink(two, 'beam A');
    await type(two, TIP, '10 1/2');
    await two.keyboard.press('Enter');
    await two.getByText('This project was changed in another tab.').waitFor();
    expect(await two.locator('.top .title').innerText()).toContain('not saved: changed in another tab');
    expect((await keptProject(one)).project).toEqual(setAt(demo(), TIP_PATH, 9.25));

    await two.getByRole('button', { name: 'a copy of what is on this screen' }).click();
    await saved(two);
    const device = await readDevice(two);
    expect(Object.keys(device)).toHaveLength(2);
    expect((await keptProject(one)).project).toEqual(setAt(demo(), TIP_PATH, 9.25));
    const copy = Object.entries(device).find(([id]) => id !== 'firewood-shed');
    expect(copy?.[1].text).toContain('"diameterIn": 10.5');
    await close();
  });

  it('can be taken over from the tab that saved', async () => {
    const { page: one, context, close } = await openDemo();
    const two = await openAnotherTab(context);
    await openLink(one, 'beam A');
    await type(one, TIP, '9 1/4');
    await one.keyboard.press('Enter');
    await saved(one);

    await openLink(two, 'beam A');
    await type(two, TIP, '10 1/2');
    await two.getByRole('button', { name: 'what the other tab saved' }).click();
    await eventually(() => field(two, TIP).inputValue()).toBe('9 1/4 in');
    await saved(two);
    expect(Object.keys(await readDevice(two))).toEqual(['firewood-shed']);
    await close();
  });
});
