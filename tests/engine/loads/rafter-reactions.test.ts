import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  levelPart,
  levelReactions,
  opposedWindAt,
  plumbReactions,
  squareLoads,
  sumsAt,
  windReactions,
} from '../../../src/engine/loads/rafter-reactions.ts';
import { rafterRun, type AtEnds, type RafterRun } from '../../../src/engine/loads/rafter-run.ts';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import { lineId, plainShed } from '../../support/plain-shed.ts';
import { placed } from '../frame/line-bench.ts';

const psf = fc.double({ min: -40, max: 60, noNaN: true });

/** A rafter of random slope, overhangs and cuts over two or three lines, with a straight pressure on each of its parts. */
const rafterOn = (lines: number) =>
  fc
    .record({
      risePer12: fc.double({ min: 0.25, max: 9, noNaN: true }),
      gaps: fc.array(fc.double({ min: 40, max: 90, noNaN: true }), { minLength: lines - 1, maxLength: lines - 1 }),
      high: fc.double({ min: 0, max: 30, noNaN: true }),
      low: fc.double({ min: 0, max: 30, noNaN: true }),
      rafters: fc.constantFrom('simple', 'continuous'),
      cutsIn: fc.array(fc.double({ min: 5, max: 250, noNaN: true }), { maxLength: 3 }),
      pressures: fc.array(fc.record({ low: psf, high: psf }), { minLength: 12, maxLength: 12 }),
    })
    .map(({ gaps, high, low, pressures, cutsIn, ...rest }) => {
      const ys = gaps.reduce((at, gap) => [...at, at[at.length - 1]! + gap], [0]);
      const shed = plainShed({
        ...rest,
        lineYsIn: ys,
        overhangsIn: [high, low],
        bearing: { line: 0, of: 'bearing', zIn: 150 },
      });
      // the posts under it may not fit a slope like this; the rafter does
      return { run: rafterRun(placeShelter(shed).shelter.rafters[0]!, 1_200_000, cutsIn), pressures };
    });

const WIDTH_IN = 24;
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const near = (a: number, b: number, scale: number): boolean => Math.abs(a - b) < 1e-8 * Math.max(1, scale);

/** Resultant of a load per inch on each part, straight between its ends, and its moment about the eave along the slope. */
function resultant(run: RafterRun, perInch: readonly AtEnds[]): { readonly W: number; readonly moment: number } {
  const parts = run.parts.map(({ fromIn, toIn }, i) => {
    const { low: a, high: b } = perInch[i]!;
    const L = toIn - fromIn;
    // a rectangle of the low end's height and a triangle of what it grows by
    return {
      w: a * L + ((b - a) * L) / 2,
      moment: a * L * (fromIn + L / 2) + ((b - a) * L * (fromIn + (2 * L) / 3)) / 2,
    };
  });
  return { W: sum(parts.map(({ w }) => w)), moment: sum(parts.map(({ moment }) => moment)) };
}

/** The same load at both ends of every part. */
const evenly = (run: RafterRun, load: number): readonly AtEnds[] => run.parts.map(() => ({ low: load, high: load }));

const supportsOf = (run: RafterRun): readonly number[] =>
  run.segments.filter(({ kind }) => kind === 'span').flatMap((s, i) => (i === 0 ? [s.fromIn, s.toIn] : [s.toIn]));

