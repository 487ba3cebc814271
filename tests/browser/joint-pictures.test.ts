import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import { JOINT_WORDS } from '../../src/data/words/cord.ts';
import type { JointKind, Project } from '../../src/engine/project/model.ts';
import { EXAMPLES, exampleText, soundProject, type Example } from '../support/files.ts';
import { HARDWARE } from '../ui/joint/hardware.ts';
import { closeBrowser } from './support/browser.ts';
import { linkNames, openLink } from './support/cord.ts';
import { openFile } from './support/files.ts';
import { DESK, PHONE, figuresShown, openDemo, saved } from './support/workbench.ts';

afterAll(closeBrowser);

/** An example whose joints have invented hardware; ties keep what the example gives them. */
function fastened(name: Example): Project {
  const project = soundProject(exampleText(name));
  const kinds = Object.keys(JOINT_WORDS) as JointKind[];
  const given = project.joints.defaults.filter(({ kind }) => kind === 'tiePost');
  const others = kinds.filter((kind) => kind !== 'tiePost');
  const defaults = [...given, ...others.map((kind) => ({ kind, capacity: HARDWARE[kind] }))];
  return { ...project, title: { ...project.title, id: `${name}-joints` }, joints: { defaults, own: [] } };
}

interface SeenPicture {
  readonly name: string;
  readonly faults: readonly string[];
}

/** Every picture of a joint in the open link as the browser sets it: its words readable, on the paper, clear of each other. */
const picturesOf = (page: Page): Promise<readonly SeenPicture[]> =>
  page.locator('.joint-picture svg[role="img"]').evaluateAll((pictures) =>
    pictures.map((svg) => {
      const sheet = svg.getBoundingClientRect();
      const words = [...svg.querySelectorAll('text')].map((each) => ({
        text: each.textContent,
        size: parseFloat(getComputedStyle(each).fontSize),
        box: each.getBoundingClientRect(),
      }));
      const faults = words.flatMap(({ text, size, box }, i) => [
        ...(size * (sheet.width / Number(svg.getAttribute('viewBox')?.split(' ')[2])) < 11
          ? [`${text} is too small`]
          : []),
        ...(box.left < sheet.left - 1 || box.right > sheet.right + 1 || box.top < sheet.top - 4
          ? [`${text} is cut off`]
          : []),
        ...words
          .slice(i + 1)
          .filter(
            (other) =>
              Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left) > 2 &&
              Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top) > 5,
          )
          .map((other) => `${text} lies on ${other.text}`),
      ]);
      return { name: svg.querySelector('title')?.textContent ?? '', faults };
    }),
  );

async function everyPicture(page: Page): Promise<readonly SeenPicture[]> {
  const seen: SeenPicture[] = [];
  for (const name of await linkNames(page)) {
    await openLink(page, name);
    await page.evaluate(() =>
      document.querySelectorAll('.link.open details').forEach((each) => each.setAttribute('open', '')),
    );
    // late parts say that they are opening until they are there
    await page.waitForFunction(() => {
      const isOpening = [...document.querySelectorAll('.link.open .quiet')].some((p) => p.textContent === 'opening');
      const places = [...document.querySelectorAll('.joint-picture')];
      return !isOpening && places.every((place) => place.querySelectorAll('svg').length === 2);
    });
    seen.push(...(await picturesOf(page)));
  }
  return seen;
}

const screens = [
  ...EXAMPLES.map((name) => ({ name, on: 'a phone in the dark', options: { ...PHONE, colorScheme: 'dark' as const } })),
  { name: EXAMPLES[0], on: 'a desk', options: { ...DESK, colorScheme: 'light' as const } },
];

describe('the pictures of joints in the cord', () => {
  it.each(screens)('can be read, every one of $name on $on', async ({ name, options }) => {
    const { page, complaints, close } = await openDemo(options);
    const project = fastened(name);
    await openFile(page, `${name}.shelter.json`, JSON.stringify(project));
    await figuresShown(page);
    await saved(page);
    const pictures = await everyPicture(page);
    expect(pictures.length).toBeGreaterThan(8);
    expect(pictures.filter(({ faults }) => faults.length > 0)).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });
});
