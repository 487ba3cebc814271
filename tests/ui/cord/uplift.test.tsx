// @vitest-environment jsdom
import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Project } from '../../../src/engine/project/model.ts';
import { upliftOf } from '../../../src/engine/uplift.ts';
import { present } from '../../../src/ui/state/use-workbench.ts';
import { roundedUp } from '../../browser/support/figures.ts';
import { bringTheRest, closeFrame, exampleProject, linkHead, openFrame, pretendBrowser } from '../frame/page.tsx';

beforeAll(bringTheRest);
beforeEach(() => pretendBrowser());
afterEach(closeFrame);

async function openChain(link: RegExp, label: string, project?: Project): Promise<HTMLElement> {
  const user = userEvent.setup();
  openFrame(project);
  await user.click(linkHead(link));
  await user.click(screen.getByRole('radio', { name: label }));
  await user.click(screen.getByText(`What holds ${label} down, link by link`));
  return screen.getByRole('table', { name: new RegExp(`^What lifts ${label} and what holds it`) });
}

describe('what holds a post down', () => {
  it.each([/^post/, /^pier/])('is told link by link from the sheet to the soil, under %s', async (link) => {
    const table = await openChain(link, 'B1');
    const { project, evaluation } = present();
    const chain = upliftOf(project!, evaluation!).find(({ label }) => label === 'B1')!;
    const lines = within(table).getAllByRole('row').slice(1);
    expect(lines).toHaveLength(chain.links.length);
    expect(lines.map((line) => line.textContent?.includes('weakest'))).toEqual(
      chain.links.map((_, i) => i === chain.weakest),
    );
    for (const [i, { row, addedLb }] of chain.links.entries()) {
      const text = lines[i]!.textContent;
      expect(text).toContain(roundedUp(row?.ratio ?? null));
      expect(text?.includes(`${Math.floor(addedLb)} lb more on it`)).toBe(addedLb >= 1);
    }
  });

  it('names the weakest link and what one change would raise it', async () => {
    const demo = exampleProject('firewood-shed');
    const defaults = demo.joints.defaults.filter(({ kind }) => kind !== 'sheetPurlin');
    await openChain(/^post/, 'A1', { ...demo, joints: { ...demo.joints, defaults } });
    expect(screen.getByText(/^Weakest over post A1: nobody has said what the sheet screws can carry/)).toBeTruthy();
  });
});
