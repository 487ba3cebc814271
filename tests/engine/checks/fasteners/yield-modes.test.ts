import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reductionTerm } from '../../../../src/engine/checks/fasteners/reduction-term.ts';
import { yieldLoads, type ShearPlane, type YieldMode } from '../../../../src/engine/checks/fasteners/yield-modes.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

const PLANE: ShearPlane = {
  main: { FePsi: 5600, lengthIn: 3.5 },
  side: { FePsi: 3150, lengthIn: 1.5 },
  diameterIn: 0.5,
  FybPsi: 45_000,
  gapIn: 0,
  planes: 1,
};

const anyPlane = fc.record({
  main: fc.record({
    FePsi: fc.double({ min: 1500, max: 9000, noNaN: true }),
    lengthIn: fc.double({ min: 0.5, max: 10, noNaN: true }),
  }),
  side: fc.record({
    FePsi: fc.double({ min: 1500, max: 90_000, noNaN: true }),
    lengthIn: fc.double({ min: 0.05, max: 5, noNaN: true }),
  }),
  diameterIn: fc.double({ min: 0.1, max: 1, noNaN: true }),
  FybPsi: fc.double({ min: 45_000, max: 100_000, noNaN: true }),
  gapIn: fc.constant(0),
  planes: fc.constant<1>(1),
});

const loadOf = (mode: YieldMode, plane: ShearPlane): number =>
  yieldLoads(plane).find((load) => load.mode === mode)?.loadLb ?? NaN;

/** The equations as NDS 2018 Table 12.3.1A prints them, with its k1, k2 and k3 and without Rd (from memory). */
function printed(mode: YieldMode, { main, side, diameterIn: D, FybPsi: Fyb }: ShearPlane): number {
  const Re = main.FePsi / side.FePsi;
  const Rt = main.lengthIn / side.lengthIn;
  const k1 = (Math.sqrt(Re + 2 * Re ** 2 * (1 + Rt + Rt ** 2) + Rt ** 2 * Re ** 3) - Re * (1 + Rt)) / (1 + Re);
  const k2 = -1 + Math.sqrt(2 * (1 + Re) + (2 * Fyb * (1 + 2 * Re) * D ** 2) / (3 * main.FePsi * main.lengthIn ** 2));
  const k3 =
    -1 + Math.sqrt((2 * (1 + Re)) / Re + (2 * Fyb * (2 + Re) * D ** 2) / (3 * main.FePsi * side.lengthIn ** 2));
  return {
    Im: D * main.lengthIn * main.FePsi,
    Is: D * side.lengthIn * side.FePsi,
    II: k1 * D * side.lengthIn * side.FePsi,
    IIIm: (k2 * D * main.lengthIn * main.FePsi) / (1 + 2 * Re),
    IIIs: (k3 * D * side.lengthIn * main.FePsi) / (2 + Re),
    IV: D ** 2 * Math.sqrt((2 * main.FePsi * Fyb) / (3 * (1 + Re))),
  }[mode];
}

/**
 * Equilibrium of the shank itself, found by halving: in a piece where it turns the wood presses one way as far as it is
 * pushed and the other way beyond; in a piece where it bends it is pressed one way up to the hinge.
 */
function inBalance(plane: ShearPlane, main: 'turns' | 'hinges', side: 'turns' | 'hinges'): number {
  const { diameterIn: D, FybPsi, gapIn } = plane;
  const momentAtPlane = (motion: 'turns' | 'hinges', Fe: number, l: number, P: number): number => {
    const q = Fe * D;
    if (motion === 'hinges') return (P * P) / (2 * q) - (FybPsi * D ** 3) / 6;
    const reversed = (l - P / q) / 2;
    return (q * (l - reversed) ** 2) / 2 - q * reversed * (l - reversed / 2);
  };
  const left = (P: number): number =>
    momentAtPlane(main, plane.main.FePsi, plane.main.lengthIn, P) +
    momentAtPlane(side, plane.side.FePsi, plane.side.lengthIn, P) +
    P * gapIn;
  let [low, high] = [0, 1e6];
  for (let i = 0; i < 100; i += 1) {
    const middle = (low + high) / 2;
    if (left(middle) < 0) low = middle;
    else high = middle;
  }
  return low;
}

const MODES: readonly YieldMode[] = ['Im', 'Is', 'II', 'IIIm', 'IIIs', 'IV'];

