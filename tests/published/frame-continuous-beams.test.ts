import { describe, expect, it } from 'vitest';
import { continuousBeam, type RollerState } from '../../src/engine/solver/continuous-beam.ts';
import published from './frame-continuous-beams.json' with { type: 'json' };

interface Given {
  readonly length: number;
  readonly supports: readonly number[];
  readonly lines: readonly { readonly from: number; readonly to: number; readonly load: number }[];
  readonly points: readonly { readonly at: number; readonly load: number }[];
}

/** A printed result: a reaction, a moment at a place, or the greatest sag between two places. */
interface Printed {
  readonly value: number;
  readonly tolerance: number;
  readonly support?: number;
  readonly at?: number;
  readonly between?: readonly number[];
  readonly placeTolerance?: number;
}

/** Prismatic with EI = 1, as the file says. */
function solve(given: Given, stationsAtIn: readonly number[]): RollerState {
  const [state] = continuousBeam(
    {
      lengthIn: given.length,
      E: 1,
      pieces: [{ toIn: given.length, section: { kind: 'prismatic', areaIn2: 1, inertiaIn4: 1 } }],
      supportsAtIn: given.supports,
      stationsAtIn,
    },
    [
      {
        lines: given.lines.map(({ from, to, load }) => ({
          fromIn: from,
          toIn: to,
          fromLbPerIn: load,
          toLbPerIn: load,
        })),
        points: given.points.map(({ at, load }) => ({ atIn: at, lb: load })),
      },
    ],
  );
  if (!state) throw new Error('one load, one state');
  return state;
}

const momentAt = (given: Given, at: number): number => solve(given, [at]).stations[0]?.momentLbIn ?? NaN;

/** Where a function that falls from positive to negative is zero. */
function zeroOf(f: (x: number) => number, low: number, high: number): number {
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (f(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Greatest sag on a grid of hundredths of the stretch, then on one of hundredths round the place found. */
function greatestSag(given: Given, from: number, to: number): { sag: number; at: number } {
  const greatestOnGrid = (low: number, high: number) => {
    const stations = Array.from({ length: 101 }, (_, i) => low + ((high - low) * i) / 100);
    const sags = solve(given, stations).stations.map(({ atIn, sagIn }) => ({ at: atIn, sag: sagIn }));
    return sags.reduce((most, here) => (here.sag > most.sag ? here : most));
  };
  const { at } = greatestOnGrid(from, to);
  const step = (to - from) / 100;
  return greatestOnGrid(Math.max(from, at - step), Math.min(to, at + step));
}

function agrees(given: Given, { value, tolerance, support, at = NaN, between, placeTolerance = 0 }: Printed): boolean {
  const near = (found: number | undefined) => Math.abs((found ?? NaN) - value) <= tolerance;
  if (support !== undefined) return near(solve(given, []).reactionsLb[support]);
  if (!between) return near(momentAt(given, at));
  const greatest = greatestSag(given, between[0] ?? NaN, between[1] ?? NaN);
  return near(greatest.sag) && Math.abs(greatest.at - at) <= placeTolerance;
}

describe('continuous beams', () => {
  it.each(published.rows)('$row: $what ($source.title, $source.where, $source.seen)', (row) => {
    const misses = row.out.filter((out: Printed) => !agrees(row.in, out));
    expect(misses).toEqual([]);
  });

  it('uses every row of the file', () => {
    expect(published.rows.map(({ row }) => row)).toHaveLength(12);
    expect(published.rows.filter(({ out }) => out.length === 0)).toEqual([]);
    expect(published.searched.map(({ row }) => row)).toEqual(['math-3s-01', 'math-oh-01']);
  });

  it('math-3s-01: the overhangs that make three reactions equal (MATHalino, printed choices)', () => {
    const { in: given, out, tolerance } = published.searched[0] ?? {};
    const { span = NaN, load = NaN } = given ?? {};
    const beamWith = (overhang: number): Given => ({
      length: 2 * (span + overhang),
      supports: [overhang, overhang + span, overhang + 2 * span],
      lines: [{ from: 0, to: 2 * (span + overhang), load }],
      points: [],
    });
    const middleLessEnd = (overhang: number) => {
      const [end = NaN, middle = NaN] = solve(beamWith(overhang), []).reactionsLb;
      return middle - end;
    };
    const overhang = zeroOf(middleLessEnd, 0, span);
    const beam = beamWith(overhang);
    const { reactionsLb } = solve(beam, []);
    expect(Math.abs(overhang - (out?.overhang ?? NaN))).toBeLessThanOrEqual(tolerance?.overhang ?? 0);
    expect(Math.abs((reactionsLb[0] ?? NaN) - (out?.reaction ?? NaN))).toBeLessThanOrEqual(tolerance?.reaction ?? 0);
    expect(Math.abs(momentAt(beam, overhang + span) - (out?.momentAtMiddleSupport ?? NaN))).toBeLessThanOrEqual(
      tolerance?.momentAtMiddleSupport ?? 0,
    );
  });

  it('math-oh-01: equal overhangs of a beam on two supports (MATHalino, printed choices)', () => {
    const { in: given, out, tolerance } = published.searched[1] ?? {};
    const { length = NaN, load = NaN, overhang = NaN } = given ?? {};
    const beamWith = (reach: number): Given => ({
      length,
      supports: [reach, length - reach],
      lines: [{ from: 0, to: length, load }],
      points: [],
    });
    const midspan = (reach: number) => momentAt(beamWith(reach), length / 2);
    const bestReach = zeroOf((reach) => midspan(reach) + momentAt(beamWith(reach), reach), 0.01, length / 2 - 0.01);
    expect(Math.abs(midspan(overhang) - (out?.momentAtMidspan ?? NaN))).toBeLessThanOrEqual(
      tolerance?.momentAtMidspan ?? 0,
    );
    expect(
      Math.abs(zeroOf(midspan, 0.01, length / 2 - 0.01) - (out?.overhangWithoutMoment ?? NaN)),
    ).toBeLessThanOrEqual(tolerance?.overhangWithoutMoment ?? 0);
    expect(Math.abs(length - 2 * bestReach - (out?.bestSpan ?? NaN))).toBeLessThanOrEqual(tolerance?.bestSpan ?? 0);
  });
});