describe('reactions of a rafter on its lines', () => {
  it('carry every pound of plumb load, counted on the level, over two and three lines', () => {
    for (const lines of [2, 3])
      fc.assert(
        fc.property(rafterOn(lines), ({ run, pressures }) => {
          const loads = squareLoads(run, WIDTH_IN, (i) => ({ plumbPsf: pressures[i]!, squarePsf: 0 }), 'plumbPsf');
          const mean = (i: number): number => (pressures[i]!.low + pressures[i]!.high) / 2;
          const onLevel = run.parts.map((p, i) => (mean(i) * WIDTH_IN * (p.toIn - p.fromIn) * run.cos) / 144);
          const down = sum(plumbReactions(run, loads).map((r) => r.downLb));
          expect(near(down, sum(onLevel), sum(onLevel.map(Math.abs)))).toBe(true);
        }),
        { seed: 91, numRuns: 60 },
      );
  });

  it('hold the whole level part of the wind between them, however it is held', () => {
    for (const lines of [2, 3])
      fc.assert(
        fc.property(rafterOn(lines), ({ run, pressures }) => {
          const loads = squareLoads(run, WIDTH_IN, (i) => ({ plumbPsf: 0, squarePsf: pressures[i]! }), 'squarePsf');
          const { W } = resultant(run, loads);
          const each = levelReactions(run, loads, 'each-square');
          expect(near(sum(each), W * run.sin, sum(each.map(Math.abs)))).toBe(true);
          run.supportLines.forEach((line, i) => {
            const held = levelReactions(run, loads, line);
            expect(near(held[i]!, W * run.sin, Math.abs(W))).toBe(true);
            expect(held.filter((_, j) => j !== i).every((h) => h === 0)).toBe(true);
          });
        }),
        { seed: 95, numRuns: 40 },
      );
  });

  it('of plumb load over two lines balance its moment about the lower line', () => {
    fc.assert(
      fc.property(rafterOn(2), ({ run, pressures }) => {
        const loads = squareLoads(run, WIDTH_IN, (i) => ({ plumbPsf: pressures[i]!, squarePsf: 0 }), 'plumbPsf');
        // pounds per inch of slope, plumb: the level projection of an inch is its cosine
        const perInch = run.parts.map((_, i) => ({
          low: (pressures[i]!.low * WIDTH_IN * run.cos) / 144,
          high: (pressures[i]!.high * WIDTH_IN * run.cos) / 144,
        }));
        const { W, moment } = resultant(run, perInch);
        const [low, high] = supportsOf(run).map((s) => s * run.cos);
        const byStatics = (moment * run.cos - W * low!) / (high! - low!);
        expect(near(plumbReactions(run, loads)[1]!.downLb, byStatics, 5000)).toBe(true);
      }),
      { seed: 92, numRuns: 60 },
    );
  });

  // Wind presses square to the slope: a pound per inch is cos down and sin toward the high side. One support gives the
  // level part back; the plumb parts follow from moments about it in true x and z.
  it.each([0, 1])('of wind held by line %i stand in true equilibrium, moments with heights', (held) => {
    fc.assert(
      fc.property(rafterOn(2), ({ run, pressures }) => {
        const loads = squareLoads(run, WIDTH_IN, (i) => ({ plumbPsf: 0, squarePsf: pressures[i]! }), 'squarePsf');
        const { W, moment } = resultant(run, loads);
        const place = (s: number) => ({ x: s * run.cos, z: s * run.sin });
        const at = place(W === 0 ? 0 : moment / W);
        const supports = supportsOf(run).map(place);
        const [fixed, free] = [supports[1 - held]!, supports[held]!];
        // supports are listed from the low side: the high line is the first of the plane
        const reactions = windReactions(run, loads, lineId(held));
        const push = { down: W * run.cos, toHigh: W * run.sin };
        const freeDown = (push.down * (at.x - fixed.x) + push.toHigh * (at.z - fixed.z)) / (free.x - fixed.x);
        expect(run.supportLines).toEqual([lineId(1), lineId(0)]);
        expect(near(reactions[held]!.downLb, freeDown, 5000)).toBe(true);
        expect(near(reactions[1 - held]!.downLb, push.down - freeDown, 5000)).toBe(true);
      }),
      { seed: 93, numRuns: 60 },
    );
  });

  it('of wind with every support square to the slope are the beam reactions turned plumb', () => {
    fc.assert(
      fc.property(rafterOn(2), ({ run, pressures }) => {
        const loads = squareLoads(run, WIDTH_IN, (i) => ({ plumbPsf: 0, squarePsf: pressures[i]! }), 'squarePsf');
        const { W, moment } = resultant(run, loads);
        const [low, high] = supportsOf(run);
        const square = (moment - W * low!) / (high! - low!);
        const reactions = windReactions(run, loads, 'each-square');
        expect(near(reactions[1]!.downLb, square * run.cos, 5000)).toBe(true);
        expect(near(sum(reactions.map((r) => r.downLb)), W * run.cos, 5000)).toBe(true);
      }),
      { seed: 94, numRuns: 60 },
    );
  });

  it('over three lines add up to the plumb part of the wind, whichever line holds its level part', () => {
    fc.assert(
      fc.property(rafterOn(3), fc.constantFrom(0, 1, 2), ({ run, pressures }, held) => {
        const loads = squareLoads(run, WIDTH_IN, (i) => ({ plumbPsf: 0, squarePsf: pressures[i]! }), 'squarePsf');
        const { W } = resultant(run, loads);
        const down = sum(windReactions(run, loads, lineId(held)).map((r) => r.downLb));
        expect(near(down, W * run.cos, 5000)).toBe(true);
      }),
      { seed: 95, numRuns: 60 },
    );
  });

  it('the worse of the possible ones is for every line the largest that any of them gives', () => {
    fc.assert(
      fc.property(rafterOn(2), ({ run, pressures }) => {
        const loads = squareLoads(run, WIDTH_IN, (i) => ({ plumbPsf: 0, squarePsf: pressures[i]! }), 'squarePsf');
        const of = (heldBy: string, i: number): number => Math.abs(windReactions(run, loads, heldBy)[i]!.downLb);
        for (const i of [0, 1]) {
          const possible = ['each-square', lineId(0), lineId(1)].map((heldBy) => of(heldBy, i));
          expect(near(of('worse', i), Math.max(...possible), 5000)).toBe(true);
        }
      }),
      { seed: 96, numRuns: 60 },
    );
  });

  // 1 / cos2 = 1 + tan2: at 6 in 12 the tangent is a half.
  it('at 6 in 12 a line that only stands plumb takes a quarter more than one square to the slope', () => {
    const run = rafterRun(
      placed(plainShed({ risePer12: 6, bearing: { line: 0, of: 'bearing', zIn: 140 } })).rafters[0]!,
      1e6,
    );
    const loads = evenly(run, 1);
    const plumb = windReactions(run, loads, lineId(1));
    const square = windReactions(run, loads, 'each-square');
    expect(plumb[1]!.downLb / square[1]!.downLb).toBeCloseTo(1.25, 9);
  });

  it('the level part is the sine of the whole, zero on a level roof', () => {
    const run = rafterRun(
      placed(plainShed({ risePer12: 9, bearing: { line: 0, of: 'bearing', zIn: 160 } })).rafters[0]!,
      1e6,
    );
    // 3-4-5: slope length of a run of 162 is 202.5
    expect(levelPart(run, evenly(run, 2))).toBeCloseTo(2 * 202.5 * 0.6, 9);
    const level = rafterRun(placed(plainShed({ risePer12: 0 })).rafters[0]!, 1e6);
    expect(levelPart(level, evenly(level, 2))).toBeCloseTo(0, 9);
  });
});

