import { describe, expect, it } from 'vitest';
import type { LineCase } from '../../../src/engine/loads/cases.ts';
import { atEnds } from '../../../src/engine/loads/rafter-reactions.ts';
import { patternFactor, shareIn, stretchesOf } from '../../../src/engine/loads/stretches.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { lineId, plainShed } from '../../support/plain-shed.ts';
import { loadBench, type LoadBench } from '../frame/line-bench.ts';

const caseOf = (bench: LoadBench, id: string): LineCase => bench.loading.loads.cases.find((c) => c.caseId === id)!;
const down = (c: LineCase): number => c.points.reduce((sum, p) => sum + p.downLb, 0);
const both = (project: Project, id: string): number =>
  [0, 1].reduce((sum, i) => sum + down(caseOf(loadBench(project, lineId(i)), id)), 0);

/** Level area of the plain shed's covering: 204 in. along by 162 in. across [ft2]. */
const LEVEL_FT2 = (204 * 162) / 144;

describe('what the roof hands to its lines', () => {
  it('balanced snow on both lines is its pressure over the level area', () => {
    const { site } = loadBench(plainShed());
    const psf = site.figures.balancedSnow.value!;
    expect(psf).toBeGreaterThan(0);
    expect(both(plainShed(), 'snow')).toBeCloseTo(psf * LEVEL_FT2, 6);
  });

  // ASCE 7-16 4.8.2: 20 psf, over 200 ft2 reduced to 1.2 - 0.001 At; each line carries its own area.
  it('roof live is reduced by the level area of the line itself', () => {
    const areaA = (LEVEL_FT2 * (81 - 24)) / 120;
    const bench = loadBench(plainShed());
    expect(areaA).toBeLessThan(200);
    expect(bench.loading.roofLivePsf).toBe(20);
    expect(down(caseOf(bench, 'roof-live'))).toBeCloseTo(20 * areaA, 6);
    const wide = plainShed({
      overhangsIn: [30, 24],
      lineYsIn: [0, 260],
      bearing: { line: 0, of: 'bearing', zIn: 160 },
    });
    const wideArea = ((204 * 314) / 144) * ((157 - 24) / 260);
    expect(wideArea).toBeGreaterThan(200);
    expect(loadBench(wide).loading.roofLivePsf).toBeCloseTo(20 * (1.2 - 0.001 * wideArea), 9);
  });

  it('a roof live typed by an engineer stands as typed', () => {
    const instead = [{ what: 'roofLiveReducedPsf', of: lineId(0), value: 16, why: 'letter' }] as const;
    expect(loadBench({ ...plainShed(), instead }).loading.roofLivePsf).toBe(16);
    expect(loadBench({ ...plainShed(), instead }, lineId(1)).loading.roofLivePsf).toBe(20);
  });

  // ASCE 7-16 7.5.1, written out for a beam with an overhang at each end: three segments.
  it.each([
    ['endFull-1', [1, 0.5, 0.5]],
    ['endFull-3', [0.5, 0.5, 1]],
    ['endHalf-1', [0.5, 1, 1]],
    ['endHalf-3', [1, 1, 0.5]],
  ] as const)('partial snow along the beam, %s, loads the rafters of each segment with %j', (pattern, factors) => {
    const bench = loadBench(plainShed());
    const balanced = caseOf(bench, 'snow').points;
    const partial = caseOf(bench, `snow-along-${pattern}`).points;
    const segmentOf = (x: number): number => (x < 0 ? 0 : x < 144 ? 1 : 2);
    expect(partial).toHaveLength(balanced.length);
    partial.forEach((p, i) => expect(p.downLb).toBeCloseTo(factors[segmentOf(p.xIn)]! * balanced[i]!.downLb, 9));
  });

  it('partial snow across the lines halves the span between them or the overhangs', () => {
    const bench = loadBench(plainShed());
    const psf = bench.site.figures.balancedSnow.value!;
    // low overhang 24 full, span 120 and high overhang 18 half; moments about line B
    const strip = (204 / 144) * psf;
    const byHand = (strip * (24 * -12 + 0.5 * 120 * 60 + 0.5 * 18 * 129)) / 120;
    expect(down(caseOf(bench, 'snow-across-endFull-1'))).toBeCloseTo(byHand, 6);
  });

  it('wind across presses or lifts by its two halves, held square to the slope', () => {
    const project = plainShed({ horizontalHeldBy: 'each-square' });
    const bench = loadBench(project);
    const wind = bench.roof.find(({ id }) => id === 'wind-0-A-clear')!;
    const [low, high] = [0, 1].map((half) =>
      wind.pressure(bench.shelter.rafters[0]!, { fromIn: 0, toIn: 1, segment: 0, onHighHalf: half === 1 }),
    );
    const cos = 1 / Math.hypot(1, 4 / 12);
    const half = (204 * 81) / cos / 144;
    const plumb = half * (atEnds(low!.squarePsf).low + atEnds(high!.squarePsf).high) * cos;
    expect(both(project, 'wind-0-A-clear')).toBeCloseTo(plumb, 6);
  });

  // By statics at 45 degrees (cos2 = 1/2) for a share s of the force square to the slope on the high line: s / cos down when
  // the level part is held below, cos - (1 - s) / cos when it is held here: (s - 1/2) / s of the former.
  const steep = (lowOverhangIn: number): LoadBench =>
    loadBench(
      plainShed({
        risePer12: 12,
        lineYsIn: [0, 80],
        overhangsIn: [0, lowOverhangIn],
        bearing: { line: 0, of: 'bearing', zIn: 170 },
        bracesAt: [],
      }),
    );

  it('wind on a steep roof brings the other sign too, as a case of its own, where the holder is open', () => {
    const bench = steep(0);
    // ASCE 7-16 Fig. 27.3-4, 45 degrees, case B, 180, clear: 2.6 on the windward (low) half, 1.4 on the other
    const s = (2.6 / 8 + (1.4 * 3) / 8) / 2;
    const T = 2 * bench.site.figures.velocityPressure.value! * 0.85 * ((204 * 80 * Math.SQRT2) / 144);
    expect(down(caseOf(bench, 'wind-180-B-clear'))).toBeCloseTo((s * T) / Math.SQRT1_2, 6);
    expect(down(caseOf(bench, 'wind-180-B-clear-opposed'))).toBeCloseTo(((s - 0.5) * T) / Math.SQRT1_2, 6);
    expect(caseOf(steep(0), 'wind-along-plus-A-clear-opposed')).toBeUndefined();
  });

  it('wind along a steep roof does so as well, with its whole push on the line', () => {
    const bench = steep(30);
    const s = (55 - 30) / 80;
    const [worst, opposed] = ['wind-along-plus-A-clear', 'wind-along-plus-A-clear-opposed'] as const;
    expect(down(caseOf(bench, opposed)) / down(caseOf(bench, worst))).toBeCloseTo((s - 0.5) / s, 9);
    const { alongLb } = bench.loading.loads;
    expect(alongLb[worst]).toBeGreaterThan(0);
    expect(alongLb[opposed]).toBe(alongLb[worst]);
    expect(caseOf(bench, opposed).onPosts).toEqual(caseOf(bench, worst).onPosts);
  });

  it('wind on a low slope has no case of the other sign', () => {
    const ids = loadBench(plainShed()).loading.cases.map(({ id }) => id);
    expect(ids.filter((id) => id.endsWith('-opposed'))).toEqual([]);
  });

  // ASCE 7-16 Fig. 27.3-7 across a long flat roof (note to Fig. 27.3-4, from memory): case A, clear, -0.8 to h, -0.6 to 2h,
  // -0.3 beyond. Three lines, each piece of rafter in two halves of the roof; each part by its edge nearer to the wind.
  it('wind across a long flat roof comes in bands too, strongest at the windward edge', () => {
    const long = plainShed({
      risePer12: 0,
      lineYsIn: [0, 240, 480],
      overhangsIn: [24, 24],
      bearing: { line: 0, of: 'bearing', zIn: 110 },
    });
    const bench = loadBench(long);
    const h = bench.shelter.meanRoofHeightIn;
    expect(h / 528).toBeLessThan(0.25);
    expect(h).toBeGreaterThan(110);
    expect(h).toBeLessThan(132);
    const qG = bench.site.figures.velocityPressure.value! * 0.85;
    const perFoot = (qG * 204) / 144;
    // from the low eave: overhang 24 and the first half of span 1 begin within h; beyond mid-slope (264) more than 2h
    const bands = [
      { width: 24, cn: -0.8 },
      { width: 240, cn: -0.8 },
      { width: 240, cn: -0.3 },
      { width: 24, cn: -0.3 },
    ];
    const total = bands.reduce((sum, b) => sum + b.width * b.cn, 0) * perFoot;
    const onAll = [0, 1, 2].map((i) => down(caseOf(loadBench(long, lineId(i)), 'wind-flat-180-A-clear')));
    expect(onAll.reduce((a, b) => a + b, 0)).toBeCloseTo(total, 6);
    // the low line: its overhang by moments about the middle line, half of the span beside it
    expect(onAll[2]).toBeCloseTo(perFoot * -0.8 * (24 * (252 / 240) + 120), 6);
    const turned = [0, 1, 2].map((i) => down(caseOf(loadBench(long, lineId(i)), 'wind-flat-0-A-clear')));
    turned.forEach((lb, i) => expect(lb).toBeCloseTo(onAll[2 - i]!, 6));
  });

  it('bands across are for long flat roofs only', () => {
    const flat = (change: Partial<Parameters<typeof plainShed>[0]>): readonly string[] =>
      loadBench(plainShed(change)).roof.flatMap(({ id }) => (id.startsWith('wind-flat') ? [id] : []));
    expect(flat({ risePer12: 0 })).toEqual([]);
    const long = { lineYsIn: [0, 240, 480], overhangsIn: [24, 24] } as const;
    expect(flat({ ...long, risePer12: 1, bearing: { line: 2, of: 'bearing', zIn: 90 } })).toHaveLength(4);
    expect(flat({ ...long, risePer12: 1.1, bearing: { line: 2, of: 'bearing', zIn: 90 } })).toEqual([]);
  });

  it('own loads hang where they are said to, points and stretches', () => {
    const base = { name: 'rack', kind: 'live', duration: 'tenYears', removable: true, direction: 'down' } as const;
    const ownLoads: Project['ownLoads'] = [
      { ...base, id: 'a', where: { on: 'line', line: lineId(0), xIn: 60, lb: 120 } },
      { ...base, id: 'b', where: { on: 'stretch', line: lineId(0), fromXIn: 10, toXIn: 70, plf: 24 } },
      { ...base, id: 'c', where: { on: 'line', line: lineId(1), xIn: 60, lb: 999 } },
      { ...base, id: 'd', kind: 'dead', where: { on: 'line', line: lineId(0), xIn: 60, lb: 999 } },
    ];
    const own = caseOf(loadBench({ ...plainShed(), ownLoads }), 'own-live');
    expect(down(own)).toBeCloseTo(120 + 24 * 5, 9);
    const moment = own.points.reduce((sum, p) => sum + p.downLb * p.xIn, 0);
    expect(moment).toBeCloseTo(120 * 60 + 120 * 40, 6);
    expect(caseOf(loadBench(plainShed()), 'own-live')).toBeUndefined();
  });
});

