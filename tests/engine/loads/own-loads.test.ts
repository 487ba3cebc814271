import { describe, expect, it } from 'vitest';
import type { LineCase } from '../../../src/engine/loads/cases.ts';
import { ownSets, whyOwnNotComputed } from '../../../src/engine/loads/own-loads.ts';
import type { OwnLoad, Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { lineId, plainShed } from '../../support/plain-shed.ts';
import { lineBench, loadBench, placed, type LoadBench } from '../frame/line-bench.ts';
import { evaluated, rowOf } from '../whole/whole.ts';

const shed = soundProject(exampleText('firewood-shed'));
const leanTo = soundProject(exampleText('lean-to'));
const load = (more: Partial<OwnLoad>): OwnLoad => ({
  id: 'swing',
  name: 'swing',
  kind: 'live',
  duration: 'tenYears',
  removable: true,
  direction: 'down',
  where: { on: 'line', line: 'line-high', xIn: 78, lb: 400 },
  ...more,
});
const durationOf2 = (project: Project): number =>
  evaluated(project).loads.combinations.find((c) => c.id === '2+own-live')!.duration;

const onLine = { on: 'line', line: lineId(0), xIn: 60, lb: 120 } as const;
const bench = (...ownLoads: readonly OwnLoad[]): LoadBench => loadBench({ ...plainShed(), ownLoads });
const caseOf = ({ loading }: LoadBench, id: string): LineCase | undefined =>
  loading.loads.cases.find((c) => c.caseId === id);
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const down = (c: LineCase | undefined): number => sum([...c!.points, ...c!.atPosts].map((p) => p.downLb));
const along = (c: LineCase | undefined): number => sum([...c!.points, ...c!.atPosts].map((p) => p.alongLb));

describe('what the person hangs there', () => {
  // NDS Table 2.3.2: ten years 1.0, permanent 0.9
  it('counts ten years, or for ever where it hangs for ever', () => {
    expect(durationOf2({ ...shed, ownLoads: [load({})] })).toBe(1);
    expect(durationOf2({ ...shed, ownLoads: [load({ duration: 'sevenDays' })] })).toBe(1);
    expect(durationOf2({ ...shed, ownLoads: [load({ duration: 'permanent' })] })).toBe(0.9);
  });

  it.each([
    ['on a ledger', 'ownOnLedger', leanTo, load({ where: { on: 'line', line: 'ledger', xIn: 78, lb: 400 } })],
    [
      'spread on a ledger',
      'ownOnLedger',
      leanTo,
      load({ where: { on: 'stretch', line: 'ledger', fromXIn: 0, toXIn: 78, plf: 40 } }),
    ],
    ['across the lines', 'ownAcross', shed, load({ direction: 'yPlus' })],
    ['of dead weight that lifts', 'ownOnlyDown', shed, load({ kind: 'dead', direction: 'up' })],
    ['of snow that pushes', 'ownOnlyDown', shed, load({ kind: 'snow', direction: 'xPlus' })],
    [
      'along a rafter’s weak side',
      'ownBendsSideways',
      shed,
      load({ direction: 'xPlus', where: { on: 'member', member: 'rafter-3', atIn: 20, lb: 40 } }),
    ],
    [
      'past the edge of the roof',
      'ownOffRoof',
      shed,
      load({ where: { on: 'plane', plane: 'plane-1', fromXIn: -500, toXIn: 60, fromYIn: 0, toYIn: 40, psf: 5 } }),
    ],
  ])('%s it is not computed, and a row says why', (_, code, project, own) => {
    const row = rowOf(evaluated({ ...project, ownLoads: [own] }), 'site.ownLoad/swing/whole');
    expect([row.status, row.reason?.code]).toEqual(['outside', code]);
  });

  it('is said to need a licensed designer where it moves', () => {
    const said = evaluated({ ...shed, ownLoads: [load({})] }).assumptions.map((m) => m.code);
    expect(said).toContain('assumeOwnLive');
  });
});

describe('own loads on a frame line', () => {
  it('arrive where they are said to, down, up and along, on the line, its beam or its post', () => {
    const beam = { on: 'member', member: 'beam-0-0', atIn: 60, lb: 120 } as const;
    expect(caseOf(bench(load({ where: onLine })), 'own-live')!.points).toEqual(
      caseOf(bench(load({ where: beam })), 'own-live')!.points,
    );
    expect(down(caseOf(bench(load({ where: onLine, direction: 'up' })), 'own-live-up'))).toBeCloseTo(-120, 9);
    const pulled = bench(load({ where: onLine, direction: 'xMinus' }));
    expect(along(caseOf(pulled, 'own-live-xMinus'))).toBeCloseTo(-120, 9);
    expect(pulled.loading.loads.alongLb['own-live-xMinus']).toBeCloseTo(-120, 9);
    const post = { on: 'member', member: 'post-0-1', atIn: 48, lb: 90 } as const;
    const foot = pulled.shelter.posts.find((p) => p.id === 'post-0-1')!.footZIn;
    expect(caseOf(bench(load({ where: post })), 'own-live')!.atPosts).toEqual([
      { postId: 'post-0-1', zIn: foot + 48, downLb: 90, alongLb: 0 },
    ]);
  });

  // Lever rule on a rafter of two supports, by hand: a load at y lands on the line at 0 with (120 - y) / 120 of itself. The
  // plain shed stands with its high line at 0 and its low line at 120; the hook spreads over 2 in. about its middle.
  it('come down a rafter by the lever rule', () => {
    const at = (yIn: number) => bench(load({ where: { on: 'member', member: 'rafter-3', atIn: yIn, lb: 100 } }));
    for (const yIn of [0, 21, 42, 63])
      expect(down(caseOf(at(yIn), 'own-live'))).toBeCloseTo(100 * ((120 - yIn) / 120), 6);
  });

  // 5 psf of level area on 60 in. by 40 in., its middle 30 in. from the high line: 5 x 60 x 40 / 144 = 83.33 lb, of which
  // the high line takes (120 - 30) / 120.
  it('come down from a patch of the roof by its level area and the lever rule', () => {
    const where = { on: 'plane', plane: 'plane-0', fromXIn: 30, toXIn: 90, fromYIn: 10, toYIn: 50, psf: 5 } as const;
    const plane = placed(plainShed()).planes[0]!.id;
    const patch = load({ where: { ...where, plane } });
    const whole = (5 * 60 * 40) / 144;
    expect(down(caseOf(bench(patch), 'own-live'))).toBeCloseTo((whole * 90) / 120, 6);
    const onBoth = [0, 1].map((i) =>
      down(caseOf(loadBench({ ...plainShed(), ownLoads: [patch] }, lineId(i)), 'own-live')),
    );
    expect(sum(onBoth)).toBeCloseTo(whole, 6);
  });

  it('of dead weight are pieces of their own; what may be taken away holds nothing down', () => {
    const dead = (removable: boolean) => {
      const { loads } = bench(load({ kind: 'dead', removable, where: onLine })).loading;
      const piece = loads.dead.find((d) => d.piece === 'own-swing')!;
      return [down(piece.heavy), down(piece.light), loads.deadLb - bench().loading.loads.deadLb];
    };
    expect(dead(false)).toEqual([120, 120, expect.closeTo(120, 9)]);
    expect(dead(true)).toEqual([120, 0, expect.closeTo(120, 9)]);
  });

  it('of snow lie on the balanced snow and stand beside wind', () => {
    const snowy = bench(load({ kind: 'snow', where: onLine }));
    expect(down(caseOf(snowy, 'own-snow')) - down(caseOf(snowy, 'snow'))).toBeCloseTo(120, 9);
    const ids = lineBench({ ...plainShed(), ownLoads: [load({ kind: 'snow', where: onLine })] }).frame.responses.map(
      (r) => r.combination.id,
    );
    expect(ids).toContain('6-snow+own-snow+wind-0-A-clear');
    expect(ids).toContain('3-snow+own-snow');
  });

  it('of wind act alone and beside every wind of the site that does not blow against them', () => {
    const { loading } = bench(load({ kind: 'wind', direction: 'xPlus', where: onLine }));
    const { alongLb } = loading.loads;
    expect(alongLb['own-wind-xPlus']).toBe(120);
    const site = alongLb['wind-along-plus-A-clear']!;
    expect(alongLb['wind-along-plus-A-clear-own-xPlus']).toBeCloseTo(site + 120, 9);
    expect(alongLb['wind-along-minus-A-clear-own-xPlus']).toBeUndefined();
    const lifted = bench(load({ kind: 'wind', direction: 'up', where: onLine }));
    const across = 'wind-180-B-clear';
    expect(down(caseOf(lifted, `${across}-own-up`))).toBeCloseTo(down(caseOf(lifted, across)) - 120, 9);
  });

  it('act together in every way in which none stands against another', () => {
    const all = (['down', 'up', 'xPlus', 'xMinus'] as const).map((direction) => load({ id: direction, direction }));
    expect(ownSets(all).map((set) => set.name)).toEqual([
      'xPlus',
      'xMinus',
      'down',
      'down-xPlus',
      'down-xMinus',
      'up',
      'up-xPlus',
      'up-xMinus',
    ]);
    expect(ownSets([]).length).toBe(0);
  });

  it('that are computed have no reason not to be', () => {
    const project = plainShed();
    expect(whyOwnNotComputed(project, placed(project), load({ where: onLine }))).toBeNull();
  });
});

describe('a load on a post in the frame', () => {
  // Statics, by hand: what pulls at a post comes out at the feet, whole.
  it('comes out at the feet of the line, sideways and down', () => {
    const where = { on: 'member', member: 'post-0-0', atIn: 48, lb: 90 } as const;
    const feet = (direction: OwnLoad['direction'], id: string): readonly [number, number] => {
      const { frame } = lineBench({ ...plainShed(), ownLoads: [load({ where, direction })] });
      const of = (wanted: string) =>
        frame.responses.find((r) => r.combination.id === wanted && r.braceModel === 'bothWays')!;
      const total = (r: ReturnType<typeof of>, part: 0 | 1) =>
        sum(frame.mesh.posts.map((p) => r.values[frame.layout.reactionsAt + p.support * 3 + part]!));
      return [0, 1].map((part) => total(of(`2+${id}`), part as 0 | 1) - total(of('1'), part as 0 | 1)) as [
        number,
        number,
      ];
    };
    const [side, none] = feet('xPlus', 'own-live-xPlus');
    expect(side).toBeCloseTo(-90, 6);
    expect(none).toBeCloseTo(0, 6);
    const [nothing, weight] = feet('down', 'own-live');
    expect(nothing).toBeCloseTo(0, 6);
    expect(weight).toBeCloseTo(90, 6);
  });
});
