import { describe, expect, it } from 'vitest';
import {
  groundElevationFactor,
  printedExposure,
  velocityPressure,
  velocityPressureExposure,
} from '../../../../src/engine/loads/site/wind.ts';

const EXPOSURES = ['B', 'C', 'D'] as const;

describe('exposure', () => {
  it('[ASCE 7 Table 26.10-1] takes anything under 15 ft as 15 ft', () => {
    for (const exposure of EXPOSURES) {
      expect(velocityPressureExposure(exposure, 0)).toBe(velocityPressureExposure(exposure, 15));
      expect(printedExposure(exposure, 8)).toBe(printedExposure(exposure, 15));
    }
  });

  // At the gradient height the power law gives its own factor, whatever the exponent.
  it('[ASCE 7 Table 26.10-1] reaches 2.01 at the gradient height and refuses more', () => {
    for (const [exposure, gradientFt] of [
      ['B', 1200],
      ['C', 900],
      ['D', 700],
    ] as const) {
      expect(velocityPressureExposure(exposure, gradientFt)).toBeCloseTo(2.01, 12);
      expect(() => velocityPressureExposure(exposure, gradientFt + 1)).toThrow(/at most/);
    }
  });

  it('grows with height and from woods to shore', () => {
    for (let heightFt = 16; heightFt <= 60; heightFt += 4) {
      const [b, c, d] = EXPOSURES.map((exposure) => velocityPressureExposure(exposure, heightFt));
      expect(c).toBeGreaterThan(b!);
      expect(d).toBeGreaterThan(c!);
      for (const exposure of EXPOSURES) {
        expect(velocityPressureExposure(exposure, heightFt)).toBeGreaterThan(
          velocityPressureExposure(exposure, heightFt - 1),
        );
      }
    }
  });

  it('[ASCE 7 Table 26.10-1] between printed heights lies straight, above 30 ft there is none here', () => {
    expect(printedExposure('B', 18)).toBeCloseTo(0.57 + 0.6 * 0.05, 12);
    expect(printedExposure('B', 30.1)).toBeNull();
  });

  it('refuses a height that is no height', () => {
    expect(() => velocityPressureExposure('B', -1)).toThrow(/heightFt/);
    expect(() => printedExposure('B', Number.POSITIVE_INFINITY)).toThrow(/heightFt/);
  });
});

describe('velocity pressure', () => {
  const calm = { kz: 0.57, kzt: 1, kd: 0.85, ke: 1, mph: 100 };

  it('[ASCE 7 Eq. 26.10-1] grows with the square of the wind and straight with every factor', () => {
    const q = velocityPressure(calm);
    expect(velocityPressure({ ...calm, mph: 200 })).toBeCloseTo(4 * q, 12);
    for (const factor of ['kz', 'kzt', 'kd', 'ke'] as const) {
      expect(velocityPressure({ ...calm, [factor]: calm[factor] * 3 })).toBeCloseTo(3 * q, 12);
    }
  });

  it('refuses a factor of zero and a wind that is not a number', () => {
    expect(() => velocityPressure({ ...calm, kz: 0 })).toThrow(/kz/);
    expect(() => velocityPressure({ ...calm, mph: Number.NaN })).toThrow(/mph/);
  });

  it('[ASCE 7 26.9] is 1 at the sea, more below it', () => {
    expect(groundElevationFactor(0)).toBe(1);
    expect(groundElevationFactor(-200)).toBeGreaterThan(1);
    expect(() => groundElevationFactor(Number.NaN)).toThrow(/altitudeFt/);
  });
});
