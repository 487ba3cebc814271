import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { afterAll, describe, expect, it } from 'vitest';
import { raisingStages } from '../../src/engine/stages/raising-stages.ts';
import { closeBrowser } from './support/browser.ts';
import { openLink } from './support/cord.ts';
import { eventually } from './support/eventually.ts';
import { demo } from './support/figures.ts';
import { DESK, openDemo, PHONE } from './support/workbench.ts';

afterAll(closeBrowser);

/** By the whole engine in Node: what the page, whose first engine tells no steps, must show as well. */
function forcesToShow(angleDeg: number): readonly string[] {
  const answer = raisingStages(demo(), angleDeg);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.stages.flatMap(({ ways }) => {
    const hardest = ways?.across.braced[0];
    return hardest ? [`${Math.ceil(hardest.braceLb).toLocaleString('en-US')} lb`] : [];
  });
}

const forces = (page: Page): Promise<string[]> =>
  page
    .locator('.raising-force .opens')
    .evaluateAll((buttons) => buttons.map((button) => button.firstChild?.textContent ?? ''));

const poundsIn = (text: string): number => Number(/[\d,]+(?= lb)/.exec(text)?.[0].replaceAll(',', ''));

describe('while it is being raised', () => {
  it.each([
    ['on a desk', DESK],
    ['on a telephone', PHONE],
  ])('%s: each stage shows its force, opens into steps, fits and is accessible', async (_, options) => {
    const { page, complaints, close } = await openDemo(options);
    await openLink(page, 'sway across');
    await page.getByText('While it is being raised').click();
    await page.locator('.raising-stages').waitFor();
    expect(await forces(page)).toEqual(forcesToShow(45));

    await page.getByRole('combobox', { name: 'Angle of the temporary braces with the ground' }).selectOption('60');
    await eventually(() => forces(page)).toEqual(forcesToShow(60));

    // with the roof on, the frames across of the demo hold: the rafters are the last that ask for temporary braces
    await page.getByRole('button', { name: /steps of the brace, Rafters on/ }).click();
    const steps = page.getByRole('region', { name: 'Steps of the brace, Rafters on' });
    // the force of the step is the one of the list, which is rounded up
    const told = (await steps.locator('.step-formula', { hasText: 'M / (h cos α)' }).textContent()) ?? '';
    const listed = (await forces(page)).at(-1) ?? '';
    expect(poundsIn(listed) - poundsIn(told.split('=').at(-1) ?? '')).toBeOneOf([0, 1]);
    const overhang = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overhang).toBeLessThanOrEqual(0);

    const { violations } = await new AxeBuilder({ page }).include('.link.open').analyze();
    expect(violations.filter(({ impact }) => impact === 'serious' || impact === 'critical')).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });
});
