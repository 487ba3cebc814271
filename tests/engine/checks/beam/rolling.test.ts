import { describe, expect, it } from 'vitest';
import { beamSites } from '../../../../src/engine/checks/beam/beam-checks.ts';
import { beamRollingChecks } from '../../../../src/engine/checks/beam/rolling.ts';
import { seatPushes } from '../../../../src/engine/checks/beam/seat-pushes.ts';
import type { CheckRow, SeatPushes } from '../../../../src/engine/evaluation.ts';
import type { Combination } from '../../../../src/engine/loads/combination.ts';
import { emptyLineCase, type LineCase } from '../../../../src/engine/loads/cases.ts';
import type { Capacity, Project, RatedCapacity, SawnStock } from '../../../../src/engine/project/model.ts';
import { lineId, plainShed, type Measures } from '../../../support/plain-shed.ts';
import { analysed, combination, lineLoadsOf } from '../../frame/hand-line.ts';
import { lineBench, jointSource } from '../../frame/line-bench.ts';
import { siteOf, verdict } from '../sites.ts';

/** strength level [lb] */
const parts = { roofLb: 1000, dragLb: 400, leastLb: 900, inertiaLb: 50 };
const across = { ...parts, oneWayLb: parts.roofLb, asdLb: 0 };
/** 0.6 (1000 + 400) in wind, 0.7 x 50 in still air [lb] */
const IN_WIND = 840;
const STILL = 35;

/** An even log of 12 in. on two posts of 9 in. at its ends: half of the push for each. */
const EVEN: Partial<Measures> = {
  beamEndsIn: [0, 144],
  beamDiametersIn: [12, 12],
  postDiametersIn: [9, 9],
  bracesAt: [],
  horizontalHeldBy: 'worse',
};

const joined = (capacity: Capacity, measures: Partial<Measures> = {}): Project => ({
  ...plainShed({ ...EVEN, ...measures }),
  joints: { defaults: [{ kind: 'beamPost', capacity }], own: [] },
});

const strap = (pullLb: number | null, acrossLb: number | null = null): RatedCapacity => ({
  kind: 'rated',
  label: 'strap, invented',
  parts: { pushLb: null, pullLb, alongLb: null, acrossLb },
  durationIncluded: 1.6,
});

const WIND = combination({ 'wind-down-clear': 0.6 });
const SNOW = combination({ snow: 1 }, { durationFactor: 1.15 });

/** Row of the first seat of line A that is pressed and turned as said in one combination. */
function rowOf(
  project: Project,
  push: { readonly downLb: number; readonly twistLbIn?: number; readonly alongLb?: number },
  asked: Combination = WIND,
  known: readonly number[] = [0, 1],
): CheckRow {
  const seats: readonly SeatPushes[] = [
    {
      beamId: 'beam-0-0',
      postId: 'post-0-0',
      byCombination: {
        [asked.id]: { leastDownLb: push.downLb, twistLbIn: push.twistLbIn ?? 0, alongLb: push.alongLb ?? 0 },
      },
    },
  ];
  const lines = known.map((i) => ({
    report: { lineId: lineId(i), seats: i === 0 ? seats : [] },
    combinations: [asked],
  }));
  return beamRollingChecks(jointSource(project), across, lines)[0]!.rows()[0]!;
}

// From the seat, cut 1 in. into the log, up over the log and a strip of 1-1/2 in.
const ARM = 12 - 1 + 1.5;
// A flat 1 in. deep on a circle of 12 in.: half its width is sqrt(R2 - (R - 1)2).
const HALF = Math.sqrt(6 ** 2 - 5 ** 2);

