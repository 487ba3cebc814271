import { readFileSync } from 'node:fs';
import { cleanup, render, screen } from '@testing-library/react';
import { vi } from 'vitest';
import type { Project } from '../../../src/engine/project/model.ts';
import { look } from '../../../src/ui/frame/frame-view.ts';
import { FramePlace } from '../../../src/ui/frame/frame-place.tsx';
import { bringLateParts } from '../../../src/ui/late.tsx';
import { acts, withProgram } from '../../../src/ui/state/use-workbench.ts';
import { soundProject, type Example } from '../../support/files.ts';

/** What jsdom lacks: sizes, media queries, scrolling, pointers that are held. */
export function pretendBrowser(isPhone = false): void {
  vi.stubGlobal(
    'ResizeObserver',
    class {
      observe(): void {}
      disconnect(): void {}
    },
  );
  vi.stubGlobal('matchMedia', () => ({ matches: isPhone, addEventListener: () => {}, removeEventListener: () => {} }));
  vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockReturnValue(900);
  Element.prototype.scrollIntoView ??= () => undefined;
  Element.prototype.setPointerCapture ??= () => undefined;
}

/** Read from the top of the sources: under jsdom an address beside this file would be taken for one of the page. */
export const exampleProject = (name: Example): Project =>
  soundProject(readFileSync(`public/examples/${name}.shelter.json`, 'utf8'));

/**
 * The demo with three of its rafters and nothing across its lines: evaluated in a third of the time, for what is typed and
 * chosen at one member and does not hang on how many there are.
 */
export function smallShelter(): Project {
  const demo = exampleProject('firewood-shed');
  const rafters = demo.members.filter(({ role }) => role === 'rafter');
  const kept = new Set([rafters[0], rafters[Math.floor(rafters.length / 2)], rafters.at(-1)]);
  const members = demo.members.filter((member) => {
    if (member.role === 'rafter') return kept.has(member);
    return member.role !== 'tie' && (member.role !== 'brace' || member.to === 'line');
  });
  return { ...demo, members, lateral: { ...demo.lateral, across: [{ by: null }] } };
}

/** Everything that comes after the first figures, as it is there a moment later. */
export async function bringTheRest(): Promise<void> {
  await withProgram(bringLateParts());
}

/** The Frame place over the demo, as a person first sees it. */
export function openFrame(project: Project = exampleProject('firewood-shed')): void {
  acts().setSystem('feet');
  acts().adopt(project);
  look({ large: 'front', lineId: null, hatched: 'none', openLink: null, memberId: null, sought: null });
  render(<FramePlace />);
}

/** The button that opens a link of the cord. */
export function linkHead(name: RegExp): HTMLElement {
  const found = screen.getAllByRole('button', { name }).find((button) => button.classList.contains('link-head'));
  if (!found) throw new Error(`no link named ${name.source}`);
  return found;
}

export function closeFrame(): void {
  cleanup();
  vi.unstubAllGlobals();
}
