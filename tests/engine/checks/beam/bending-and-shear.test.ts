import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beamSites } from '../../../../src/engine/checks/beam/beam-checks.ts';
import { sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import type { LineCheckContext } from '../../../../src/engine/checks/line-context.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { plainShed, type Measures } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse, rowOver, siteOf, thicker, verdict } from '../sites.ts';

const SPAN = 'post-0-0~post-0-1';
/** An even log of 10 in., seats at the posts and nothing else cut. */
const even: Partial<Measures> = {
  beamDiametersIn: [10, 10],
  braceEnd: { kind: 'coped', depthIn: 0 },
};

/** Section of the beam nearest to x, before or after it. */
function sectionAtX(context: LineCheckContext, x: number) {
  const chain = context.frame.mesh.beams[0]!;
  return sectionsOf(chain, context.frame.layout).find((s) => Math.abs(s.atIn - 24 - x) < 1e-6)!;
}

const cut = (more: Partial<Project['cuts'][number]>): Project['cuts'] => [
  {
    id: 'cut',
    member: 'beam-0-0',
    kind: 'dap',
    centreIn: 30,
    lengthIn: 4,
    depthIn: 1,
    angleDeg: 0,
    by: 'hand',
    ...more,
  },
];

describe('bending of a round beam', () => {
  const { context } = lineBench(plainShed(even));
  const site = siteOf(beamSites(context), 'beam.bending', 'beam-0-0', SPAN);

  // S = pi d3 / 32 of a 10 in. log is 98.175 in3; NDS 3.3: fb = M / S against Fb CD, CL = 1 for round wood.
  it('[beam.bending] 60,000 lb in. on a 10 in. log is 611 psi against 1000 x 1.15', () => {
    const r = handResponse(context, [[sectionAtX(context, 76).moment, 60_000]]);
    const v = verdict(site, r);
    expect(v.demand!.value).toBeCloseTo(60_000 / ((Math.PI * 1000) / 32), 6);
    expect(v.demand!.value).toBeCloseTo(611.15, 2);
    expect(v.capacity!.value).toBeCloseTo(1150, 9);
    expect(v.status).toBe('pass');
  });

  it('[beam.bending] takes the thrust along the log as a pull at Fb / Ft, whichever way it acts', () => {
    const s = sectionAtX(context, 76);
    const area = 25 * Math.PI;
    for (const thrust of [4000, -4000]) {
      const v = verdict(
        site,
        handResponse(context, [
          [s.moment, -60_000],
          [s.axial, thrust],
        ]),
      );
      expect(v.demand!.value).toBeCloseTo(611.155 + ((1000 / 550) * 4000) / area, 2);
    }
  });

  it('[beam.bending] finds the worst section of a tapering log where the thin end wins over the greater moment', () => {
    const tapering = lineBench(plainShed({ ...even, beamDiametersIn: [14, 8] })).context;
    const bending = siteOf(beamSites(tapering), 'beam.bending', 'beam-0-0', SPAN);
    const [thick, thin] = [sectionAtX(tapering, 28), sectionAtX(tapering, 124)];
    const r = handResponse(tapering, [
      [thick.moment, 60_000],
      [thin.moment, 50_000],
    ]);
    const d = (x: number): number => 14 - (6 * (x + 24)) / 240;
    expect(bending.worstAt!(r)).toBeCloseTo(124 + 24, 6);
    expect(verdict(bending, r).demand!.value).toBeCloseTo((32 * 50_000) / (Math.PI * d(124) ** 3), 6);
    expect((32 * 60_000) / (Math.PI * d(28) ** 3)).toBeLessThan((32 * 50_000) / (Math.PI * d(124) ** 3));
  });

  // Circle less a segment of depth 1 on 10 in., summed over thin strips here: the section left at a seat flat.
  it('[beam.bending] over a seat counts what the flat leaves, twice when the flat is stretched', () => {
    const over = siteOf(beamSites(context), 'beam.bending', 'beam-0-0', SPAN);
    const s = sectionAtX(context, 0);
    const S = stripModulus(10, 1);
    expect(verdict(over, handResponse(context, [[s.moment, -20_000]])).demand!.value).toBeCloseTo(20_000 / S, 3);
    const stretched = verdict(over, handResponse(context, [[s.moment, 20_000]]));
    expect(stretched.demand!.value).toBeCloseTo((2 * 20_000) / S, 3);
    expect(stretched.reason?.code).toBe('seatTurnsTension');
  });

  it('[beam.bending] putting back the diameter to spare brings the ratio to 1', () => {
    const r = handResponse(context, [[sectionAtX(context, 76).moment, 60_000]]);
    const spare = rowOver(site, [r])!.spareIn!;
    expect(60_000 / ((Math.PI * (10 - spare) ** 3) / 32)).toBeCloseTo(1150, 6);
    const weak = handResponse(context, [[sectionAtX(context, 76).moment, 180_000]]);
    const missing = rowOver(site, [weak])!.spareIn!;
    expect(missing).toBeLessThan(0);
    expect(180_000 / ((Math.PI * (10 - missing) ** 3) / 32)).toBeCloseTo(1150, 6);
  });

  it('[beam.bending] a typed section is judged by its moment, its span said to be the maker own', () => {
    const stock = {
      kind: 'typed',
      name: 'joist',
      FbSIn3Psi: 90_000,
      VallowLb: 2000,
      EIPsiIn4: 4e8,
      heavyPlf: 5,
      lightPlf: 4,
    } as const;
    const shed = plainShed(even);
    const members = shed.members.map((m) => (m.role === 'beam' ? { ...m, own: { stock } } : m));
    const typed = lineBench({ ...shed, members }).context;
    const bending = siteOf(beamSites(typed), 'beam.bending', 'beam-0-0', SPAN);
    const v = verdict(bending, handResponse(typed, [[sectionAtX(typed, 76).moment, 60_000]]));
    expect([v.demand!.value, v.capacity!.value, v.reason?.code]).toEqual([60_000, 90_000 * 1.15, 'typedSection']);
  });

  it('[beam.bending] [beam.shear] a cut between two stations takes its wood away where it lies', () => {
    const dapped = lineBench({ ...plainShed(even), cuts: cut({ centreIn: 33, depthIn: 1.2 }) }).context;
    const s = sectionAtX(dapped, 33);
    const sites = beamSites(dapped);
    const r = handResponse(dapped, [
      [s.moment, 20_000],
      [s.shear, 900],
    ]);
    const bending = siteOf(sites, 'beam.bending', 'beam-0-0', SPAN);
    // the dap is on top: pressed by a sagging moment
    expect(verdict(bending, r).demand!.value).toBeCloseTo(20_000 / stripModulus(10, 1.2), 2);
    expect(verdict(bending, handResponse(dapped, [[s.moment, -20_000]])).demand!.value).toBeCloseTo(
      40_000 / stripModulus(10, 1.2),
      2,
    );
    const shear = verdict(siteOf(sites, 'beam.shear', 'beam-0-0', SPAN), r);
    expect(shear.demand!.value).toBeGreaterThan((4 * 900) / (3 * 25 * Math.PI));
  });

  it('[beam.bending] two cuts at one place count with their summed depth, one through the log lets nothing pass', () => {
    const both = lineBench({ ...plainShed(even), cuts: cut({ centreIn: 0, depthIn: 0.5 }) }).context;
    const s = sectionAtX(both, 0);
    const bending = siteOf(beamSites(both), 'beam.bending', 'beam-0-0', SPAN);
    const v = verdict(bending, handResponse(both, [[s.moment, -20_000]]));
    expect(v.demand!.value).toBeCloseTo((2 * 20_000) / stripModulus(10, 1.5), 3);
    const through = lineBench({ ...plainShed(even), cuts: cut({ centreIn: 60, depthIn: 11 }) }).context;
    for (const rule of ['beam.bending', 'beam.shear', 'beam.twist'] as const) {
      const gone = siteOf(beamSites(through), rule, 'beam-0-0', SPAN);
      expect(verdict(gone, handResponse(through, [[sectionAtX(through, 60).moment, 10]]))).toMatchObject({
        status: 'fail',
        ratio: null,
        reason: { code: 'cutThroughLog', values: { member: 'beam-0-0', atIn: 60, depthIn: 11, diameterIn: 10 } },
      });
    }
  });
});

describe('shear of a round beam', () => {
  const { context } = lineBench(plainShed(even));

  it('[beam.shear] 2,000 lb on a 10 in. log is 4 V / 3 A: 33.95 psi against 100 x 1.15', () => {
    const s = sectionAtX(context, 76);
    const v = verdict(
      siteOf(beamSites(context), 'beam.shear', 'beam-0-0', SPAN),
      handResponse(context, [[s.shear, -2000]]),
    );
    expect(v.demand!.value).toBeCloseTo(8000 / (3 * 25 * Math.PI), 6);
    expect(v.demand!.value).toBeCloseTo(33.95, 2);
    expect(v.capacity!.value).toBeCloseTo(115, 9);
  });

  it('[beam.shear] putting back the diameter to spare brings the ratio to 1', () => {
    const r = handResponse(context, [[sectionAtX(context, 76).shear, 2000]]);
    const spare = rowOver(siteOf(beamSites(context), 'beam.shear', 'beam-0-0', SPAN), [r])!.spareIn!;
    expect(8000 / (3 * Math.PI * ((10 - spare) / 2) ** 2)).toBeCloseTo(115, 6);
  });

  it('[beam.shear] on a planed log follows V Q / I b of the section left, summed over strips', () => {
    const planed = lineBench(plainShed({ ...even, topFlatIn: 1.5 })).context;
    const s = sectionAtX(planed, 76);
    const v = verdict(
      siteOf(beamSites(planed), 'beam.shear', 'beam-0-0', SPAN),
      handResponse(planed, [[s.shear, 2000]]),
    );
    expect(v.demand!.value / stripShear(10, 1.5, 2000)).toBeCloseTo(1, 4);
  });

  // NDS 3.4.3.2 (from memory), circular: V' = 2/3 Fv' An (dn/d)2, with An by strips.
  it('[beam.endNotch] a seat 2 in. deep at the end of a 10 in. log carries 2/3 Fv An (8/10)2', () => {
    const project = plainShed({ ...even, beamEndsIn: [-6, 168], seatIn: 2 });
    const ended = lineBench(project).context;
    const chain = ended.frame.mesh.beams[0]!;
    const s = sectionsOf(chain, ended.frame.layout).filter((section) => Math.abs(section.atIn - 6) < 1e-6)[1]!;
    const site = siteOf(beamSites(ended), 'beam.endNotch', 'beam-0-0', `post-0-0@${SPAN}`);
    const v = verdict(site, handResponse(ended, [[s.shear, 1500]]));
    expect(v.demand!.value).toBe(1500);
    expect(v.capacity!.value / ((2 / 3) * 115 * stripArea(10, 2) * 0.64)).toBeCloseTo(1, 6);
    expect(v.reason?.code).toBe('endCutCaution');
  });

  it('[beam.endNotch] a seat deeper than a quarter of the log at its end fails before any number', () => {
    const deep = lineBench(plainShed({ ...even, beamEndsIn: [-6, 168], seatIn: 2.6 })).context;
    const site = siteOf(beamSites(deep), 'beam.endNotch', 'beam-0-0', `post-0-0@${SPAN}`);
    const v = verdict(site, handResponse(deep, []));
    expect([v.status, v.ratio, v.reason?.code]).toEqual(['fail', null, 'cutTooDeep']);
  });

  it('[beam.endNotch] a cut by hand near the end is asked too', () => {
    const end = (depthIn: number) => {
      const hand = lineBench({ ...plainShed(even), cuts: cut({ centreIn: 162, depthIn }) }).context;
      return verdict(
        siteOf(beamSites(hand), 'beam.endNotch', 'beam-0-0', 'cut@post-0-1~plus'),
        handResponse(hand, [[sectionAtX(hand, 162).shear, 300]]),
      );
    };
    expect(end(2).capacity!.value / ((2 / 3) * 115 * stripArea(10, 2) * 0.64)).toBeCloseTo(1, 6);
    expect(end(2).status).toBe('pass');
    expect(end(2.6).status).toBe('fail');
  });

  it('[beam.endNotch] a seat with a log going on past it is no end', () => {
    expect(beamSites(context).filter(({ ruleId }) => ruleId === 'beam.endNotch')).toEqual([]);
  });
});

describe('a thicker beam under the very same forces', () => {
  it('[beam.bending] [beam.shear] never has a larger ratio', () => {
    const bench = lineBench(plainShed({ ...even, beamDiametersIn: [12, 9] }));
    const rules = ['beam.bending', 'beam.shear'];
    const asked = bench.frame.responses.filter((r) => r.combination.purpose === 'strength');
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1.6, noNaN: true }), fc.nat({ max: asked.length - 1 }), (by, i) => {
        const [thin, thick] = [bench.context, thicker(bench.context, by)].map((c) =>
          beamSites(c).filter(({ ruleId }) => rules.includes(ruleId)),
        );
        thin!.forEach((site, k) => {
          const [a, b] = [verdict(site, asked[i]!).ratio!, verdict(thick![k]!, asked[i]!).ratio!];
          expect(b).toBeLessThanOrEqual(a + 1e-12);
        });
      }),
      { seed: 131, numRuns: 60 },
    );
  });
});

