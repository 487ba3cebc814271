import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  spanMoment,
  widestGap,
  widthInShear,
  widthOnFixing,
  type RafterOnLedger,
} from '../../../../src/engine/checks/roof/ledger-span.ts';
import type { RoofCheckContext } from '../../../../src/engine/checks/roof/context.ts';
import { roofChecks } from '../../../../src/engine/checks/roof/roof-checks.ts';
import { at, listAt } from '../../project/raw.ts';
import { leanToWith, rate, ratioIn, rowOf } from './roof.ts';

/** Rafters at gaps, each with the roof to half way to its neighbours, the last ones with an overhang. */
function raftersAt(gapsIn: readonly number[], overhangIn: number): readonly RafterOnLedger[] {
  const places = gapsIn.reduce<readonly number[]>((xs, gap) => [...xs, xs.at(-1)! + gap], [0]);
  return places.map((xIn, i) => {
    const from = i === 0 ? xIn - overhangIn : xIn - gapsIn[i - 1]! / 2;
    const to = i === gapsIn.length ? xIn + overhangIn : xIn + gapsIn[i]! / 2;
    return { xIn, tributaryFromXIn: from, tributaryToXIn: to, tributaryWidthIn: to - from };
  });
}

const evenly = (count: number, gapIn: number) =>
  raftersAt(
    Array.from({ length: count - 1 }, () => gapIn),
    gapIn / 2,
  );

/** A load of 1 on each inch, handed over as point loads; statics of simple spans, span by span from its left support at `from`. */
const endReaction = (rafters: readonly RafterOnLedger[], from: number, s: number): number =>
  rafters
    .filter((r) => r.xIn > from && r.xIn < from + s)
    .reduce((sum, r) => sum + (r.tributaryWidthIn * (from + s - r.xIn)) / s, 0);

function momentUnder(rafters: readonly RafterOnLedger[], from: number, s: number, xIn: number): number {
  const left = rafters.filter((r) => r.xIn > from && r.xIn < xIn);
  return (
    endReaction(rafters, from, s) * (xIn - from) - left.reduce((sum, r) => sum + r.tributaryWidthIn * (xIn - r.xIn), 0)
  );
}

/**
 * Force method: two equal spans are one of 2 s pushed up in its middle until that does not move. A unit load at `a` from the
 * far end moves the middle of a simple beam by a (3 (2 s)^2 - 4 a^2) / 48 EI, one in the middle by (2 s)^3 / 48 EI.
 */
const middleReaction = (a: number, s: number): number => (a * (12 * s * s - 4 * a * a)) / (2 * s) ** 3;

/** Load on the middle fixing at `xIn` of a ledger that goes on over it by a span to each side, and shear on both sides of it. */
function overFixing(rafters: readonly RafterOnLedger[], xIn: number, s: number) {
  let [fixing, shearBefore, shearPast] = [0, 0, 0];
  for (const r of rafters) {
    const a = s - Math.abs(r.xIn - xIn);
    if (a <= 0) continue;
    const reaction = middleReaction(a, s);
    // the outer support of the load's own span by statics about the outer support of the other one
    const ofOther = (reaction - a / s) / 2;
    fixing += r.tributaryWidthIn * reaction;
    shearBefore += r.tributaryWidthIn * (r.xIn < xIn ? reaction - ofOther : ofOther);
    shearPast += r.tributaryWidthIn * (r.xIn < xIn ? ofOther : reaction - ofOther);
  }
  return { fixing, shear: Math.max(shearBefore, shearPast) };
}

