// @vitest-environment jsdom
import { act, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Capacity } from '../../../src/engine/project/model.ts';
import { acts } from '../../../src/ui/state/use-workbench.ts';
import { bringTheRest, closeFrame, exampleProject, linkHead, openFrame, pretendBrowser } from '../frame/page.tsx';
import { HARDWARE } from './hardware.ts';

const demoWith = (capacity: Capacity) => {
  const demo = exampleProject('firewood-shed');
  const others = demo.joints.defaults.filter(({ kind }) => kind !== 'bracePost');
  return { ...demo, joints: { ...demo.joints, defaults: [...others, { kind: 'bracePost' as const, capacity }] } };
};
const picturesOf = (name: RegExp): readonly string[] =>
  screen.getAllByRole('img', { name }).map((image) => image.getAttribute('aria-labelledby') ?? '');
const describedAs = (name: RegExp): string => {
  const [labels] = picturesOf(name);
  return (labels ?? '')
    .split(' ')
    .map((id) => document.querySelector(`[id="${id}"]`)?.textContent ?? '')
    .join(' ');
};

async function openBrace(capacity: Capacity): Promise<void> {
  openFrame(demoWith(capacity));
  const user = userEvent.setup();
  await user.click(linkHead(/^brace/));
  await user.click(screen.getByRole('radio', { name: 'A1+' }));
}

beforeAll(bringTheRest);
beforeEach(() => pretendBrowser());
afterEach(closeFrame);

describe('the picture of a joint in the cord', () => {
  it('is two images that tell their fasteners in words', async () => {
    await openBrace(HARDWARE.bracePost);
    expect(picturesOf(/brace A1\+ at post A1, /)).toHaveLength(2);
    expect(describedAs(/brace A1\+ at post A1, from the front/)).toMatch(/2 lag screws 5\/8.* into post A1/);
  });

  it('follows what is said of the joint, and the unit system', async () => {
    await openBrace(null);
    expect(describedAs(/brace A1\+ at post A1, from the front/)).toContain('Nothing given.');
    act(() => acts().adopt(demoWith(HARDWARE.bracePost)));
    act(() => acts().setSystem('metric'));
    expect(describedAs(/brace A1\+ at post A1, from the front/)).toMatch(/2 lag screws 16 mm by 254 mm/);
    act(() => acts().setSystem('feet'));
  });
});
