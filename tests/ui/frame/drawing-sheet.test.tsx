// @vitest-environment jsdom
import { act, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { acts, present } from '../../../src/ui/state/use-workbench.ts';
import { valueAt } from '../../../src/ui/state/value-at.ts';
import { bringTheRest, closeFrame, linkHead, openFrame, pretendBrowser, smallShelter } from './page.tsx';

const at = (path: string): unknown => {
  const { project } = present();
  return project ? valueAt(project, path) : undefined;
};
const box = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });

beforeAll(bringTheRest);
beforeEach(() => pretendBrowser());
afterEach(closeFrame);

describe('the drawing sheet', () => {
  it('hangs three views, one of them large; touching another makes it the large one', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    expect(screen.getAllByRole('img')).toHaveLength(3);
    expect(screen.getByRole('heading', { name: 'Front view' })).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Plan, show it large' }));
    expect(screen.getByRole('heading', { name: 'Plan' })).toBeTruthy();
    expect(screen.queryByRole('slider')).toBeNull();
  });

  it('shows the line whose letter is touched', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    expect(screen.getByRole('img', { name: /Front view of line A/ })).toBeTruthy();
    await user.click(screen.getByRole('radio', { name: 'B' }));
    expect(screen.getByRole('img', { name: /Front view of line B/ })).toBeTruthy();
  });

  it('hatches the moment on the logs and names its worst value and place', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    await user.click(screen.getByRole('radio', { name: 'bending' }));
    const picture = screen.getByRole('img', { name: /Front view/ });
    expect(picture.textContent).toMatch(/moment [\d,]+ lb·in, .+ along/);
  });

  it('one view at a time on a phone, chosen by its name', async () => {
    closeFrame();
    pretendBrowser(true);
    const user = userEvent.setup();
    openFrame(smallShelter());
    expect(screen.getAllByRole('img')).toHaveLength(1);
    await user.click(screen.getByRole('radio', { name: 'Section' }));
    expect(screen.getByRole('img', { name: /Section across/ })).toBeTruthy();
  });
});

describe('a length on the drawing', () => {
  it('is the distance between posts, though the project stores places', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    expect(box('Post to post').value).toBe('13\' 0"');
    await user.click(box('Post to post'));
    await user.keyboard('12 ft 6 in');
    expect(at('members[post-2].xIn')).toBe(150);
    await user.tab();
    expect(box('Post to post').value).toBe('12\' 6"');
  });

  it('grows an overhang to the left by a smaller place', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    const [left] = screen.getAllByRole<HTMLInputElement>('textbox', { name: 'Beam past the last post' });
    await user.click(left!);
    await user.keyboard('26 in');
    expect(at('members[beam-high].fromXIn')).toBe(-26);
  });

  it('changes the one height that the roof carries, also from the other line', async () => {
    const user = userEvent.setup();
    openFrame(smallShelter());
    await user.click(screen.getByRole('radio', { name: 'B' }));
    const seat = box('Height of the seat above the ground');
    const wrote = valueIn(seat.value);
    await user.click(seat);
    await user.keyboard('7 ft');
    expect(Number(at('supportLines[line-high].height.zIn'))).toBeCloseTo(114 + 84 - wrote, 0);
  });

  it('that cannot be used is kept, and understood the same way after a reload', () => {
    openFrame(smallShelter());
    const from = { zeroIn: 0, sign: 1 } as const;
    act(() => acts().typeInto({ path: 'members[post-2].xIn', text: '12 chairs', from }));
    const { drafts, project } = present();
    const kept = { ...drafts['members[post-2].xIn']!, text: '12 ft', from: { zeroIn: 6, sign: 1 as const } };
    act(() => acts().adopt(project!, { drafts: { 'members[post-2].xIn': kept } }));
    expect(at('members[post-2].xIn')).toBe(150);
  });
});

/** Feet and inches as the drawing writes them. */
function valueIn(text: string): number {
  const [, feet = '0', inches = '0', over, under] = /^(\d+)' (\d+)?(?: ?(\d+)\/(\d+))?"$/.exec(text) ?? [];
  return Number(feet) * 12 + Number(inches) + (over === undefined ? 0 : Number(over) / Number(under));
}

describe('a handle', () => {
  it('moves a post by keys; holding the key down is one undo entry', () => {
    openFrame(smallShelter());
    const post = screen.getByRole('slider', { name: 'Post A2, along the line' });
    fireEvent.keyDown(post, { key: 'ArrowLeft' });
    fireEvent.keyDown(post, { key: 'ArrowLeft' });
    fireEvent.keyUp(post, { key: 'ArrowLeft' });
    expect(at('members[post-2].xIn')).toBe(154);
    expect(present().done).toHaveLength(1);
    act(() => acts().undo());
    expect(at('members[post-2].xIn')).toBe(156);
  });

  it('moves all braces of a group, and takes a cancelled move back', () => {
    openFrame(smallShelter());
    const run = screen.getByRole('slider', { name: 'Knee brace at A1, run along the beam' });
    fireEvent.keyDown(run, { key: 'ArrowRight' });
    expect(at('groups[braces].runIn')).toBe(31);
    fireEvent.keyDown(run, { key: 'Escape' });
    expect(at('groups[braces].runIn')).toBe(30);
    expect(present().done).toHaveLength(0);
  });

  it('opens the link of what it moves', () => {
    openFrame(smallShelter());
    fireEvent.keyDown(screen.getByRole('slider', { name: 'Post A1, along the line' }), { key: 'Enter' });
    expect(linkHead(/^post/).getAttribute('aria-expanded')).toBe('true');
    expect(within(document.body).getByRole<HTMLInputElement>('radio', { name: 'A1' }).checked).toBe(true);
  });
});