/** The greatest of everything, over many places of the fixings. */
function everywhere(rafters: readonly RafterOnLedger[], s: number, steps = 200) {
  const [first, last] = [rafters[0]!.xIn, rafters.at(-1)!.xIn];
  const greatest = { moment: 0, simpleShear: 0, shear: 0, fixing: 0 };
  // even steps, and a hair before, at and past each rafter, where shear jumps
  const grid = Array.from({ length: steps + 1 }, (_, i) => first - s + ((last - first + s) * i) / steps);
  for (const from of [
    ...grid,
    ...rafters.flatMap((r) => [r.xIn, r.xIn - 1e-9, r.xIn + 1e-9, r.xIn - s / 2, r.xIn - s + 1e-9]),
  ]) {
    const left = endReaction(rafters, from, s);
    const total = rafters
      .filter((r) => r.xIn > from && r.xIn < from + s)
      .reduce((sum, r) => sum + r.tributaryWidthIn, 0);
    const over = overFixing(rafters, from, s);
    greatest.simpleShear = Math.max(greatest.simpleShear, left, total - left);
    greatest.shear = Math.max(greatest.shear, over.shear);
    greatest.fixing = Math.max(greatest.fixing, over.fixing);
    // the moment of point loads is greatest under one of them
    for (const r of rafters)
      if (r.xIn > from && r.xIn < from + s)
        greatest.moment = Math.max(greatest.moment, momentUnder(rafters, from, s, r.xIn));
  }
  return greatest;
}

const WAY = { symbol: 'M', words: 'moment' } as const;
/** A pound on each inch. */
const moment = (rafters: readonly RafterOnLedger[], s: number): number => spanMoment(12, s, widestGap(rafters), WAY);

const anyRafters = fc
  .tuple(
    fc.array(fc.double({ min: 4, max: 40, noNaN: true }), { minLength: 1, maxLength: 9 }),
    fc.double({ min: 0, max: 20, noNaN: true }),
  )
  .map(([gaps, overhang]) => raftersAt(gaps, overhang));
const anySpacing = fc.double({ min: 3, max: 120, noNaN: true });
const RUNS = { numRuns: 150, seed: 20261125 };

describe('a ledger from fixing to fixing, rafters anywhere on it', () => {
  // By hand: one load P at mid-span, P s / 4; on a span of 3 r loads at r/2, 3r/2 and 5r/2, 1.5 P x 1.5 r - P r = 1.25 P r.
  test('[ledger.bending] is P s / 4 under a single rafter and 1.25 P r where three stand on a span of three gaps', () => {
    expect(spanMoment(12, 16, 24, WAY)).toBeCloseTo((24 * 16) / 4, 9);
    expect(spanMoment(12, 72, 24, WAY)).toBeCloseTo(1.25 * 24 * 24, 9);
  });

  test('[ledger.bending] is never under what statics gives at any place, whatever the gaps', () => {
    fc.assert(
      fc.property(anyRafters, anySpacing, (rafters, s) => {
        expect(moment(rafters, s)).toBeGreaterThanOrEqual(everywhere(rafters, s).moment * (1 - 1e-9));
      }),
      RUNS,
    );
  });

  test('[ledger.bending] is over it by an eighth at most where rafters stand evenly', () => {
    for (const s of [8, 16, 24, 30, 36, 48, 60, 72, 96])
      expect(moment(evenly(13, 24), s) / everywhere(evenly(13, 24), s, 2000).moment).toBeLessThan(1.125);
  });

  // By hand: a rafter just off the fixing hands over all of itself; those 16 in. to each side of 24 in. of span, t = 1/3, a
  // third and twice t (1 - t^2) / 4 = 2 / 27.
  test('[ledger.shear] is the hardest beside the middle of two spans by the force method, and never less than of one span', () => {
    expect(widthInShear(evenly(9, 16), 24)).toBeCloseTo(16 * (1 + 1 / 3 + 4 / 27), 9);
    fc.assert(
      fc.property(anyRafters, anySpacing, (rafters, s) => {
        const { shear, simpleShear } = everywhere(rafters, s);
        expect(widthInShear(rafters, s)).toBeGreaterThanOrEqual(Math.max(shear, simpleShear) * (1 - 1e-3));
        expect(widthInShear(rafters, s)).toBeLessThanOrEqual(shear * (1 + 1e-3));
      }),
      RUNS,
    );
  });

  // AISC Manual, beam tables (from memory): loads P in the middle of two equal spans press the middle support with 11/16 P each;
  // a uniform load presses it with 1.25 times that of one spacing.
  test('[ledger.fixing] holds the hardest share of two spans by the force method, and no less than its spacing', () => {
    expect(widthOnFixing(evenly(9, 24), 16)).toBe(24);
    expect(widthOnFixing(evenly(9, 24), 24)).toBeCloseTo((2 * 11 * 24) / 16, 9);
    expect(widthOnFixing(evenly(201, 1), 80)).toBeCloseTo(1.25 * 80, 1);
    fc.assert(
      fc.property(anyRafters, anySpacing, (rafters, s) => {
        const worst = Math.max(s, everywhere(rafters, s).fixing);
        expect(widthOnFixing(rafters, s)).toBeGreaterThanOrEqual(worst * (1 - 1e-3));
        expect(widthOnFixing(rafters, s)).toBeLessThanOrEqual(worst * (1 + 1e-3));
      }),
      RUNS,
    );
  });
});

