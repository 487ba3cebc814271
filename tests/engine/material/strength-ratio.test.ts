import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knotBendingRatio, knotCompressionRatio } from '../../../src/engine/material/knots.ts';
import {
  logNotLookedAt,
  strengthRatio,
  type StrengthRatioAnswer,
} from '../../../src/engine/material/strength-ratio.ts';
import type { Log, Seen } from '../../../src/engine/project/model.ts';
import { inches } from '../../../src/engine/units.ts';
import { aLog, aSeen, frozen } from './samples.ts';

const ratios = (log: Log) => {
  const answer = strengthRatio(log);
  if (!answer.ok) throw new Error(answer.reason.code);
  return { bending: answer.ratios.bending, compression: answer.ratios.compression, says: answer.heldBackBy.code };
};
const ratiosOf = (seen: Partial<Seen>) => ratios(aLog({ seen: aSeen(seen) }));
const refusalOf = (seen: Partial<Seen>): string | null => {
  const answer = strengthRatio(aLog({ seen: aSeen(seen) }));
  return answer.ok ? null : answer.reason.code;
};

/** An answer with its steps told, to be compared whole. */
const told = (answer: StrengthRatioAnswer) =>
  answer.ok
    ? [answer, answer.ratios.bendingSteps(), answer.ratios.compressionSteps()].map((part) => JSON.stringify(part))
    : answer;

/** Second moment of a wedge of the unit circle about a line square to its middle, by the midpoint rule over r and t. */
function wedgeOverCircle(halfAngle: number): { readonly inertia: number; readonly area: number } {
  const n = 400;
  let inertia = 0;
  let area = 0;
  for (let i = 0; i < n; i++) {
    const r = (i + 0.5) / n;
    for (let j = 0; j < n; j++) {
      const t = -halfAngle + (2 * halfAngle * (j + 0.5)) / n;
      const dA = r * (1 / n) * ((2 * halfAngle) / n);
      inertia += (r * Math.cos(t)) ** 2 * dA;
      area += dA;
    }
  }
  return { inertia: inertia / (Math.PI / 4), area: area / Math.PI };
}

describe('knots as wedges', () => {
  it('four 2 in. knots in one foot of a 10.2 in. log leave 0.5039 in bending', () => {
    // hand: a = asin(2 / 10.2) = 0.197360; (a + sin a cos a) / pi = 0.124025; 1 - 4 x 0.124025
    expect(knotBendingRatio([2, 2, 2, 2], inches(10.2))).toBeCloseTo(0.5039, 4);
  });

  // proof [log.knots]: closed-form - second moment and area of the wedge, summed numerically over the sector
  it('[log.knots] a wedge takes its share of the second moment and of the area of the circle', () => {
    for (const share of [0.05, 0.2, 1 / 3]) {
      const wedge = wedgeOverCircle(Math.asin(share));
      expect(1 - knotBendingRatio([share], inches(1))).toBeCloseTo(wedge.inertia, 5);
      expect(1 - knotCompressionRatio([share], inches(1))).toBeCloseTo(wedge.area, 5);
    }
  });

  it('no knot leaves everything, a knot from face to face takes everything on its side', () => {
    expect(knotBendingRatio([], inches(9))).toBe(1);
    expect(knotBendingRatio([9], inches(9))).toBeCloseTo(0.5, 12);
    expect(knotCompressionRatio([9], inches(9))).toBeCloseTo(0.5, 12);
  });

  it('refuses widths and diameters that cannot be', () => {
    for (const widths of [[0], [-1], [NaN], [9.1]]) {
      expect(() => knotBendingRatio(widths, inches(9))).toThrow('knotWidth');
    }
    expect(() => knotCompressionRatio([1], inches(0))).toThrow('diameterAtKnots');
  });

  it('a wider knot, one more knot or a thinner log never raises the ratio', () => {
    const width = fc.double({ min: 0.1, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(width, { minLength: 1, maxLength: 6 }),
        width,
        fc.double({ min: 9, max: 20, noNaN: true }),
        (knots, more, d) => {
          for (const ratio of [knotBendingRatio, knotCompressionRatio]) {
            const now = ratio(knots, inches(d));
            expect(ratio([...knots, more], inches(d))).toBeLessThan(now);
            expect(
              ratio(
                knots.map((k) => k * 1.1),
                inches(d),
              ),
            ).toBeLessThan(now);
            expect(ratio(knots, inches(d * 0.9))).toBeLessThan(now);
          }
        },
      ),
    );
  });
});

