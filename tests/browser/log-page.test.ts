import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import { setStation } from '../../src/engine/project/edits/set-station.ts';
import { sectionOfMember } from '../../src/engine/section-of-member.ts';
import type { Station } from '../../src/engine/project/model.ts';
import { closeBrowser } from './support/browser.ts';
import { openLink } from './support/cord.ts';
import { keptProject } from './support/device.ts';
import { eventually } from './support/eventually.ts';
import { demo, figuresOf } from './support/figures.ts';
import { openDemo, PHONE } from './support/workbench.ts';

afterAll(closeBrowser);

async function openLog(page: Page, link = 'beam A', heading: string | RegExp = 'Log of beam A'): Promise<void> {
  await openLink(page, link);
  await page.getByRole('button', { name: 'look at this log' }).click();
  await page.getByRole('heading', { name: heading }).waitFor();
}

const piece = (page: Page, label: string) =>
  page.getByRole('group', { name: 'Piece of this log' }).getByText(label, { exact: true });

const stationsOf = async (page: Page): Promise<readonly Station[]> =>
  (await keptProject(page)).project.logs.find(({ id }) => id === 'log-1')?.stations ?? [];
const places = async (page: Page): Promise<number[]> => (await stationsOf(page)).map((s) => s.fromButtIn);
const rows = (page: Page) => page.locator('.stations tbody tr');
const pointer = (page: Page) => page.getByRole('slider', { name: /^Place looked at/ });
const placeLookedAt = async (page: Page): Promise<number> => Number(await pointer(page).getAttribute('aria-valuenow'));

/** Looks at a place of a piece by keys; the page says there what the engine says. Answers how many cuts there are. */
async function cutsSaid(page: Page, memberId: string, pieceFromButtIn: number, alongIn: number): Promise<number> {
  await pointer(page).focus();
  const way = Math.round(alongIn + pieceFromButtIn - (await placeLookedAt(page)));
  for (let i = 0; i < Math.abs(way); i++) await page.keyboard.press(way > 0 ? 'ArrowRight' : 'ArrowLeft');
  const atIn = (await placeLookedAt(page)) - pieceFromButtIn;
  expect(Math.abs(atIn - alongIn)).toBeLessThanOrEqual(0.5);
  const { section, cuts } = sectionOfMember(demo(), figuresOf(demo()).shelter, memberId, atIn)!;
  const said = page.locator('.section-figures');
  await eventually(() => said.innerText()).toContain(`${section.areaIn2.toFixed(1)} in²`);
  expect(await said.innerText()).toContain(`${section.modulusIn3.toFixed(1)} in³`);
  return cuts.length;
}

