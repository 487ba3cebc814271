// @vitest-environment jsdom
import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { CheckRow } from '../../../src/engine/evaluation.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { proposeFor } from '../../../src/engine/propose.ts';
import { acts, present } from '../../../src/ui/state/use-workbench.ts';
import { valueAt } from '../../../src/ui/state/value-at.ts';
import { plainShed } from '../../support/plain-shed.ts';
import { roundedUp } from '../../browser/support/figures.ts';
import {
  bringTheRest,
  closeFrame,
  exampleProject,
  linkHead,
  openFrame,
  pretendBrowser,
  smallShelter,
} from '../frame/page.tsx';

const at = (path: string): unknown => valueAt(present().project!, path);
const choice = (name: string): HTMLElement => screen.getByRole('combobox', { name });
const field = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });
const rowOf = (key: string): CheckRow => {
  const found = present().evaluation!.checks.find((c) => c.key === key);
  if (!found) throw new Error(`no check ${key}`);
  return found;
};
const choose = (label: string, words: string): Promise<void> =>
  userEvent.setup().selectOptions(choice(label), within(choice(label)).getAllByRole('option', { name: words }));

/** Puts a text over what stands in a field, as a person does who clicks into it and pastes: one change, not one a key. */
async function type(label: string, text: string): Promise<void> {
  const user = userEvent.setup();
  await user.click(field(label));
  await user.paste(text);
  await user.keyboard('{Enter}');
}

/** A small shelter with nothing said of one kind of joint. */
function without(kind: string, shelter = smallShelter()): Project {
  return {
    ...shelter,
    joints: { ...shelter.joints, defaults: shelter.joints.defaults.filter((d) => d.kind !== kind) },
  };
}

const LOWER = 'Every joint lower end of a brace';
const LOWER_PATH = 'joints.defaults[bracePost].capacity';
/** The line of a joint's small table that begins so: asked, carries, ratio as they read. */
function asked(section: RegExp, direction: string): readonly string[] {
  const joint = screen.getByRole('region', { name: section });
  const line = within(joint).getByRole('rowheader', { name: direction }).closest('tr')!;
  return within(line)
    .getAllByRole('cell')
    .map((cell) => cell.textContent ?? '');
}

async function openBrace(project: Project, label = 'A1+'): Promise<void> {
  openFrame(project);
  const user = userEvent.setup();
  await user.click(linkHead(/^brace/));
  await user.click(screen.getByRole('radio', { name: label }));
}

beforeAll(bringTheRest);
beforeEach(() => pretendBrowser());
afterEach(closeFrame);

