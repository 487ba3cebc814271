import { assert, double, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  alongRidgeCoefficient,
  alongRidgeMean,
  mainFrameCoefficients,
  mainFramePressure,
} from '../../../../src/engine/loads/site/free-roof.ts';
import { stepsOf } from '../../../../src/engine/note.ts';

describe('main-frame coefficients between the printed slopes', () => {
  // ASCE 7 Fig. 27.3-4, case A, wind 0, clear: -0.6 and -1.0 at 7.5 deg, -0.9 and -1.3 at 15 deg; a third of the way.
  it('[ASCE 7 Fig. 27.3-4] goes straight from row to row', () => {
    const answer = mainFrameCoefficients('monoslope', 10, 0, 'A', 'clear');
    expect(answer).toMatchObject({ ok: true });
    if (!answer.ok) return;
    expect(answer.windward).toBeCloseTo(-0.7, 12);
    expect(answer.leeward).toBeCloseTo(-1.1, 12);
  });

  it('[ASCE 7 Fig. 27.3-4] takes the row of 0 below 7.5 degrees, also for a pitched roof', () => {
    for (const form of ['monoslope', 'pitched'] as const) {
      for (const slopeDeg of [0, 3, 7.499]) {
        expect(mainFrameCoefficients(form, slopeDeg, 180, 'B', 'obstructed')).toEqual({
          ok: true,
          windward: -1.1,
          leeward: -0.6,
        });
      }
    }
  });

  it('[ASCE 7 Fig. 27.3-4] ends at 45 degrees with a reason', () => {
    expect(mainFrameCoefficients('monoslope', 45, 0, 'A', 'clear').ok).toBe(true);
    expect(mainFrameCoefficients('monoslope', 45.01, 0, 'A', 'clear')).toEqual({
      ok: false,
      reason: { code: 'slopeOverFigure', values: { slopeDeg: 45.01, limitDeg: 45 } },
    });
  });

  it('refuses a slope that is no slope', () => {
    expect(() => mainFrameCoefficients('monoslope', Number.NaN, 0, 'A', 'clear')).toThrow(/slopeDeg/);
    expect(() => mainFrameCoefficients('monoslope', -1, 0, 'A', 'clear')).toThrow(/slopeDeg/);
  });

  it('tells the same numbers with steps as without', () => {
    const quiet = mainFrameCoefficients('pitched', 20, 0, 'B', 'obstructed');
    const told = stepsOf((note) => mainFrameCoefficients('pitched', 20, 0, 'B', 'obstructed', note));
    expect(told.value).toEqual(quiet);
    expect(told.steps.map((step) => step.result.value)).toEqual(
      quiet.ok ? [quiet.windward, quiet.leeward] : ['no answer'],
    );
  });
});

describe('wind along the ridge', () => {
  // Hand: h = 10 ft, strip from 5 to 25 ft, case A clear: 5 ft at -0.8, 10 ft at -0.6, 5 ft at -0.3 over 20 ft.
  it('[ASCE 7 Fig. 27.3-7] averages the bands over a strip by their width', () => {
    expect(alongRidgeMean(5, 25, 10, 'A', 'clear')).toBeCloseTo((5 * -0.8 + 10 * -0.6 + 5 * -0.3) / 20, 12);
  });

  it('[ASCE 7 Fig. 27.3-7] a strip within one band has that band’s coefficient', () => {
    expect(alongRidgeMean(21, 24, 10, 'B', 'obstructed')).toBeCloseTo(
      alongRidgeCoefficient(22, 10, 'B', 'obstructed'),
      12,
    );
  });

  it('two strips side by side weigh as much as the whole', () => {
    const length = double({ min: 0.1, max: 60, noNaN: true });
    assert(
      property(length, length, length, length, (from, first, second, h) => {
        const middle = from + first;
        const to = middle + second;
        const mean = (a: number, b: number) => alongRidgeMean(a, b, h, 'A', 'obstructed');
        const whole = mean(from, to) * (to - from);
        expect(mean(from, middle) * (middle - from) + mean(middle, to) * (to - middle)).toBeCloseTo(whole, 9);
      }),
      { seed: 20, numRuns: 200 },
    );
  });

  it('refuses a strip without width', () => {
    expect(() => alongRidgeMean(5, 5, 10, 'A', 'clear')).toThrow(/toFt/);
    expect(() => alongRidgeMean(-1, 5, 10, 'A', 'clear')).toThrow(/fromFt/);
    expect(() => alongRidgeMean(0, 5, 0, 'A', 'clear')).toThrow(/heightFt/);
  });
});

it('[ASCE 7 Eq. 27.3-2] the pressure is the product and keeps its sign', () => {
  expect(mainFramePressure({ velocityPressurePsf: 20, gustFactor: 0.85 }, -1.3)).toBeCloseTo(-22.1, 12);
});
