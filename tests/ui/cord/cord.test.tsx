// @vitest-environment jsdom
import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { pacedShelter } from '../../../src/engine/project/templates/paced.ts';
import { acts, present } from '../../../src/ui/state/use-workbench.ts';
import { valueAt } from '../../../src/ui/state/value-at.ts';
import {
  bringTheRest,
  closeFrame,
  exampleProject,
  linkHead as head,
  openFrame,
  pretendBrowser,
  smallShelter,
} from '../frame/page.tsx';
import { countedIds } from '../../support/ids.ts';

const field = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });
const at = (path: string): unknown => {
  const { project } = present();
  return project ? valueAt(project, path) : undefined;
};
/** The row of the open link's table whose head begins so. */
const row = (name: RegExp): HTMLElement => {
  const found = screen.getByRole('rowheader', { name }).closest('tr');
  if (!found) throw new Error('a row head stands in a row');
  return found;
};
const ratioIn = (name: RegExp): string | null =>
  within(row(name)).getByRole('button', { name: /steps of/ }).firstChild?.textContent ?? null;

beforeAll(bringTheRest);
beforeEach(() => pretendBrowser());
afterEach(closeFrame);

describe('the cord', () => {
  it('names every link from roof to ground with its word, and counts the checks', () => {
    openFrame();
    const names = screen.getAllByRole('listitem').map((item) => item.textContent ?? '');
    const order = ['site', 'sheet', 'purlin', 'rafter', 'strip', 'beam A', 'beam B', 'brace', 'post', 'pier'];
    expect(names.slice(0, order.length).map((text, i) => text.startsWith(order[i] ?? '?'))).toEqual(
      order.map(() => true),
    );
    expect(names.slice(order.length).map((text) => text.slice(0, 10))).toEqual(['sway along', 'sway acros']);
    const { counts, checks } = present().evaluation!;
    expect(screen.getAllByRole('status')[0]?.textContent).toBe(
      `${checks.length} checks: ${counts.pass} pass, ${counts.fail} fail, ${counts.notGiven} not given, ${counts.outside} outside the method.`,
    );
    expect(head(/^purlin/).textContent).toMatch(/passes, .+ of room\d\.\d\d$/);
    expect(head(/^beam A/).textContent).toMatch(/passes.*\d\.\d\d$/);
    expect(head(/^sway across/).textContent).toMatch(/passes.*\d\.\d\d$/);
  });

  it('says fails where a check fails, with what is missing', () => {
    openFrame(exampleProject('undersized-shed'));
    expect(head(/^beam A/).textContent).toMatch(/fails \d+.* missing/);
  });

  it('has a ledger only where there is one', () => {
    openFrame(exampleProject('lean-to'));
    expect(head(/^ledger/)).toBeTruthy();
    expect(head(/^site/).textContent).toContain('not given');
  });

  it('is walked with the arrow keys, and opened in place', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    head(/^site/).focus();
    await user.keyboard('{ArrowDown}{ArrowDown}');
    expect(document.activeElement).toBe(head(/^purlin/));
    await user.keyboard('{End}');
    expect(document.activeElement).toBe(head(/^sway across/));
    await user.keyboard('{Home}{ArrowUp}');
    expect(document.activeElement).toBe(head(/^site/));
    await user.keyboard('{ArrowDown}{ArrowDown}{Enter}');
    expect(head(/^purlin/).getAttribute('aria-expanded')).toBe('true');
    expect(screen.getByText('What comes down on it')).toBeTruthy();
    await user.keyboard('{ArrowDown}');
    expect(document.activeElement).toBe(head(/^rafter/));
  });
});