describe('strength ratio of a log', () => {
  it('slope of grain follows ASTM D245 Table 1 (from memory), the steeper row between two', () => {
    const knotless = (grainSlope1In: number) => ratiosOf({ worstKnotIn: 0, grainSlope1In });
    expect(knotless(6)).toMatchObject({ bending: 0.4, compression: 0.56, says: 'logHeldByGrain' });
    expect(knotless(7.9)).toMatchObject({ bending: 0.4, compression: 0.56 });
    expect(knotless(8)).toMatchObject({ bending: 0.53, compression: 0.66 });
    expect(knotless(10)).toMatchObject({ bending: 0.61, compression: 0.74 });
    expect(knotless(12)).toMatchObject({ bending: 0.69, compression: 0.82 });
    expect(knotless(14)).toMatchObject({ bending: 0.74, compression: 0.87 });
  });

  it('a log without a fault is never taken above 0.75 in bending and 0.93 in compression', () => {
    expect(ratiosOf({ worstKnotIn: 0, grainSlope1In: 200 })).toEqual({
      bending: 0.75,
      compression: 0.93,
      says: 'logHeldByBestRatio',
    });
  });

  it('a log that nobody looked at takes 0.40 and 0.56', () => {
    const unseen = aLog({ seen: null });
    expect(ratios(unseen)).toEqual({ bending: 0.4, compression: 0.56, says: 'logHeldByNotLookedAt' });
    expect(logNotLookedAt(unseen)).toBe(true);
  });

  it('the side that was not looked at takes the stated lowest', () => {
    const noKnots = { worstKnotIn: null, knotsInWorstFootIn: [] };
    expect(ratiosOf(noKnots)).toMatchObject({ bending: 0.4, says: 'logHeldByKnotsNotMeasured' });
    expect(ratiosOf({ grainSlope1In: null })).toMatchObject({ bending: 0.4, says: 'logHeldByGrainNotRead' });
    expect(logNotLookedAt(aLog({ seen: aSeen(noKnots) }))).toBe(true);
    expect(logNotLookedAt(aLog({ seen: aSeen({ grainSlope1In: null }) }))).toBe(true);
    expect(logNotLookedAt(aLog())).toBe(false);
  });

  // one knot of at most a third of the diameter leaves more than 0.75 in bending: it shows in compression first
  const inCompression = (knots: readonly number[], diameter: number) => knotCompressionRatio(knots, inches(diameter));

  it('knots under bark of unknown thickness count as not measured', () => {
    const seen = aSeen({ worstKnotIn: 2.8, knotsInWorstFootIn: [2.8] });
    expect(ratios(aLog({ seen, bark: 'on' })).says).toBe('logHeldByKnotsNotMeasured');
    expect(ratios(aLog({ seen, bark: 'on', barkIn: 0.5 })).compression).toBeCloseTo(inCompression([2.8], 9), 12);
  });

  it('knots are judged at their place, or at the thinnest station when no place is given', () => {
    const seen = { worstKnotIn: 3, knotsInWorstFootIn: [3], grainSlope1In: 20 };
    expect(ratiosOf(seen).compression).toBeCloseTo(inCompression([3], 10), 12);
    expect(ratiosOf({ ...seen, knotAtFromButtIn: 120 }).compression).toBeCloseTo(inCompression([3], 11), 12);
    expect(ratiosOf({ ...seen, knotAtFromButtIn: 900 }).compression).toBeCloseTo(inCompression([3], 10), 12);
  });

  it('the smaller calliper and the bark taken off count where knots sit', () => {
    const stations = [
      { fromButtIn: 0, diameterIn: 12, acrossIn: 11 },
      { fromButtIn: 100, diameterIn: 12 },
    ];
    const seen = aSeen({ worstKnotIn: 3, knotsInWorstFootIn: [3], knotAtFromButtIn: 0 });
    const log = aLog({ bark: 'on', barkIn: 0.25, stations, seen });
    expect(ratios(log).compression).toBeCloseTo(inCompression([3], 10.5), 12);
  });

  it('the listed knots of the worst foot count together; a wider knot elsewhere counts by itself', () => {
    const foot = [2, 2, 2, 2];
    expect(ratiosOf({ worstKnotIn: 2, knotsInWorstFootIn: foot }).bending).toBeCloseTo(
      knotBendingRatio(foot, inches(10)),
      12,
    );
    const elsewhere = { worstKnotIn: 3.3, knotsInWorstFootIn: [0.5], knotAtFromButtIn: 0 };
    expect(ratiosOf(elsewhere).compression).toBeCloseTo(inCompression([3.3], 10), 12);
    expect(ratiosOf({ worstKnotIn: null, knotsInWorstFootIn: foot }).says).toBe('logHeldByKnots');
  });

  it('[log.knots] the widest knot alone says nothing of the others in its foot: the lowest ratios, as if nobody had looked', () => {
    const { knotsInWorstFootIn: _, ...unlisted } = aSeen({ worstKnotIn: 2 });
    for (const seen of [unlisted, { ...unlisted, knotsInWorstFootIn: [] }]) {
      const log = aLog({ seen });
      expect(ratios(log)).toEqual({ bending: 0.4, compression: 0.56, says: 'logHeldByFootUnlisted' });
      expect(logNotLookedAt(log)).toBe(true);
    }
    // zero is the widest of none: found none, and best log there is
    expect(ratiosOf({ worstKnotIn: 0, knotsInWorstFootIn: [] })).toMatchObject({ bending: 0.75, compression: 0.93 });
    // four knots as wide as the widest would leave 0.5039 of a 10.2 in. log: the widest by itself leaves 0.876
    expect(ratiosOf({ worstKnotIn: 2, knotsInWorstFootIn: [2] }).bending).toBe(0.75);
  });

  // proof [log.limits]: closed-form - the stated limits themselves, both sides of each
  it('[log.limits] past the stated limits a log is not answered', () => {
    expect(refusalOf({ grainSlope1In: 5.99 })).toBe('logGrainTooSteep');
    expect(refusalOf({ grainSlope1In: 6 })).toBe(null);
    expect(refusalOf({ worstKnotIn: 10 / 3 + 0.01 })).toBe('logKnotTooWide');
    expect(refusalOf({ worstKnotIn: 3.33 })).toBe(null);
    // listed or not, a knot over a third is past the method
    expect(refusalOf({ worstKnotIn: 10 / 3 + 0.01, knotsInWorstFootIn: [] })).toBe('logKnotTooWide');
    expect(refusalOf({ knotsInWorstFootIn: Array.from({ length: 10 }, () => 3) })).toBe('logKnotsTakeEverything');
  });

  it('straighter grain never lowers a ratio', () => {
    const slope = fc.double({ min: 6, max: 60, noNaN: true });
    fc.assert(
      fc.property(slope, slope, (a, b) => {
        const steep = ratiosOf({ grainSlope1In: Math.min(a, b) });
        const flat = ratiosOf({ grainSlope1In: Math.max(a, b) });
        expect(flat.bending).toBeGreaterThanOrEqual(steep.bending);
        expect(flat.compression).toBeGreaterThanOrEqual(steep.compression);
      }),
    );
  });

  it('leaves the log as it was', () => {
    const log = frozen(aLog({ seen: aSeen({ knotsInWorstFootIn: [1, 2, 1] }) }));
    expect(told(strengthRatio(log))).toEqual(told(strengthRatio(structuredClone(log))));
  });
});
