import { describe, expect, it } from 'vitest';
import { insideElement } from '../../../src/engine/solver/inside-element.ts';
import type { FrameModel, LoadState } from '../../../src/engine/solver/model.ts';
import { flexibilityOf } from '../../../src/engine/solver/section.ts';
import { area, between, downOn, inertia, movesOf, numberAt, roundMember, simpson, solveFrame } from './frames.ts';

const E = 1.2e6;
const L = 144;
const TIP = 6;
const RATIOS = [1, 1.1, 1.5, 2, 3];
const relative = (value: number, expected: number) => Math.abs(value / expected - 1);

/** Butt held fast at the origin, tip out at `angle`, cut into pieces at `cuts`. */
function cantilever(ratio: number, angle: number, cuts: readonly number[]): FrameModel {
  const butt = { u: 0, w: 0 };
  const tip = { u: L * Math.cos(angle), w: L * Math.sin(angle) };
  const member = roundMember('log', ['butt', butt, 'tip', tip], [ratio * TIP, TIP], E, cuts);
  return {
    nodes: [{ id: 'butt', ...butt }, { id: 'tip', ...tip }, ...member.nodes],
    elements: member.elements,
    supports: [{ node: 'butt', u: true, w: true, turn: true }],
  };
}

/** Movement of the tip square to the member, to the left of one who walks out on it. */
function tipAcross(model: FrameModel, load: LoadState, angle: number): number {
  const [u = NaN, w = NaN] = movesOf(model, solveFrame(model, load), 'tip');
  return w * Math.cos(angle) - u * Math.sin(angle);
}

function simpleBeam(ratio: number, cuts: readonly number[]): FrameModel {
  const a = { u: 0, w: 0 };
  const b = { u: L, w: 0 };
  const member = roundMember('log', ['a', a, 'b', b], [TIP, ratio * TIP], E, cuts);
  return {
    nodes: [{ id: 'a', ...a }, { id: 'b', ...b }, ...member.nodes],
    elements: member.elements,
    supports: [
      { node: 'a', u: true, w: true, turn: false },
      { node: 'b', u: false, w: true, turn: false },
    ],
  };
}

/** Sag at `p` of a simple beam under uniform load, from the unit-load integral. */
function uniformSag(ratio: number, w: number, p: number): number {
  const d = (x: number) => TIP * (1 + ((ratio - 1) * x) / L);
  const integrand = (x: number) =>
    (((w * x * (L - x)) / 2) * (x < p ? (x * (L - p)) / L : (p * (L - x)) / L)) / (E * inertia(d(x)));
  return simpson(integrand, 0, p) + simpson(integrand, p, L);
}

