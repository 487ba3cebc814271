// @vitest-environment jsdom
import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Project } from '../../../src/engine/project/model.ts';
import { raisingStages } from '../../../src/engine/stages/raising-stages.ts';
import { bringTheRest, closeFrame, exampleProject, linkHead, openFrame, pretendBrowser } from '../frame/page.tsx';

beforeAll(bringTheRest);
beforeEach(() => pretendBrowser());
afterEach(closeFrame);

type Way = 'along' | 'across';

/** The demo before anybody has said what holds it across: every stage needs temporary braces that way. */
function unheldAcross(): Project {
  const demo = exampleProject('firewood-shed');
  return { ...demo, lateral: { ...demo.lateral, across: [{ by: null }] } };
}

async function openRaising(way: Way, project?: Project): Promise<ReturnType<typeof userEvent.setup>> {
  const user = userEvent.setup();
  openFrame(project);
  await user.click(linkHead(new RegExp(`^sway ${way}`)));
  await user.click(screen.getByText('While it is being raised'));
  return user;
}

const listed = async (way: Way): Promise<readonly HTMLElement[]> =>
  within(await screen.findByRole('list', { name: `Stages of raising, ${way}` }))
    .getAllByRole('listitem')
    .filter((item) => item.querySelector('h4'));

/** Force of the hardest brace at each stage as it must read; none where the stage holds itself. */
function forcesOf(project: Project, way: Way, angleDeg: number): readonly (string | null)[] {
  const answer = raisingStages(project, angleDeg);
  if (!answer.ok) throw new Error('figures expected');
  return answer.stages.map(({ ways }) => {
    const hardest = ways?.[way].braced[0];
    return hardest ? `${Math.ceil(hardest.braceLb).toLocaleString('en-US')} lb` : null;
  });
}

const forceIn = (item: HTMLElement): string | null =>
  within(item).queryByRole('button', { name: /steps of the brace/ })?.firstChild?.textContent ?? null;

describe('while it is being raised', () => {
  it('lists every stage with the force that each temporary brace must hold, rounded up', async () => {
    await openRaising('across', unheldAcross());
    const items = await listed('across');
    expect(items.map((item) => item.querySelector('h4')?.textContent)).toEqual([
      'Posts alone',
      'Posts and beams',
      'Braces on',
      'Rafters on',
      'Roof on',
    ]);
    const expected = forcesOf(unheldAcross(), 'across', 45);
    expect(items.map(forceIn)).toEqual(expected);
    for (const [i, item] of items.entries())
      expect(item.textContent).toMatch(
        new RegExp(`Overnight: may be left if braced so.* across at least ${expected[i]}`),
      );
  });

  it('says along the lines from when on the knee braces hold it by themselves', async () => {
    await openRaising('along');
    const items = await listed('along');
    expect(items.map((item) => item.textContent?.includes('holds itself'))).toEqual([false, false, true, true, true]);
    expect(items[2]?.textContent).toContain('By the figures line A and line B are held by knee braces.');
  });

  it('says why knee braces do not count, and asks for temporary ones', async () => {
    await openRaising('along', exampleProject('undersized-shed'));
    const items = await listed('along');
    expect(items[2]?.textContent).toMatch(/Knee braces on line A and line B: not counted\. At this stage a check/);
    expect(forceIn(items[2]!)).not.toBeNull();
  });

  it('follows the angle that is chosen', async () => {
    const user = await openRaising('across');
    await listed('across');
    await user.selectOptions(
      screen.getByRole('combobox', { name: 'Angle of the temporary braces with the ground' }),
      '60°',
    );
    const items = await listed('across');
    expect(items.map(forceIn)).toEqual(forcesOf(exampleProject('firewood-shed'), 'across', 60));
  });

  it('opens a force into its steps, and closes them', async () => {
    const user = await openRaising('across', unheldAcross());
    await listed('across');
    const force = screen.getByRole('button', { name: /steps of the brace, Roof on/ });
    await user.click(force);
    const steps = screen.getByRole('region', { name: 'Steps of the brace, Roof on' });
    expect(within(steps).getByText(/one of two temporary braces counts/)).toBeTruthy();
    expect(within(steps).getByText(/Design Loads on Structures during Construction.*not compared/)).toBeTruthy();
    await user.click(within(steps).getByRole('button', { name: 'close the steps' }));
    expect(screen.queryByRole('region', { name: 'Steps of the brace, Roof on' })).toBeNull();
  });

  it('says what is missing while the wind is not given', async () => {
    const demo = exampleProject('firewood-shed');
    const calm = { ...demo, site: { ...demo.site, windMph: { ...demo.site.windMph, value: null } } };
    await openRaising('across', calm);
    expect(await screen.findByText(/The design wind speed is not given/, { selector: '.folding-body p' })).toBeTruthy();
  });

  it('never says that anything is safe', async () => {
    await openRaising('across');
    await listed('across');
    expect(document.querySelector('.folding-body')?.textContent).not.toMatch(/\bsafe/i);
  });
});