describe('fasteners of a joint', () => {
  it('are picked from the listed sizes, and what was not given becomes a ratio', async () => {
    await openBrace(without('bracePost'));
    await choose(`${LOWER}: what it can carry`, 'is held by fasteners');
    expect(at(LOWER_PATH)).toEqual({ kind: 'fasteners', rows: [], shoulder: false });
    expect(screen.getByText(/No fastener is written down yet/)).toBeTruthy();

    await choose(`${LOWER}: add fasteners`, 'lag screws');
    const [row] = at(`${LOWER_PATH}.rows`) as readonly unknown[];
    // a washer whole on a flat that leaves the brace aslant: 0.685 in., cut to the next sixteenth
    expect(row).toMatchObject({ fastener: 'lag', diameterIn: 0.5, count: 1, washerIn: 1.375, headFlatIn: 0.6875 });
    const { demand, capacity, ratio } = rowOf('brace.tie/brace-1/bracePost');
    expect(asked(/lower end of a brace of/, 'pulled apart')).toEqual([
      `${Math.round(demand!.value).toLocaleString('en-US')} lb`,
      `${Math.round(capacity!.value).toLocaleString('en-US')} lb`,
      expect.stringContaining(roundedUp(ratio)),
    ]);
  });

  it('change with every word of their sentence, typed sizes too, and are taken back', async () => {
    await openBrace(without('bracePost'));
    await choose(`${LOWER}: what it can carry`, 'is held by fasteners');
    await choose(`${LOWER}: add fasteners`, 'lag screws');
    const held = (): number => rowOf('brace.tie/brace-1/bracePost').capacity!.value;
    const before = held();
    await choose(`${LOWER}: thickness`, '5/8 in');
    await choose(`${LOWER}: washer`, 'a 5/8 in washer, 1 3/4 in across');
    expect(held()).toBeGreaterThan(before);
    await choose(`${LOWER}: length`, 'another size');
    await type(`${LOWER}: length, typed`, '8 1/2');
    expect(at(`${LOWER_PATH}.rows[0]`)).toMatchObject({ diameterIn: 0.625, washerIn: 1.75, lengthIn: 8.5 });
    for (let i = 0; i < 3; i++) acts().undo();
    expect(held()).toBe(before);
    await userEvent.setup().click(screen.getByRole('button', { name: 'take these away' }));
    expect(at(`${LOWER_PATH}.rows`)).toEqual([]);
  });

  it('of no listed size and too long are refused at the field, with the rule', async () => {
    await openBrace(without('bracePost'));
    await choose(`${LOWER}: what it can carry`, 'is held by fasteners');
    await choose(`${LOWER}: add fasteners`, 'lag screws');
    await choose(`${LOWER}: thickness`, 'another size');
    await type(`${LOWER}: thickness, typed`, '0.45');
    expect(screen.getByText(/No lag screw 0.45 in thick is listed/)).toBeTruthy();
    expect(field(`${LOWER}: thickness, typed`).getAttribute('aria-invalid')).toBe('true');
    expect(at(`${LOWER_PATH}.rows[0].diameterIn`)).toBe(0.5);
    acts().undo();
    await choose(`${LOWER}: length`, 'another size');
    await type(`${LOWER}: length, typed`, '40');
    expect(screen.getByText(/its tip would come out/)).toBeTruthy();
    expect(at(`${LOWER_PATH}.rows[0].lengthIn`)).not.toBe(40);
  });

  it('through straps have steel to describe and no washer', async () => {
    await openBrace(without('bracePost'));
    await choose(`${LOWER}: what it can carry`, 'is held by fasteners');
    await choose(`${LOWER}: add fasteners`, 'bolts');
    await choose(`${LOWER}: what they go through`, 'through straps on both sides');
    await type(`${LOWER}: thickness of the steel`, '0.1046');
    await type(`${LOWER}: width of the steel`, '3');
    // full end distance toward the end in softwood is 7 D: 4 3/8 in., set out in half inches (NDS 2018 Table 12.5.1A, from memory)
    expect(at(`${LOWER_PATH}.rows[0]`)).toMatchObject({
      plate: { steel: 'strap', each: 2, thicknessIn: 0.1046, widthIn: 3 },
      endIn: 4.5,
    });
    expect(at(`${LOWER_PATH}.rows[0].washerIn`)).toBeUndefined();
    expect(field(`${LOWER}: thickness of the steel`).value).toBe('0.1046 in');
  });

  it('are nails by their own name, of which only the strongest of unlike rows counts', async () => {
    openFrame(without('purlinRafter'));
    await userEvent.setup().click(linkHead(/^purlin/));
    const words = 'Every joint purlin to rafter';
    await choose(`${words}: what it can carry`, 'is held by fasteners');
    await choose(`${words}: add fasteners`, 'spikes');
    await choose(`${words}: size`, '60d, 0.283 in by 6 in');
    // ASTM F1667, common spikes, from memory
    expect(at('joints.defaults[purlinRafter].capacity.rows[0]')).toMatchObject({ diameterIn: 0.283, lengthIn: 6 });
    await choose(`${words}: add fasteners`, 'wood screws');
    expect(screen.getByText(/only the strongest of them counts/)).toBeTruthy();
    expect(choice(`${words}, row 2: kind of fastener`)).toBeTruthy();
  });

  it('of a roof ask for the thickness of its sheet before they hold', async () => {
    openFrame(without('sheetPurlin'));
    await userEvent.setup().click(linkHead(/^sheet/));
    const words = 'Every joint sheet to purlin';
    await choose(`${words}: what it can carry`, 'is held by fasteners');
    await choose(`${words}: add fasteners`, 'wood screws');
    const pull = () => rowOf('sheet.uplift/plane-1/whole');
    expect([pull().status, pull().reason?.code]).toEqual(['notGiven', 'sheetThicknessNotGiven']);
    await choose(`${words}: thickness of the sheet`, '26 gauge, 0.0179 in');
    expect(pull().capacity!.value).toBeGreaterThan(0);
  });

  it('of a post base count beside the rating of its anchor', async () => {
    openFrame(without('postFoot'));
    await userEvent.setup().click(linkHead(/^post/));
    const words = 'Every joint post to pier';
    await choose(`${words}: what it can carry`, 'is held by fasteners');
    await choose(`${words}: add fasteners`, 'bolts');
    const pull = () => rowOf('post.foot/post-1/foot');
    expect(pull().reason?.code).toBe('anchorNotRated');
    await userEvent.setup().click(screen.getByRole('button', { name: 'give their rating' }));
    await type(`${words}: base and anchor: rated pull`, '900 lb');
    expect(pull().capacity!.value).toBeLessThanOrEqual(900);
    expect(pull().ratio).not.toBeNull();
  });

  it('of one joint may be others than those of its kind', async () => {
    openFrame(smallShelter());
    const user = userEvent.setup();
    await user.click(linkHead(/^beam A/));
    const section = screen.getByRole('region', { name: /^Joint beam to post/ });
    await user.click(within(section).getByRole('radio', { name: 'A1' }));
    await user.click(within(section).getByRole('button', { name: 'other hardware at post A1 only' }));
    await choose('The one at post A1: what it can carry', 'is held by contact only');
    expect(present().project!.joints.own.map(({ key, capacity }) => [key, capacity])).toEqual([
      ['beamPost/beam-high/post-1', { kind: 'none' }],
    ]);
    await user.click(within(section).getByRole('button', { name: 'as the others again' }));
    expect(present().project!.joints.own).toEqual([]);
  });
});

