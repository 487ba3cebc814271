import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measuredBy, ratioIfThinner } from '../../../src/engine/checks/measured.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { evaluated } from '../whole/whole.ts';

const bending = {
  ruleId: 'beam.bending',
  status: 'pass',
  ratio: 0.6,
  thins: { diameterIn: 10, power: 3 },
  spareIn: 1.566,
} as const;
const shear = {
  ruleId: 'beam.shear',
  status: 'pass',
  ratio: 0.5,
  thins: { diameterIn: 8, power: 2 },
  spareIn: 2.343,
} as const;

/** Section modulus of what is left of a circle with a flat, by thin strips: our own sum, not the engine's formula. */
function stripModulus(diameterIn: number, flatIn: number): number {
  const [R, n] = [diameterIn / 2, 20_000];
  const left = 2 * R - flatIn;
  const strips = Array.from({ length: n }, (_, i) => {
    const z = -R + ((i + 0.5) * left) / n;
    return { z, area: (2 * Math.sqrt(R * R - z * z) * left) / n };
  });
  const A = strips.reduce((sum, s) => sum + s.area, 0);
  const zMean = strips.reduce((sum, s) => sum + s.area * s.z, 0) / A;
  const I = strips.reduce((sum, s) => sum + s.area * (s.z - zMean) ** 2, 0);
  return I / Math.max(left - R - zMean, zMean + R);
}

describe('how well a log was measured', () => {
  it('closed form: a 10 in. log that is 1/4 in. thinner bends at (10/9.75)^3 of its ratio', () => {
    expect(ratioIfThinner(bending, 0.25)).toBeCloseTo(0.6 * (10 / 9.75) ** 3, 12);
  });

  it('by girth within 1/2 in., the diameter is within 1/2 over pi: a shear ratio grows by 4.1 per cent', () => {
    // derived here: (8 / (8 - 0.15915))^2 = 1.0410
    expect(ratioIfThinner(shear, 0.5 / Math.PI)).toBeCloseTo(0.5 * 1.041, 4);
  });

  it('names the row that is worst as typed, at the worst end, and the one that stops a loss of wood first', () => {
    const steep = {
      ruleId: 'beam.sag',
      status: 'pass',
      ratio: 0.58,
      thins: { diameterIn: 5, power: 4 },
      spareIn: 0.637,
    } as const;
    const measured = measuredBy([bending, shear, steep], 0.5)!;
    expect(measured.asTyped).toEqual({ row: bending, ratio: 0.6 });
    expect(measured.atWorst.row).toBe(steep);
    expect(measured.atWorst.ratio).toBeCloseTo(0.58 * (5 / 4.5) ** 4, 12);
    expect(measured.mayLose).toEqual({ row: steep, inches: 0.637 });
  });

  it('the worst row that hangs on the wood by no plain power is told beside them', () => {
    const seat = { ruleId: 'beam.seat', status: 'pass', ratio: 0.9, thins: null, spareIn: null } as const;
    const tie = { ruleId: 'beam.tie', status: 'notGiven', ratio: null, thins: null, spareIn: null } as const;
    const cut = { ruleId: 'beam.cuts', status: 'pass', ratio: 0.3, thins: null, spareIn: null } as const;
    expect(measuredBy([bending, cut, seat, tie], 0.25)?.leftOut).toBe(seat);
    // a rated joint does not hang on the wood of the beam, however much is asked of it
    const asked = { ...tie, status: 'pass', ratio: 0.95 } as const;
    expect(measuredBy([bending, tie, asked], 0.25)?.leftOut).toBe(null);
    expect(measuredBy([seat, tie], 0.25)).toBe(null);
  });

  it('a log as thin as its error has nothing left, and a row that was not judged says nothing', () => {
    expect(ratioIfThinner(bending, 10)).toBe(Infinity);
    const unknown = { ...bending, status: 'notGiven', ratio: null, thins: null, spareIn: null } as const;
    expect(ratioIfThinner(unknown, 0.25)).toBe(null);
    expect(measuredBy([{ ...bending, status: 'outside' as const }], 0.25)).toBe(null);
  });

  it('a greater error never lowers the ratio, and no error leaves it', () => {
    const error = fc.double({ min: 0, max: 4, noNaN: true });
    fc.assert(
      fc.property(error, error, (a, b) => {
        expect(ratioIfThinner(bending, Math.max(a, b))).toBeGreaterThanOrEqual(
          ratioIfThinner(bending, Math.min(a, b))!,
        );
      }),
    );
    expect(ratioIfThinner(bending, 0)).toBe(0.6);
  });

  it.each([
    [10, 1, 0.5],
    [10, 2, 1],
    [8, 0.5, 0.25],
  ])(
    'a %d in. log with a flat of %d in. loses no more strength than is said when it thins by %d in.',
    (d, flat, less) => {
      const said = ratioIfThinner({ ratio: 1, thins: { diameterIn: d - flat, power: 3 } }, less)!;
      expect(said).toBeGreaterThanOrEqual(stripModulus(d, flat) / stripModulus(d - less, flat));
    },
  );

  it('every row of the demo with inches to spare reaches 1 when they are lost, and not before', () => {
    const rows = evaluated(soundProject(exampleText('firewood-shed'))).checks.filter(
      ({ status, spareIn }) => status === 'pass' && spareIn !== null && spareIn > 0,
    );
    expect(rows.length).toBeGreaterThan(10);
    for (const row of rows) {
      expect(ratioIfThinner(row, row.spareIn!)).toBeCloseTo(1, 9);
      expect(ratioIfThinner(row, row.spareIn! * 0.9)!).toBeLessThan(1);
    }
  });
});
