// @vitest-environment jsdom
import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { present } from '../../../src/ui/state/use-workbench.ts';
import { valueAt } from '../../../src/ui/state/value-at.ts';
import { bringTheRest, closeFrame, exampleProject, linkHead, openFrame, pretendBrowser } from '../frame/page.tsx';

const BEHIND = 'supportLines[ledger].behind';
const CARRIES = 'Every joint ledger to wall: what it can carry';
const at = (path: string): unknown => valueAt(present().project!, path);
const said = (): string => document.querySelector('.link-body')?.textContent ?? '';
const press = (name: string): Promise<void> => userEvent.setup().click(screen.getByRole('button', { name }));
const offered = (label: string): readonly (string | null)[] =>
  within(screen.getByRole('combobox', { name: label }))
    .getAllByRole('option')
    .map((option) => option.textContent);

beforeAll(bringTheRest);
beforeEach(() => pretendBrowser());
afterEach(closeFrame);

describe('the wood of the wall behind a ledger', () => {
  it('[ledger.fixing] is not given until somebody says so; only then fasteners are offered', async () => {
    openFrame(exampleProject('lean-to'));
    await userEvent.setup().click(linkHead(/^ledger/));
    expect(said()).toContain('What wood of the wall the fixings end in is not given.');
    expect(offered(CARRIES)).not.toContain('is held by fasteners');

    await press('say what wood is there');
    expect(at(`${BEHIND}.grain`)).toBe('upright');
    expect(present().project!.notYetYours).toContain(`${BEHIND}.stock.species`);
    expect(offered(CARRIES)).toContain('is held by fasteners');
    const user = userEvent.setup();
    await user.selectOptions(
      screen.getByRole('combobox', { name: /^Wall behind the ledger: grain/ }),
      'a band or a log that lies level',
    );
    expect(at(`${BEHIND}.grain`)).toBe('level');
    expect(present().project!.notYetYours).not.toContain(`${BEHIND}.grain`);
    expect(screen.queryByRole('combobox', { name: /^Wood of the wall: how it lies/ })).toBeNull();

    await press('nobody has looked');
    expect(at(BEHIND)).toBeUndefined();
    expect(present().project!.notYetYours).toEqual([]);
  });
});
