import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FrameModel, LoadState } from '../../../src/engine/solver/model.ts';
import { cutFiner, indexOf, movesOf, numberAt, simpson, solveFrame, withShortEnds } from './frames.ts';
import { bents, loadsOn } from './random-frames.ts';

const RUNS = { numRuns: 150, seed: 20 };

const braced = bents.map(({ model }) => model);
const bracedAndLoaded = braced.chain((model) => fc.tuple(fc.constant(model), loadsOn(model)));
const bracedAndTwiceLoaded = braced.chain((model) => fc.tuple(fc.constant(model), loadsOn(model), loadsOn(model)));

const largest = (values: ArrayLike<number>): number => Math.max(...Array.from(values, Math.abs));

/** Largest difference of two lists as a share of their largest number; infinite when one is longer. */
function off(values: ArrayLike<number>, expected: ArrayLike<number>): number {
  if (values.length !== expected.length) return Infinity;
  const difference = largest(Array.from(values, (value, i) => value - numberAt(expected, i)));
  return difference === 0 ? 0 : difference / largest(expected);
}

const nodeOf = (model: FrameModel, id: string) => {
  const node = model.nodes[indexOf(model.nodes, id)];
  if (!node) throw new Error(id);
  return node;
};

/** Sums of loads and reactions: u, w, moment about the origin, and the sum of absolute forces. The test's own count. */
function forceSums(model: FrameModel, load: LoadState, reactions: ArrayLike<number>): readonly number[] {
  const sums = [0, 0, 0, 0];
  const add = (at: { u: number; w: number }, u: number, w: number, turn: number) => {
    [u, w, at.u * w - at.w * u + turn, Math.abs(u) + Math.abs(w)].forEach((value, i) => {
      sums[i] = numberAt(sums, i) + value;
    });
  };
  load.nodes.forEach(({ node, u, w, turn = 0 }) => add(nodeOf(model, node), u, w, turn));
  model.supports.forEach(({ node }, i) =>
    add(
      nodeOf(model, node),
      numberAt(reactions, 3 * i),
      numberAt(reactions, 3 * i + 1),
      numberAt(reactions, 3 * i + 2),
    ),
  );
  for (const { element, fromU, toU, fromW, toW } of load.elements) {
    const { from, to } = model.elements[indexOf(model.elements, element)] ?? { from: '', to: '' };
    const a = nodeOf(model, from);
    const b = nodeOf(model, to);
    const length = Math.hypot(b.u - a.u, b.w - a.w);
    const u = (t: number) => fromU + t * (toU - fromU);
    const w = (t: number) => fromW + t * (toW - fromW);
    const moment = (t: number) => (a.u + t * (b.u - a.u)) * w(t) - (a.w + t * (b.w - a.w)) * u(t);
    const along = (f: (t: number) => number) => length * simpson(f, 0, 1, 2);
    add({ u: 0, w: 0 }, along(u), along(w), along(moment));
  }
  return sums;
}

/** Left for right: u and turns change sign. */
const mirrored = (model: FrameModel): FrameModel => ({
  ...model,
  nodes: model.nodes.map((node) => ({ ...node, u: -node.u })),
});
const mirroredLoad = (load: LoadState): LoadState => ({
  nodes: load.nodes.map((n) => ({ ...n, u: -n.u, turn: -(n.turn ?? 0) })),
  elements: load.elements.map((e) => ({ ...e, fromU: -e.fromU, toU: -e.toU })),
});
const flipped = (values: ArrayLike<number>): number[] => Array.from(values, (v, i) => (i % 3 === 1 ? v : -v));

