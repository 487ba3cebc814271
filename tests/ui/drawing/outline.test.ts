import { describe, expect, it } from 'vitest';
import { hatchStrokes, meeting, overlap, touches } from '../../../src/ui/drawing/outline.ts';
import type { Point, Segment } from '../../../src/ui/drawing/paper.ts';

const lengthOf = ([a, b]: Segment): number => Math.hypot(b.x - a.x, b.y - a.y);

describe('hatching', () => {
  it('covers an outline evenly: length of strokes times their distance is its area', () => {
    const triangle: Point[] = [
      { x: 10, y: 5 },
      { x: 90, y: 20 },
      { x: 40, y: 75 },
    ];
    // shoelace formula
    const area = Math.abs((90 - 10) * (75 - 5) - (40 - 10) * (20 - 5)) / 2;
    const apart = 0.25;
    const inked = hatchStrokes(triangle, apart).reduce((sum, s) => sum + lengthOf(s), 0);
    expect(inked * apart).toBeCloseTo(area, -1);
    expect(Math.abs(inked * apart - area) / area).toBeLessThan(0.01);
  });

  it('leaves the hollow of a U-shaped outline white', () => {
    const u: Point[] = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 40 },
      { x: 30, y: 40 },
      { x: 30, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: 50 },
      { x: 0, y: 50 },
    ];
    const hollow = { x: 11, y: 1, width: 18, height: 38 };
    const strokes = hatchStrokes(u, 2);
    expect(strokes.length).toBeGreaterThan(20);
    expect(strokes.filter((s) => touches(s, hollow))).toEqual([]);
  });
});

describe('lines and boxes', () => {
  const box = { x: 10, y: 10, width: 20, height: 10 };
  it.each<[string, Segment, boolean]>([
    [
      'through the middle',
      [
        { x: 0, y: 15 },
        { x: 50, y: 15 },
      ],
      true,
    ],
    [
      'wholly inside',
      [
        { x: 12, y: 12 },
        { x: 14, y: 18 },
      ],
      true,
    ],
    [
      'slanting past a corner',
      [
        { x: 0, y: 12 },
        { x: 12, y: 0 },
      ],
      false,
    ],
    [
      'slanting through a corner',
      [
        { x: 8, y: 14 },
        { x: 14, y: 8 },
      ],
      true,
    ],
    [
      'ending before it',
      [
        { x: 0, y: 15 },
        { x: 9, y: 15 },
      ],
      false,
    ],
    [
      'upright beside it',
      [
        { x: 31, y: 0 },
        { x: 31, y: 50 },
      ],
      false,
    ],
  ])('says whether a line touches a box: %s', (_, segment, answer) => {
    expect(touches(segment, box)).toBe(answer);
  });

  it('boxes that only share a side do not overlap', () => {
    expect(overlap(box, { x: 30, y: 10, width: 5, height: 5 })).toBe(false);
    expect(overlap(box, { x: 29, y: 10, width: 5, height: 5 })).toBe(true);
  });

  it('finds where two lines meet when they are run on, and nothing for parallel ones', () => {
    const rising: Segment = [
      { x: 0, y: 0 },
      { x: 1, y: 1 },
    ];
    expect(
      meeting(rising, [
        { x: 0, y: 10 },
        { x: 1, y: 9 },
      ]),
    ).toEqual({ x: 5, y: 5 });
    expect(
      meeting(rising, [
        { x: 0, y: 1 },
        { x: 3, y: 4 },
      ]),
    ).toBeNull();
  });
});
