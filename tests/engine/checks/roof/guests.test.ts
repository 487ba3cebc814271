import { describe, expect, test } from 'vitest';
import { at, listAt, type Raw } from '../../project/raw.ts';
import { plainRoof, rate, ratioIn, rowOf, shedWith } from './roof.ts';

const SPAN = 'line-low~line-high';
/** Two lines 120 in. apart, rafters 36 in. apart, purlins 24 in. apart, 4 psf of dead load; see `plainRoof`. */
const b = 36;
const L = 120;
const S = (1.5 * 5.5 ** 2) / 6;

/** The sheet lies on the rafters, so that their top edge is held all along and CL is 1. */
const held = (change: (raw: Raw) => void = () => undefined) =>
  shedWith((raw) => {
    plainRoof(0)(raw);
    at(raw, 'roofPlanes', 'plane-1')['sheetOn'] = 'rafters';
    at(raw, 'groups', 'rafters')['seatCutIn'] = 0;
    change(raw);
  });

const hung = (kind: string, direction: string, where: Raw, more: Raw = {}) =>
  held((raw) => {
    const own = { id: 'own', name: 'rack', kind, direction, where, duration: 'tenYears', removable: false, ...more };
    listAt(raw, 'ownLoads').push(own);
  });

const DEAD = ((4 * b) / 144) * (L * L) * 0.125;
const ratioOf = (momentLbIn: number, CD: number): number => momentLbIn / S / (900 * 1.3 * CD);

describe('a person at work, by hand', () => {
  // ASCE 7-16 Table 4.3-1 and 4.4, from memory: 300 lb on 30 in. of the middle of the span; P (L / 4 - a / 8); CD 1.25.
  test('[rafter.bending] in the middle of a rafter 10 ft long counts beside its dead load, without roof live', () => {
    const row = rowOf(held(), `rafter.bending/rafter-3/${SPAN}`);
    const moment = DEAD + 300 * (L / 4 - 30 / 8);
    expect(ratioIn(row, '3-roofLive+person-1')).toBeCloseTo(ratioOf(moment, 1.25), 6);
  });

  // Common practice: 2x6 at 36 in. with 2x4 purlins at 24 in. under ribbed steel carries a small open roof without snow.
  test('[rafter.bending] common practice: the small open roof still carries all that is asked of its rafters', () => {
    const row = rowOf(shedWith(plainRoof(0)), `rafter.bending/rafter-3/${SPAN}`);
    expect(row.status).toBe('pass');
    expect(row.ratio!).toBeLessThanOrEqual(1);
  });

  // A flat 2x4 over a gap of 36 in.: 24 of the 30 in. stand on its strip, 240 lb x (36 / 4 - 30 / 8); Fb 900, CF 1.5, flat 1.1.
  test('[purlin.bending] on a flat 2x4 between rafters 36 in. apart, and at its end of 18 in.', () => {
    const flat = shedWith((raw) => {
      plainRoof(0)(raw);
      const stock = { kind: 'sawn', breadthIn: 1.5, depthIn: 3.5, lay: 'flat', plies: 1, grade: 'No. 2', use: 'dry' };
      at(raw, 'groups', 'purlins')['stock'] = { ...stock, species: 'Douglas Fir-Larch' };
    });
    const Sp = (3.5 * 1.5 ** 2) / 6;
    const w = (4 * 24) / 144;
    const allowed = 900 * 1.5 * 1.1 * 1.25;
    const span = rowOf(flat, 'purlin.bending/purlin-3/span');
    const middle = (w * 36 * 36) / 8 + 240 * (36 / 4 - 30 / 8);
    expect(ratioIn(span, '3-roofLive+person-span')).toBeCloseTo(middle / Sp / allowed, 9);
    const end = rowOf(flat, 'purlin.bending/purlin-3/overhang');
    const tip = (w * 18 * 18) / 2 + 240 * (18 - 18 / 2);
    expect(ratioIn(end, '3-roofLive+person-overhang')).toBeCloseTo(tip / Sp / allowed, 9);
    expect(ratioIn(span, '3-roofLive+person-overhang')).toBeNaN();
  });

  test('nobody stands there long enough for a sag', () => {
    const row = rowOf(held(), `rafter.sag/rafter-3/${SPAN}`);
    expect(row.ratios.labels.filter((label) => /^(sag|years).*person/.test(label))).toEqual([]);
  });
});

