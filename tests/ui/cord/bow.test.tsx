// @vitest-environment jsdom
import { screen } from '@testing-library/react';
import userEvent, { type UserEvent } from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
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
const bow = (): HTMLElement => screen.getByRole('textbox', { name: 'beam A: natural bow of the log' });
const sentence = (): string => bow().closest('p')?.textContent ?? '';

describe('how a log beam bows', () => {
  // A parabola: 3/4 in. over 252 in. leaves 3/4 (216 / 252)2 = 0.55 in. on 216; sqrt(1 - 0.75 x 0.75) = 0.66 in. lies beside.
  it('says how far up or down and to the side it lies, and what that does', async () => {
    const user = await openedBeam();
    expect(sentence()).toMatch(
      /As a beam it lies 9\/16 in up, which relieves its sag but is not counted, and 11\/16 in to the side/,
    );
    await user.selectOptions(screen.getByRole('combobox', { name: 'beam A: crown' }), 'down');
    expect(sentence()).toMatch(/lies 9\/16 in down, which counts as sag/);
  });

  it('takes the bow as it is typed, and the sag of a crown laid down grows with it', async () => {
    const user = await openedBeam();
    const sag = (): number =>
      Math.max(
        ...present().evaluation!.checks.flatMap((c) =>
          c.ruleId === 'beam.sagLongTerm' && c.memberId === 'beam-high' ? [c.demand?.value ?? NaN] : [],
        ),
      );
    await user.selectOptions(screen.getByRole('combobox', { name: 'beam A: crown' }), 'down');
    const before = sag();
    await user.clear(bow());
    await user.type(bow(), '1 in');
    await user.tab();
    expect(present().project?.logs.find(({ id }) => id === 'log-1')?.crownIn).toBe(1);
    expect(sag()).toBeGreaterThan(before);
  });
});
