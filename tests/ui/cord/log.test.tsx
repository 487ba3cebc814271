// @vitest-environment jsdom
import { screen, within } from '@testing-library/react';
import userEvent, { type UserEvent } from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { CLEAR_WOOD } from '../../../src/data/wood/species.ts';
import { present } from '../../../src/ui/state/use-workbench.ts';
import { bringTheRest, closeFrame, linkHead as head, openFrame, pretendBrowser, smallShelter } from '../frame/page.tsx';

beforeAll(bringTheRest);
beforeEach(() => pretendBrowser());
afterEach(closeFrame);

async function openedBeam(): Promise<UserEvent> {
  const user = userEvent.setup();
  openFrame(smallShelter());
  await user.click(head(/^beam A/));
  return user;
}
/** One change, where typing would be one a key. */
async function paste(user: UserEvent, field: HTMLElement, text: string): Promise<void> {
  await user.click(field);
  await user.paste(text);
}
const choice = (name: string): HTMLElement => screen.getByRole('combobox', { name });

describe('the log of an open link', () => {
  it('offers every species of the table, by family', async () => {
    await openedBeam();
    const families = within(choice('beam A: species')).getAllByRole('group');
    expect(families.map((family) => family.getAttribute('label'))).toEqual([
      'cedars, redwoods, cypress',
      'Douglas-firs and larches',
      'firs and hemlocks',
      'hardwoods',
      'pines',
      'spruces',
    ]);
    expect(within(choice('beam A: species')).getAllByRole('option')).toHaveLength(CLEAR_WOOD.length);
  });

  it('gives pole values only when every item of the inspection is ticked, signed and dated', async () => {
    const user = await openedBeam();
    await user.selectOptions(choice('beam A: species'), 'red pine');
    await user.selectOptions(
      choice('beam A: where the strength of its wood comes from'),
      'read from the pole table after an inspection',
    );
    expect(screen.getAllByText(/Not ticked yet \(10\): sound tree, even taper/).length).toBeGreaterThan(0);
    for (const box of screen.getAllByRole('checkbox')) await user.click(box);
    expect(screen.getAllByText(/need the name of who inspected/).length).toBeGreaterThan(0);
    await paste(user, screen.getByRole('textbox', { name: 'beam A: who inspected the poles' }), 'A. Owner');
    await paste(user, screen.getByRole('textbox', { name: 'beam A: day of the inspection' }), '2026-05-02');
    await user.tab();
    const poles = present().evaluation!.logs.filter(({ values }) => values?.basis === 'poles');
    expect(poles.length).toBeGreaterThan(0);
    // NDS Supplement Table 6B (from memory): Red Pine 1350 psi
    expect(poles[0]?.values?.FbPsi).toBe(1350);
  });

  it('says what the error of measurement makes of its checks, and what wood it may lose', async () => {
    const user = await openedBeam();
    const error = screen.getByRole('textbox', { name: 'beam A: error of its diameters' });
    const ratios = (): readonly number[] => {
      const text = error.closest('p')?.textContent ?? '';
      return [...text.matchAll(/from (\d\.\d\d) to (\d\.\d\d)/g)].flatMap(([, from, to]) => [Number(from), Number(to)]);
    };
    await user.click(error);
    await user.keyboard('0 in');
    await user.tab();
    const [from, to] = ratios();
    expect(to).toBe(from);
    await user.click(error);
    await user.keyboard('1 in');
    await user.tab();
    expect(ratios()[0]).toBe(from);
    expect(ratios()[1]).toBeGreaterThan(from!);
    expect(error.closest('p')?.textContent).toMatch(/Peeling, shaping and decay may take [\d/ ]+ in off its diameter/);
  });

  it('says how its species stands decay and what drying takes', async () => {
    const user = await openedBeam();
    expect(screen.getByText(/heartwood resists decay moderately; the sapwood of no species does/)).toBeTruthy();
    await user.selectOptions(choice('beam A: species'), 'black locust');
    expect(screen.getByText(/resists decay exceptionally well.*Drying to 15 % takes about/)).toBeTruthy();
  });

  it('takes from a stamp whether wet service is in its values, and whether it grades poles', async () => {
    const user = await openedBeam();
    await user.selectOptions(
      choice('beam A: where the strength of its wood comes from'),
      'typed from a stamp or a letter',
    );
    expect(screen.getAllByText(/nobody is named who gave them/).length).toBeGreaterThan(0);
    await paste(user, screen.getByRole('textbox', { name: 'beam A: who gave the values' }), 'A. Grader');
    await user.selectOptions(choice('beam A: wet or dry values'), 'dry');
    const along = (): number =>
      present().evaluation!.logs.find(({ values }) => values?.basis === 'typed')!.values!.FcPsi;
    const dryValue = along();
    await user.selectOptions(choice('beam A: wet service in the values'), 'in them already');
    // wet timbers keep 0.91 along the grain (Merritt, Table 10.6)
    expect(dryValue / along()).toBeCloseTo(0.91, 9);
    await user.selectOptions(choice('beam A: how the logs are graded'), 'graded as poles or piles');
    expect(present().evaluation!.logs.find(({ values }) => values?.basis === 'typed')?.values?.cForColumns).toBe(0.85);
  });

  it('shows how knots, grain and checks are measured', async () => {
    await openedBeam();
    const shown = screen.getByText('How to measure girth, knots, grain and checks').closest('details');
    expect(shown?.querySelectorAll('figure')).toHaveLength(4);
  });

  it('tells its bow from how far it is out of straight, with a picture', async () => {
    await openedBeam();
    const shown = screen.getByText('Bow and out of straight: which is which').closest('details');
    expect(shown?.querySelectorAll('figure svg')).toHaveLength(1);
    expect(shown?.textContent).toMatch(/Bow \(crown\):.*Out of straight \(crook\):/);
  });

  it('lets go of how the species was told, and keeps a new sign and the own words beside it', async () => {
    const user = await openedBeam();
    const told = () => present().project!.logs.find(({ id }) => id === 'log-1')?.seen?.speciesToldBy;
    const words = () => screen.queryByRole('textbox', { name: 'beam A: its species told, in own words' });
    const by = 'beam A: by what its species was told';
    expect(told()?.sign).toBe('leavesOrNeedles');
    expect(choice(by).closest('p')?.textContent).toContain('. Species told by');
    await user.selectOptions(choice(by), 'not given');
    expect(words()).toBeNull();
    expect(present().project!.logs.find(({ id }) => id === 'log-1')?.seen).not.toHaveProperty('speciesToldBy');
    await user.selectOptions(choice(by), 'bark');
    expect(told()).toEqual({ sign: 'bark' });
    await paste(user, words()!, 'thick, in plates');
    await user.tab();
    await user.selectOptions(choice(by), 'the wood itself');
    expect(told()).toEqual({ sign: 'wood', inWords: 'thick, in plates' });
  });
});
