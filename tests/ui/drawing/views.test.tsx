// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { FrontView, type FrontViewProps } from '../../../src/ui/drawing/FrontView.tsx';
import type { FrontHandlesProps } from '../../../src/ui/drawing/FrontHandles.tsx';
import { onScreen } from '../../../src/ui/drawing/paper.ts';
import { PlanView } from '../../../src/ui/drawing/PlanView.tsx';
import type { RenderDimension } from '../../../src/ui/drawing/PictureView.tsx';
import { SectionView } from '../../../src/ui/drawing/SectionView.tsx';
import { sampleShelter } from './sample-shelter.ts';
import { showFeet } from './show.ts';

beforeAll(() => {
  // jsdom has no pointer capture
  Element.prototype.setPointerCapture ??= () => undefined;
});
afterEach(cleanup);

const shelter = sampleShelter({ postXIn: [0, 150] });
const common = { shelter, paper: onScreen(900, 620), showLength: showFeet };

function front(extra: Partial<FrontViewProps> = {}) {
  const onMovePost = vi.fn<FrontHandlesProps['onMovePost']>();
  const onMoveBrace = vi.fn<FrontHandlesProps['onMoveBrace']>();
  render(
    <FrontView
      {...common}
      lineId="line-A"
      move={{ onMovePost, onMoveBrace, bracesAlike: () => 2, units: 'feet' }}
      {...extra}
    />,
  );
  return { onMovePost, onMoveBrace, slider: (name: string) => screen.getByRole('slider', { name }) };
}

describe('views', () => {
  it('are images with a title and a description; nothing that can be used lies inside the image', () => {
    front();
    const image = screen.getByRole('img', { name: /Front view of line A/ });
    expect(within(image).queryAllByRole('slider')).toEqual([]);
    expect(image.querySelector('[tabindex]')).toBeNull();
    const group = screen.getByRole('group', { name: 'Posts and braces that can be moved' });
    expect(within(group).getAllByRole('slider')).toHaveLength(2 + 2 * 2);
  });

  it('carry no colour of their own: inks are classes', () => {
    const { container } = render(
      <>
        <FrontView {...common} lineId="line-A" />
        <SectionView {...common} snow="snow 46 psf" />
        <PlanView {...common} units="feet" />
      </>,
    );
    expect(container.querySelectorAll('[fill], [stroke]')).toHaveLength(0);
    expect(container.querySelectorAll('[role=img]')).toHaveLength(3);
    expect(container.querySelectorAll('[role=slider]')).toHaveLength(0);
  });

  it('put a field of the caller at every length that can be changed', () => {
    const renderDimension = vi.fn<RenderDimension>((path: string) => <button type="button">{path}</button>);
    front({ renderDimension });
    expect(screen.getByRole('button', { name: 'members[post-A2].xIn' })).toBeTruthy();
    expect(renderDimension).toHaveBeenCalledWith(
      'members[post-A2].xIn',
      150,
      expect.objectContaining({ text: '12\' 6"', rotated: false, sign: 1 }),
    );
    expect(screen.queryByText('12\' 6"')).toBeNull();
  });

  it('tell which member was picked', () => {
    const onSelect = vi.fn<(memberId: string) => void>();
    front({ onSelect });
    const targets = document.querySelectorAll('path.target');
    for (const target of targets) fireEvent.click(target);
    expect(onSelect.mock.calls.map(([id]) => id)).toEqual(
      expect.arrayContaining(['post-A1', 'post-A2', 'beam-A', 'brace-A1plus', 'rafter-1']),
    );
  });
});