describe('the log page', () => {
  it('opens from the beam, takes a station by touch, and undo takes it back', async () => {
    const { page, complaints, close } = await openDemo();
    await openLog(page);
    expect(await rows(page).count()).toBe(3);
    const box = (await page.locator('.log-body').boundingBox())!;
    // a quarter of 252 in. from the butt
    await page.mouse.click(box.x + box.width / 4, box.y + box.height / 2);
    await eventually(() => rows(page).count()).toBe(4);
    expect(await places(page)).toEqual([0, 63, 120, 252]);
    // straight between 13-1/2 at the butt and 12-3/4 at 120 in.
    expect((await stationsOf(page))[1]!.diameterIn).toBeCloseTo(13.5 - (0.75 * 63) / 120, 9);
    // the field of what was added has the keyboard: what was measured can be typed at once
    await page.keyboard.type('13');
    await page.keyboard.press('Enter');
    await eventually(async () => (await stationsOf(page))[1]?.diameterIn).toBe(13);
    await page.getByRole('button', { name: 'undo', exact: true }).click();
    await page.getByRole('button', { name: 'undo', exact: true }).click();
    await eventually(() => rows(page).count()).toBe(3);
    expect((await keptProject(page)).project).toEqual(demo());
    expect(complaints).toEqual([]);
    await close();
  });

  it('adds, moves and removes a station by keys alone', async () => {
    const { page, close } = await openDemo();
    await openLog(page);
    await pointer(page).focus();
    const at = Number(await pointer(page).getAttribute('aria-valuenow'));
    for (let i = 0; i < 6; i++) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await eventually(() => rows(page).count()).toBe(4);
    expect(await places(page)).toContain(at + 6);
    const station = page.getByRole('slider', { name: 'Station 2, from the butt' });
    await station.focus();
    await page.keyboard.press('ArrowLeft');
    await eventually(() => places(page)).toContain(at + 5);
    await page.keyboard.press('Delete');
    await eventually(() => rows(page).count()).toBe(3);
    await close();
  });

  it('says of the section at the pointer what the engine says, at a seat and between', async () => {
    const { page, close } = await openDemo();
    await openLog(page);
    const { shelter } = figuresOf(demo());
    const beam = shelter.beams.find(({ id }) => id === 'beam-high')!;
    const seatAt = beam.cuts.find(({ madeBy }) => madeBy === 'seat')!.atXIn - beam.fromXIn;
    // the demo's beam begins 12 in. from the butt of its log
    expect(await cutsSaid(page, 'beam-high', 12, seatAt)).toBe(1);
    expect(await cutsSaid(page, 'beam-high', 12, seatAt + 60)).toBe(0);
    await close();
  });

  it('calls a post and a brace what they are, with housing, ends and the thinnest log of each', async () => {
    const { page, close } = await openDemo();
    const { shelter } = figuresOf(demo());
    await openLog(page, 'post', /^Log of post /);
    await piece(page, 'A1').click();
    await page.getByRole('heading', { name: 'Log of post A1' }).waitFor();
    const post = shelter.posts.find(({ label }) => label === 'A1')!;
    const brace = shelter.braces.find(({ postId }) => postId === post.id)!;
    // the demo's posts and braces begin at the butt of their logs
    expect(await cutsSaid(page, post.id, 0, brace.postPoint.zIn - post.woodFromZIn)).toBe(1);
    await page.getByRole('button', { name: 'back to the views' }).click();
    await openLog(page, 'brace', /^Log of brace /);
    await piece(page, 'A1+').click();
    await page.getByRole('heading', { name: 'Log of brace A1+' }).waitFor();
    for (const line of ['.least-line', '.whole-line']) {
      expect(await page.locator(`.log-sheet .drawing ${line}`).count()).toBe(2);
    }
    expect(await cutsSaid(page, brace.id, 0, brace.lengthIn / 2)).toBe(0);
    expect(await page.locator('.section-here').innerText()).not.toContain('less is left');
    expect(await cutsSaid(page, brace.id, 0, brace.lengthIn - 1)).toBe(0);
    expect(await page.locator('.section-here').innerText()).toContain('less is left than is drawn');
    await close();
  });

  it('takes a cut by hand where it is looked at, and its changes; removed it leaves nothing behind', async () => {
    const { page, complaints, close } = await openDemo();
    await openLog(page);
    await page.getByRole('button', { name: /^one more cut / }).click();
    const cuts = async () => (await keptProject(page)).project.cuts;
    await eventually(async () => (await cuts()).length).toBe(1);
    // the middle of the piece is looked at first: it begins 12 in. from the butt, at x -30
    const at = (await placeLookedAt(page)) - 12 - 30;
    expect((await cuts())[0]).toMatchObject({ member: 'beam-high', centreIn: at, depthIn: 1, by: 'hand' });
    const depth = page.getByRole('textbox', { name: 'cut 1: depth', exact: true });
    await depth.fill('1 1/2');
    await depth.press('Enter');
    const middle = page.getByRole('textbox', { name: 'cut 1: middle, from the butt', exact: true });
    await middle.fill('5 ft');
    await middle.press('Enter');
    await page.getByRole('combobox', { name: 'cut 1: side' }).selectOption('below');
    await eventually(async () => (await cuts())[0]?.angleDeg).toBe(180);
    expect((await cuts())[0]).toMatchObject({ centreIn: 60 - 12 - 30, depthIn: 1.5 });
    await page.locator('.log-sheet .sentence', { has: depth }).getByRole('button', { name: 'remove' }).click();
    await eventually(async () => (await cuts()).length).toBe(0);
    expect((await keptProject(page)).project).toEqual(demo());
    expect(complaints).toEqual([]);
    await close();
  });

  it('takes a girth, which is pi times the diameter, and remembers how it was read', async () => {
    const { page, close } = await openDemo();
    await openLog(page);
    const girth = page.getByRole('textbox', { name: 'Girth at the butt', exact: true });
    await girth.fill('44');
    await girth.press('Enter');
    const expected = setStation(demo(), 'log-1', { fromButtIn: 0, diameterIn: 44 / Math.PI, read: 'girth' });
    await eventually(async () => (await stationsOf(page))[0]?.read).toBe('girth');
    expect((await keptProject(page)).project).toEqual(expected);
    await close();
  });

  it('has controls as tall as a thumb on a telephone', async () => {
    const { page, close } = await openDemo(PHONE);
    await openLog(page, 'post', /^Log of post /);
    await page.getByRole('button', { name: /^one more cut / }).click();
    await page.getByRole('button', { name: 'remove' }).waitFor();
    const low = await page.locator('.log-sheet :is(.tool, .opens, .chooser label)').evaluateAll((controls) =>
      controls
        .map((each) => ({ words: each.textContent, px: each.getBoundingClientRect().height }))
        // half a pixel is the browser's own rounding
        .filter(({ px }) => px < 43.5),
    );
    expect(low).toEqual([]);
    await close();
  });

  for (const { words, options } of [
    { words: 'on a desk', options: {} },
    { words: 'on a telephone', options: PHONE },
    { words: 'in the dark theme', options: { colorScheme: 'dark' as const } },
  ]) {
    it(`finds nothing for the checker of accessibility ${words}, and does not scroll sideways`, async () => {
      const { page, close } = await openDemo(options);
      await openLog(page);
      const { violations } = await new AxeBuilder({ page }).include('.drawing-sheet').analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over).toBeLessThanOrEqual(0);
      await page.getByRole('button', { name: 'back to the views' }).click();
      await page.locator('.large.view').waitFor();
      await close();
    });
  }
});
