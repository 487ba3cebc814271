import { describe, expect, test } from 'vitest';
import { at } from '../../project/raw.ts';
import { plainRoof, rate, ratioIn, rowOf, rowsOf, shedWith, stepsOf } from './roof.ts';

const SPAN = 'line-low~line-high';
const LIVE = '3-roofLive+roof-live';

/** Two lines 120 in. apart, 36 in. of roof to each rafter; see `plainRoof`. */
const b = 36;
const L = 120;
/** 20 psf of roof live and 4 psf of dead load on a level roof [lb/in] */
const gravity = ((4 + 20) * b) / 144;

// proof [rafter.bending]: closed-form - w L2 / 8 on a simple span, Fb of NDS Supplement Table 4A; common practice 0.98
// proof [rafter.seat]: closed-form - half the load of a simple span over breadth times seat
// proof [rafter.tie]: closed-form - equilibrium of a straight rafter with the level part held at either line
// proof [rafter.tieAcross]: closed-form - sine of the slope times the wind on the rafter, whole on each line that may hold it
// proof [strip.across]: closed-form - the same level force as at the tie of the rafter
// proof [strip.tie]: closed-form - the same pull as at the tie of the rafter
// proof [rafter.sagLongTerm]: closed-form - 5 w L4 / (384 E I) for dead and live apart