describe('tapered round members', () => {
  it.each(RATIOS)('give way at their ends as the integrals over 1/EI and 1/EA say (butt over tip %s)', (ratio) => {
    for (const [d1, d2] of [
      [TIP, ratio * TIP],
      [ratio * TIP, TIP],
    ] as const) {
      const give = flexibilityOf({
        kind: 'beam',
        id: 'x',
        from: 'a',
        to: 'b',
        E,
        section: { kind: 'round', fromDiameterIn: d1, toDiameterIn: d2 },
      });
      const EI = (t: number) => E * inertia(d1 + t * (d2 - d1));
      expect(
        relative(
          give.start,
          simpson((t) => (1 - t) ** 2 / EI(t), 0, 1),
        ),
      ).toBeLessThan(1e-10);
      expect(relative(give.cross, -simpson((t) => ((1 - t) * t) / EI(t), 0, 1))).toBeLessThan(1e-10);
      expect(
        relative(
          give.end,
          simpson((t) => t ** 2 / EI(t), 0, 1),
        ),
      ).toBeLessThan(1e-10);
      expect(
        relative(
          give.stretch,
          simpson((t) => 1 / (E * area(d1 + t * (d2 - d1))), 0, 1),
        ),
      ).toBeLessThan(1e-10);
    }
  });

  // tip load: int P x^2 / EI dx from the tip, with d straight, is P L^3/(3 E I2) times d2/d1
  it.each(RATIOS)('cantilever with a load at its tip: P L^3/(3 E I2) times d2/d1, butt over tip %s', (ratio) => {
    const expected = ((-1000 * L ** 3) / (3 * E * inertia(ratio * TIP))) * ratio;
    for (const angle of [0, Math.PI / 6, Math.PI / 2, (-2 * Math.PI) / 3]) {
      for (const cuts of [[], [0.2, 0.5, 0.9]]) {
        const push = { node: 'tip', u: 1000 * Math.sin(angle), w: -1000 * Math.cos(angle) };
        const moved = tipAcross(cantilever(ratio, angle, cuts), { nodes: [push], elements: [] }, angle);
        expect(relative(moved, expected)).toBeLessThan(1e-10);
      }
    }
  });

  // uniform load: int (w x^2/2) x / EI dx from the tip; with s = d/d1 the integrand is (s - 1)^3/s^4
  it.each([1.2, 1.5, 2, 3])('cantilever with a uniform load, butt over tip %s, in one element', (ratio) => {
    const k = ratio - 1;
    const s = ratio;
    const bracket = Math.log(s) + 3 / s - 3 / (2 * s ** 2) + 1 / (3 * s ** 3) - 11 / 6;
    const expected = ((-20 * L ** 4) / (2 * E * inertia(TIP))) * (bracket / k ** 4);
    const model = cantilever(ratio, 0, []);
    expect(relative(tipAcross(model, { nodes: [], elements: downOn(model.elements, 20) }, 0), expected)).toBeLessThan(
      1e-10,
    );
  });

  // two cantilevers from the middle, each with P/2: the sum of both tip movements is P L^3/(48 E) over pi/64 dm^2 d1 d2
  it.each(RATIOS)('simple beam with a load at midspan: I = pi/64 dm^2 d1 d2, butt over tip %s', (ratio) => {
    const dm = (TIP * (1 + ratio)) / 2;
    const expected = (-1000 * L ** 3) / (48 * E * ((Math.PI / 64) * dm ** 2 * TIP * ratio * TIP));
    const model = simpleBeam(ratio, [0.5]);
    const state = solveFrame(model, { nodes: [{ node: 'log.n1', u: 0, w: -1000 }], elements: [] });
    expect(relative(numberAt(movesOf(model, state, 'log.n1'), 1), expected)).toBeLessThan(1e-10);
  });

  it.each(RATIOS)('simple beam with a uniform load sags as the unit-load integral says, butt over tip %s', (ratio) => {
    const model = simpleBeam(ratio, []);
    const loads = downOn(model.elements, 20);
    const state = solveFrame(model, { nodes: [], elements: loads });
    for (const t of [0.1, 0.42, 0.5, 0.8]) {
      const inside = insideElement(model, 'log.1', t)(state, loads);
      expect(relative(-inside.across, uniformSag(ratio, 20, t * L))).toBeLessThan(1e-9);
      expect(inside.M).toBeCloseTo((20 * t * L * (L - t * L)) / 2, 6);
      expect(inside.V).toBeCloseTo(20 * (L / 2 - t * L), 8);
    }
  });

  it('stretches by N L/(E pi/4 d1 d2) under a pull, and under its own weight by the integral of the weight below', () => {
    const model = cantilever(2, -Math.PI / 2, []);
    const pulled = solveFrame(model, { nodes: [{ node: 'tip', u: 0, w: -5000 }], elements: [] });
    const stretch = (5000 * L) / ((E * Math.PI * TIP * 2 * TIP) / 4);
    expect(relative(-numberAt(movesOf(model, pulled, 'tip'), 1), stretch)).toBeLessThan(1e-12);

    // a load from 3 lb/in at the butt to 1 lb/in at the tip
    const hanging = { element: 'log.1', fromU: 0, toU: 0, fromW: -3, toW: -1 };
    const state = solveFrame(model, { nodes: [], elements: [hanging] });
    const below = (x: number) => simpson((y) => 3 - (2 * y) / L, x, L, 2);
    const own = simpson((x) => below(x) / (E * area(TIP * (2 - x / L))), 0, L);
    expect(relative(-numberAt(movesOf(model, state, 'tip'), 1), own)).toBeLessThan(1e-10);
    expect(insideElement(model, 'log.1', 0.25)(state, [hanging]).N).toBeCloseTo(below(L / 4), 8);
  });

  it('reads the same inside an element as at a node put there, for loads straight but not even, in any direction', () => {
    const a = { u: 3, w: 5 };
    const b = { u: 97, w: -60 };
    const build = (cuts: readonly number[]): FrameModel => {
      const member = roundMember('log', ['a', a, 'b', b], [5, 11], E, cuts);
      return {
        nodes: [{ id: 'a', ...a }, { id: 'b', ...b }, ...member.nodes],
        elements: member.elements,
        supports: [
          { node: 'a', u: true, w: true, turn: true },
          { node: 'b', u: false, w: true, turn: { lbInPerRad: 2e6 } },
        ],
      };
    };
    const t = 0.37;
    const at = (from: number, to: number) => from + t * (to - from);
    const whole = build([]);
    const cut = build([t]);
    const load = { element: 'log.1', fromU: 4, toU: -9, fromW: -30, toW: 12 };
    const halves = [
      { ...load, toU: at(4, -9), toW: at(-30, 12) },
      { ...load, element: 'log.2', fromU: at(4, -9), fromW: at(-30, 12) },
    ];
    const state = solveFrame(whole, { nodes: [], elements: [load] });
    const cutState = solveFrame(cut, { nodes: [], elements: halves });
    const inside = insideElement(whole, 'log.1', t)(state, [load]);
    const [N = NaN, V = NaN, M = NaN] = cutState.forces.slice(3, 6);
    const [u = NaN, w = NaN] = movesOf(cut, cutState, 'log.n1');
    const length = Math.hypot(b.u - a.u, b.w - a.w);
    const across = (w * (b.u - a.u) - u * (b.w - a.w)) / length;
    expect(relative(inside.N, N)).toBeLessThan(1e-10);
    expect(relative(inside.V, V)).toBeLessThan(1e-10);
    expect(relative(inside.M, M)).toBeLessThan(1e-10);
    expect(relative(inside.across, across)).toBeLessThan(1e-10);
    expect(cut.nodes[2]).toMatchObject(between(a, b, t));
  });
});
