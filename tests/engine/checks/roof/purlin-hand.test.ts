import { describe, expect, test } from 'vitest';
import { at, type Raw } from '../../project/raw.ts';
import { plainRoof, rate, ratioIn, rowOf, shedWith } from './roof.ts';

const LIVE = '3-roofLive+roof-live';
/** Purlins 24 in. apart over rafters 36 in. apart, ends 18 in. beyond the last; see `plainRoof`. */
const width = 24;
const gap = 36;
const end = 18;

/** A dressed 2x4, No. 2 Douglas fir-larch, dry: Fb 900 psi, CF 1.5, flat use 1.10, E 1,600,000 psi (Table 4A). */
const twoByFour = (lay: 'edge' | 'flat'): Raw => ({
  kind: 'sawn',
  breadthIn: 1.5,
  depthIn: 3.5,
  lay,
  plies: 1,
  species: 'Douglas Fir-Larch',
  grade: 'No. 2',
  use: 'dry',
});

const roof = (risePer12: number, lay: 'edge' | 'flat') =>
  shedWith((raw) => {
    plainRoof(risePer12)(raw);
    at(raw, 'groups', 'purlins')['stock'] = twoByFour(lay);
    rate(raw, 'purlinRafter', { pullLb: 100 });
  });

// proof [purlin.bending]: closed-form - w L2 / 8 in both directions of a sloping purlin
// proof [purlin.tie]: closed-form - statics of an end with one span behind it

describe('a purlin by hand', () => {
  test('[purlin.bending] on a level roof is w L2 / 8 of the gap on the flat, dead and roof live', () => {
    const w = ((4 + 20) * width) / 144;
    const fb = (w * gap * gap) / 8 / ((3.5 * 1.5 ** 2) / 6);
    const row = rowOf(roof(0, 'flat'), 'purlin.bending/purlin-3/span');
    expect(ratioIn(row, LIVE)).toBeCloseTo(fb / (900 * 1.5 * 1.1 * 1.25), 9);
  });

  test('[purlin.bending] on a slope adds the share along it, without the gain for lying flat', () => {
    const cos = 12 / Math.hypot(12, 6);
    const sin = 6 / Math.hypot(12, 6);
    // roof live 18 psf at 6 in 12 (ASCE 7-16 4.8.2), on the level projection; dead on the slope
    const plumb = ((4 + 18 * cos) * width) / 144;
    const square = (plumb * cos * gap * gap) / 8 / ((3.5 * 1.5 ** 2) / 6) / (900 * 1.5 * 1.1 * 1.25);
    const along = (plumb * sin * gap * gap) / 8 / ((1.5 * 3.5 ** 2) / 6) / (900 * 1.5 * 1.25);
    const row = rowOf(roof(6, 'flat'), 'purlin.bending/purlin-3/span');
    expect(ratioIn(row, LIVE)).toBeCloseTo(square + along, 9);
  });

  test('[purlin.bending] on edge the wind finds its bottom edge held at the rafters only', () => {
    // lu / d = 10.3: le = 1.63 lu + 3 d (NDS Table 3.3.3, even load); a typed total with purlins in it holds nothing down
    const le = 1.63 * gap + 3 * 3.5;
    const share = (1.2 * 580_000) / ((le * 3.5) / 1.5 ** 2) / (900 * 1.5 * 1.6);
    const CL = (1 + share) / 1.9 - Math.sqrt(((1 + share) / 1.9) ** 2 - share / 0.95);
    const fb = (((0.6 * 16 * width) / 144) * gap * gap) / 8 / ((1.5 * 3.5 ** 2) / 6);
    const row = rowOf(roof(0, 'edge'), 'purlin.bending/purlin-3/span');
    expect(ratioIn(row, '7+wind-up-clear')).toBeCloseTo(fb / (900 * 1.5 * 1.6 * CL), 9);
  });

  test('[purlin.shear] is 5/8 w L beside a rafter, or the whole end', () => {
    const w = ((4 + 20) * width) / 144;
    const fv = (1.5 * w * Math.max(0.625 * gap, end)) / (1.5 * 3.5);
    expect(ratioIn(rowOf(roof(0, 'flat'), 'purlin.shear/purlin-3/whole'), LIVE)).toBeCloseTo(fv / (180 * 1.25), 9);
  });

  test('[purlin.sag] is that of a simple span, and of an end with no load on the span behind it', () => {
    const w = (20 * width) / 144;
    const EI = 1_600_000 * ((3.5 * 1.5 ** 3) / 12);
    const context = roof(0, 'flat');
    const span = rowOf(context, 'purlin.sag/purlin-3/span');
    expect(span.demand!.value).toBeCloseTo((5 * w * gap ** 4) / (384 * EI), 9);
    expect(span.capacity!.value).toBeCloseTo(gap / 180, 12);
    const tip = rowOf(context, 'purlin.sag/purlin-3/overhang');
    expect(tip.demand!.value).toBeCloseTo((w * end ** 4) / (8 * EI) + (w * end ** 3 * gap) / (6 * EI), 9);
    expect(tip.capacity!.value).toBeCloseTo((2 * end) / 180, 12);
  });

  test('[purlin.tie] holds a quarter more than its share of the least wind', () => {
    const pull = ((0.6 * 16 * width) / 144) * 1.25 * gap;
    const row = rowOf(roof(0, 'flat'), 'purlin.tie/purlin-3/whole');
    expect(row.demand!.value).toBeCloseTo(pull, 9);
    expect(row.ratio!).toBeCloseTo(pull / 100, 9);
  });

  test('[purlin.tie] a long end levers on the outer rafter', () => {
    const context = shedWith((raw) => {
      plainRoof(0)(raw);
      at(raw, 'roofPlanes', 'plane-1')['fromXIn'] = -72;
    });
    // 60 in. beyond the rafter and 36 in. behind it: w (36 + 60)2 / (2 x 36), more than 1.25 x (18 + 60)
    const held = (36 + 60) ** 2 / (2 * 36);
    const row = rowOf(context, 'purlin.tie/purlin-3/whole');
    expect(row.demand!.value).toBeCloseTo(((0.6 * 16 * width) / 144) * held, 6);
  });
});
