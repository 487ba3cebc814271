import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  pullAndBending,
  rectangularPushAndBending,
  resultantMoment,
  roundPushAndBending,
} from '../../../../src/engine/checks/wood/interaction.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

const stress = fc.double({ min: 0, max: 2000, noNaN: true });
const allowable = fc.double({ min: 50, max: 3000, noNaN: true });
const plane = (fbPsi: number, FbAllowablePsi: number, FcEPsi: number) => ({ fbPsi, FbAllowablePsi, FcEPsi });

/**
 * Greatest moment of a pinned bar under a sideways load w sin(pi x/L) and a push P, by marching EI y'' = -(M0 + P y)
 * from one end and choosing the slope there so that the far end stays in place.
 */
function beamColumnMoment(w: number, L: number, EI: number, P: number): number {
  const shape = (slope: number, load: number): { end: number; middle: number } => {
    const n = 20_000;
    const h = L / n;
    let [y, v, middle] = [0, slope, 0];
    const bend = (x: number, yy: number): number =>
      -(load * (L / Math.PI) ** 2 * Math.sin((Math.PI * x) / L) + P * yy) / EI;
    for (let i = 0; i < n; i++) {
      const x = i * h;
      const v1 = v + (h / 2) * bend(x, y);
      y += h * v1;
      v = v1 + (h / 2) * bend(x + h, y);
      if (i + 1 === n / 2) middle = y;
    }
    return { end: y, middle };
  };
  // linear in the slope: two marches give it
  const loaded = shape(0, w);
  const tilted = shape(1, 0);
  const slope = -loaded.end / tilted.end;
  return w * (L / Math.PI) ** 2 + P * (loaded.middle + slope * tilted.middle);
}

describe('push and bending', () => {
  // proof [post.bending]: closed-form - moment of a pinned beam-column marched numerically against M / (1 - fc/FcE)
  it('[post.bending] the bending term grows as the moment of a pinned beam-column does', () => {
    const [w, L, EI] = [2, 120, 5e7];
    const Pe = (Math.PI ** 2 * EI) / L ** 2;
    const first = w * (L / Math.PI) ** 2;
    for (const share of [0.1, 0.4, 0.7]) {
      const grown = beamColumnMoment(w, L, EI, share * Pe) / first;
      // fc so small against Fc' that only the bending term is left
      expect(roundPushAndBending(share, 1e9, 1, 1, 1)).toBeCloseTo(grown, 3);
    }
  });

  it('[post.bending] push alone counts with its square, bending alone with its ratio', () => {
    expect(roundPushAndBending(500, 1000, 0, 1500, 4000)).toBeCloseTo(0.25, 12);
    expect(roundPushAndBending(0, 1000, 600, 1500, 4000)).toBeCloseTo(0.4, 12);
    expect(roundPushAndBending(500, 1000, 600, 1500, 1000)).toBeCloseTo(0.25 + 0.4 / 0.5, 12);
    expect(roundPushAndBending(500, 1000, 600, 1500, Infinity)).toBeCloseTo(0.65, 12);
  });

  it('[post.bending] a push at or over the Euler stress is infinite, never a number that could pass, never NaN', () => {
    expect(roundPushAndBending(1000, 900, 0, 1500, 1000)).toBe(Infinity);
    expect(roundPushAndBending(1001, 900, 0, 1500, 1000)).toBe(Infinity);
    expect(rectangularPushAndBending(500, 900, plane(0, 1500, 400), plane(0, 1500, 900), 2000)).toBe(Infinity);
    expect(rectangularPushAndBending(500, 900, plane(0, 1500, 900), plane(0, 1500, 400), 2000)).toBe(Infinity);
    expect(rectangularPushAndBending(0, 900, plane(2000, 1500, 900), plane(0, 1500, 400), 2000)).toBe(Infinity);
    // fc/FcE2 + (fb1/FbE)2 = 0.75 + 0.25
    expect(rectangularPushAndBending(300, 900, plane(500, 1500, 900), plane(0, 1500, 400), 1000)).toBe(Infinity);
  });

  it('[post.bending] more push or more bending never lowers the sum', () => {
    fc.assert(
      fc.property(stress, allowable, stress, allowable, allowable, (fcPsi, Fc, fbPsi, Fb, FcE) => {
        const sum = roundPushAndBending(fcPsi, Fc, fbPsi, Fb, FcE);
        expect(Number.isNaN(sum)).toBe(false);
        expect(roundPushAndBending(fcPsi + 1, Fc, fbPsi, Fb, FcE)).toBeGreaterThanOrEqual(sum);
        expect(roundPushAndBending(fcPsi, Fc, fbPsi + 1, Fb, FcE)).toBeGreaterThanOrEqual(sum);
      }),
      { seed: 51 },
    );
  });

  it('[post.bending] a rectangle bent in one plane, held against rolling, is judged as the round form', () => {
    fc.assert(
      fc.property(stress, allowable, stress, allowable, allowable, (fcPsi, Fc, fbPsi, Fb, FcE) => {
        const round = roundPushAndBending(fcPsi, Fc, fbPsi, Fb, FcE);
        expect(rectangularPushAndBending(fcPsi, Fc, plane(fbPsi, Fb, FcE), plane(0, Fb, FcE), Infinity)).toBe(round);
        expect(rectangularPushAndBending(fcPsi, Fc, plane(0, Fb, FcE), plane(fbPsi, Fb, FcE), Infinity)).toBe(round);
      }),
      { seed: 52 },
    );
  });

  it('[post.bending] both planes of a rectangle add, the weak one lessened by rolling', () => {
    // (0.2)2 + 0.3/(1 - 0.2) + 0.2/(1 - 0.25 - 0.09), by hand
    const sum = rectangularPushAndBending(200, 1000, plane(300, 1000, 1000), plane(200, 1000, 800), 1000);
    expect(sum).toBeCloseTo(0.04 + 0.375 + 0.2 / 0.66, 12);
  });

  it('[post.bending] two moments at right angles add as a vector, whatever their signs', () => {
    expect(resultantMoment(-3000, 4000)).toBe(5000);
    expect(resultantMoment(0, -4000)).toBe(4000);
    expect(() => resultantMoment(Number.NaN, 0)).toThrow(MisuseError);
  });
});

