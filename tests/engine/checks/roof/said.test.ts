import { describe, expect, test } from 'vitest';
import type { CheckRow } from '../../../../src/engine/evaluation.ts';
import { at, listAt } from '../../project/raw.ts';
import { leanToWith, plainRoof, rate, ratioIn, rowOf, rowsOf, shedWith, stepsOf } from './roof.ts';

describe('what nobody has said', () => {
  test('[rafter.tie] shows the pull and asks for a rating', () => {
    const row = rowOf(
      shedWith((raw) => void listAt(raw, 'joints', 'defaults').splice(0)),
      'rafter.tie/rafter-2/line-low',
    );
    expect(row.status).toBe('notGiven');
    expect(row.reason!.code).toBe('capacityNotGiven');
    expect(row.demand!.value).toBeGreaterThan(0);
  });

  test('[rafter.tie] breaks where contact alone is said to hold and the wind lifts', () => {
    const context = shedWith((raw) => {
      listAt(raw, 'joints', 'defaults').splice(0, Infinity, { kind: 'rafterStrip', capacity: { kind: 'none' } });
    });
    const row = rowOf(context, 'rafter.tie/rafter-2/line-low');
    expect(row.status).toBe('fail');
    expect(row.ratio).toBeNull();
    expect(row.reason!.code).toBe('contactOnly');
  });

  test('[rafter.tie] passes on contact alone where no combination lifts, and says so', () => {
    const context = shedWith((raw) => {
      plainRoof(0)(raw);
      at(raw, 'roofPlanes', 'plane-1')['dead'] = {
        by: 'total',
        heavyPsf: 40,
        lightPsf: 40,
        includes: ['purlins', 'rafters'],
      };
      listAt(raw, 'joints', 'defaults').splice(0, Infinity, { kind: 'rafterStrip', capacity: { kind: 'none' } });
    });
    const row = rowOf(context, 'rafter.tie/rafter-2/line-low');
    expect(row).toMatchObject({ status: 'pass', demand: { value: 0, unit: 'lb' }, capacity: null, ratio: 0 });
    expect(row.reason!.code).toBe('nothingAsked');
    expect(stepsOf(context, row.key)).toEqual([]);
  });

  test('[rafter.tie] a joint of its own replaces the rating of its kind, on that rafter and line only', () => {
    const context = shedWith((raw) => {
      rate(raw, 'rafterStrip', { pullLb: 500 });
      const { capacity } = at(raw, 'joints', 'defaults', 'rafterStrip');
      const own = structuredClone(capacity);
      at({ own }, 'own', 'parts')['pullLb'] = 250;
      listAt(raw, 'joints', 'own').push({ key: 'rafterStrip/rafter-4/line-low', capacity: own });
    });
    const ratio = (key: string) => rowOf(context, key).ratio!;
    const plain = ratio('rafter.tie/rafter-5/line-low');
    expect(ratio('rafter.tie/rafter-4/line-low')).toBeCloseTo(2 * plain, 9);
    expect(ratio('rafter.tie/rafter-4/line-high')).toBeCloseTo(ratio('rafter.tie/rafter-5/line-high'), 9);
  });

  test('[rafter.tie] without a wind speed no tie is judged, and every one says why', () => {
    const context = shedWith((raw) => {
      at(raw, 'site', 'windMph')['value'] = null;
      rate(raw, 'rafterStrip', { pullLb: 5000 });
    });
    const rows = rowsOf(context).filter((r) => /^(rafter|purlin|strip)\.tie$|^sheet\.uplift$/.test(r.ruleId));
    expect(rows.length).toBe(20 + 6 + 2 + 1);
    for (const row of rows) expect([row.status, row.reason!.code]).toEqual(['notGiven', 'missingWindSpeed']);
  });

  test('[rafter.bending] a rafter without stock and every rafter under a purlin without stock are not given', () => {
    const ofRafters = rowsOf(shedWith((raw) => void (at(raw, 'groups', 'rafters')['stock'] = null)));
    const ofPurlins = rowsOf(shedWith((raw) => void (at(raw, 'groups', 'purlins')['stock'] = null)));
    for (const rows of [ofRafters, ofPurlins]) {
      const rafters = rows.filter((r) => r.ruleId.startsWith('rafter.'));
      expect(new Set(rafters.map((r) => r.memberId)).size).toBe(10);
      for (const row of rafters) expect([row.status, row.reason!.code]).toEqual(['notGiven', 'memberNotGiven']);
    }
  });

  test('[rafter.seat] a level seat without a cut on a slope has no length', () => {
    const context = shedWith((raw) => void (at(raw, 'groups', 'rafters')['seatCutIn'] = 0));
    const row = rowOf(context, 'rafter.seat/rafter-2/line-low');
    expect([row.status, row.reason!.code]).toEqual(['notGiven', 'seatLengthUnknown']);
  });

  test('[rafter.bending] a deep rafter without blocking is outside the method', () => {
    const context = shedWith((raw) => void (at(raw, 'groups', 'rafters')['blocked'] = false));
    const rows = rowsOf(context).filter((r) => r.ruleId === 'rafter.bending');
    for (const row of rows) expect([row.status, row.reason!.code]).toEqual(['outside', 'needsBlocking']);
    expect(rows.length).toBe(30);
  });

  test('[rafter.bending] a seat cut over an eighth of the depth that the wind stretches is outside the method', () => {
    const at1 = (seatCutIn: number): CheckRow =>
      rowOf(
        shedWith((raw) => void (at(raw, 'groups', 'rafters')['seatCutIn'] = seatCutIn)),
        'rafter.bending/rafter-2/eave~line-low',
      );
    expect(at1(0.75).status).toBe('pass');
    // 1.05 in. plumb is 1.019 in. square to 3 in 12; an eighth of 8 in. is 1 in.
    expect([at1(1.05).status, at1(1.05).reason!.code]).toEqual(['outside', 'seatStretchedDeep']);
  });

  test('[rafter.shear] a seat cut over a sixth of the depth away from an end breaks the rule', () => {
    const context = shedWith((raw) => void (at(raw, 'groups', 'rafters')['seatCutIn'] = 1.5));
    const row = rowOf(context, 'rafter.shear/rafter-2/line-low');
    expect([row.status, row.ratio, row.reason!.code]).toEqual(['fail', null, 'cutTooDeep']);
  });

  test('[rafter.bending] a cut made by hand on a rafter is outside the method, its neighbours are judged', () => {
    const context = shedWith((raw) => {
      const cut = {
        id: 'cut-1',
        member: 'rafter-3',
        kind: 'notch',
        centreIn: 60,
        lengthIn: 2,
        depthIn: 1,
        angleDeg: 0,
      };
      listAt(raw, 'cuts').push({ ...cut, by: 'hand' });
    });
    expect(rowOf(context, 'rafter.bending/rafter-3/whole').reason!.code).toBe('handCutOnRoof');
    expect(rowOf(context, 'rafter.bending/rafter-4/line-low~line-high').status).toBe('pass');
    expect(rowOf(context, 'rafter.tie/rafter-3/line-low').demand!.value).toBeGreaterThan(0);
  });
});