describe('a level rafter between two lines, by hand', () => {
  const level = shedWith((raw) => {
    plainRoof(0)(raw);
    at(raw, 'groups', 'rafters')['seatCutIn'] = 0;
    rate(raw, 'rafterStrip', { pullLb: 400 });
  });

  test('[rafter.bending] common practice: 2x6 No. 2 Douglas fir-larch at 36 in. over 10 ft comes to 0.98 under live', () => {
    // M = w L2 / 8, S = 1.5 x 5.5^2 / 6; Fb 900 psi, CF 1.3, CD 1.25 (NDS Supplement Table 4A, NDS Table 2.3.2)
    const fb = (gravity * L * L) / 8 / ((1.5 * 5.5 ** 2) / 6);
    const held = shedWith((raw) => {
      plainRoof(0)(raw);
      at(raw, 'roofPlanes', 'plane-1')['sheetOn'] = 'rafters';
    });
    const ratio = ratioIn(rowOf(held, `rafter.bending/rafter-3/${SPAN}`), LIVE);
    expect(ratio).toBeCloseTo(fb / (900 * 1.3 * 1.25), 6);
    expect(ratio).toBeCloseTo(0.98, 2);
  });

  test('[rafter.bending] purlins every 24 in. cost the top edge a little, and it still passes', () => {
    // le = 2.06 lu as lu / d = 4.4 < 7; RB2 = le d / b2; FbE = 1.2 Emin / RB2 with Emin 580,000 psi (NDS 3.3.3)
    const RB2 = (2.06 * 24 * 5.5) / 1.5 ** 2;
    const share = (1.2 * 580_000) / RB2 / (900 * 1.3 * 1.25);
    const CL = (1 + share) / 1.9 - Math.sqrt(((1 + share) / 1.9) ** 2 - share / 0.95);
    const fb = (gravity * L * L) / 8 / ((1.5 * 5.5 ** 2) / 6);
    const row = rowOf(level, `rafter.bending/rafter-3/${SPAN}`);
    expect(ratioIn(row, LIVE)).toBeCloseTo(fb / (900 * 1.3 * 1.25 * CL), 6);
    expect(ratioIn(row, LIVE)).toBeLessThan(1);
  });

  test('[rafter.bending] while the wind lifts, the bottom edge is held over the lines only', () => {
    // 0.6 x 16 psf (ASCE 7-16 30.2.2) less 0.6 x 2 psf; lu / d = 21.8: le = 1.84 lu (NDS Table 3.3.3, any loading)
    const RB2 = (1.84 * L * 5.5) / 1.5 ** 2;
    const share = (1.2 * 580_000) / RB2 / (900 * 1.3 * 1.6);
    const CL = (1 + share) / 1.9 - Math.sqrt(((1 + share) / 1.9) ** 2 - share / 0.95);
    const w = ((0.6 * 16 - 0.6 * 2) * b) / 144;
    const fb = (w * L * L) / 8 / ((1.5 * 5.5 ** 2) / 6);
    const row = rowOf(level, `rafter.bending/rafter-3/${SPAN}`);
    expect(ratioIn(row, '7+wind-up-clear')).toBeCloseTo(fb / (900 * 1.3 * 1.6 * CL), 6);
  });

  test('[rafter.shear] reaches w L / 2 at the lines against 180 psi with the duration of roof live', () => {
    const fv = (1.5 * gravity * (L / 2)) / (1.5 * 5.5); // NDS 3.4.2; Fv 180 psi, NDS Supplement Table 4A
    expect(ratioIn(rowOf(level, `rafter.shear/rafter-3/${SPAN}`), LIVE)).toBeCloseTo(fv / (180 * 1.25), 6);
  });

  test('[rafter.seat] presses w L / 2 on the half of 3.5 in. of strip before its end, the weaker wood governing', () => {
    // dead, three quarters of roof live and 0.45 of the least wind come to more than dead and roof live
    const w = ((4 + 0.75 * 20 + 0.45 * 16) * b) / 144;
    const row = rowOf(level, 'rafter.seat/rafter-3/line-low');
    expect(row.demand!.value).toBeCloseTo((w * (L / 2)) / (1.5 * (3.5 / 2)), 6);
    // home-sawn larch strip (43.1 + 1.5876 x 399) / 1.67 = 405 psi (ASTM D245, D2555), under 625 psi of the rafter
    expect(row.capacity!.value).toBeCloseTo((43.1 + 1.5876 * 399) / 1.67, 1);
    expect(ratioIn(row, LIVE) * row.capacity!.value).toBeCloseTo((gravity * (L / 2)) / (1.5 * (3.5 / 2)), 6);
  });

  test('[rafter.sag] is 5 w L4 / (384 E I) under roof live, against L / 180', () => {
    const sag = (5 * ((20 * b) / 144) * L ** 4) / (384 * 1_600_000 * ((1.5 * 5.5 ** 3) / 12)); // E 1,600,000 psi, Table 4A
    const row = rowOf(level, `rafter.sag/rafter-3/${SPAN}`);
    expect(row.demand!.value).toBeCloseTo(sag, 6);
    expect(row.capacity!.value).toBeCloseTo(L / 180, 9);
    expect(row.combinationId).toBe('sag+roof-live');
  });

  test('[rafter.sagLongTerm] adds the creep of the dead load, Kcr 2, against L / 120', () => {
    const perLoad = (5 * L ** 4) / (384 * 1_600_000 * ((1.5 * 5.5 ** 3) / 12));
    const row = rowOf(level, `rafter.sagLongTerm/rafter-3/${SPAN}`);
    expect(row.demand!.value).toBeCloseTo((((2 - 1) * 4 + 20) * b * perLoad) / 144, 6);
    expect(row.capacity!.value).toBeCloseTo(L / 120, 9);
  });

  test('[rafter.tie] holds half of the least wind on components less 0.6 of the light roof', () => {
    const pull = ((0.6 * 16 - 0.6 * 2) * b * (L / 2)) / 144; // ASCE 7-16 2.4.1, 30.2.2
    const row = rowOf(level, 'rafter.tie/rafter-3/line-low');
    expect(row.demand!.value).toBeCloseTo(pull, 6);
    expect(row.ratio!).toBeCloseTo(pull / 400, 9);
    expect(row.spareLb!).toBeCloseTo(400 - pull, 6);
  });

  test('[strip.tie] asks of the strip what its hardest pulling rafter hands on', () => {
    const row = rowOf(level, 'strip.tie/line-low/whole');
    expect(row.demand!.value).toBeCloseTo(((0.6 * 16 - 0.6 * 2) * b * (L / 2)) / 144, 6);
  });
});

