// @vitest-environment jsdom
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { acts, present, withProgram } from '../../../src/ui/state/use-workbench.ts';
import { valueAt } from '../../../src/ui/state/value-at.ts';
import { YoursChoice } from '../../../src/ui/fields/choice.tsx';
import { Yours } from '../../../src/ui/fields/yours.tsx';
import { smallProject } from '../state/support.ts';

// the screen's wiring is tested here, not the engine
vi.mock(import('../../../src/engine/evaluate.ts'), async () => {
  const { testEngine } = await import('../state/support.ts');
  return { evaluate: testEngine.evaluate };
});

const POST = 'members[post-2].xIn';
const at = (path: string): unknown => {
  const { project } = present();
  return project ? valueAt(project, path) : undefined;
};
const box = (): HTMLInputElement => screen.getByRole('textbox', { name: 'Post 2 along the line' });

beforeAll(() => withProgram(Promise.resolve()));
beforeEach(() => {
  acts().setSystem('feet');
  acts().adopt(smallProject());
});
afterEach(cleanup);

describe('a quantity in a sentence', () => {
  beforeEach(() => {
    render(<Yours path={POST} label="Post 2 along the line" />);
  });

  it('shows the stored value and says in words what it takes', () => {
    expect(box().value).toBe('12 ft');
    const hint = document.getElementById(box().getAttribute('aria-describedby') ?? '');
    expect(hint?.textContent).toContain('feet and inches');
  });

  it('is set at each key that leaves a sound text, and shows its usual spelling after Enter', async () => {
    const user = userEvent.setup();
    await user.click(box());
    await user.keyboard(`11.5 ft`);
    expect(at(POST)).toBe(138);
    expect(screen.getByRole('status').textContent).toBe('read as 11 ft 6 in');
    await user.keyboard('{Enter}');
    expect(box().value).toBe('11 ft 6 in');
    expect(document.activeElement).toBe(box());
  });

  it('explains a text it cannot use, keeps it, and takes no focus', async () => {
    const user = userEvent.setup();
    await user.click(box());
    await user.keyboard('11 chairs');
    expect(box().getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByRole('status').textContent).toContain('“chairs” is not a unit known here');
    expect(document.activeElement).toBe(box());
    await user.tab();
    expect(box().value).toBe('11 chairs');
    expect(screen.getByRole('status').textContent).toContain('Error:');
    expect(present().stale).toBe(true);
  });

  it('of Escape restores what stood there before', async () => {
    const user = userEvent.setup();
    await user.click(box());
    await user.keyboard('11 ft{Escape}');
    expect(at(POST)).toBe(144);
    expect(box().value).toBe('12 ft');
  });

  it('is one undo entry from entering to leaving', async () => {
    const user = userEvent.setup();
    await user.click(box());
    await user.keyboard('11 ft 3 in');
    await user.tab();
    expect(present().done).toHaveLength(1);
    acts().undo();
    expect(at(POST)).toBe(144);
  });

  it('never rewrites a number that nobody edited, though its text is rounded', async () => {
    const user = userEvent.setup();
    const exact = 3600 / 25.4; // 3.6 m, between two sixteenths
    acts().typeInto({ path: POST, text: '3.6 m' });
    acts().settle();
    for (const system of ['metric', 'feet'] as const) {
      acts().setSystem(system);
      await user.click(box());
      const shown = box().value;
      await user.keyboard('5');
      await user.clear(box());
      await user.type(box(), shown);
      await user.tab();
      expect(at(POST)).toBe(exact);
    }
  });

  it('has keys of its own for what a number pad lacks, which write where the caret stands', async () => {
    const user = userEvent.setup();
    await user.click(box());
    await user.keyboard('11');
    await user.click(screen.getByRole('button', { name: 'ft' }));
    await user.keyboard('6');
    await user.click(screen.getByRole('button', { name: 'in' }));
    expect(at(POST)).toBe(138);
  });
});

describe('a choice in a sentence', () => {
  const choices = [
    { value: 'top', words: 'the tops are level' },
    { value: 'axis', words: 'the axes are level' },
    { value: 'sideways', words: 'nothing is level' },
  ];

  it('sets the value, and explains a refusal under it', async () => {
    const user = userEvent.setup();
    render(<YoursChoice path="supportLines[low].set" label="What is level" choices={choices} />);
    const select = screen.getByRole('combobox', { name: 'What is level' });
    await user.selectOptions(select, 'the axes are level');
    expect(at('supportLines[low].set')).toBe('axis');
    await user.selectOptions(select, 'nothing is level');
    expect(at('supportLines[low].set')).toBe('axis');
    expect(screen.getByRole('status').textContent).toContain('Error:');
  });

  it('says "not given" where nothing was chosen yet', () => {
    render(
      <YoursChoice path="lateral.along[0].by" label="Holds along" choices={[{ value: 'none', words: 'nothing' }]} />,
    );
    expect(screen.getByRole<HTMLSelectElement>('combobox').selectedOptions[0]?.textContent).toBe('not given');
  });
});