/** A dry 2x10 of Douglas Fir-Larch No. 2, rafters 21 in. apart, fixings as far apart as said. */
const fixedEvery = (fixingSpacingIn: number | null, more: object = {}) =>
  leanToWith((raw) => {
    const stock = {
      kind: 'sawn',
      lay: 'edge',
      species: 'Douglas Fir-Larch',
      grade: 'No. 2',
      use: 'dry',
      breadthIn: 1.5,
      depthIn: 9.25,
      plies: 1,
    };
    Object.assign(at(raw, 'supportLines', 'ledger'), { fixingSpacingIn, stock: { ...stock, ...more } });
    rate(raw, 'ledgerWall', { pullLb: 1e6, alongLb: 1e6, acrossLb: 1000 }, 0.9);
  });

/** Down on each foot. */
const downPlf = (context: RoofCheckContext): number =>
  roofChecks(context).ledgers[0]!.forces.find(({ way }) => way === 'down')!.plf;

// proof [ledger.bending]: closed-form - point loads on a simple span over the printed value times its factors
// proof [ledger.shear]: closed-form - end reaction of a simple span over the printed value

describe('the ledger of a lean-to', () => {
  // NDS Supplement Table 4A, Douglas Fir-Larch No. 2: Fb 900 psi, Fv 180 psi, Emin 580000 psi; CF 1.1 for 2x10. CD 1.15, snow (NDS Table 2.3.2).
  const [Fb, Fv, Emin] = [900 * 1.1 * 1.15, 180 * 1.15, 580000];
  const area = 1.5 * 9.25;

  test('[ledger.bending] of fixings 96 in. apart is p (s2 + r2) / 8 over S and a value that its slenderness lessens', () => {
    const context = fixedEvery(96);
    const row = rowOf(context, 'ledger.bending/ledger/whole');
    const fb = ((downPlf(context) / 12) * (96 ** 2 + 21 ** 2)) / 8 / ((1.5 * 9.25 ** 2) / 6);
    // NDS 3.3.3, lu / d = 10.4: le = 1.63 lu + 3 d
    const FbE = (1.2 * Emin * 1.5 ** 2) / ((1.63 * 96 + 3 * 9.25) * 9.25);
    const half = (1 + FbE / Fb) / 1.9;
    const CL = half - Math.sqrt(half ** 2 - FbE / Fb / 0.95);
    expect(CL).toBeLessThan(0.8);
    expect(ratioIn(row, '3-snow+snow-sliding')).toBeCloseTo(fb / (Fb * CL), 6);
    expect(row.status).toBe('fail');
  });

  test('[ledger.bending] outward about the wide face adds to it in wind, each stick of two by itself', () => {
    // NDS 3.9.2 without push; CD 1.6, wind; lu / d under 7: le = 2.06 lu; no gain for lying flat
    const byHand = (context: RoofCheckContext, plies: number): number => {
      const [up, out] = ['up', 'out'].map((w) => roofChecks(context).ledgers[0]!.forces.find(({ way }) => way === w)!);
      const [fb1, fb2] = [
        ((up!.plf / 12) * 21 * 16) / 4 / ((plies * 1.5 * 9.25 ** 2) / 6),
        ((out!.plf / 12) * 21 * 16) / 4 / ((plies * 9.25 * 1.5 ** 2) / 6),
      ];
      const Fb16 = 900 * 1.1 * 1.6;
      const FbE = (1.2 * Emin * (plies * 1.5) ** 2) / (2.06 * 16 * 9.25);
      const half = (1 + FbE / Fb16) / 1.9;
      const CL = half - Math.sqrt(half ** 2 - FbE / Fb16 / 0.95);
      return fb1 / (Fb16 * CL) + fb2 / (Fb16 * (1 - (fb1 / FbE) ** 2));
    };
    for (const plies of [1, 2]) {
      const context = fixedEvery(16, { plies });
      const row = rowOf(context, 'ledger.bending/ledger/whole');
      expect(row.status).toBe('pass');
      expect(ratioIn(row, '7+wind-up-obstructed')).toBeCloseTo(byHand(context, plies), 9);
    }
  });

  test('[ledger.shear] of fixings 16 in. apart is that of one whole rafter', () => {
    const context = fixedEvery(16);
    const row = rowOf(context, 'ledger.shear/ledger/whole');
    expect(row.ratio!).toBeCloseTo((1.5 * downPlf(context) * 21) / 12 / area / Fv, 9);
  });

  test('[ledger.fixing] right under a rafter takes the whole of it, though fixings stand closer', () => {
    const context = fixedEvery(10);
    const row = rowOf(context, 'ledger.fixing/ledger/whole');
    expect(row.ratio!).toBeCloseTo((downPlf(context) * 21) / 12 / 1000, 3);
  });

  test('[ledger.bending] [ledger.shear] are not given without a spacing or a stick, and outside where it is not sawn', () => {
    const said = (context: RoofCheckContext) =>
      ['ledger.bending', 'ledger.shear'].map((rule) => {
        const { status, reason } = rowOf(context, `${rule}/ledger/whole`);
        return [status, reason?.code];
      });
    expect(said(fixedEvery(null))).toEqual([
      ['notGiven', 'ledgerSpacingNotGiven'],
      ['notGiven', 'ledgerSpacingNotGiven'],
    ]);
    const bare = leanToWith((raw) => void (at(raw, 'supportLines', 'ledger')['stock'] = null));
    expect(said(bare)).toEqual([
      ['notGiven', 'memberNotGiven'],
      ['notGiven', 'memberNotGiven'],
    ]);
    const typed = {
      kind: 'typed',
      name: 'channel',
      EIPsiIn4: 1e7,
      FbSIn3Psi: 1e5,
      VallowLb: 1e4,
      heavyPlf: 4,
      lightPlf: 4,
    };
    const other = leanToWith((raw) => void (at(raw, 'supportLines', 'ledger')['stock'] = typed));
    expect(said(other)).toEqual([
      ['outside', 'ledgerNotSawn'],
      ['outside', 'ledgerNotSawn'],
    ]);
  });

  test('[ledger.fixing] [ledger.bending] two slopes on one ledger are outside the method', () => {
    const both = leanToWith((raw) => {
      const lines = listAt(raw, 'supportLines').map((line) => at({ line: line ?? null }, 'line'));
      listAt(raw, 'supportLines').push({ ...lines.find(({ id }) => id === 'line-1'), id: 'line-2', yIn: -108 });
      const plane = at(raw, 'roofPlanes', 'plane-1');
      plane['highOverhangIn'] = 0;
      listAt(raw, 'roofPlanes').push({ ...plane, id: 'plane-2', onLines: ['ledger', 'line-2'] });
      const members = listAt(raw, 'members').map((member) => at({ member: member ?? null }, 'member'));
      for (const member of members) {
        const id = `${String(member['id'])}-b`;
        if (member['plane'] === 'plane-1') listAt(raw, 'members').push({ ...member, id, plane: 'plane-2' });
        // its log lies over the other line already
        if (member['line'] === 'line-1')
          listAt(raw, 'members').push({
            ...member,
            id,
            line: 'line-2',
            ...(member['own'] ? { own: { stock: null } } : {}),
          });
      }
    });
    for (const rule of ['ledger.bending', 'ledger.shear', 'ledger.fixing']) {
      const row = rowOf(both, `${rule}/ledger/whole`);
      expect([row.status, row.reason?.code]).toEqual(['outside', 'ledgerBothSides']);
    }
  });
});
