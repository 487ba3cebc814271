import { describe, expect, it } from 'vitest';
import { braceSections } from '../../../../src/engine/checks/brace/least-diameter.ts';
import { pushIndex } from '../../../../src/engine/frame/read-response.ts';
import { plainShed, WOOD, type Measures } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse } from '../sites.ts';
import { leastOf } from '../least-of.ts';

const CD = 1.15;

/** Least diameters of the first brace, even, under a push (pull below zero), from its lower to its upper end. */
function least(pushLb: number, braceEnd: Measures['braceEnd']): readonly number[] {
  const { context } = lineBench(plainShed({ braceEnd, postDiametersIn: [9, 9], beamDiametersIn: [12, 12] }));
  const responses = [handResponse(context, [[pushIndex(context.frame.layout, 0), pushLb]])];
  const { brace } = context.frame.mesh.braces[0]!;
  return leastOf(braceSections({ ...context, frame: { ...context.frame, responses } }, brace, 0));
}

describe('the thinnest brace that would do with its force held', () => {
  // P / (pi d2 / 4) = Fc CD turned round (NDS 3.6.3); a saddle takes up the whole of a brace thinner than its log
  it('[brace.crushing] is sqrt(4 P / (pi Fc CD)) all along a saddled brace that is pushed', () => {
    for (const d of least(9000, { kind: 'coped', depthIn: 0 })) {
      expect(d).toBeCloseTo(Math.sqrt((4 * 9000) / (Math.PI * WOOD.Fc * CD)), 5);
    }
  });

  // T / (pi d2 / 4) = Ft CD turned round (NDS 3.8.1)
  it('[brace.pull] is sqrt(4 T / (pi Ft CD)) where it is pulled', () => {
    for (const d of least(-9000, { kind: 'housed', depthIn: 1 })) {
      expect(d).toBeCloseTo(Math.sqrt((4 * 9000) / (Math.PI * WOOD.Ft * CD)), 5);
    }
  });

  // a flat 0.05 in. deep on a 9 in. post is 2 sqrt(9 x 0.05 - 0.05^2) = 1.338 in. wide: of a circle of diameter d it
  // takes up a strip of that width, area by the integral of 2 sqrt(R2 - x2), here in thin slices (plane geometry)
  it('[brace.crushing] grows at an end of which a narrow flat takes up a strip alone', () => {
    const [foot] = least(3000, { kind: 'flat', depthIn: 0.05 });
    const half = Math.sqrt(9 * 0.05 - 0.05 ** 2);
    const R = foot! / 2;
    const n = 20_000;
    const h = (2 * half) / n;
    let strip = 0;
    for (let i = 0; i < n; i++) strip += 2 * h * Math.sqrt(R * R - (-half + (i + 0.5) * h) ** 2);
    expect(R).toBeGreaterThan(half);
    expect(3000 / strip).toBeCloseTo(WOOD.Fc * CD, 1);
  });

  it('has no answer where no log in reach passes', () => {
    expect(least(1e8, { kind: 'coped', depthIn: 0 }).every((d) => d === Infinity)).toBe(true);
  });
});