describe('a sloping rafter between two lines, by hand', () => {
  /** 6 in 12: the slope length grows, plumb loads weigh by the cosine */
  const cos = 12 / Math.hypot(12, 6);
  const onSlope = L / cos;
  const withHeldBy = (horizontalHeldBy: string) =>
    shedWith((raw) => {
      plainRoof(6)(raw);
      at(raw, 'roofPlanes', 'plane-1')['horizontalHeldBy'] = horizontalHeldBy;
    });

  test('[rafter.bending] takes dead load by the slope and roof live by its level projection', () => {
    // roof live reduced for slope: R2 = 1.2 - 0.05 x 6 = 0.9, 18 psf (ASCE 7-16 4.8.2)
    const w = ((4 * cos + 18 * cos * cos) * b) / 144;
    const row = rowOf(withHeldBy('each-square'), `rafter.bending/rafter-3/${SPAN}`);
    const RB2 = (2.06 * 24 * 5.5) / 1.5 ** 2;
    const share = (1.2 * 580_000) / RB2 / (900 * 1.3 * 1.25);
    const CL = (1 + share) / 1.9 - Math.sqrt(((1 + share) / 1.9) ** 2 - share / 0.95);
    const fb = (w * onSlope * onSlope) / 8 / ((1.5 * 5.5 ** 2) / 6);
    expect(ratioIn(row, LIVE)).toBeCloseTo(fb / (900 * 1.3 * 1.25 * CL), 6);
  });

  test('[rafter.tie] is pulled harder by a quarter where the other line holds the level part of the wind', () => {
    const wind = (0.6 * 16 * b * onSlope) / 144 / 2; // square to the slope, at each end
    const dead = (0.6 * 2 * b * onSlope) / 144 / 2;
    const pulled = (heldBy: string) => rowOf(withHeldBy(heldBy), 'rafter.tie/rafter-3/line-low').demand!.value;
    expect(pulled('each-square')).toBeCloseTo(wind * cos - dead, 6);
    expect(pulled('line-high')).toBeCloseTo(wind / cos - dead, 6);
    expect(pulled('line-low')).toBeCloseTo(2 * wind * cos - wind / cos - dead, 6);
    expect(pulled('worse')).toBeCloseTo(wind / cos - dead, 6);
  });

  test('[rafter.tieAcross] asks the line that holds the level part for all of it, each line for its half where each does', () => {
    const sin = 6 / Math.hypot(12, 6);
    const level = ((0.6 * 16 * b * onSlope) / 144) * sin; // ASCE 7-16 2.4.1, least wind of 30.2.2, up or down
    const pushed = (heldBy: string) => rowOf(withHeldBy(heldBy), 'rafter.tieAcross/rafter-3/line-low').demand!.value;
    expect(pushed('line-low')).toBeCloseTo(level, 6);
    expect(pushed('worse')).toBeCloseTo(level, 6);
    expect(pushed('each-square')).toBeCloseTo(level / 2, 6);
    const elsewhere = rowsOf(withHeldBy('line-high')).map((r) => r.key);
    expect(elsewhere).toContain('rafter.tieAcross/rafter-3/line-high');
    expect(elsewhere).not.toContain('rafter.tieAcross/rafter-3/line-low');
    expect(elsewhere).not.toContain('strip.across/line-low/whole');
  });

  test('[rafter.tieAcross] [strip.across] are held against what is rated across, not against the pull', () => {
    const context = shedWith((raw) => {
      plainRoof(6)(raw);
      at(raw, 'roofPlanes', 'plane-1')['horizontalHeldBy'] = 'worse';
      rate(raw, 'rafterStrip', { pullLb: 1, acrossLb: 400 });
      rate(raw, 'stripBeam', { pullLb: 1, acrossLb: 200 });
    });
    const level = ((0.6 * 16 * b * onSlope) / 144) * (6 / Math.hypot(12, 6));
    for (const line of ['line-low', 'line-high']) {
      expect(rowOf(context, `rafter.tieAcross/rafter-3/${line}`).ratio!).toBeCloseTo(level / 400, 9);
      expect(rowOf(context, `strip.across/${line}/whole`).ratio!).toBeCloseTo(level / 200, 9);
    }
    // 0.75 x 0.6 of the wind beside roof live
    const row = rowOf(context, 'rafter.tieAcross/rafter-3/line-low');
    expect(ratioIn(row, '6-roofLive+roof-live+wind-up-clear')).toBeCloseTo((0.75 * level) / 400, 9);
    expect(ratioIn(row, LIVE)).toBe(0);
    const told = stepsOf(context, row.key).findLast((step) => step.symbol === 'H');
    expect(Math.abs(told!.result.value)).toBeCloseTo(level, 6);
  });

  test('[rafter.seat] is as long as the cut over the rise of the slope', () => {
    const row = rowOf(withHeldBy('each-square'), 'rafter.seat/rafter-3/line-low');
    // dead by the slope, three quarters of roof live by the level, 0.45 of the least wind square to the slope
    const R = ((4 / cos + 0.75 * 18 + 0.45 * 16) * b * L) / 144 / 2;
    expect(row.demand!.value).toBeCloseTo(R / (1.5 * (0.75 / 0.5)), 6);
  });

  test('[rafter.shear] at the seat cut is two thirds of Fv b dn (dn / d)2, the cut taken square to the rafter', () => {
    const V = (((4 * cos + 18 * cos * cos) * b) / 144) * (onSlope / 2);
    const dn = 5.5 - 0.75 * cos;
    const allowed = (2 / 3) * 180 * 1.25 * 1.5 * dn * (dn / 5.5) ** 2; // NDS 3.4.3.2, from memory
    expect(ratioIn(rowOf(withHeldBy('each-square'), 'rafter.shear/rafter-3/line-low'), LIVE)).toBeCloseTo(
      V / allowed,
      6,
    );
  });
});
