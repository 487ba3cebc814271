import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { SNOW_THRESHOLDS } from '../../src/data/loads/snow-thresholds.ts';
import {
  clearHeight,
  driftHeight,
  driftPeak,
  greaterDrift,
  stepDrift,
  windwardDriftHeight,
} from '../../src/engine/loads/site/drift.ts';
import { separatedDrift, truncatedPeak } from '../../src/engine/loads/site/drift-over-gap.ts';
import { slides, slidingReach, slidingSnow } from '../../src/engine/loads/site/sliding.ts';
import { flatRoofSnow, leastLowSlopeSnow, rainOnSnowSurcharge, snowDensity } from '../../src/engine/loads/site/snow.ts';
import { narrowLeeSnow, needsUnbalanced, ridgeStrip, windwardSnow } from '../../src/engine/loads/site/unbalanced.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import heights from './snow-drift-heights.json' with { type: 'json' };
import stepNote from './snow-step-drift.json' with { type: 'json' };

const note = fixtureOf(
  z.strictObject({ groundSnowPsf: z.number(), is: z.number(), upperLengthFt: z.number(), stepFt: z.number() }),
  z.strictObject({
    densityPcf: z.number(),
    driftHeightFt: z.number(),
    driftPsf: z.number(),
    greatestPsf: z.number(),
  }),
).parse(stepNote);
const example = fixtureOf(
  z.strictObject({ groundSnowPsf: z.number(), upperLengthFt: z.number(), lowerLengthFt: z.number() }),
  z.strictObject({ leewardFt: z.number(), windwardFt: z.number() }),
).parse(heights);

/** A hair on either side of a threshold. */
const HAIR = 1e-9;
const T = SNOW_THRESHOLDS;

