import { afterAll, describe, expect, it } from 'vitest';
import { closeBrowser } from './support/browser.ts';
import { allRows, field, openLink, type } from './support/cord.ts';
import { keptProject } from './support/device.ts';
import { eventually } from './support/eventually.ts';
import { countsToShow, demo, figuresOf, ratiosToShow } from './support/figures.ts';
import { DESK, figuresShown, openDemo, PHONE, saved } from './support/workbench.ts';

afterAll(closeBrowser);

const BUTT = 'beam A: diameter at the butt';

describe('an entry that cannot be used', () => {
  it('is explained under its field without taking the focus, and the last valid figures stay, marked', async () => {
    const { page, complaints, close } = await openDemo();
    await openLink(page, 'beam A');
    const box = field(page, BUTT);
    for (const { text, says } of [
      { text: 'as thick as my leg', says: 'cannot be read' },
      { text: '6 1/', says: 'Write for example' },
      { text: '900 in', says: 'at most 60 in' },
    ]) {
      await type(page, BUTT, text);
      const noteId = (await box.getAttribute('aria-describedby'))?.split(' ').at(-1) ?? '';
      const note = page.locator(`output[id="${noteId}"]`);
      const said = (await note.textContent()) ?? '';
      expect(said.startsWith('Error: ')).toBe(true);
      expect(said).toContain(says);
      expect(await box.getAttribute('aria-invalid')).toBe('true');
      expect(await box.evaluate((each) => each === document.activeElement)).toBe(true);
      expect(await page.locator('.cord .counts').innerText()).toBe(
        `${countsToShow(figuresOf(demo()))} From your last valid entry.`,
      );
      expect(await page.locator('.large.view .stale').innerText()).toBe('from your last valid entry');
    }
    expect(await allRows(page)).toEqual(ratiosToShow(figuresOf(demo())));
    expect(complaints).toEqual([]);
    await close();
  });

  it('survives a reload, is named at the edge, keeps the sheet from the printer, and is mended or dropped', async () => {
    const { page, close } = await openDemo();
    await openLink(page, 'beam A');
    await type(page, BUTT, '900 in');
    await page.keyboard.press('Enter');
    await saved(page);

    await page.reload();
    await figuresShown(page);
    const notices = page.locator('.notices');
    await notices.getByText('Not in the figures:').waitFor();
    expect(await notices.innerText()).toContain(BUTT);
    expect((await keptProject(page)).project).toEqual(demo());
    await openLink(page, 'beam A');
    expect(await field(page, BUTT).inputValue()).toBe('900 in');
    expect(await field(page, BUTT).getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('.cord .counts .stale').count()).toBe(1);

    await page.getByRole('link', { name: 'Check sheet' }).click();
    await page.getByRole('button', { name: 'Print the check sheet' }).waitFor();
    expect(await page.locator('.print-refusal').innerText()).toContain(BUTT);
    await page.getByRole('link', { name: 'Frame' }).click();

    await notices.getByRole('button', { name: 'drop it' }).click();
    await openLink(page, 'beam A');
    await eventually(() => field(page, BUTT).inputValue()).toBe('13 1/2 in');
    expect(await page.locator('.stale').count()).toBe(0);
    await close();
  });

  it('pushes the sentence apart while it is typed and covers none of it', async () => {
    for (const screen of [DESK, PHONE]) {
      const { page, close } = await openDemo(screen);
      await openLink(page, 'beam A');
      await type(page, BUTT, 'as thick as my leg');
      const note = page.locator('.link-body .field-note.floats');
      await note.waitFor();
      const covered = await note.evaluate((each) => {
        const { left, right, top, bottom } = each.getBoundingClientRect();
        const below = document.createTreeWalker(document.querySelector('.link-body')!, NodeFilter.SHOW_TEXT);
        const words: string[] = [];
        while (below.nextNode()) {
          const range = document.createRange();
          range.selectNodeContents(below.currentNode);
          if (each.contains(below.currentNode) || below.currentNode.parentElement?.closest('.unseen, option')) continue;
          const isUnder = [...range.getClientRects()].some(
            (r) => r.left < right - 1 && r.right > left + 1 && r.top < bottom - 1 && r.bottom > top + 1,
          );
          if (isUnder) words.push(below.currentNode.textContent ?? '');
        }
        return words;
      });
      expect(covered).toEqual([]);
      await close();
    }
  });

  it('is the first thing that undo takes away, wherever the focus is', async () => {
    const { page, close } = await openDemo();
    await openLink(page, 'beam A');
    await type(page, BUTT, '14');
    await page.keyboard.press('Enter');
    await type(page, BUTT, '900 in');
    await page.keyboard.press('Enter');
    await page.locator('.link-head').first().focus();
    await page.keyboard.press('Control+z');
    expect(await field(page, BUTT).inputValue()).toBe('14 in');
    expect(await page.locator('.stale').count()).toBe(0);
    await page.keyboard.press('Control+z');
    expect(await field(page, BUTT).inputValue()).toBe('13 1/2 in');
    await close();
  });

  it('is taken back by Escape while it is being typed', async () => {
    const { page, close } = await openDemo();
    await openLink(page, 'beam A');
    await type(page, BUTT, '14');
    await type(page, BUTT, '900 in');
    await page.keyboard.press('Escape');
    expect(await field(page, BUTT).inputValue()).toBe('13 1/2 in');
    expect(await page.getByRole('button', { name: 'undo' }).isDisabled()).toBe(true);
    expect(await page.locator('.stale').count()).toBe(0);
    await close();
  });
});