describe('joints that few shelters have', () => {
  it('are spoken of where they are: a splice with the beam that begins there', async () => {
    const spliced = plainShed({
      beamEndsIn: [-24, 72, 168],
      postXsIn: [0, 72, 144],
      pierTopsIn: [6, 6, 6],
      bracesAt: [
        [0, 'plus'],
        [2, 'minus'],
      ],
    });
    openFrame(spliced);
    const user = userEvent.setup();
    await user.click(linkHead(/^beam A/));
    const beams = within(screen.getByRole('group', { name: 'Which beam A' })).getAllByRole('radio');
    const found: number[] = [];
    for (const beam of beams) {
      await user.click(beam);
      found.push(screen.queryAllByRole('region', { name: /^Joint beam to beam at a splice/ }).length);
    }
    expect(found).toEqual([0, 1]);
  });

  it('are not spoken of elsewhere', async () => {
    openFrame(smallShelter());
    const user = userEvent.setup();
    await user.click(linkHead(/^beam A/));
    expect(screen.queryByRole('region', { name: /splice/ })).toBeNull();
    expect(screen.getByRole('region', { name: /^Joint beam to post/ })).toBeTruthy();
  });
});

describe('a proposal', () => {
  it('says what the fewest that hold would be and their ratio, and is taken over whole', async () => {
    const project = without('purlinRafter', exampleProject('firewood-shed'));
    const every = 'Every joint purlin to rafter';
    openFrame(project);
    const user = userEvent.setup();
    await user.click(linkHead(/^purlin/));
    await user.click(screen.getByRole('button', { name: `propose fasteners, ${every}` }));
    const said = await screen.findByRole('status', { name: `${every}: proposal` });
    const proposal = proposeFor(project, 'purlinRafter');
    if (!proposal.ok) throw new Error('the demo has a proposal');
    expect(said.textContent).toContain(`Ratio ${roundedUp(proposal.share)} at the hardest`);
    expect(said.textContent).toContain(`${proposal.capacity.rows[0]!.count} `);
    await user.click(within(said).getByRole('button', { name: 'take these' }));
    expect(at('joints.defaults[purlinRafter].capacity')).toEqual(proposal.capacity);
    expect(rowOf('purlin.tie/purlin-1/whole').status).toBe('pass');
  });

  it('says why where only a rated part would do', async () => {
    openFrame(without('postFoot'));
    const user = userEvent.setup();
    await user.click(linkHead(/^post/));
    await user.click(screen.getByRole('button', { name: 'propose fasteners, Every joint post to pier' }));
    const said = await screen.findByRole('status', { name: 'Every joint post to pier: no proposal' });
    expect(said.textContent).toMatch(/give its rating/);
    expect(at('joints.defaults[postFoot]')).toBeUndefined();
  });
});
