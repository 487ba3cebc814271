import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { inertia } from '../engine/solver/frames.ts';
import { E, FINE, rootBetween, SHIPPED, Sketch, type Stick } from '../engine/solver/buckling-frames.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import conePrinted from './column-cone.json' with { type: 'json' };

const cones = fixtureOf(z.strictObject({ inertiaRatio: z.number() }), z.strictObject({ m: z.number() })).parse(
  conePrinted,
);

const L = 120;
const EI = E * inertia(8);

type End = 'pinned' | 'fixed' | 'free' | 'guided';

/** An upright column of one pound of thrust; a pinned or guided top slides along it. */
function column(foot: End, top: End, stick: Stick, pieces: number): Sketch {
  const sketch = new Sketch(pieces).joint('foot', { u: 0, w: 0 }).joint('top', { u: 0, w: L });
  sketch.stick('foot', 'top', stick, 1).hold('foot', true, true, foot === 'fixed');
  if (top === 'pinned' || top === 'fixed') sketch.hold('top', true, false, top === 'fixed');
  if (top === 'guided') sketch.hold('top', false, false, true);
  return sketch;
}

const meshes = [
  { pieces: SHIPPED, within: 0.005 },
  { pieces: FINE, within: 0.001 },
];
const off = (value: number, expected: number): number => Math.abs(value / expected - 1);

describe('buckling of one column', () => {
  // Euler: kL = pi, pi/2, 2 pi, the first root of tan x = x, pi (foot fixed, top straight but free to move), pi/2
  // (foot pinned, top straight but free to move); the theoretical Ke of NDS App. G are pi / kL
  const fixedPinned = rootBetween(Math.PI + 0.1, 1.5 * Math.PI - 1e-6, (x) => Math.tan(x) - x);
  it.each<[End, End, number, number]>([
    ['pinned', 'pinned', Math.PI, 1],
    ['fixed', 'free', Math.PI / 2, 2],
    ['fixed', 'fixed', 2 * Math.PI, 0.5],
    ['fixed', 'pinned', fixedPinned, 0.7],
    ['fixed', 'guided', Math.PI, 1],
    ['pinned', 'guided', Math.PI / 2, 2],
  ])('[frame.buckling] matches Euler and the theoretical Ke of NDS App. G, foot %s, top %s', (foot, top, kL, Ke) => {
    expect(Math.PI / kL).toBeCloseTo(Ke, 2);
    for (const { pieces, within } of meshes)
      expect(off(column(foot, top, EI, pieces).factor(), (EI * kL ** 2) / L ** 2)).toBeLessThan(within);
  });

  // fixture: Timoshenko and Gere, Theory of Elastic Stability, bars whose inertia grows with the fourth power; from memory
  it.each(cones.rows)('[frame.buckling] matches Timoshenko for a cone, thick end fixed, $row', ({ in: given, out }) => {
    const thick = 10;
    const thin = thick * given.inertiaRatio ** 0.25;
    const expected = (out.m * E * inertia(thick)) / L ** 2;
    const printed = cones.tolerance.abs / out.m;
    for (const { pieces, within } of meshes)
      expect(off(column('fixed', 'free', [thick, thin], pieces).factor(), expected)).toBeLessThan(within + printed);
  });

  // closed form of the cone, derived: with 1/x along the cone as the measure it becomes an even column, so that
  // P = pi^2 E sqrt(I1 I2) / L^2 between two pins, whichever end is up
  it.each([1.1, 1.5, 2])('[frame.buckling] matches the closed form of a pinned cone, thick over thin %s', (ratio) => {
    const expected = (Math.PI ** 2 * E * Math.sqrt(inertia(6) * inertia(6 * ratio))) / L ** 2;
    for (const stick of [
      [6, 6 * ratio],
      [6 * ratio, 6],
    ] as const)
      for (const { pieces, within } of meshes)
        expect(off(column('pinned', 'pinned', stick, pieces).factor(), expected)).toBeLessThan(within);
  });

  it('[frame.buckling] needs the finer mesh where a stretch is three times as thick at one end: 0.54 % off, then under 0.1 %', () => {
    const expected = (Math.PI ** 2 * E * Math.sqrt(inertia(6) * inertia(18))) / L ** 2;
    expect(off(column('pinned', 'pinned', [6, 18], SHIPPED).factor(), expected)).toBeCloseTo(0.0054, 4);
    expect(off(column('pinned', 'pinned', [6, 18], FINE).factor(), expected)).toBeLessThan(0.001);
  });

  it('[frame.buckling] lies 4.5 % under the rule that takes a round column for the square of its area', () => {
    // NDS 3.7.3 with 3.7.1.5: inertia of the square of equal area, A^2 / 12, over pi d^4 / 64
    const square = (Math.PI ** 2 * E * ((Math.PI * 8 ** 2) / 4) ** 2) / 12 / L ** 2;
    expect(square / column('pinned', 'pinned', [8, 8], FINE).factor()).toBeCloseTo(Math.PI / 3, 4);
  });
});