describe('plane frames', () => {
  it('the reactions balance the loads in u, in w and about any point', () => {
    fc.assert(
      fc.property(bracedAndLoaded, ([model, load]) => {
        const { reactions, residual } = solveFrame(model, load);
        const [u = NaN, w = NaN, moment = NaN, size = NaN] = forceSums(model, load, reactions);
        expect(largest([u, w])).toBeLessThanOrEqual(1e-9 * size);
        expect(Math.abs(moment)).toBeLessThanOrEqual(1e-9 * size * 500);
        expect(residual).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  it('two loads together do what the two do one by one, in any proportion', () => {
    fc.assert(
      fc.property(bracedAndTwiceLoaded, ([model, one, two]) => {
        const half = <T extends object>(list: readonly T[]): T[] =>
          list.map(
            (entry) =>
              Object.fromEntries(
                Object.entries(entry).map(([key, value]) => [key, typeof value === 'number' ? value / 2 : value]),
              ) as T,
          );
        const both = solveFrame(model, {
          nodes: [...one.nodes, ...half(two.nodes)],
          elements: [...one.elements, ...half(two.elements)],
        });
        const a = solveFrame(model, one);
        const b = solveFrame(model, two);
        for (const key of ['moves', 'forces', 'reactions'] as const) {
          const sum = a[key].map((value, i) => value + numberAt(b[key], i) / 2);
          const room = 1e-9 * (largest(a[key]) + largest(b[key]));
          expect(largest(both[key].map((value, i) => value - numberAt(sum, i)))).toBeLessThanOrEqual(room);
        }
      }),
      RUNS,
    );
  });

  it('a load here moves there as the same load there moves here (Maxwell, Betti)', () => {
    fc.assert(
      fc.property(bracedAndTwiceLoaded, ([model, one, two]) => {
        const work = (load: LoadState, moves: Float64Array) =>
          load.nodes.reduce((sum, { node, u, w, turn = 0 }) => {
            const at = 3 * indexOf(model.nodes, node);
            return sum + u * numberAt(moves, at) + w * numberAt(moves, at + 1) + turn * numberAt(moves, at + 2);
          }, 0);
        const a = { ...one, elements: [] };
        const b = { ...two, elements: [] };
        const there = solveFrame(model, a).moves;
        const here = solveFrame(model, b).moves;
        const size = Math.sqrt(work(a, there) * work(b, here));
        expect(Math.abs(work(b, there) - work(a, here))).toBeLessThanOrEqual(1e-9 * size);
      }),
      RUNS,
    );
  });

  it('the mirror image answers with the mirror image', () => {
    fc.assert(
      fc.property(bracedAndLoaded, ([model, load]) => {
        const state = solveFrame(model, load);
        const image = solveFrame(mirrored(model), mirroredLoad(load));
        expect(off(image.moves, flipped(state.moves))).toBeLessThan(1e-9);
        expect(off(image.reactions, flipped(state.reactions))).toBeLessThan(1e-9);
        // seen from the other side pulls stay pulls, while what sags to the left of the walker hogs to his right
        const sides = Array.from(state.forces, (value, i) => (i % 3 === 0 ? value : -value));
        expect(off(image.forces, sides)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  it('the order in which nodes and elements are told changes nothing', () => {
    fc.assert(
      fc.property(bracedAndLoaded, ([model, load]) => {
        const told = {
          ...model,
          nodes: [...model.nodes].reverse(),
          elements: [...model.elements].reverse(),
        };
        const state = solveFrame(model, load);
        const again = solveFrame(told, load);
        const inOrder = model.nodes.flatMap(({ id }) => movesOf(told, again, id));
        expect(off(inOrder, state.moves)).toBeLessThan(1e-9);
        expect(off(again.reactions, state.reactions)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  it('an element told from its other end carries the same', () => {
    fc.assert(
      fc.property(bracedAndLoaded, ([model, load]) => {
        const turned: FrameModel = {
          ...model,
          elements: model.elements.map((element) =>
            element.kind === 'beam' && element.section.kind === 'round'
              ? {
                  ...element,
                  from: element.to,
                  to: element.from,
                  section: {
                    kind: 'round',
                    fromDiameterIn: element.section.toDiameterIn,
                    toDiameterIn: element.section.fromDiameterIn,
                  },
                }
              : element,
          ),
        };
        const isBeam = new Set(model.elements.filter(({ kind }) => kind === 'beam').map(({ id }) => id));
        const turnedLoad = {
          nodes: load.nodes,
          elements: load.elements.map((e) =>
            isBeam.has(e.element) ? { ...e, fromU: e.toU, toU: e.fromU, fromW: e.toW, toW: e.fromW } : e,
          ),
        };
        const state = solveFrame(model, load);
        const other = solveFrame(turned, turnedLoad);
        expect(off(other.moves, state.moves)).toBeLessThan(1e-9);
        expect(off(other.reactions, state.reactions)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  it('cutting every tapered member into short elements changes no movement and no reaction', () => {
    fc.assert(
      fc.property(bracedAndLoaded, fc.constantFrom(2, 5, 12), ([model, { nodes }], pieces) => {
        const load = { nodes, elements: [] };
        const state = solveFrame(model, load);
        const fine = cutFiner(model, pieces);
        const finer = solveFrame(fine, load);
        expect(off(finer.moves.slice(0, state.moves.length), state.moves)).toBeLessThan(1e-7);
        expect(off(finer.reactions, state.reactions)).toBeLessThan(1e-7);
        expect(finer.residual).toBeLessThan(1e-9);
      }),
      { ...RUNS, numRuns: 60 },
    );
  });

  it('the shortest elements allowed keep the balance', () => {
    fc.assert(
      fc.property(bracedAndLoaded, ([model, { nodes }]) => {
        const load = { nodes, elements: [] };
        const state = solveFrame(model, load);
        const short = solveFrame(withShortEnds(model), load);
        expect(short.residual).toBeLessThan(1e-9);
        expect(off(short.reactions, state.reactions)).toBeLessThan(1e-3);
        expect(off(short.moves.slice(0, state.moves.length), state.moves)).toBeLessThan(1e-3);
      }),
      { ...RUNS, numRuns: 60 },
    );
  });

  it('leaves model and load as they were', () => {
    fc.assert(
      fc.property(bracedAndLoaded, ([model, load]) => {
        const before = JSON.stringify([model, load]);
        solveFrame(model, load);
        expect(JSON.stringify([model, load])).toBe(before);
      }),
      { ...RUNS, numRuns: 10 },
    );
  });
});