describe('a beam rolling on its posts', () => {
  // proof [beam.rolling]: closed-form - moments about the edge of the seat, a flat by the chord of its circle
  it('[beam.rolling] half of the push on its arm against what presses the seat, on half the flat', () => {
    const row = rowOf(joined(null), { downLb: 2000 });
    expect(row.demand!.value).toBeCloseTo((IN_WIND / 2) * ARM, 9);
    expect(row.capacity!.value).toBeCloseTo(2000 * HALF, 9);
    expect(row.ratio!).toBeCloseTo((420 * ARM) / (2000 * HALF), 9);
  });

  it('[beam.rolling] in still air one per cent of the dead load and the bow of the log are left', () => {
    const row = rowOf(joined(null), { downLb: 2000, twistLbIn: 1500 }, SNOW);
    expect(row.demand!.value).toBeCloseTo((STILL / 2) * ARM + 1500, 9);
  });

  it('[beam.rolling] a narrow post ends the seat before the flat does', () => {
    const row = rowOf(joined(null, { postDiametersIn: [5, 5] }), { downLb: 4000 });
    expect(row.capacity!.value).toBeCloseTo(4000 * 2.5, 9);
  });

  it('[beam.rolling] the pull of a strap helps on the same lever, less for a load that lasts longer, and uplift takes from it', () => {
    const project = joined(strap(3200, 2000));
    const free = 1 - IN_WIND / 2 / 2000;
    expect(rowOf(project, { downLb: -400 }).capacity!.value).toBeCloseTo((3200 * free - 400) * HALF, 9);
    const longer = 1.15 / 1.6;
    const freeInSnow = 1 - STILL / 2 / (2000 * longer);
    expect(rowOf(project, { downLb: 100 }, SNOW).capacity!.value).toBeCloseTo(
      (3200 * longer * freeInSnow + 100) * HALF,
      9,
    );
  });

  it('[beam.rolling] a push along the line takes its share of the strap too, all of it where that is not given', () => {
    const both: RatedCapacity = { ...strap(3200, 2000), parts: { ...strap(3200, 2000).parts, alongLb: 1000 } };
    const held = (capacity: RatedCapacity) => rowOf(joined(capacity), { downLb: 2000, alongLb: 300 }).capacity!.value;
    expect(held(both)).toBeCloseTo((3200 * (1 - IN_WIND / 2 / 2000 - 0.3) + 2000) * HALF, 9);
    expect(held(strap(3200, 2000))).toBeCloseTo(2000 * HALF, 9);
  });

  it('[beam.rolling] a strap that is not known to carry the push across, or is used up by it, pulls nothing', () => {
    for (const level of [null, IN_WIND / 2])
      expect(rowOf(joined(strap(3200, level)), { downLb: 2000 }).capacity!.value).toBeCloseTo(2000 * HALF, 9);
  });

  it('[beam.rolling] what its weight does not hold is not given, fails on bare contact, and breaks where the wind lifts it off', () => {
    const light = { downLb: 500 };
    const unsaid = rowOf(joined(null), light);
    expect([unsaid.status, unsaid.reason?.code, unsaid.demand?.unit]).toEqual([
      'notGiven',
      'capacityNotGiven',
      'lb·in',
    ]);
    expect(rowOf(joined(strap(null)), light).reason?.code).toBe('partNotGiven');
    expect([
      rowOf(joined({ kind: 'none' }), light).status,
      rowOf(joined({ kind: 'none' }), { downLb: 2000 }).status,
    ]).toEqual(['fail', 'pass']);
    const lifted = rowOf(joined(strap(300)), { downLb: -400 });
    expect([lifted.status, lifted.reason?.code]).toEqual(['fail', 'beamRollsOff']);
  });

  it('[beam.rolling] round on round, or round in a saddle, has nothing to stand on', () => {
    const heavy = { downLb: 9000 };
    expect(rowOf(joined(null, { seatIn: 0 }), heavy).reason?.code).toBe('seatHasNoFlat');
    const project = joined(null);
    const saddled: Project = {
      ...project,
      groups: project.groups.map((g) => (g.role === 'beam' ? { ...g, seat: { ...g.seat, kind: 'saddle' } } : g)),
    };
    expect([rowOf(saddled, heavy).status, rowOf(saddled, heavy).reason?.code]).toEqual([
      'outside',
      'beamTurnsInSaddle',
    ]);
  });

  it('[beam.rolling] while a line is not analysed nobody knows the push', () => {
    const row = rowOf(joined(null), { downLb: 9000 }, WIND, [0]);
    expect([row.status, row.reason?.code]).toEqual(['notGiven', 'acrossNotKnown']);
  });

  it('[beam.rolling] more weight, a deeper seat or a stronger strap never asks more of it', () => {
    const ratios = (rows: readonly CheckRow[]) => rows.map((r) => r.ratio!);
    const falling = (found: readonly number[]) => expect(found).toEqual([...found].sort((a, b) => b - a));
    falling(ratios([2000, 3000, 5000].map((downLb) => rowOf(joined(null), { downLb }))));
    falling(ratios([0.5, 1, 1.5].map((seatIn) => rowOf(joined(null, { seatIn }), { downLb: 4000 }))));
    falling(ratios([1000, 2000, 4000].map((pull) => rowOf(joined(strap(pull)), { downLb: 500 }))));
  });

  it('what presses a seat is the least of the brace models, what turns and pushes it the greatest', () => {
    const project = joined(null, {
      beamEndsIn: [-24, 168],
      bracesAt: [
        [0, 'plus'],
        [1, 'minus'],
      ],
    });
    const bench = lineBench(project);
    const load: LineCase = { ...emptyLineCase('snow'), points: [{ xIn: 60, downLb: 3000, alongLb: 0 }] };
    const one = combination({ snow: 1 }, { dead: { factor: 0, weight: 'heavy' }, gravityOnly: true });
    const frame = analysed(bench.frame.members, lineLoadsOf([load]), [one]);
    const models = frame.responses.map((r) =>
      seatPushes({ ...bench.context, frame: { ...frame, responses: [r] } }).map((s) => s.byCombination[one.id]!),
    );
    expect(models.length).toBeGreaterThan(1);
    seatPushes({ ...bench.context, frame }).forEach((seat, i) => {
      expect(seat.byCombination[one.id]).toEqual({
        leastDownLb: Math.min(...models.map((m) => m[i]!.leastDownLb)),
        twistLbIn: Math.max(...models.map((m) => m[i]!.twistLbIn)),
        alongLb: Math.max(...models.map((m) => m[i]!.alongLb)),
      });
    });
  });
});