const sumsOf = (run: RafterRun, loads: readonly AtEnds[], support: number) =>
  sumsAt(
    run,
    support,
    (part) => loads[part]!.low,
    (part) => loads[part]!.high,
  );

describe('reactions of the other sign on a steep roof', () => {
  // By statics at 45 degrees, no overhang, N on the high half alone: square shares N/4 low, 3N/4 high. Low line held
  // elsewhere N/4 / cos = 0.3536 N down; held here N cos - 3N/4 / cos = 0.3536 N up.
  it('are found beside the worst one, so that neither is lost', () => {
    const shed = plainShed({
      risePer12: 12,
      lineYsIn: [0, 80],
      overhangsIn: [0, 0],
      bearing: { line: 0, of: 'bearing', zIn: 150 },
    });
    const run = rafterRun(placeShelter(shed).shelter.rafters[0]!, 1_200_000);
    const loads = run.parts.map((p) => ({ low: p.onHighHalf ? 2 : 0, high: p.onHighHalf ? 2 : 0 }));
    const N = (2 * run.slopeLengthIn) / 2;
    const low = sumsOf(run, loads, 0);
    const both = [windReactions(run, loads, 'worse')[0]!.downLb, opposedWindAt(run, low)].sort((a, b) => a - b);
    expect(both[0]! / N).toBeCloseTo(-Math.SQRT1_2 / 2, 9);
    expect(both[1]! / N).toBeCloseTo(Math.SQRT1_2 / 2, 9);
  });

  it('are nothing on a low slope under an even load', () => {
    const run = rafterRun(placeShelter(plainShed({ risePer12: 3 })).shelter.rafters[0]!, 1_200_000);
    for (const support of [0, 1]) expect(opposedWindAt(run, sumsOf(run, evenly(run, 1), support))).toBe(0);
  });
});
