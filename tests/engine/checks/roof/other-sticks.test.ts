import { describe, expect, test } from 'vitest';
import { at, listAt, type Raw } from '../../project/raw.ts';
import { plainRoof, ratioIn, rowOf, rowsOf, shedWith, stepsOf } from './roof.ts';

const LIVE = '3-roofLive+roof-live';
const SPAN = 'line-low~line-high';
const gravity = ((4 + 20) * 36) / 144;
const moment = (gravity * 120 * 120) / 8;

const pole = (raw: Raw): void => {
  plainRoof(0)(raw);
  const even = [0, 240].map((fromButtIn) => ({ fromButtIn, diameterIn: 6 }));
  listAt(raw, 'logs').push({ ...at(raw, 'logs', 'size-brace'), id: 'pole', stations: even });
  const stock = { kind: 'log', logId: 'pole', fromButtIn: 0, buttAt: 'start' };
  Object.assign(at(raw, 'groups', 'rafters'), { stock, seatCutIn: 1 });
  at(raw, 'groups', 'purlins')['stock'] = stock;
};

describe('pole rafters and purlins', () => {
  const context = shedWith(pole);
  const values = context.valuesOf('rafter-1');
  if (!values.ok) throw new Error(values.reason.code);
  const { FbPsi, FvPsi } = values.values;

  test('[rafter.bending] a round pole is judged by pi d3 / 32 without a stability factor', () => {
    const ratio = ratioIn(rowOf(context, `rafter.bending/rafter-3/${SPAN}`), LIVE);
    expect(ratio).toBeCloseTo(moment / ((Math.PI * 6 ** 3) / 32) / (FbPsi * 1.25), 6);
  });

  test('[rafter.shear] a round pole carries 4 V / (3 A)', () => {
    const ratio = ratioIn(rowOf(context, `rafter.shear/rafter-3/${SPAN}`), LIVE);
    expect(ratio).toBeCloseTo((4 * gravity * 60) / (3 * ((Math.PI * 6 ** 2) / 4)) / (FvPsi * 1.25), 6);
  });

  test('[rafter.bending] inches to spare are those by which a thinner pole would just pass', () => {
    const row = rowOf(context, `rafter.bending/rafter-3/${SPAN}`);
    expect((6 - row.spareIn!) ** 3).toBeCloseTo(6 ** 3 * row.ratio!, 6);
  });

  test('[purlin.bending] a round purlin bends by w L2 / 8 over pi d3 / 32', () => {
    const M = (((4 + 20) * 24) / 144) * (36 ** 2 / 8);
    const ratio = ratioIn(rowOf(context, 'purlin.bending/purlin-3/span'), LIVE);
    expect(ratio).toBeCloseTo(M / ((Math.PI * 6 ** 3) / 32) / (FbPsi * 1.25), 9);
  });

  test('every row of a pole roof with a ratio can be told', () => {
    const judged = rowsOf(context).filter((row) => row.ratio !== null);
    expect(judged.length).toBeGreaterThan(50);
    expect(judged.filter((row) => stepsOf(context, row.key).length === 0)).toEqual([]);
  });
});

describe('sections typed from their maker', () => {
  const context = shedWith((raw) => {
    plainRoof(0)(raw);
    const stock = {
      kind: 'typed',
      name: 'I 9-1/2',
      FbSIn3Psi: 30_000,
      VallowLb: 1120,
      EIPsiIn4: 2e8,
      heavyPlf: 3,
      lightPlf: 2,
    };
    at(raw, 'groups', 'rafters')['stock'] = stock;
  });

  test('[rafter.bending] is judged by moment, [rafter.shear] by force, [rafter.sag] by the typed stiffness', () => {
    expect(ratioIn(rowOf(context, `rafter.bending/rafter-3/${SPAN}`), LIVE)).toBeCloseTo(moment / (30_000 * 1.25), 6);
    expect(ratioIn(rowOf(context, `rafter.shear/rafter-3/${SPAN}`), LIVE)).toBeCloseTo(
      (gravity * 60) / (1120 * 1.25),
      6,
    );
    const sag = (5 * ((20 * 36) / 144) * 120 ** 4) / (384 * 2e8);
    expect(rowOf(context, `rafter.sag/rafter-3/${SPAN}`).demand!.value).toBeCloseTo(sag, 6);
  });

  test('[rafter.seat] bearing of a typed section is for its maker to say', () => {
    const row = rowOf(context, 'rafter.seat/rafter-3/line-low');
    expect([row.status, row.reason!.code]).toEqual(['notGiven', 'typedWithoutBearing']);
  });
});