// proof [sheet.span]: no-equation - a gap against a rated span
// proof [sheet.uplift]: closed-form - least wind of ASCE 7-16 30.2.2 less light dead load, times the width of a row
// proof [ledger.building]: no-equation - open until somebody says so
// proof [ledger.fixing]: closed-form - force on each foot times the width of a rafter over the rating

describe('sheet and ledger', () => {
  test('[sheet.span] compares the widest gap between purlins with the rated span', () => {
    const rated = (ratedSpanIn: number | null) =>
      rowOf(
        shedWith((raw) => void (at(raw, 'roofPlanes', 'plane-1', 'covering')['ratedSpanIn'] = ratedSpanIn)),
        'sheet.span/plane-1/whole',
      );
    expect([rated(null).status, rated(null).demand]).toEqual(['notGiven', { value: 28, unit: 'in' }]);
    expect(rated(35).ratio).toBeCloseTo(28 / 35, 12);
    expect(rated(24).status).toBe('fail');
  });

  test('[sheet.uplift] is the least wind less 0.6 of the light sheet on each foot of row, with a quarter for continuity', () => {
    const context = shedWith((raw) => {
      plainRoof(0)(raw);
      at(raw, 'roofPlanes', 'plane-1')['dead'] = { by: 'total', heavyPsf: 2, lightPsf: 1, includes: [] };
      rate(raw, 'sheetPurlin', { pullLb: 60 });
    });
    const lift = (0.6 * 16 - 0.6 * 1) * 1.25 * (24 / 12); // ASCE 7-16 2.4.1, 30.2.2; rows 24 in. apart
    const row = rowOf(context, 'sheet.uplift/plane-1/whole');
    expect(row.demand).toEqual({ value: expect.closeTo(lift, 9), unit: 'lb/ft' });
    expect(row.ratio!).toBeCloseTo(lift / 60, 9);
  });

  test('[ledger.building] stays open until somebody says that the building takes it', () => {
    const keys = (name: string | null) =>
      rowsOf(
        leanToWith((raw) => {
          at(raw, 'surroundings', 'neighbour')['ableBy'] = name === null ? null : { name, date: '2026-04-01' };
        }),
      ).map((r) => r.key);
    for (const name of [null, '', '  ', 'x', '. 2']) expect(keys(name)).toContain('ledger.building/ledger/whole');
    expect(keys('the engineer')).not.toContain('ledger.building/ledger/whole');
  });

  test('[ledger.fixing] names the forces on each foot until the fixings are rated, then adds up their shares', () => {
    const open = rowOf(
      leanToWith(() => {}),
      'ledger.fixing/ledger/whole',
    );
    expect([open.status, open.reason!.code]).toEqual(['notGiven', 'ledgerAsks']);
    const { downPlf, outPlf, alongPlf } = open.reason!.values;
    for (const plf of [downPlf, outPlf, alongPlf]) expect(plf).toBeGreaterThan(0);
    // fixings 16 in. apart, rafters 21: one right over a fixing is alone on it. Rated across only as far as it matters, for permanent load: nothing is taken off
    const rated = leanToWith((raw) => {
      rate(raw, 'ledgerWall', { pullLb: 1e6, alongLb: 1e6, acrossLb: 600 }, 0.9);
    });
    const row = rowOf(rated, 'ledger.fixing/ledger/whole');
    expect(row.ratio!).toBeCloseTo((Number(downPlf) * (21 / 12)) / 600, 3);
    const outward = leanToWith((raw) => {
      rate(raw, 'ledgerWall', { pullLb: 50, alongLb: 1e6, acrossLb: 1e6 }, 0.9);
    });
    expect(rowOf(outward, 'ledger.fixing/ledger/whole').ratio!).toBeCloseTo((Number(outPlf) * (21 / 12)) / 50, 3);
  });

  test('[ledger.fixing] a rating that is silent on a direction that is asked is not given', () => {
    const context = leanToWith((raw) => rate(raw, 'ledgerWall', { acrossLb: 6000 }));
    const row = rowOf(context, 'ledger.fixing/ledger/whole');
    expect([row.status, row.reason!.code]).toEqual(['notGiven', 'partNotGiven']);
  });
});

describe('steps of the roof', () => {
  const contexts = [shedWith(() => {}), leanToWith(() => {})];

  test('every row with a ratio tells steps that end in its demand and its capacity', () => {
    for (const context of contexts)
      for (const row of rowsOf(context)) {
        if (row.ratio === null) continue;
        const results = stepsOf(context, row.key).map((step) => Math.abs(step.result.value));
        for (const { value, unit } of [row.demand!, row.capacity!]) {
          if (unit === '1' && value === 1) continue;
          const isTold = results.some((told) => Math.abs(told - value) <= 1e-9 * Math.max(1, value));
          expect(isTold, `${row.key} ${value} ${unit}`).toBe(true);
        }
      }
  });

  test('a named combination is told with its own numbers', () => {
    const [context] = contexts;
    const key = 'rafter.bending/rafter-4/line-low~line-high';
    const row = rowOf(context!, key);
    const steps = stepsOf(context!, key, '3-roofLive+roof-live');
    const fb = steps.findLast((step) => step.symbol === 'fb')!.result.value;
    const Fb = steps.findLast((step) => step.symbol === "Fb'")!.result.value;
    expect(fb / Fb).toBeCloseTo(ratioIn(row, '3-roofLive+roof-live'), 12);
  });
});