describe('pull and bending', () => {
  // proof [post.tension]: closed-form - sums of both edges written out
  it('[post.tension] the pulled edge governs, unless bending is great and the pressed edge is weak', () => {
    expect(pullAndBending(300, 600, 400, 1000, 1000)).toBeCloseTo(0.9, 12);
    expect(pullAndBending(10, 600, 900, 1800, 700)).toBeCloseTo(890 / 700, 12);
    expect(pullAndBending(300, 600, 0, 1000, 1000)).toBeCloseTo(0.5, 12);
  });

  it('refuses stresses below zero and allowables that are none', () => {
    expect(() => pullAndBending(-1, 600, 0, 1000, 1000)).toThrow(MisuseError);
    expect(() => pullAndBending(1, 0, 0, 1000, 1000)).toThrow(MisuseError);
    expect(() => roundPushAndBending(-1, 600, 0, 1000, 1000)).toThrow(MisuseError);
    expect(() => roundPushAndBending(1, 600, 0, 1000, 0)).toThrow(MisuseError);
    expect(() => roundPushAndBending(1, 600, 0, Number.NaN, 1000)).toThrow(MisuseError);
    expect(() => rectangularPushAndBending(1, 600, plane(0, 0, 900), plane(0, 1, 900), 500)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => resultantMoment(-3000, 4100, note))).toEqual([]);
    expect(redoFaults((note) => roundPushAndBending(300, 900, 400, 1200, 1100, note))).toEqual([]);
    expect(
      redoFaults((note) =>
        rectangularPushAndBending(200, 950, plane(300, 1050, 1000), plane(200, 1100, 800), 1500, note),
      ),
    ).toEqual([]);
    expect(redoFaults((note) => pullAndBending(100, 600, 400, 1200, 1100, note))).toEqual([]);
  });
});