describe('a sawn beam that is deeper than wide', () => {
  const sawn = (breadthIn: number, depthIn: number, capacity: Capacity) => {
    const stock: SawnStock = {
      kind: 'sawn',
      breadthIn,
      depthIn,
      lay: 'edge',
      plies: 1,
      species: 'Western larch',
      grade: null,
      use: 'wet',
    };
    const project = joined(capacity);
    const { context } = lineBench({
      ...project,
      groups: project.groups.map((g) => (g.role === 'beam' ? { ...g, stock } : g)),
    });
    const sites = beamSites(context).filter((s) => s.ruleId === 'beam.upright');
    const r = context.frame.responses.find((one) => one.combination.purpose === 'strength')!;
    return sites.length === 0 ? null : verdict(siteOf(sites, 'beam.upright', 'beam-0-0', 'post-0-0'), r);
  };
  const bracket: RatedCapacity = { ...strap(500), parts: { ...strap(500).parts, acrossLb: 400 } };

  // proof [beam.upright]: no-equation - from memory, NDS 4.4.1.2: d / b of 2 without support, 4 with the ends held in position
  it('[beam.upright] up to twice as deep needs nothing, up to four times its ends held', () => {
    expect(sawn(6, 6, null)).toBeNull();
    expect(sawn(4, 8, null)).toMatchObject({ status: 'pass', ratio: 1 });
    expect(sawn(3, 9, bracket)).toMatchObject({ status: 'pass', ratio: 0.75 });
    expect(sawn(2, 9, bracket)).toMatchObject({ status: 'fail', ratio: 1.125 });
  });

  it('[beam.upright] a deeper one on a joint that nobody has rated is not given, on bare contact it fails', () => {
    expect(sawn(3, 9, null)).toMatchObject({ status: 'notGiven', demand: { value: 3, unit: '1' } });
    expect(sawn(3, 9, { kind: 'none' })).toMatchObject({ status: 'fail' });
  });
});