describe('own loads on a rafter, by hand', () => {
  const onRafter = (yIn: number) => ({ on: 'member', member: 'rafter-3', atIn: yIn, lb: 100 });
  const row = (context: ReturnType<typeof held>) => rowOf(context, `rafter.bending/rafter-3/${SPAN}`);

  // A hook of 2 in. at mid-span: P (L / 4 - a / 8) = 100 x (30 - 0.25); ten years, CD 1.0.
  test('[rafter.bending] live, hung at mid-span, adds to the dead load', () => {
    const context = hung('live', 'down', onRafter(60));
    expect(ratioIn(row(context), '2+own-live')).toBeCloseTo(ratioOf(DEAD + 100 * (L / 4 - 2 / 8), 1), 6);
  });

  test('[rafter.bending] of dead weight count for ever', () => {
    const context = hung('dead', 'down', onRafter(60));
    expect(ratioIn(row(context), '1')).toBeCloseTo(ratioOf(DEAD + 100 * (L / 4 - 2 / 8), 0.9), 6);
  });

  // 10 psf of level area over the whole strip of rafter 3 is a quarter of the way from 20 psf of roof live: w L2 / 8.
  test('[rafter.bending] on the roof press by the width that the rafter carries', () => {
    const where = { on: 'plane', plane: 'plane-1', fromXIn: 42, toXIn: 78, fromYIn: 0, toYIn: 120, psf: 10 };
    const context = hung('live', 'down', where);
    const moment = DEAD + ((10 * b) / 144) * (L * L) * 0.125;
    expect(ratioIn(row(context), '2+own-live')).toBeCloseTo(ratioOf(moment, 1), 6);
    // the neighbour carries none of it
    const next = rowOf(context, `rafter.bending/rafter-5/${SPAN}`);
    expect(next.ratios.labels.some((label) => label.includes('own-live'))).toBe(false);
  });
});

describe('own loads on a purlin, by hand', () => {
  const Sp = (3.5 * 1.5 ** 2) / 6;
  const allowed = 900 * 1.5 * 1.1;
  const w = (4 * 24) / 144;
  const withOwn = (where: Raw, kind = 'live', direction = 'down') =>
    shedWith((raw) => {
      plainRoof(0)(raw);
      const stock = { kind: 'sawn', breadthIn: 1.5, depthIn: 3.5, lay: 'flat', plies: 1, grade: 'No. 2', use: 'dry' };
      at(raw, 'groups', 'purlins')['stock'] = { ...stock, species: 'Douglas Fir-Larch' };
      const own = { id: 'own', name: 'rack', kind, direction, where, duration: 'tenYears', removable: false };
      listAt(raw, 'ownLoads').push(own);
    });
  const hook = (xIn: number) => ({ on: 'member', member: 'purlin-3', atIn: xIn, lb: 40 });

  // Gap of 36 in.: P L / 4 wherever in the gap it hangs; the neighbouring purlin carries none of it.
  test('[purlin.bending] one load in a gap bends it as at mid-gap', () => {
    const context = withOwn(hook(40));
    const row = rowOf(context, 'purlin.bending/purlin-3/span');
    expect(ratioIn(row, '2+own-live-span')).toBeCloseTo(((w * 36 * 36) / 8 + (40 * 36) / 4) / Sp / allowed, 9);
    const next = rowOf(context, 'purlin.bending/purlin-4/span');
    expect(next.ratios.labels.some((label) => label.includes('own-live'))).toBe(false);
  });

  // 12 in. beyond the outer rafter at 168, of an end of 18 in.: P a.
  test('[purlin.bending] one load beyond the outer rafter bends the end by its distance', () => {
    const row = rowOf(withOwn(hook(180)), 'purlin.bending/purlin-3/overhang');
    const moment = (w * 18 * 18) / 2 + Math.max(40 * 12, (40 / 18) * (18 * 18) * 0.5);
    expect(ratioIn(row, '2+own-live-overhang')).toBeCloseTo(moment / Sp / allowed, 9);
  });

  // Lever rule: 40 in. lies 16 / 36 of the way from the rafter at 24 to the one at 60.
  test('[rafter.bending] the two rafters beside it share it by the lever rule', () => {
    const context = withOwn(hook(40));
    const pressed = (rafter: string): number => {
      const row = rowOf(context, `rafter.seat/${rafter}/line-high`);
      const [own, none] = ['2+own-live', '1'].map((id) => ratioIn(row, id));
      return own! - none!;
    };
    expect(pressed('rafter-2') / pressed('rafter-3')).toBeCloseTo(20 / 16, 6);
  });
});

describe('a rafter in an earthquake, by hand', () => {
  // SDS 0.6, SD1 0.25, R 1.5, risk category II: 0.6 / 1.5 x 1.3 (category D) = 0.52 of the weight (ASCE 7-16 12.8, 12.3.4);
  // 4 psf on 36 by 120 in. weigh 120 lb; 0.7 of it in 8 (2.4.5).
  test('[rafter.tieAcross] its tie holds the push of its whole strip of roof', () => {
    const context = shedWith((raw) => {
      plainRoof(0)(raw);
      at(raw, 'site')['seismic'] = { sds: 0.6, sd1: 0.25, r: 1.5, rGivenBy: '' };
      at(raw, 'site', 'riskCategory')['value'] = 'II';
      rate(raw, 'rafterStrip', { pullLb: 400, acrossLb: 100 });
    });
    const row = rowOf(context, 'rafter.tieAcross/rafter-3/line-high');
    expect(ratioIn(row, '8+seismic')).toBeCloseTo((0.7 * 0.52 * 120) / 100, 9);
  });
});
