import { describe, expect, it } from 'vitest';
import {
  flatRoofSnow,
  leastLowSlopeSnow,
  rainOnSnowSurcharge,
  slopedRoofSnow,
  slopeFactor,
  snowDensity,
} from '../../../../src/engine/loads/site/snow.ts';

describe('slope factor', () => {
  const cold = { ct: 1.2, slippery: true, unobstructed: true };

  it('[ASCE 7 7.4] needs both a slippery and an unobstructed roof to shed early', () => {
    expect(slopeFactor({ ...cold, slopeDeg: 30 })).toBeCloseTo(1 - 15 / 55, 12);
    expect(slopeFactor({ ...cold, slopeDeg: 30, slippery: false })).toBe(1);
    expect(slopeFactor({ ...cold, slopeDeg: 30, unobstructed: false })).toBe(1);
  });

  it('never falls with a colder roof; a thermal factor between two curves takes the colder one', () => {
    const at = (ct: number) => slopeFactor({ ...cold, ct, slopeDeg: 40 });
    expect(at(1.05)).toBe(at(1.1));
    expect(at(1.15)).toBe(at(1.2));
    expect(at(1.3)).toBe(at(1.2));
    expect(at(1.1)).toBeGreaterThan(at(1));
    expect(at(1.2)).toBeGreaterThan(at(1.1));
  });

  it('never rises with slope and stays within 0 and 1', () => {
    for (const ct of [0.85, 1, 1.1, 1.2, 1.3]) {
      for (const slippery of [true, false]) {
        let before = 1;
        for (let slopeDeg = 0; slopeDeg <= 90; slopeDeg++) {
          const cs = slopeFactor({ slopeDeg, ct, slippery, unobstructed: true });
          expect(cs).toBeLessThanOrEqual(before);
          expect(cs).toBeGreaterThanOrEqual(0);
          before = cs;
        }
      }
    }
  });
});

describe('least snow, density and rain', () => {
  it('[ASCE 7 7.3.4] the least snow stops at 15 degrees and at 20 psf of ground snow', () => {
    expect(leastLowSlopeSnow({ groundSnowPsf: 55, is: 0.8, slopeDeg: 14.99 })).toBeCloseTo(16, 12);
    expect(leastLowSlopeSnow({ groundSnowPsf: 55, is: 0.8, slopeDeg: 15 })).toBe(0);
    expect(leastLowSlopeSnow({ groundSnowPsf: 12, is: 1.1, slopeDeg: 5 })).toBeCloseTo(13.2, 12);
    expect(leastLowSlopeSnow({ groundSnowPsf: 20, is: 1, slopeDeg: 5 })).toBe(20);
  });

  // 0.13 pg + 14 reaches 30 pcf at 123.08 psf.
  it('[ASCE 7 Eq. 7.7-1] the density stops at 30 pcf', () => {
    expect(snowDensity(0)).toBe(14);
    expect(snowDensity(100)).toBeCloseTo(27, 12);
    expect(snowDensity(123)).toBeLessThan(30);
    expect(snowDensity(124)).toBe(30);
  });

  it('[ASCE 7 7.10] rain counts only on light snow and nearly flat roofs', () => {
    const flat = { groundSnowPsf: 20, slopeDeg: 0.5, eaveToRidgeFt: 30 };
    expect(rainOnSnowSurcharge(flat)).toBe(5);
    expect(rainOnSnowSurcharge({ ...flat, groundSnowPsf: 20.1 })).toBe(0);
    expect(rainOnSnowSurcharge({ ...flat, groundSnowPsf: 0 })).toBe(0);
    expect(rainOnSnowSurcharge({ ...flat, slopeDeg: 0.6 })).toBe(0);
  });

  it('roof snow is straight in each of its factors and refuses what is no load', () => {
    const one = { groundSnowPsf: 40, ce: 1, ct: 1, is: 1 };
    expect(flatRoofSnow(one)).toBeCloseTo(28, 12);
    expect(flatRoofSnow({ ...one, ce: 0.9, ct: 1.2, is: 0.8 })).toBeCloseTo(28 * 0.9 * 1.2 * 0.8, 12);
    expect(slopedRoofSnow({ flatRoofSnowPsf: 28, slopeFactor: 0.5 })).toBe(14);
    expect(() => flatRoofSnow({ ...one, groundSnowPsf: -1 })).toThrow(/groundSnowPsf/);
    expect(() => flatRoofSnow({ ...one, ct: 0 })).toThrow(/ct/);
  });
});
