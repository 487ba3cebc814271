import type { Locator, Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import { movePost } from '../../src/engine/project/edits/posts.ts';
import type { Project } from '../../src/engine/project/model.ts';
import { closeBrowser } from './support/browser.ts';
import { allRows, field } from './support/cord.ts';
import { keptProject } from './support/device.ts';
import { eventually } from './support/eventually.ts';
import { countsToShow, demo, figuresOf, ratiosToShow } from './support/figures.ts';
import { openDemo } from './support/workbench.ts';

afterAll(closeBrowser);

const POST = 'Post A2, along the line';
const START_IN = 156;
const handle = (page: Page, name = POST): Locator => page.getByRole('slider', { name, exact: true });
const apart = (page: Page): Promise<string> => field(page, 'Post to post').inputValue();
const button = (page: Page, name: 'undo' | 'redo'): Locator => page.getByRole('button', { name, exact: true });

async function placeOf(page: Page, memberId: string): Promise<number> {
  const { project } = await keptProject(page);
  const member = project.members.find(({ id }) => id === memberId);
  if (member?.role !== 'post') throw new Error(`${memberId} is not a post`);
  return member.xIn;
}

/** Takes hold in the middle of a handle and goes sideways; the pointer stays down. */
async function takeAndMove(page: Page, name: string, byX: number, byY = 0): Promise<void> {
  const box = await handle(page, name).boundingBox();
  if (!box) throw new Error(`${name} is not on the screen`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + byX, y + byY, { steps: 8 });
}

/** 12' 4 1/2" as a drawing writes whole quarters of an inch, worked out anew. */
function feetAndInches(lengthIn: number): string {
  const inches = lengthIn % 12;
  const fraction = ['', '1/4', '1/2', '3/4'][Math.round((inches % 1) * 4)] ?? '';
  return `${Math.floor(lengthIn / 12)}' ${[Math.floor(inches), fraction].filter((part) => part !== '').join(' ')}"`;
}

async function showsFiguresOf(page: Page, project: Project): Promise<void> {
  const figures = figuresOf(project);
  await eventually(() => page.locator('.cord .counts').innerText()).toBe(countsToShow(figures));
  expect(await allRows(page)).toEqual(ratiosToShow(figures));
  // a link that speaks of the other line shows that line
  await page.getByRole('group', { name: 'of line' }).getByText('A', { exact: true }).click();
}

describe('a post dragged with the pointer', () => {
  it('takes dimension and ratios along, and is one undo entry', async () => {
    const { page, complaints, close } = await openDemo();
    expect(await apart(page)).toBe('13\' 0"');
    await takeAndMove(page, POST, -60);
    // while the pointer is still down
    await eventually(() => apart(page)).not.toBe('13\' 0"');
    await page.mouse.up();

    const xIn = await placeOf(page, 'post-2');
    expect(xIn).toBeLessThan(START_IN - 12);
    expect(Number.isInteger(xIn * 4)).toBe(true);
    expect(await apart(page)).toBe(feetAndInches(xIn));
    await showsFiguresOf(page, movePost(demo(), 'post-2', xIn));
    expect(complaints).toEqual([]);

    expect(await button(page, 'undo').getAttribute('title')).toBe('undo: move a post');
    await button(page, 'undo').click();
    await eventually(() => apart(page)).toBe('13\' 0"');
    expect(await button(page, 'undo').isDisabled()).toBe(true);
    expect((await keptProject(page)).project).toEqual(demo());

    await button(page, 'redo').click();
    await eventually(() => apart(page)).toBe(feetAndInches(xIn));
    expect(await button(page, 'redo').isDisabled()).toBe(true);
    await close();
  });

  it('goes back to where it was when Escape is pressed on the way', async () => {
    const { page, close } = await openDemo();
    await takeAndMove(page, POST, -40);
    await eventually(() => apart(page)).not.toBe('13\' 0"');
    await page.keyboard.press('Escape');
    await eventually(() => apart(page)).toBe('13\' 0"');
    await page.mouse.up();
    expect(await button(page, 'undo').isDisabled()).toBe(true);
    expect((await keptProject(page)).project).toEqual(demo());
    await close();
  });

  it('stops at the end of the beam and at the next post', async () => {
    const { page, complaints, close } = await openDemo();
    await takeAndMove(page, POST, 600);
    await page.mouse.up();
    expect(await placeOf(page, 'post-2')).toBeLessThanOrEqual(186);
    await takeAndMove(page, POST, -1000);
    await page.mouse.up();
    expect(await placeOf(page, 'post-2')).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe('a post moved with the arrow keys', () => {
  it('is one undo entry for each time a key is held, taken back and done again by keys', async () => {
    const { page, close } = await openDemo();
    await handle(page).focus();
    // held: the key repeats and is let go once
    for (let i = 0; i < 3; i++) await page.keyboard.down('ArrowLeft');
    await page.keyboard.up('ArrowLeft');
    await eventually(() => apart(page)).toBe('12\' 9"');
    await page.keyboard.press('ArrowRight');
    await eventually(() => apart(page)).toBe('12\' 10"');
    expect(await handle(page).getAttribute('aria-valuenow')).toBe('154');
    await showsFiguresOf(page, movePost(demo(), 'post-2', 154));

    await handle(page).focus();
    await page.keyboard.press('Control+z');
    await eventually(() => apart(page)).toBe('12\' 9"');
    await page.keyboard.press('Control+z');
    await eventually(() => apart(page)).toBe('13\' 0"');
    expect(await button(page, 'undo').isDisabled()).toBe(true);
    await page.keyboard.press('Control+Shift+Z');
    await eventually(() => apart(page)).toBe('12\' 9"');
    await page.keyboard.press('Control+y');
    await eventually(() => apart(page)).toBe('12\' 10"');
    expect(await button(page, 'redo').isDisabled()).toBe(true);
    await close();
  });
});

describe('a knee brace dragged with the pointer', () => {
  it('changes its run, and the run that is written beside it', async () => {
    const { page, close } = await openDemo();
    const run = field(page, 'Brace, run along the beam');
    expect(await run.inputValue()).toBe('2\' 6"');
    await takeAndMove(page, 'Knee brace at A1, run along the beam', 24);
    await page.mouse.up();
    const { project } = await keptProject(page);
    const braces = project.groups.find(({ id }) => id === 'braces');
    const runIn = braces?.role === 'brace' ? braces.runIn : 0;
    expect(runIn).toBeGreaterThan(34);
    expect(await run.inputValue()).toBe(feetAndInches(runIn));
    expect(await button(page, 'undo').getAttribute('title')).toBe('undo: move a brace');
    await showsFiguresOf(page, project);
    await close();
  });
});
