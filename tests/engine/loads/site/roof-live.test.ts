import { describe, expect, it } from 'vitest';
import {
  areaReduction,
  reducedRoofLive,
  slopeReduction,
  unreducedRoofLive,
} from '../../../../src/engine/loads/site/roof-live.ts';

describe('roof live load', () => {
  it('[ASCE 7 4.8.2] reductions run unbroken through their limits', () => {
    expect(areaReduction(200)).toBe(1);
    expect(areaReduction(200.0001)).toBeCloseTo(1, 6);
    expect(areaReduction(400)).toBeCloseTo(0.8, 12);
    expect(areaReduction(599.9999)).toBeCloseTo(0.6, 6);
    expect(areaReduction(5000)).toBe(0.6);
    expect(slopeReduction(4)).toBe(1);
    expect(slopeReduction(8)).toBeCloseTo(0.8, 12);
    expect(slopeReduction(12)).toBe(0.6);
    expect(slopeReduction(24)).toBe(0.6);
  });

  it('[ASCE 7 4.8.2] never falls under 12 psf', () => {
    expect(reducedRoofLive({ tributaryAreaFt2: 600, risePer12: 12, countyPsf: 0 })).toBe(12);
    expect(reducedRoofLive({ tributaryAreaFt2: 400, risePer12: 3, countyPsf: 0 })).toBeCloseTo(16, 12);
  });

  it('a county that sets 20 or less changes nothing, more is taken without reduction', () => {
    const large = { tributaryAreaFt2: 600, risePer12: 3 };
    expect(reducedRoofLive({ ...large, countyPsf: 20 })).toBe(12);
    expect(reducedRoofLive({ ...large, countyPsf: null })).toBe(12);
    expect(reducedRoofLive({ ...large, countyPsf: 30 })).toBe(30);
    expect(unreducedRoofLive(null)).toBe(20);
    expect(unreducedRoofLive(25)).toBe(25);
  });

  it('refuses a negative area, rise or load', () => {
    expect(() => areaReduction(-1)).toThrow(/tributaryAreaFt2/);
    expect(() => slopeReduction(Number.NaN)).toThrow(/risePer12/);
    expect(() => unreducedRoofLive(-5)).toThrow(/countyPsf/);
  });
});