describe('handles by keyboard', () => {
  it('move a post an inch, with Shift an eighth, and end when the key is released', () => {
    const { onMovePost, slider } = front();
    const post = slider('Post A2, along the line');
    fireEvent.keyDown(post, { key: 'ArrowRight' });
    fireEvent.keyDown(post, { key: 'ArrowLeft', shiftKey: true });
    fireEvent.keyUp(post, { key: 'ArrowLeft' });
    expect(onMovePost.mock.calls).toEqual([
      ['post-A2', 151, 'move'],
      ['post-A2', 150.875, 'move'],
      ['post-A2', 150.875, 'end'],
    ]);
  });

  it('take 25 mm and 5 mm in metric', () => {
    const onMovePost = vi.fn<FrontHandlesProps['onMovePost']>();
    const { slider } = front({
      move: {
        onMovePost,
        onMoveBrace: vi.fn<FrontHandlesProps['onMoveBrace']>(),
        bracesAlike: () => 1,
        units: 'metric',
      },
    });
    const post = slider('Post A2, along the line');
    fireEvent.keyDown(post, { key: 'ArrowRight' });
    fireEvent.keyDown(post, { key: 'ArrowRight', shiftKey: true });
    const moved = onMovePost.mock.calls.map((call) => (Number(call[1]) - 150) * 25.4);
    expect(moved).toEqual([expect.closeTo(25, 9), expect.closeTo(30, 9)]);
  });

  it('say how they are moved, and what moves with them while they are held', () => {
    const { slider } = front();
    const run = slider('Knee brace at A1, run along the beam');
    const told = document.getElementById(run.getAttribute('aria-describedby') ?? '')?.textContent ?? '';
    expect(told).toMatch(/^Drag it, or use the arrow keys: 1 in .+ It moves 2 of 8 braces\.$/);
    expect(run.querySelector('text')).toBeNull();
    fireEvent.pointerDown(run, { button: 0, pointerId: 1, clientX: 0, clientY: 0 });
    expect(run.querySelector('text')?.textContent).toBe('2 of 8 braces');
    fireEvent.pointerUp(run);
    expect(run.querySelector('text')).toBeNull();
    const post = slider('Post A2, along the line');
    expect(document.getElementById(post.getAttribute('aria-describedby') ?? '')?.textContent).not.toContain('all');
  });

  it('give the start back on Escape', () => {
    const { onMovePost, slider } = front();
    const post = slider('Post A2, along the line');
    fireEvent.keyDown(post, { key: 'ArrowRight' });
    fireEvent.keyDown(post, { key: 'Escape' });
    fireEvent.keyUp(post, { key: 'ArrowRight' });
    expect(onMovePost.mock.calls).toEqual([
      ['post-A2', 151, 'move'],
      ['post-A2', 150, 'cancel'],
    ]);
  });

  it('move a brace as it is seen: up shortens its drop, away from its post lengthens its run', () => {
    const { onMoveBrace, slider } = front();
    const drop = slider('Knee brace at A1, drop down the post');
    expect(drop.getAttribute('aria-valuetext')).toBe('2\' 8", 2 of 8 braces');
    fireEvent.keyDown(drop, { key: 'ArrowUp' });
    fireEvent.keyUp(drop, { key: 'ArrowUp' });
    const run = slider('Knee brace at A2, run along the beam');
    fireEvent.keyDown(run, { key: 'ArrowLeft' });
    fireEvent.keyUp(run, { key: 'ArrowLeft' });
    expect(onMoveBrace.mock.calls).toEqual([
      ['brace-A1plus', 32, 31, 'move'],
      ['brace-A1plus', 32, 31, 'end'],
      ['brace-A2minus', 33, 32, 'move'],
      ['brace-A2minus', 33, 32, 'end'],
    ]);
  });

  it('stop a post before its neighbour', () => {
    const { onMovePost, slider } = front();
    const post = slider('Post A1, along the line');
    for (let i = 0; i < 200; i++) fireEvent.keyDown(post, { key: 'ArrowRight' });
    const farthest = Math.max(...onMovePost.mock.calls.map((call) => Number(call[1])));
    expect(farthest).toBeLessThan(150 - 8);
    expect(Number(post.getAttribute('aria-valuemax'))).toBe(farthest);
  });
});

describe('handles by pointer', () => {
  it('follow the pointer at the drawing scale and land on quarter inches', () => {
    const { onMovePost, slider } = front();
    const post = slider('Post A2, along the line');
    fireEvent.pointerDown(post, { button: 0, pointerId: 1, clientX: 500, clientY: 300 });
    fireEvent.pointerMove(post, { pointerId: 1, clientX: 530, clientY: 340 });
    fireEvent.pointerUp(post, { pointerId: 1, clientX: 530, clientY: 340 });
    const [move, end] = onMovePost.mock.calls;
    const xIn = Number(move?.[1]);
    expect(xIn).toBeGreaterThan(155);
    expect(xIn * 4).toBe(Math.round(xIn * 4));
    expect(end).toEqual(['post-A2', xIn, 'end']);
  });

  it('report nothing for a tap and take a drag back on Escape', () => {
    const { onMovePost, slider } = front();
    const post = slider('Post A2, along the line');
    fireEvent.pointerDown(post, { button: 0, pointerId: 1, clientX: 500, clientY: 300 });
    fireEvent.pointerUp(post, { pointerId: 1, clientX: 500, clientY: 300 });
    expect(onMovePost).not.toHaveBeenCalled();
    fireEvent.pointerDown(post, { button: 0, pointerId: 1, clientX: 500, clientY: 300 });
    fireEvent.pointerMove(post, { pointerId: 1, clientX: 520, clientY: 300 });
    fireEvent.keyDown(post, { key: 'Escape' });
    fireEvent.pointerUp(post, { pointerId: 1, clientX: 520, clientY: 300 });
    expect(onMovePost.mock.calls.map((call) => call[2])).toEqual(['move', 'cancel']);
    expect(onMovePost.mock.calls[1]?.[1]).toBe(150);
  });
});