describe('a link', () => {
  it('shows another ratio at each key that changes a diameter', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    await user.click(head(/^beam B/));
    const before = Number(ratioIn(/^Bending/));
    await user.click(field('beam B: diameter at the butt'));
    await user.keyboard('11 in');
    expect(at('logs[log-2].stations[0].diameterIn')).toBe(11);
    expect(Number(ratioIn(/^Bending/))).toBeGreaterThan(before);
  });

  it('keeps the figures of the last valid entry while one cannot be used, and says so', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    await user.click(head(/^beam B/));
    const before = head(/^beam B/).textContent;
    await user.click(field('beam B: diameter at the butt'));
    await user.keyboard('twelve');
    expect(at('logs[log-2].stations[0].diameterIn')).toBe(13.25);
    expect(head(/^beam B/).textContent).toBe(before);
    expect(screen.getAllByText(/from your last valid entry/i)).toHaveLength(2);
    expect(field('beam B: diameter at the butt').getAttribute('aria-invalid')).toBe('true');
    await user.keyboard('{Escape}');
    expect(screen.queryAllByText(/from your last valid entry/i)).toHaveLength(0);
  });

  it('opens a ratio into its steps and gives the focus back when they are closed', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    await user.click(head(/^beam A/));
    const ratio = within(row(/^Bending/)).getByRole('button', { name: /steps of/ });
    await user.click(ratio);
    const steps = screen.getByRole('region', { name: 'Steps of Bending' });
    expect(within(steps).getAllByText(/bending stress/).length).toBeGreaterThan(0);
    expect(within(steps).getAllByText(/National Design Specification/).length).toBeGreaterThan(0);
    const close = within(steps).getByRole('button', { name: 'close the steps' });
    close.focus();
    await user.keyboard('{Escape}');
    expect(screen.queryByRole('region', { name: 'Steps of Bending' })).toBeNull();
    expect(document.activeElement).toBe(ratio);
    await user.keyboard('{Enter}');
    await user.click(screen.getByRole('button', { name: 'close the steps' }));
    expect(document.activeElement).toBe(ratio);
  });

  it('shows a force that comes from the frame by its value and its words, not as a formula of itself', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    await user.click(head(/^pier/));
    await user.click(within(row(/^Bearing|^Soil/)).getByRole('button', { name: /steps of/ }));
    const formulas = [...document.querySelectorAll('.step-formula')].map((each) => each.textContent ?? '');
    expect(formulas.some((each) => /^N = [\d,.]+ lb from the frame analysis/.test(each))).toBe(true);
    expect(formulas.filter((each) => /^(\S+) = \1 =/.test(each))).toEqual([]);
  });

  it('says why a check has no figure, by name', async () => {
    const user = userEvent.setup();
    openFrame(exampleProject('framed-shed'));
    await user.click(head(/^sheet/));
    expect(screen.getByText(/The rated span of the covering is not given/)).toBeTruthy();
    expect(document.querySelector('.gives')?.textContent).not.toMatch(/plane-1/);
  });

  it('tells how many pieces a group value changes, and lets one be different', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    await user.click(head(/^brace/));
    await user.click(screen.getByRole('radio', { name: 'A1+' }));
    const [ofLegs] = screen.getAllByRole('button', { name: 'only this one' });
    expect(ofLegs?.parentElement?.textContent).toContain('3 braces');
    await user.click(ofLegs!);
    await user.click(field('brace A1+: run along the beam'));
    await user.keyboard('26 in');
    await user.tab();
    expect(at('members[brace-1].own.runIn')).toBe(26);
    expect(at('groups[braces].runIn')).toBe(30);
    await user.click(screen.getByRole('button', { name: 'as the others' }));
    expect(at('members[brace-1].own')).toBeUndefined();
  });

  it('gives one post a log of its own, the others keep theirs', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    await user.click(head(/^post/));
    await user.click(screen.getByRole('radio', { name: 'B1' }));
    await user.click(screen.getByRole('button', { name: 'only this one' }));
    await user.click(field('post B1: diameter at the butt'));
    await user.keyboard('11 in');
    expect(at('logs[size-post].stations[0].diameterIn')).toBe(10.5);
    const logId = String(at('members[post-3].own.stock.logId'));
    expect(at(`logs[${logId}].stations[0].diameterIn`)).toBe(11);
  });

  it('takes a rating for every joint of a kind', async () => {
    const user = userEvent.setup();
    openFrame(exampleProject('framed-shed'));
    await user.click(head(/^sheet/));
    expect(within(row(/^Sheet screws, pull/)).getByText(/not given/)).toBeTruthy();
    await user.selectOptions(
      screen.getByRole('combobox', { name: 'Every joint sheet to purlin: what it can carry' }),
      'is rated',
    );
    await user.click(field('Every joint sheet to purlin: rated pull'));
    await user.keyboard('200 lb');
    expect(at('joints.defaults[sheetPurlin].capacity.parts.pullLb')).toBe(200);
    expect(within(row(/^Sheet screws, pull/)).getByText(/passes/)).toBeTruthy();
  });

  it('respaces the rafters when the spacing is entered, and refuses what cannot be', async () => {
    const user = userEvent.setup();
    openFrame();
    await user.click(head(/^rafter/));
    const spacing = field('Spacing of the rafters');
    await user.click(spacing);
    await user.keyboard('18 in{Enter}');
    expect(present().project?.members.filter(({ role }) => role === 'rafter')).toHaveLength(13);
    await user.keyboard('1/16 in{Enter}');
    expect(spacing.getAttribute('aria-invalid')).toBe('true');
    expect(present().project?.members.filter(({ role }) => role === 'rafter')).toHaveLength(13);
  });

  it('takes back a touched value of a new shelter from what is not yet yours', () => {
    const project = exampleProject('firewood-shed');
    openFrame({ ...project, notYetYours: ['roofPlanes[plane-1].risePer12'] });
    expect(screen.getByText(/1 values are not yet yours/)).toBeTruthy();
    acts().typeInto({ path: 'roofPlanes[plane-1].risePer12', text: '4 in 12' });
    expect(present().project?.notYetYours).toEqual([]);
  });
});

describe('a shelter paced out', () => {
  it('says what of the site to fill in first, how many rows wait for it, and leads to its field', async () => {
    const user = userEvent.setup();
    openFrame(pacedShelter({ form: 'shed', postsApartIn: 144, linesApartIn: 96, dripPastIn: 18 }, countedIds()));
    const first = screen.getByRole('region', { name: 'What to fill in first' });
    const waiting = present().evaluation!.checks.filter(({ reason }) => reason?.code === 'missingGroundSnow').length;
    expect(waiting).toBeGreaterThan(20);
    const [most] = within(first).getAllByRole('listitem');
    expect(most?.textContent).toBe(`Ground snow${waiting} rows wait`);
    await user.click(within(first).getByRole('button', { name: 'The wind speed' }));
    expect(document.activeElement).toBe(field('Wind speed, 3-second gust'));
  });

  it('is silent where the site is given', () => {
    openFrame();
    expect(screen.queryByRole('region', { name: 'What to fill in first' })).toBeNull();
  });
});

describe('a log that is thicker away from its butt', () => {
  it('is asked about where it was typed, and taken as it was measured', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    await user.click(head(/^beam A/));
    const question = /thicker here than nearer the butt: measured right/;
    expect(screen.queryByText(question)).toBeNull();
    await user.click(field('beam A: diameter at the tip'));
    await user.keyboard('16 in');
    expect(screen.getAllByText(question)).toHaveLength(1);
    expect(present().stale).toBe(false);
  });
});