/** Strips of a circle less a segment of depth t: half width at a height above the centre. */
const STRIPS = 200_000;
function strips(d: number, t: number): readonly (readonly [z: number, area: number])[] {
  const R = d / 2;
  const h = (d - t) / STRIPS;
  return Array.from({ length: STRIPS }, (_, i) => {
    const z = -R + (i + 0.5) * h;
    return [z, 2 * Math.sqrt(R * R - z * z) * h] as const;
  });
}

const stripArea = (d: number, t: number): number => strips(d, t).reduce((sum, [, a]) => sum + a, 0);

function stripInertia(d: number, t: number): { readonly I: number; readonly centre: number } {
  const parts = strips(d, t);
  const A = parts.reduce((sum, [, a]) => sum + a, 0);
  const centre = parts.reduce((sum, [z, a]) => sum + z * a, 0) / A;
  return { I: parts.reduce((sum, [z, a]) => sum + (z - centre) ** 2 * a, 0), centre };
}

/** The smaller section modulus of the two sides. */
function stripModulus(d: number, t: number): number {
  const { I, centre } = stripInertia(d, t);
  return I / Math.max(d / 2 - t - centre, d / 2 + centre);
}

/** Greatest V Q / (I b) over the height. */
function stripShear(d: number, t: number, V: number): number {
  const { I, centre } = stripInertia(d, t);
  let Q = 0;
  let most = 0;
  for (const [z, a] of strips(d, t)) {
    Q += (centre - z) * a;
    most = Math.max(most, (V * Q) / (I * 2 * Math.sqrt((d / 2) ** 2 - z * z)));
  }
  return most;
}
