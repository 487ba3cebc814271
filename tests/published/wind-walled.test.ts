import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { WALLED_LEEWARD, WALLED_WINDWARD } from '../../src/data/loads/wind-walled.ts';
import { enclosureClass, type WallOpening } from '../../src/engine/loads/site/enclosure.ts';
import {
  walledBandCoefficients,
  walledPressure,
  walledRoofCoefficients,
} from '../../src/engine/loads/site/walled-roof.ts';
import { stepsOf } from '../../src/engine/note.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import bandFile from './wind-walled-bands.json' with { type: 'json' };
import pressureFile from './wind-walled-pressure.json' with { type: 'json' };
import roofFile from './wind-walled-roof.json' with { type: 'json' };

const printed = z.strictObject({ lift: z.number().nullable(), press: z.number().nullable() });
const slopes = fixtureOf(
  z.strictObject({ half: z.enum(['windward', 'leeward']), heightOverLength: z.number(), slopeDeg: z.number() }),
  printed,
).parse(roofFile);
const bands = fixtureOf(
  z.strictObject({ heightOverLength: z.number(), fromHeights: z.number(), toHeights: z.number().nullable() }),
  printed,
).parse(bandFile);
const pressures = fixtureOf(
  z.strictObject({ q: z.number(), gustFactor: z.number(), external: z.number(), internal: z.number() }),
  z.strictObject({ pressure: z.number() }),
).parse(pressureFile);

describe('wind on the roof of a walled building', () => {
  it.each(slopes.rows)(
    '[ASCE 7 Fig. 27.3-1] matches at $in.slopeDeg deg, h/L $in.heightOverLength, $in.half',
    (row) => {
      const { half, slopeDeg, heightOverLength } = row.in;
      const found = walledRoofCoefficients(half, slopeDeg, heightOverLength);
      expect(found.lift).toBe(row.out.lift ?? 0);
      expect(found.press).toBe(half === 'leeward' ? row.out.lift : row.out.press);
    },
  );

  it('[ASCE 7 Fig. 27.3-1] has every printed cell in the fixture', () => {
    expect(slopes.rows).toHaveLength(WALLED_WINDWARD.length + WALLED_LEEWARD.length);
  });

  it('[ASCE 7 Fig. 27.3-1] runs straight between slopes and heights, and holds its ends beyond them', () => {
    // half way between -0.7 and -0.5, and between that and half way between -0.9 and -0.7
    expect(walledRoofCoefficients('windward', 12.5, 0.25).lift).toBeCloseTo(-0.6, 12);
    expect(walledRoofCoefficients('windward', 12.5, 0.375).lift).toBeCloseTo(-0.7, 12);
    expect(walledRoofCoefficients('windward', 15, 0.1)).toEqual(walledRoofCoefficients('windward', 15, 0.25));
    expect(walledRoofCoefficients('windward', 15, 1.4)).toEqual(walledRoofCoefficients('windward', 15, 1));
    expect(walledRoofCoefficients('leeward', 44, 0.5)).toEqual({ lift: -0.6, press: -0.6 });
    expect(() => walledRoofCoefficients('windward', 9.9, 0.5)).toThrow('walledRoofSlope');
    expect(() => walledRoofCoefficients('windward', 45.1, 0.5)).toThrow('walledRoofSlope');
  });

  it.each(bands.rows)('[ASCE 7 Fig. 27.3-1] matches from $in.fromHeights h on, h/L $in.heightOverLength', (row) => {
    const { heightOverLength, fromHeights, toHeights } = row.in;
    for (const heights of [fromHeights + 0.01, toHeights ?? fromHeights + 9])
      expect(walledBandCoefficients(heights, heightOverLength)).toEqual(row.out);
  });

  it('[ASCE 7 Fig. 27.3-1] runs straight between low and tall buildings in each band', () => {
    expect(walledBandCoefficients(0.2, 0.75).lift).toBeCloseTo((-0.9 - 1.3) / 2, 12);
    expect(walledBandCoefficients(5, 0.75).lift).toBeCloseTo((-0.3 - 0.7) / 2, 12);
    expect(walledBandCoefficients(0.2, 0.3)).toEqual(walledBandCoefficients(0.2, 0.5));
  });

  it.each(pressures.rows)('[ASCE 7 Eq. 27.3-1] matches a posted sheet: $row', ({ in: given, out }) => {
    const wind = { velocityPressurePsf: given.q, gustFactor: given.gustFactor };
    const p = walledPressure(wind, given.external, given.internal, false);
    expect(Math.abs(p - out.pressure)).toBeLessThanOrEqual(pressures.tolerance.abs);
  });

  // ASCE 7-16 27.3.3, from memory: 0.8 below a windward overhang, with the gust factor as outside pressure has it.
  it('[ASCE 7 27.3.3] below an overhang the wind pushes with q G 0.8', () => {
    const wind = { velocityPressurePsf: 10, gustFactor: 0.85 };
    const { value, steps } = stepsOf((note) => walledPressure(wind, -0.9, 0.8, true, note));
    expect(value).toBeCloseTo(-10 * 0.85 * 1.7, 12);
    expect(steps[0]!.formula).toBe('q G Cp - q G Cpu');
  });
});

// ASCE 7-16 26.2, from memory: definitions of open, enclosed, partially enclosed and partially open buildings.
describe('how closed a building is', () => {
  const wall = (openShare: number): WallOpening => ({ areaFt2: 100, openFt2: 100 * openShare });
  const four = (...shares: readonly [number, number, number, number]): ReturnType<typeof enclosureClass> =>
    enclosureClass(shares.map(wall), 150);

  it('[ASCE 7 26.2] is open while every wall is 80 per cent open', () => {
    expect(four(1, 1, 1, 1)).toBe('open');
    expect(four(0.8, 0.8, 0.8, 0.8)).toBe('open');
    expect(four(1, 1, 1, 0.79)).toBe('partiallyOpen');
  });

  it('[ASCE 7 26.2] is partially open with one wall, or two, that are closed', () => {
    expect(four(0, 1, 1, 1)).toBe('partiallyOpen');
    expect(four(0, 0, 1, 1)).toBe('partiallyOpen');
  });

  it('[ASCE 7 26.2] is partially enclosed with three walls and one open side', () => {
    expect(four(0, 0, 0, 1)).toBe('partiallyEnclosed');
  });

  it('[ASCE 7 26.2] is partially enclosed only while one side is open by more than a tenth more than the rest', () => {
    expect(four(0.5, 0.15, 0.15, 0.15)).toBe('partiallyEnclosed');
    expect(four(0.49, 0.15, 0.15, 0.15)).toBe('partiallyOpen');
  });

  it('[ASCE 7 26.2] is partially enclosed only while the rest of walls and roof is at most 20 per cent open', () => {
    // rest of the envelope 3 x 100 + 150 ft2, a fifth of it 90 ft2
    expect(four(1, 0.3, 0.3, 0.3)).toBe('partiallyEnclosed');
    expect(four(1, 0.3, 0.3, 0.301)).toBe('partiallyOpen');
  });

  it('[ASCE 7 26.2] is enclosed while no wall is open by more than 1 per cent or 4 square feet', () => {
    expect(four(0, 0, 0, 0)).toBe('enclosed');
    expect(four(0.01, 0.01, 0.01, 0.01)).toBe('enclosed');
    expect(four(0.011, 0, 0, 0)).toBe('partiallyEnclosed');
    const large = [0, 0, 0, 4.1].map((openFt2) => ({ areaFt2: 1000, openFt2 }));
    expect(enclosureClass(large, 1500)).toBe('partiallyEnclosed');
  });
});