describe('drift beside a higher roof', () => {
  it.each(note.rows)('[engineering note on step drifts] $row', ({ in: given, out }) => {
    const { abs } = note.tolerance;
    const gamma = snowDensity(given.groundSnowPsf);
    const balancedPsf = flatRoofSnow({ groundSnowPsf: given.groundSnowPsf, ce: 1, ct: 1, is: 1 });
    const hd = driftHeight({ ...given, fetchFt: given.upperLengthFt });
    const shape = stepDrift(hd, clearHeight({ stepFt: given.stepFt, balancedPsf, densityPcf: gamma }));
    const pd = driftPeak({ heightFt: shape.heightFt, densityPcf: gamma });
    expect(Math.abs(gamma - out.densityPcf)).toBeLessThanOrEqual(abs);
    expect(Math.abs(hd - out.driftHeightFt)).toBeLessThanOrEqual(abs);
    expect(Math.abs(pd - out.driftPsf)).toBeLessThanOrEqual(abs);
    expect(Math.abs(balancedPsf + pd - out.greatestPsf)).toBeLessThanOrEqual(abs);
  });

  it.each(example.rows)('[ASCE 7-16 C7.7, from memory] $row', ({ in: given, out }) => {
    const { abs } = example.tolerance;
    const lee = driftHeight({ groundSnowPsf: given.groundSnowPsf, is: 1, fetchFt: given.upperLengthFt });
    const other = driftHeight({ groundSnowPsf: given.groundSnowPsf, is: 1, fetchFt: given.lowerLengthFt });
    expect(Math.abs(lee - out.leewardFt)).toBeLessThanOrEqual(abs);
    expect(Math.abs(windwardDriftHeight(other) - out.windwardFt)).toBeLessThanOrEqual(abs);
    expect(greaterDrift(lee, windwardDriftHeight(other))).toBe(lee);
  });

  // lu = 64 ft has the cube root 4, pg + 10 = 81 the fourth root 3: 0.43 x 4 x 3 - 1.5 = 3.66 ft
  it('[ASCE 7-16 Fig. 7.6-1] the height by round roots', () => {
    expect(driftHeight({ groundSnowPsf: 71, is: 1, fetchFt: 64 })).toBeCloseTo(3.66, 12);
    expect(windwardDriftHeight(3.66)).toBeCloseTo(2.745, 12);
  });

  // where the root of Is stands is not settled: 0.81 and 1.21 have the roots 0.9 and 1.1, of 5.16 and of 5.16 - 1.5
  it('[ASCE 7-16 Fig. 7.6-1, from memory] importance goes by its root, the greater reading taken', () => {
    const hd = (is: number) => driftHeight({ groundSnowPsf: 71, is, fetchFt: 64 });
    expect(hd(0.81)).toBeCloseTo(Math.max(0.9 * 3.66, 0.9 * 5.16 - 1.5), 12);
    expect(hd(1.21)).toBeCloseTo(Math.max(1.1 * 3.66, 1.1 * 5.16 - 1.5), 12);
  });

  it('[ASCE 7-10 Fig. 7-9, from memory] a roof shorter than 25 ft counts 25 ft long', () => {
    const hd = (fetchFt: number) => driftHeight({ groundSnowPsf: 40, is: 1, fetchFt });
    expect(hd(0)).toBe(hd(25));
    expect(hd(24.9)).toBe(hd(25));
    expect(hd(25.1)).toBeGreaterThan(hd(25));
  });

  it('[ASCE 7-16 7.7.1] four times as wide as high; where the step is full, wider, at most eight clear heights', () => {
    expect(stepDrift(2, 3)).toEqual({ heightFt: 2, widthFt: 8 });
    expect(stepDrift(3, 3)).toEqual({ heightFt: 3, widthFt: 12 });
    // 4 x 3^2 / 2.5 = 14.4, under 8 x 2.5
    expect(stepDrift(3, 2.5).heightFt).toBe(2.5);
    expect(stepDrift(3, 2.5).widthFt).toBeCloseTo(14.4, 12);
    // 4 x 9 / 1.5 = 24 against 8 x 1.5
    expect(stepDrift(3, 1.5)).toEqual({ heightFt: 1.5, widthFt: 12 });
    expect(stepDrift(3, 0)).toEqual({ heightFt: 0, widthFt: 0 });
  });

  it('[ASCE 7-16 7.7.1] the clear height is the step less the balanced snow, never below none', () => {
    expect(clearHeight({ stepFt: 4, balancedPsf: 30, densityPcf: 20 })).toBe(2.5);
    expect(clearHeight({ stepFt: 1, balancedPsf: 30, densityPcf: 20 })).toBe(0);
  });

  // own rule: at hc / hb = 0.2 the standard lets go of a drift that the weight of a little more snow keeps
  it('[ASCE 7-16 7.7.1] a drift that the standard lets go stays, so that more snow never gives less', () => {
    const total = (balancedPsf: number) => {
      const hc = clearHeight({ stepFt: 1.8, balancedPsf, densityPcf: 20 });
      return balancedPsf + driftPeak({ heightFt: stepDrift(3, hc).heightFt, densityPcf: 20 });
    };
    // the step full to its top weighs 36 psf, whatever of it is drift; hb = 1.5 ft and hc = 0.3 ft at 30 psf
    for (const psf of [29, 30, 31, 35.9]) expect(total(psf)).toBeCloseTo(36, 12);
    expect(total(40)).toBe(40);
  });

  it('[ASCE 7-16 7.7.2] over a gap it loses a sixth of the gap and ends six times the step away', () => {
    const near = separatedDrift({ driftHeightFt: 3, stepFt: 3, gapFt: 6 });
    expect(near).toEqual({ heightFt: 2, widthFt: 12 });
    expect(separatedDrift({ driftHeightFt: 1, stepFt: 5, gapFt: 6 })).toEqual({ heightFt: 1, widthFt: 6 });
  });

  it('[ASCE 7-16 7.7.2] none comes over a gap of 20 ft, nor of six times the step', () => {
    const over = (gapFt: number, stepFt: number) => separatedDrift({ driftHeightFt: 3, stepFt, gapFt });
    expect(over(T.driftGap.at - HAIR, 10)).not.toBeNull();
    expect(over(T.driftGap.at, 10)).toBeNull();
    expect(over(T.driftGapPerStep.at * 2 - HAIR, 2)).not.toBeNull();
    expect(over(T.driftGapPerStep.at * 2, 2)).toBeNull();
    expect([T.driftGap.at, T.driftGapPerStep.at]).toEqual([20, 6]);
  });

  it('[ASCE 7-16 7.7.2, from memory] a windward drift is cut off by the gap', () => {
    expect(truncatedPeak({ peakPsf: 40, widthFt: 8, gapFt: 2 })).toBe(30);
    expect(truncatedPeak({ peakPsf: 40, widthFt: 8, gapFt: 8 })).toBe(0);
  });
});

