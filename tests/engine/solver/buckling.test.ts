import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FrameNode } from '../../../src/engine/solver/model.ts';
import { FINE, SHIPPED, Sketch } from './buckling-frames.ts';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const off = (value: number, expected: number): number => Math.abs(value / expected - 1);

const bents = fc.record({
  height: real(80, 130),
  span: real(80, 200),
  drop: real(12, 40),
  EI: fc.tuple(real(1e8, 6e8), real(1e8, 6e8)),
  EA: real(1e4, 1e7),
  push: fc.tuple(real(0, 5000), real(500, 5000)),
});
type Bent = Parameters<Parameters<typeof bents.map>[0]>[0];

/** A knee-braced bent on pins; `side` -1 is its mirror image. */
function bent({ height, span, drop, EI, EA, push }: Bent, { side = 1, stiffer = 1 } = {}): Sketch {
  const sketch = new Sketch(SHIPPED);
  for (const [k, name] of (['a', 'b'] as const).entries()) {
    const u = side * k * span;
    const inward = side * (k === 0 ? 1 : -1);
    sketch
      .joint(`${name}.foot`, { u, w: 0 })
      .joint(`${name}.knee`, { u, w: height - drop })
      .joint(`${name}.beam`, { u, w: height })
      .joint(`${name}.top`, { u, w: height }, `${name}.beam`)
      .joint(`${name}.brace`, { u: u + (inward * span) / 4, w: height })
      .stick(`${name}.foot`, `${name}.knee`, EI[k]!, push[k]!)
      .stick(`${name}.knee`, `${name}.top`, EI[k]!, push[k]!)
      .stick(`${name}.beam`, `${name}.brace`, 5e8)
      .bar(`${name}.knee`, `${name}.brace`, EA * stiffer)
      .hold(`${name}.foot`, true, true);
  }
  return sketch.stick('a.brace', 'b.brace', 5e8);
}

/** Columns side by side that know nothing of each other, one pound on each. */
function pinnedColumns(...stiffness: readonly number[]): Sketch {
  const sketch = new Sketch(FINE);
  stiffness.forEach((EI, i) => {
    sketch
      .joint(`${i}`, { u: 50 * i, w: 0 })
      .joint(`${i}t`, { u: 50 * i, w: 100 })
      .stick(`${i}`, `${i}t`, EI, 1)
      .hold(`${i}`, true, true)
      .hold(`${i}t`, true, false);
  });
  return sketch;
}

const shiftOf = (sketch: Sketch, moves: Float64Array, find: (node: FrameNode) => boolean): number =>
  sketch.model.nodes.reduce(
    (most, node, i) => (find(node) ? Math.max(most, Math.hypot(moves[3 * i]!, moves[3 * i + 1]!)) : most),
    0,
  );

describe('buckling of a plane frame', () => {
  it('falls as one over the load', () => {
    fc.assert(
      fc.property(bents, real(0.1, 10), (given, times) => {
        expect(off(bent(given).factor(times), bent(given).factor() / times)).toBeLessThan(1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it('is not lowered by stiffer braces', () => {
    fc.assert(
      fc.property(bents, real(1, 50), (given, stiffer) => {
        expect(bent(given, { stiffer }).factor()).toBeGreaterThanOrEqual(bent(given).factor() * (1 - 1e-9));
      }),
      { numRuns: 60 },
    );
  });

  it('is not raised by more push in any member', () => {
    fc.assert(
      fc.property(bents, real(0, 3000), (given, more) => {
        const harder: Bent = { ...given, push: [given.push[0] + more, given.push[1]] };
        expect(bent(harder).factor()).toBeLessThanOrEqual(bent(given).factor() * (1 + 1e-9));
      }),
      { numRuns: 60 },
    );
  });

  it('is the same for a frame and its mirror image', () => {
    fc.assert(
      fc.property(bents, (given) => {
        expect(off(bent(given, { side: -1 }).factor(), bent(given).factor())).toBeLessThan(1e-9);
      }),
      { numRuns: 60 },
    );
  });

  // Euler: a pinned column bows in n half waves at n squared times its first load
  it('finds the modes one after the other, in one, two and three half waves', () => {
    const factors = pinnedColumns(1e8)
      .modes(3)
      .map(({ factor }) => (factor * 100 ** 2) / (1e8 * Math.PI ** 2));
    expect(factors).toHaveLength(3);
    factors.forEach((factor, i) => expect(off(factor, (i + 1) ** 2)).toBeLessThan(0.001));
  });

  it('shows which column gives way: the soft one moves, the stiff one stays', () => {
    const sketch = pinnedColumns(3e8, 1e8);
    const [first] = sketch.modes(1);
    expect(shiftOf(sketch, first!.moves, (n) => n.u === 50)).toBeCloseTo(1, 9);
    expect(shiftOf(sketch, first!.moves, (n) => n.u === 0)).toBeLessThan(1e-4);
  });

  it('finds one load where two columns buckle at the same', () => {
    expect(off(pinnedColumns(1e8, 1e8).factor(), pinnedColumns(1e8).factor())).toBeLessThan(1e-6);
  });

  it('has no mode where nothing is pushed, or all is pulled', () => {
    expect(pinnedColumns(1e8, 2e8).modes(3, 0)).toEqual([]);
    expect(pinnedColumns(1e8, 2e8).modes(3, -1)).toEqual([]);
  });
});