describe('stretches of a line', () => {
  it('run between posts and beyond the last; what stands on a post counts half to each side', () => {
    const { shelter } = loadBench(plainShed());
    const line = shelter.lines[0]!;
    const stretches = stretchesOf(
      line,
      shelter.posts.filter((p) => p.line === line.id),
    );
    expect(stretches.map(({ kind, fromXIn, toXIn }) => [kind, fromXIn, toXIn])).toEqual([
      ['overhang', -24, 0],
      ['span', 0, 144],
      ['overhang', 144, 168],
    ]);
    const shares = (xIn: number) => stretches.map((_, i) => shareIn(stretches, i, xIn));
    expect([-24, -0.001, 0, 143.9, 144, 168, 999].map(shares)).toEqual([
      [1, 0, 0],
      [1, 0, 0],
      [0.5, 0.5, 0],
      [0, 1, 0],
      [0, 0.5, 0.5],
      [0, 0, 1],
      [0, 0, 1],
    ]);
    expect([-1, 0, 1].map((x) => patternFactor(stretches, [1, 0.5, 0.5], x))).toEqual([1, 0.75, 0.5]);
  });

  it('a beam that ends on its last post has no overhang there', () => {
    const { shelter } = loadBench(plainShed({ beamEndsIn: [0, 168] }));
    const line = shelter.lines[0]!;
    expect(
      stretchesOf(
        line,
        shelter.posts.filter((p) => p.line === line.id),
      ).map(({ kind }) => kind),
    ).toEqual(['span', 'overhang']);
  });
});
