import { describe, expect, it } from 'vitest';
import { diameterAt, type RoundStick } from '../../../src/engine/geometry/shelter.ts';
import { meanDiameter, nominalDepth, stickOf, woodEndsAt } from '../../../src/engine/geometry/sticks.ts';
import type { Log, Project, SawnStock } from '../../../src/engine/project/model.ts';
import { plainShed } from '../../support/plain-shed.ts';

/** A stem measured at four places, read with two callipers at one of them. */
const stem: Log = {
  ...plainShed().logs[0]!,
  id: 'stem',
  bark: 'off',
  stations: [
    { fromButtIn: 0, diameterIn: 14 },
    { fromButtIn: 50, diameterIn: 12, acrossIn: 11.5 },
    { fromButtIn: 120, diameterIn: 10.8 },
    { fromButtIn: 200, diameterIn: 9 },
  ],
};
const withLog = (log: Log): Project => ({ ...plainShed(), logs: [log] });

function round(log: Log, fromButtIn: number, buttAt: 'start' | 'end', lengthIn: number): RoundStick {
  const stick = stickOf(withLog(log), { kind: 'log', logId: 'stem', fromButtIn, buttAt }, lengthIn);
  if (stick?.kind !== 'round') throw new Error('no round stick');
  return stick;
}

/** Straight between the stations, the smaller calliper: read off the list above by hand. */
const byHand = (fromButt: number): number => {
  const s: readonly (readonly [number, number])[] = [
    [0, 14],
    [50, 11.5],
    [120, 10.8],
    [200, 9],
  ];
  const i = Math.max(
    1,
    s.findIndex(([at]) => fromButt <= at),
  );
  const [a, b] = [s[i - 1]!, s[i]!];
  return a[1] + ((b[1] - a[1]) * (fromButt - a[0])) / (b[0] - a[0]);
};

describe('the stretch of a log that a member uses', () => {
  it('runs from its start toward the tip when the butt lies at the start', () => {
    const stick = round(stem, 30, 'start', 100);
    for (const at of [0, 10, 20, 60, 90, 100]) expect(diameterAt(stick, at)).toBeCloseTo(byHand(30 + at), 12);
  });

  it('runs the other way round when the log is flipped, and is the same stretch of wood', () => {
    const stick = round(stem, 30, 'end', 100);
    for (const at of [0, 10, 20, 60, 90, 100]) expect(diameterAt(stick, at)).toBeCloseTo(byHand(130 - at), 12);
    const other = round(stem, 30, 'start', 100);
    expect(meanDiameter(stick)).toBeCloseTo(meanDiameter(other), 12);
  });

  it('takes bark off on both sides', () => {
    const barked = round({ ...stem, bark: 'on', barkIn: 0.5 }, 0, 'start', 200);
    expect(diameterAt(barked, 0)).toBeCloseTo(13, 12);
    expect(diameterAt(barked, 120)).toBeCloseTo(9.8, 12);
  });

  it('is not given while bark is on and nobody has said how thick it is', () => {
    expect(
      stickOf(withLog({ ...stem, bark: 'on' }), { kind: 'log', logId: 'stem', fromButtIn: 0, buttAt: 'start' }, 90),
    ).toBeNull();
    expect(stickOf(withLog(stem), null, 90)).toBeNull();
  });

  it('counts the smaller of two callipers where both were read', () => {
    expect(diameterAt(round(stem, 0, 'start', 200), 50)).toBeCloseTo(11.5, 12);
  });

  it('ends where the last station ends: nothing is extrapolated', () => {
    const stick = round(stem, 150, 'start', 80);
    expect(woodEndsAt(stick)).toBeCloseTo(50, 12);
    expect(diameterAt(stick, 50)).toBeCloseTo(9, 12);
    expect(diameterAt(stick, 60)).toBeNull();
    const flipped = round(stem, 150, 'end', 80);
    expect(diameterAt(flipped, 10)).toBeNull();
    expect(diameterAt(flipped, 30)).toBeCloseTo(9, 12);
  });

  it('has a mean diameter by length', () => {
    // trapezoids by hand: (14 + 11.5) / 2 x 50 + (11.5 + 10.8) / 2 x 70 + (10.8 + 9) / 2 x 80, over 200
    expect(meanDiameter(round(stem, 0, 'start', 200))).toBeCloseTo((637.5 + 780.5 + 792) / 200, 12);
  });
});

describe('a sawn stick', () => {
  const sawn = (lay: 'edge' | 'flat', plies: number): SawnStock => ({
    kind: 'sawn',
    breadthIn: 2,
    depthIn: 8,
    lay,
    plies,
    species: 'Western larch',
    grade: null,
    use: 'wet',
  });

  it('on edge has its plies side by side, lying flat one upon the other', () => {
    expect(stickOf(plainShed(), sawn('edge', 3), 100)).toMatchObject({ breadthIn: 6, depthIn: 8 });
    expect(stickOf(plainShed(), sawn('flat', 3), 100)).toMatchObject({ breadthIn: 8, depthIn: 6 });
    expect(nominalDepth(stickOf(plainShed(), sawn('flat', 1), 100))).toBe(2);
  });

  it('is read the same whichever of its sizes is typed first', () => {
    const swapped: SawnStock = { ...sawn('edge', 1), breadthIn: 8, depthIn: 2 };
    expect(stickOf(plainShed(), swapped, 100)).toMatchObject({ breadthIn: 2, depthIn: 8 });
  });
});
