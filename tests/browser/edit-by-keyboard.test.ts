import { afterAll, describe, expect, it } from 'vitest';
import { setAt } from '../../src/engine/project/edits/set-at.ts';
import type { Project } from '../../src/engine/project/model.ts';
import { closeBrowser } from './support/browser.ts';
import { field, openLink, rowsOfOpenLink, type } from './support/cord.ts';
import { keptProject } from './support/device.ts';
import { eventually } from './support/eventually.ts';
import { countsToShow, demo, figuresOf, ratiosToShow } from './support/figures.ts';
import { openDemo } from './support/workbench.ts';

afterAll(closeBrowser);

/** The rows of a link whose ratio a change moves, and what they must read after it. */
function moved(before: Project, after: Project, ruleStart: string, memberId?: string): ReadonlyMap<string, string> {
  const old = ratiosToShow(figuresOf(before));
  const rows = [...ratiosToShow(figuresOf(after))].filter(
    ([key, ratio]) =>
      key.startsWith(ruleStart) && (memberId === undefined || key.split('/')[1] === memberId) && old.get(key) !== ratio,
  );
  return new Map(rows);
}

interface Edit {
  readonly words: string;
  readonly link: string;
  /** which of several alike pieces */
  readonly piece?: string;
  readonly label: string;
  readonly text: string;
  /** the field of the project that the label stands for, and what the text says in the stored unit */
  readonly path: string;
  readonly stored: number;
  /** the link whose rows are compared, and how its rules begin */
  readonly look: string;
  readonly rules: string;
  /** whose rows they are, where the link shows one member of several */
  readonly memberId?: string;
}

const EDITS: readonly Edit[] = [
  {
    words: "the beam log's diameter at the butt",
    link: 'beam A',
    label: 'beam A: diameter at the butt',
    text: '10 1/2 in',
    path: 'logs[log-1].stations[0].diameterIn',
    stored: 10.5,
    look: 'beam A',
    rules: 'beam.',
    memberId: 'beam-high',
  },
  {
    words: 'the ground snow',
    link: 'site',
    label: 'Ground snow',
    text: '90',
    path: 'site.groundSnowPsf.value',
    stored: 90,
    look: 'rafter',
    rules: 'rafter.',
  },
  {
    words: 'the run of the knee braces',
    link: 'brace',
    piece: 'A1+',
    label: 'brace A1+: run along the beam',
    text: '3 ft 2 in',
    path: 'groups[braces].runIn',
    stored: 38,
    look: 'brace',
    rules: 'brace.',
  },
];

/** The demo with a value typed in; one of the site is a guess until somebody is said to have given it. */
function asTyped(path: string, stored: number): Project {
  const after = setAt(demo(), path, stored);
  if (!path.endsWith('.value')) return after;
  const given = path.slice(0, -'.value'.length);
  return setAt(setAt(after, `${given}.givenBy`, 'guess'), `${given}.date`, null);
}

describe('a value typed where it stands', () => {
  for (const { words, link, piece, label, text, path, stored, look, rules, memberId } of EDITS) {
    it(`changes the ratios at once, before Enter: ${words}`, async () => {
      const { page, complaints, close } = await openDemo();
      const after = asTyped(path, stored);
      const expected = moved(demo(), after, rules, memberId);
      expect(expected.size).toBeGreaterThan(0);

      await openLink(page, link);
      if (piece !== undefined) await page.locator('.link-body .chooser label').getByText(piece).click();
      await type(page, label, text);
      expect(await field(page, label).evaluate((box) => box === document.activeElement)).toBe(true);
      await eventually(() => page.locator('.cord .counts').innerText()).toBe(countsToShow(figuresOf(after)));
      await openLink(page, look);
      const shown = await rowsOfOpenLink(page);
      expect(Object.fromEntries([...expected.keys()].map((key) => [key, shown.get(key)]))).toEqual(
        Object.fromEntries(expected),
      );
      expect((await keptProject(page)).project).toEqual(after);
      expect(complaints).toEqual([]);
      await close();
    });
  }

  it('follows at each key: the ratio of the worst beam row belongs to what is typed so far', async () => {
    const { page, close } = await openDemo();
    const path = 'logs[log-1].stations[0].diameterIn';
    const [bending] = [...moved(demo(), setAt(demo(), path, 7), 'beam.bending/beam-high/')][0] ?? [];
    if (bending === undefined) throw new Error('no row of bending moves');
    await openLink(page, 'beam A');
    await rowsOfOpenLink(page);
    const ratio = page.locator(`.gives tr[data-check="${bending}"] .ratio`);
    await field(page, 'beam A: diameter at the butt').focus();
    await page.keyboard.press('Control+a');
    for (const [key, stored] of [
      ['1', null],
      ['3', 13],
      ['.', 13],
      ['2', 13.2],
    ] as const) {
      await page.keyboard.press(key);
      if (stored === null) continue; // a log of 1 in: whatever is said of it, the next key mends it
      const expected = ratiosToShow(figuresOf(setAt(demo(), path, stored))).get(bending) ?? '';
      await eventually(async () => (await ratio.innerText()).slice(0, 4)).toBe(expected);
    }
    expect(await field(page, 'beam A: diameter at the butt').inputValue()).toBe('13.2');
    await close();
  });

  it('typed in metric and back in feet changes no stored number', async () => {
    const { page, close } = await openDemo();
    const before = await keptProject(page);
    await openLink(page, 'beam A');
    const butt = field(page, 'beam A: diameter at the butt');
    expect(await butt.inputValue()).toBe('13 1/2 in');

    await page.getByText('metres, kilonewtons').click({ force: true });
    await eventually(() => butt.inputValue()).toBe('343 mm');
    // walked through and left as it reads: 343 mm is the rounded text of 13 1/2 in, and must not be written back
    await butt.focus();
    await page.keyboard.press('Tab');
    await type(page, 'beam A: diameter at the butt', '350');
    await type(page, 'beam A: diameter at the butt', '343 mm');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Tab');
    await page.getByText('feet and inches, pounds').click({ force: true });
    await eventually(() => butt.inputValue()).toBe('13 1/2 in');
    expect((await keptProject(page)).project).toEqual(before.project);
    await close();
  });

  it('reads metric exactly: 350 mm is 350 / 25.4 in', async () => {
    const { page, close } = await openDemo();
    await openLink(page, 'beam A');
    await type(page, 'beam A: diameter at the butt', '350 mm');
    await page.keyboard.press('Enter');
    const { project } = await keptProject(page);
    expect(project).toEqual(setAt(demo(), 'logs[log-1].stations[0].diameterIn', 350 / 25.4));
    await close();
  });
});
