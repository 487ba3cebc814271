import { describe, expect, it } from 'vitest';
import { acrossPush } from '../../../src/engine/loads/across.ts';
import { combine } from '../../../src/engine/loads/combine.ts';
import { earthquakeOf } from '../../../src/engine/loads/earthquake.ts';
import type { LoadCase } from '../../../src/engine/loads/cases.ts';
import { message } from '../../../src/engine/message.ts';
import type { Project, Site } from '../../../src/engine/project/model.ts';
import { lineId, plainShed } from '../../support/plain-shed.ts';
import { loadBench } from '../frame/line-bench.ts';

const given = <T>(value: T) => ({ value, givenBy: 'department', date: null }) as const;
const SHAKEN = { sds: 0.6, sd1: 0.25, r: 1.5, rGivenBy: '' } as const;
const shaken = (change: Partial<Site> = {}): Project => {
  const shed = plainShed();
  return { ...shed, site: { ...shed.site, riskCategory: given('II'), seismic: SHAKEN, ...change } };
};

const loadCase = (id: string, kind: LoadCase['kind'], more: Partial<LoadCase> = {}): LoadCase => ({
  id,
  kind,
  words: message('caseRoofLive'),
  swaysAlong: false,
  ...more,
});

describe('an earthquake on a shelter', () => {
  // By hand: SDS / (R / Ie) = 0.6 / 1.5 = 0.4; category D by SDS 0.5 and SD1 0.2, so 1.3 x 0.4 = 0.52; 0.2 x 0.6 = 0.12.
  it('[ASCE 7-16 12.8, 12.4.2] pushes with 0.52 of the weight and presses or lifts with 0.12 of the dead load', () => {
    const quake = earthquakeOf(shaken().site, 12, 20)!;
    expect(quake.category).toBe('D');
    expect(quake.pushShare).toBeCloseTo(0.52, 12);
    expect(quake.verticalShare).toBeCloseTo(0.12, 12);
  });

  // ASCE 7-16 12.7.2 item 4, from memory: flat-roof snow above 30 psf moves with a fifth of itself.
  it('[ASCE 7-16 12.7.2] takes a fifth of the snow along from above 30 psf on', () => {
    const moving = (psf: number | null) => earthquakeOf(shaken().site, 12, psf)!.movingSnowPsf;
    expect([moving(null), moving(30), moving(50)]).toEqual([0, 0, 10]);
    expect(moving(30.5)).toBeCloseTo(6.1, 12);
  });

  it('is none where nothing is typed in, and in category A', () => {
    expect(earthquakeOf(shaken({ seismic: null }).site, 12, 20)).toBeNull();
    expect(earthquakeOf(shaken({ seismic: { ...SHAKEN, sds: 0.1, sd1: 0.05 } }).site, 12, 20)).toBeNull();
  });

  it('takes an R above 1.5 only from somebody with a name', () => {
    const of = (rGivenBy: string) => earthquakeOf(shaken({ seismic: { ...SHAKEN, r: 3, rGivenBy } }).site, 12, 20)!;
    expect(of(' ').pushShare).toBeCloseTo(0.52, 12);
    expect(of('A. Engineer').pushShare).toBeCloseTo(0.26, 12);
  });
});