describe('yield of a shank between two pieces', () => {
  it.each(MODES)('mode %s is that of NDS Table 12.3.1A where the pieces touch', (mode) => {
    fc.assert(
      fc.property(anyPlane, (plane) => {
        expect(loadOf(mode, plane) / printed(mode, plane)).toBeCloseTo(1, 6);
      }),
    );
  });

  it.each([
    ['II', 'turns', 'turns'],
    ['IIIm', 'turns', 'hinges'],
    ['IIIs', 'hinges', 'turns'],
    ['IV', 'hinges', 'hinges'],
  ] as const)('mode %s over a gap is in balance: main %s, side %s (statics of the shank)', (mode, main, side) => {
    for (const gapIn of [0, 0.125, 0.75, 2]) {
      const plane = { ...PLANE, gapIn };
      expect(loadOf(mode, plane) / inBalance(plane, main, side)).toBeCloseTo(1, 9);
    }
  });

  it('a worked line: 1/2 in. shank, main 5600 psi by 3.5 in., side 3150 psi by 1.5 in.', () => {
    // mode IV by hand: q 2800 and 1575 lb/in, M = 45000 / 48 = 937.5; P^2 (1/5600 + 1/3150) = 1875
    expect(loadOf('IV', PLANE)).toBeCloseTo(Math.sqrt(1875 / (1 / 5600 + 1 / 3150)), 6);
    // mode Is by hand: 3150 x 0.5 x 1.5
    expect(loadOf('Is', PLANE)).toBe(2362.5);
  });

  it('a wider gap never carries more, and lets crushing be', () => {
    const loads = [0, 0.25, 0.5, 1, 3].map((gapIn) => yieldLoads({ ...PLANE, gapIn }));
    for (const mode of ['II', 'IIIm', 'IIIs', 'IV'] as const) {
      const along = loads.map((all) => all.find((load) => load.mode === mode)?.loadLb ?? NaN);
      expect([...along].sort((a, b) => b - a)).toEqual(along);
      expect(new Set(along).size).toBe(along.length);
    }
    expect(loads.map((all) => all[0]?.loadLb)).toEqual(loads.map(() => 9800));
  });

  it('what is main and what is side may be named the other way round', () => {
    const turned = { ...PLANE, main: PLANE.side, side: PLANE.main };
    expect(loadOf('IIIm', turned)).toBeCloseTo(loadOf('IIIs', PLANE), 9);
    expect(loadOf('II', turned)).toBeCloseTo(loadOf('II', PLANE), 9);
  });

  it('with two planes the main piece still crushes once, the other modes count twice, and II and IIIm cannot be', () => {
    const both = yieldLoads({ ...PLANE, planes: 2 });
    expect(both.map(({ mode }) => mode)).toEqual(['Im', 'Is', 'IIIs', 'IV']);
    expect(both.map(({ loadLb }) => loadLb)).toEqual(
      (['Im', 'Is', 'IIIs', 'IV'] as const).map((mode) => (mode === 'Im' ? 1 : 2) * loadOf(mode, PLANE)),
    );
  });

  it.each([1, 2] as const)('writes steps that another calculator redoes, planes %i', (planes) => {
    expect(redoFaults((note) => yieldLoads({ ...PLANE, gapIn: 0.25, planes }, note))).toEqual([]);
  });

  it('refuses lengths, strengths and gaps that are none', () => {
    expect(() => yieldLoads({ ...PLANE, gapIn: -0.1 })).toThrow(MisuseError);
    expect(() => yieldLoads({ ...PLANE, diameterIn: 0 })).toThrow(MisuseError);
    expect(() => yieldLoads({ ...PLANE, main: { FePsi: NaN, lengthIn: 3 } })).toThrow(MisuseError);
  });
});

describe('reduction term (NDS 2018 Table 12.3.1B)', () => {
  it.each([
    ['Im', 0.5, 0.5, 0, 4],
    ['Is', 0.5, 0.5, 90, 5],
    ['II', 0.5, 0.5, 45, 4.05],
    ['IV', 0.5, 0.371, 90, 4],
    ['IV', 0.162, 0.162, 90, 2.2],
    ['IV', 0.192, 0.192, 0, 2.42],
    // a root thinner than 1/4 in. in a thread of 1/4 in.: KD 2.23 of the root, times 1.25
    ['IIIs', 0.25, 0.173, 90, 2.7875],
    // a screw thinner than 1/4 in.: KD of its nominal diameter
    ['IV', 0.19, 0.152, 0, 2.4],
  ] as const)('of mode %s, %f in., bearing %f in., at %i deg is %f', (mode, nominalIn, diameterIn, angleDeg, Rd) => {
    const shank = { nominalIn, diameterIn, angleDeg };
    expect(reductionTerm(mode, shank)).toBeCloseTo(Rd, 10);
    expect(redoFaults((note) => reductionTerm(mode, shank, note))).toEqual([]);
  });

  it('refuses an angle over 90 degrees', () => {
    expect(() => reductionTerm('IV', { nominalIn: 0.5, diameterIn: 0.5, angleDeg: 91 })).toThrow(MisuseError);
  });
});