describe('snow that slides off a higher roof', () => {
  // 0.4 x 42 psf x 15 ft = 252 lb per foot of eave, over 15 ft
  it('[ASCE 7-16 7.9] 0.4 pf W on fifteen feet', () => {
    expect(slidingSnow({ upperFlatSnowPsf: 42, eaveToRidgeFt: 15 })).toBeCloseTo(252 / 15, 12);
  });

  it('[ASCE 7-16 7.9] comes from slippery roofs above 1/4 in 12 and from others above 2 in 12', () => {
    expect([T.slipperySlides.at, T.otherSlides.at]).toEqual([0.25, 2]);
    expect(slides(T.slipperySlides.at, true)).toBe(false);
    expect(slides(T.slipperySlides.at + HAIR, true)).toBe(true);
    expect(slides(T.otherSlides.at, false)).toBe(false);
    expect(slides(T.otherSlides.at + HAIR, false)).toBe(true);
    expect(slides(null, false)).toBe(true);
  });

  it('[ASCE 7-16 7.9] crosses a gap under 15 ft that is less than the step, and then reaches less far', () => {
    expect([T.slidingGap.at, T.slidingGapPerStep.at]).toEqual([15, 1]);
    expect(slidingReach({ gapFt: 0, stepFt: 0 })).toBe(15);
    expect(slidingReach({ gapFt: 4, stepFt: 5 })).toBe(11);
    expect(slidingReach({ gapFt: 5, stepFt: 5 })).toBe(0);
    expect(slidingReach({ gapFt: 5, stepFt: 5 + HAIR })).toBe(10);
    expect(slidingReach({ gapFt: 15, stepFt: 30 })).toBe(0);
    expect(slidingReach({ gapFt: 15 - HAIR, stepFt: 30 })).toBeGreaterThan(0);
  });
});

describe('snow that wind carries over a ridge', () => {
  it('[ASCE 7-16 7.6.1] is asked of gables from 1/2 to 7 in 12', () => {
    expect([T.leastUnbalanced.at, T.greatestUnbalanced.at]).toEqual([0.5, 7]);
    const asked = [0.5 - HAIR, 0.5, 7, 7 + HAIR].map(needsUnbalanced);
    expect(asked).toEqual([false, true, true, false]);
  });

  it('[ASCE 7-16 7.6.1] on a narrow one is the ground snow on the lee side, never under the balanced snow', () => {
    expect(narrowLeeSnow({ groundSnowPsf: 40, is: 1.1, balancedPsf: 30 })).toBeCloseTo(44, 12);
    expect(narrowLeeSnow({ groundSnowPsf: 40, is: 0.8, balancedPsf: 35 })).toBe(35);
  });

  // 3 in 12: a run of 4 for a rise of one, its root 2
  it('[ASCE 7-16 7.6.1] on a wide one is 0.3 of it, and a strip hd γ / √S over 8 √S hd / 3', () => {
    expect(windwardSnow(30)).toBeCloseTo(9, 12);
    const strip = ridgeStrip({ driftHeightFt: 1.5, densityPcf: 20, risePer12: 3 });
    expect(strip.psf).toBeCloseTo(15, 12);
    expect(strip.widthFt).toBeCloseTo(8, 12);
  });
});

describe('thresholds of even snow', () => {
  it('[ASCE 7-16 7.3.4] the least snow is asked under 15 degrees', () => {
    expect(T.lowSlope.at).toBe(15);
    const least = (slopeDeg: number) => leastLowSlopeSnow({ groundSnowPsf: 40, is: 1, slopeDeg });
    expect([least(15 - HAIR), least(15)]).toEqual([20, 0]);
  });

  it('[ASCE 7-16 7.10] rain lies on the snow up to 20 psf on the ground, not above, nor where there is none', () => {
    expect(T.rainOnSnow.at).toBe(20);
    const rain = (groundSnowPsf: number) => rainOnSnowSurcharge({ groundSnowPsf, slopeDeg: 0, eaveToRidgeFt: 12 });
    expect([0, HAIR, 20, 20 + HAIR].map(rain)).toEqual([0, 5, 5, 0]);
  });
});