describe('an earthquake on a frame line', () => {
  it('stands in for the notional push, each way, on the line’s own weight', () => {
    const { loading, earthquake } = loadBench(shaken({ groundSnowPsf: given(20) }));
    const sways = loading.cases.filter(({ kind }) => kind === 'notional' || kind === 'seismic');
    expect(sways.map(({ id }) => id)).toEqual(['seismic-plus', 'seismic-minus']);
    expect(sways.every(({ verticalShare }) => verticalShare === earthquake!.verticalShare)).toBe(true);
    const push = 0.52 * loading.loads.deadLb;
    expect(loading.loads.alongLb['seismic-plus']).toBeCloseTo(push, 9);
    expect(loading.loads.alongLb['seismic-minus']).toBeCloseTo(-push, 9);
    expect(loading.loads.inertiaLb).toBeCloseTo(push, 9);
  });

  it('shakes a fifth of the snow that comes down on the line with it', () => {
    const snowy = shaken({ groundSnowPsf: given(60) });
    const { loading, earthquake, site } = loadBench(snowy);
    const snow = site.figures.balancedSnow.value!;
    expect(earthquake!.movingSnowPsf).toBeCloseTo(0.2 * snow, 9);
    const all = loading.loads.cases.find(({ caseId }) => caseId === 'snow')!;
    const snowLb = all.points.reduce((sum, p) => sum + p.downLb, 0);
    expect(loading.loads.inertiaLb).toBeCloseTo(0.52 * (loading.loads.deadLb + 0.2 * snowLb), 6);
  });

  it('shakes what hangs there for ever, and nothing else that hangs', () => {
    const hung = (duration: 'permanent' | 'tenYears'): Project => ({
      ...shaken(),
      ownLoads: [
        {
          id: 'bell',
          name: 'bell',
          kind: 'live',
          duration,
          removable: true,
          direction: 'down',
          where: { on: 'line', line: lineId(0), xIn: 40, lb: 100 },
        },
      ],
    });
    const push = (project: Project): number => loadBench(project).loading.loads.inertiaLb;
    expect(push(hung('permanent')) - push(shaken())).toBeCloseTo(52, 9);
    expect(push(hung('tenYears'))).toBe(push(shaken()));
  });

  it('[ASCE 7-16 2.4.5] across the lines 0.7 of it counts where that is more than 0.6 of the wind', () => {
    expect(acrossPush({ roofLb: 100, dragLb: 50, leastLb: 0, inertiaLb: 1000 })).toBeCloseTo(700, 9);
    expect(acrossPush({ roofLb: 1000, dragLb: 500, leastLb: 0, inertiaLb: 1000 })).toBeCloseTo(900, 9);
  });
});

describe('combinations with an earthquake', () => {
  const quake = loadCase('seismic-plus', 'seismic', { swaysAlong: true, verticalShare: 0.12 });
  const found = (cases: readonly LoadCase[]) =>
    combine([quake, ...cases])
      .filter(({ id }) => id.includes('seismic'))
      .map((c) => [
        c.id,
        c.dead.factor,
        c.durationFactor,
        Object.fromEntries(c.factors.map((f) => [f.caseId, f.factor])),
      ]);

  // By hand: 1 + 0.7 x 0.12 = 1.084; 1 + 0.525 x 0.12 = 1.063; 0.6 - 0.7 x 0.12 = 0.516. Ten minutes: CD 1.6 (NDS Table 2.3.2).
  it('[ASCE 7-16 2.4.5] put the vertical effect on the dead load: pressing in 8 and 9, lifting in 10', () => {
    expect(found([loadCase('snow', 'snow')])).toEqual([
      ['8+seismic-plus', expect.closeTo(1.084, 12), 1.6, { 'seismic-plus': 0.7 }],
      ['9+snow+seismic-plus', expect.closeTo(1.063, 12), 1.6, { snow: 0.75, 'seismic-plus': 0.525 }],
      ['10+seismic-plus', expect.closeTo(0.516, 12), 1.6, { 'seismic-plus': 0.7 }],
    ]);
  });

  it('[ASCE 7-16 2.4.5] run 9 beside what hangs there even where no snow falls, and not alone', () => {
    expect(found([]).map(([id]) => id)).toEqual(['8+seismic-plus', '10+seismic-plus']);
    expect(found([loadCase('own-live', 'ownLive')]).map(([id]) => id)).toEqual([
      '8+seismic-plus',
      '9+own-live+seismic-plus',
      '10+seismic-plus',
    ]);
  });

  it('are no gravity and push the line sideways', () => {
    const swaying = combine([quake]).filter(({ id }) => id.includes('seismic'));
    expect(swaying.every((c) => c.swaysAlong && !c.gravityOnly)).toBe(true);
  });
});
