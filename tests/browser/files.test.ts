import { afterAll, describe, expect, it } from 'vitest';
import { setAt } from '../../src/engine/project/edits/set-at.ts';
import { fingerprint } from '../../src/engine/project/fingerprint.ts';
import { exampleText, soundProject } from '../support/files.ts';
import { closeBrowser } from './support/browser.ts';
import { field, openLink, type } from './support/cord.ts';
import { keptProject, readDevice } from './support/device.ts';
import { eventually } from './support/eventually.ts';
import { countsToShow, demo, figuresOf } from './support/figures.ts';
import { dropFile, openFile, saveToFile } from './support/files.ts';
import { openDemo } from './support/workbench.ts';

afterAll(closeBrowser);

const NAME = 'Name of the project';

describe('a project saved to a file', () => {
  it('parses, has the same fingerprint, and opens again in another profile with the same figures', async () => {
    const { page, close } = await openDemo();
    await openLink(page, 'beam A');
    await type(page, 'beam A: diameter at the tip', '10 1/8');
    const { name, text } = await saveToFile(page);
    const expected = setAt(demo(), 'logs[log-1].stations[2].diameterIn', 10.125);
    expect(name).toBe('firewood-and-tools.shelter.json');
    expect(soundProject(text)).toEqual(expected);
    expect(fingerprint(soundProject(text))).toBe(fingerprint(expected));
    await close();

    const other = await openDemo();
    await openFile(other.page, name, text);
    await eventually(() => other.page.locator('.cord .counts').innerText()).toBe(countsToShow(figuresOf(expected)));
    expect((await keptProject(other.page)).project).toEqual(expected);
    expect((await saveToFile(other.page)).text).toBe(text);
    // the demo that it displaced was only looked at; it stays on the device under a name of its own
    expect(
      Object.values(await readDevice(other.page))
        .map((each) => each.name)
        .toSorted(),
    ).toEqual(['Firewood and tools', 'Firewood and tools (earlier)']);
    expect(other.complaints).toEqual([]);
    await other.close();
  });

  it('opens when it is dropped on the page', async () => {
    const { page, complaints, close } = await openDemo();
    const leanTo = soundProject(exampleText('lean-to'));
    await dropFile(page, 'lean-to.shelter.json', exampleText('lean-to'));
    await eventually(() => field(page, NAME).inputValue()).toBe(leanTo.title.name);
    await eventually(() => page.locator('.cord .counts').innerText()).toBe(countsToShow(figuresOf(leanTo)));
    expect(complaints).toEqual([]);
    await close();
  });
});

const BAD = [
  { name: 'cut-off.json', text: exampleText('lean-to').slice(0, 900), says: /cut off/ },
  { name: 'no-project.json', text: 'beams: two, posts: four', says: /not a shelter project/ },
  {
    name: 'version-99.json',
    text: exampleText('lean-to').replace(/"formatVersion": \d+/, '"formatVersion": 99'),
    says: /formatVersion 99/,
  },
  {
    name: 'minus-four.json',
    text: exampleText('lean-to').replace(/"diameterIn": [\d.]+/, '"diameterIn": -4'),
    says: /logs\[.*\]\.stations\[.*\]\.diameterIn/,
  },
] as const;

describe('a file that cannot be opened', () => {
  it('is refused with its reason, and nothing is lost: cut off, no project, unknown version, impossible field', async () => {
    const { page, complaints, close } = await openDemo();
    await type(page, NAME, 'Mine, not lost');
    await page.keyboard.press('Enter');
    const mine = setAt(demo(), 'title.name', 'Mine, not lost');
    for (const { name, text, says } of BAD) {
      await openFile(page, name, text);
      const dialog = page.getByRole('dialog', { name: `${name} was not opened` });
      await dialog.waitFor();
      const reasons = await dialog.locator('.faults li').allInnerTexts();
      expect(reasons.join('\n')).toMatch(says);
      for (const reason of reasons) expect(reason.length).toBeGreaterThan(20);

      await dialog.getByRole('button', { name: 'go back' }).click();
      await dialog.waitFor({ state: 'detached' });
      expect(await field(page, NAME).inputValue()).toBe('Mine, not lost');
      expect((await keptProject(page)).project).toEqual(mine);
      expect(Object.keys(await readDevice(page))).toEqual(['firewood-shed']);
    }
    expect(complaints).toEqual([]);
    await close();
  });
});
