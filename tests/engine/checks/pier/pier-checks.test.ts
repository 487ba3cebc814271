import { describe, expect, it } from 'vitest';
import { acrossPushAtFoot } from '../../../../src/engine/checks/pier/across-push.ts';
import { acrossMoment } from '../../../../src/engine/checks/post/across-wind.ts';
import { footRows, pierSites } from '../../../../src/engine/checks/pier/pier-checks.ts';
import { footIndex } from '../../../../src/engine/frame/read-response.ts';
import type { CheckRow } from '../../../../src/engine/evaluation.ts';
import type { FastenerRow, Project } from '../../../../src/engine/project/model.ts';
import { plainShed, type Measures } from '../../../support/plain-shed.ts';
import { lineBench, placed } from '../../frame/line-bench.ts';
import { handResponse, siteOf, verdict } from '../sites.ts';

const ID = 'post-0-0';
/** Round shaft of 18 in., 48 long, its top 6 above the ground: 42 in the ground; 145 pcf; soil 100 pcf, 1500 psf. */
const SHAFT_FT2 = (Math.PI * 1.5 ** 2) / 4;
const PIER_LB = SHAFT_FT2 * 4 * 145;
const SOIL_LB = SHAFT_FT2 * 3.5 * 100;

/** The first foot pressed down and pushed along the line [lb]. */
function standing(project: Project, downLb: number, alongLb = 0) {
  const { context } = lineBench(project);
  const foot = footIndex(context.frame.layout, context.frame.mesh.posts[0]!);
  return {
    context,
    sites: pierSites(context),
    r: handResponse(context, [
      [foot, alongLb],
      [foot + 1, downLb],
    ]),
  };
}
const verdictOf = (project: Project, ruleId: string, downLb: number, alongLb = 0) => {
  const { sites, r } = standing(project, downLb, alongLb);
  return verdict(siteOf(sites, ruleId, ID), r);
};

const given = <T>(value: T | null) => ({ value, givenBy: 'department', date: null }) as const;
const onSoil = (soil: Partial<Project['site']['soil']>, measures: Partial<Measures> = {}): Project => {
  const shed = plainShed(measures);
  return { ...shed, site: { ...shed.site, soil: { ...shed.site.soil, ...soil } } };
};

describe('a pier under a post', () => {
  it('[pier.bearing] presses with the post and its own weight less the soil it replaced, over its base', () => {
    const v = verdictOf(plainShed(), 'pier.bearing', 2000);
    expect(v.demand!.value).toBeCloseTo((2000 + PIER_LB - SOIL_LB) / SHAFT_FT2, 6);
    expect(v.capacity!.value).toBe(1500);
  });

  it('[pier.bearing] on a pad bears on the pad, whose weight and soil count too', () => {
    const pad = { acrossIn: 30, thickIn: 10, tied: true };
    const v = verdictOf(plainShed({ pad }), 'pier.bearing', 5000);
    const more = (6.25 * 10) / 12;
    expect(v.demand!.value).toBeCloseTo((5000 + PIER_LB + more * 145 - SOIL_LB - more * 100) / 6.25, 6);
  });

  // N / A + M / S of a circle inside its kern; beyond N d / 2 it tips
  it('[pier.bearing] counts the moment of a fixed foot, and says so where the base cannot hold it', () => {
    const fixed = plainShed({ fixity: 'fixed' });
    const { sites, r, context } = standing(fixed, 2000);
    const moment = footIndex(context.frame.layout, context.frame.mesh.posts[0]!) + 2;
    const turned = (lbIn: number) => {
      r.values[moment] = lbIn;
      return verdict(siteOf(sites, 'pier.bearing', ID), r);
    };
    const N = 2000 + PIER_LB - SOIL_LB;
    const M = N * 2; // 2 in. off the centre of an 18 in. circle, inside its kern of 2.25
    expect(turned(-M).demand!.value).toBeCloseTo(N / SHAFT_FT2 + M / 12 / ((Math.PI * 1.5 ** 3) / 32), 6);
    expect(turned(N * 9.1)).toMatchObject({ status: 'outside', reason: { code: 'footTips' } });
  });

  it('[pier.bearing] [pier.sideways] of soil nobody presumes a value for are not given', () => {
    const mud = onSoil({ bearingPsf: given<number>(null), lateralPsfPerFt: given<number>(null) });
    for (const rule of ['pier.bearing', 'pier.sideways'])
      expect(verdictOf(mud, rule, 2000, 100)).toMatchObject({ status: 'notGiven', reason: { code: 'soilNotGiven' } });
  });

  // ASCE 7-16 2.4.1, combination 7: 0.6 of the pier's weight.
  it('[pier.uplift] holds six tenths of its weight, and of its pad where that is tied', () => {
    const plain = verdictOf(plainShed(), 'pier.uplift', -400);
    expect([plain.demand!.value, plain.capacity!.value.toFixed(6)]).toEqual([400, (0.6 * PIER_LB).toFixed(6)]);
    expect(verdictOf(plainShed(), 'pier.uplift', 400).demand!.value).toBe(0);
    const pad = { acrossIn: 30, thickIn: 10, tied: true };
    const tied = verdictOf(plainShed({ pad }), 'pier.uplift', -400).capacity!.value;
    expect(tied).toBeCloseTo(0.6 * (PIER_LB + (6.25 * 10 * 145) / 12), 6);
    const loose = verdictOf(plainShed({ pad: { ...pad, tied: false } }), 'pier.uplift', -400).capacity!.value;
    expect(loose).toBeCloseTo(0.6 * PIER_LB, 6);
  });

  it('[pier.uplift] counts soil straight above a tied pad only where that was chosen', () => {
    const shed = plainShed({ pad: { acrossIn: 30, thickIn: 10, tied: true } });
    const without = verdictOf(shed, 'pier.uplift', -400).capacity!.value;
    const chosen: Project = { ...shed, calculation: { ...shed.calculation, soilAboveCountsInUplift: true } };
    expect(verdictOf(chosen, 'pier.uplift', -400).capacity!.value - without).toBeCloseTo(
      0.6 * (6.25 - SHAFT_FT2) * 3.5 * 100,
      6,
    );
  });

  // IBC 2018 equation 18-1: d = A/2 (1 + sqrt(1 + 4.36 h / A)), A = 2.34 P / (S1 b), S1 = 150 d / 3; round shaft 1.5 ft.
  // proof [pier.sideways]: closed-form - IBC 2018 eq. 18-1 put back with the depth found, h from the ground to the foot
  it('[pier.sideways] the depth found satisfies the pole equation, its push at the foot of the post', () => {
    const v = verdictOf(plainShed(), 'pier.sideways', 3000, -500);
    const d = v.demand!.value;
    const A = (2.34 * 500) / (((150 * d) / 3) * 1.5);
    expect((A / 2) * (1 + Math.sqrt(1 + (4.36 * (7 / 12)) / A))).toBeCloseTo(d, 6);
    expect(v.capacity!.value).toBeCloseTo(3.5, 9);
    expect(v.ratio!).toBeCloseTo(d / 3.5, 9);
  });

  // the same equation, h to the upper of two bolts: 7 in. to the end of the post, 4.5 to the lower bolt, 3 between them
  it('[pier.sideways] a post between bolted plates turns at its bolts: its push stands that much higher', () => {
    const bolt: FastenerRow = {
      fastener: 'bolt',
      diameterIn: 0.625,
      lengthIn: 12,
      count: 2,
      rows: 1,
      spacingIn: 3,
      endIn: 4.5,
      plate: { thicknessIn: 0.25, widthIn: 3, steel: 'plate', each: 2 },
      acts: 'both',
      driven: 'wet',
    };
    const shed = plainShed();
    const bolted: Project = {
      ...shed,
      joints: {
        own: [],
        defaults: [{ kind: 'postFoot', capacity: { kind: 'fasteners', rows: [bolt], shoulder: false } }],
      },
    };
    const d = verdictOf(bolted, 'pier.sideways', 3000, -500).demand!.value;
    const A = (2.34 * 500) / (((150 * d) / 3) * 1.5);
    expect((A / 2) * (1 + Math.sqrt(1 + (4.36 * (14.5 / 12)) / A))).toBeCloseTo(d, 6);
  });

  it('[pier.sideways] a square shaft presses with its diagonal', () => {
    const shed = plainShed();
    const groups = shed.groups.map((g) =>
      g.role === 'post' && g.foot.kind === 'pier'
        ? { ...g, foot: { ...g.foot, shaft: { shape: 'square', acrossIn: 12, lengthIn: 48 } as const } }
        : g,
    );
    const d = verdictOf({ ...shed, groups }, 'pier.sideways', 3000, 500).demand!.value;
    const A = (2.34 * 500) / (((150 * d) / 3) * Math.SQRT2);
    expect((A / 2) * (1 + Math.sqrt(1 + (4.36 * (7 / 12)) / A))).toBeCloseTo(d, 6);
  });

  it('[pier.uplift] takes a weight that was typed', () => {
    const typed: Project = { ...plainShed(), instead: [{ what: 'pierWeightLb', of: ID, value: 900, why: 'boulder' }] };
    expect(verdictOf(typed, 'pier.uplift', -400).capacity!.value).toBeCloseTo(540, 9);
    expect(verdictOf(typed, 'pier.bearing', 2000).demand!.value).toBeCloseTo((2900 - SOIL_LB) / SHAFT_FT2, 6);
  });
});

describe('a pier that is pushed along the ground', () => {
  const rubbing = given(0.35);

  // s z2 / 2 b beside it: 150 psf/ft, 3.5 ft, 1.5 ft; friction 0.35 of six tenths of the dead load, post and pier
  it('[pier.sliding] holds by the soil beside it, and by friction where somebody gave it', () => {
    const beside = (150 * 3.5 ** 2 * 1.5) / 2;
    const bare = verdictOf(plainShed(), 'pier.sliding', 3000, -500);
    expect([bare.demand!.value, bare.capacity!.value]).toEqual([500, beside]);
    const { context } = standing(plainShed(), 0);
    const foot = footIndex(context.frame.layout, context.frame.mesh.posts[0]!);
    const dead = Math.min(
      ...context.frame.responses
        .filter((r) => r.combination.purpose === 'strength' && r.combination.factors.length === 0)
        .map((r) => r.values[foot + 1]!),
    );
    expect(dead).toBeGreaterThan(100);
    const rough = verdictOf(onSoil({ friction: rubbing }), 'pier.sliding', 3000, 500);
    expect(rough.capacity!.value - beside).toBeCloseTo(0.35 * 0.6 * (dead + PIER_LB), 6);
    const lifted = verdictOf(onSoil({ friction: rubbing }), 'pier.sliding', -400, 500);
    expect(lifted.capacity!.value - beside).toBeCloseTo(0.35 * (0.6 * PIER_LB - 400), 6);
  });

  it('[pier.sliding] counts no friction that is a guess, and is not given on soil without a value', () => {
    const guess = { ...rubbing, givenBy: 'guess' as const };
    const without = verdictOf(plainShed(), 'pier.sliding', 3000, 500).capacity!.value;
    expect(verdictOf(onSoil({ friction: guess }), 'pier.sliding', 3000, 500).capacity!.value).toBe(without);
    const mud = onSoil({ lateralPsfPerFt: given<number>(null) });
    expect(verdictOf(mud, 'pier.sliding', 3000, 100)).toMatchObject({ status: 'notGiven' });
  });
});

describe('a push across the lines', () => {
  const windy = (project: Project) => {
    const { context } = lineBench(project);
    const chain = context.frame.mesh.posts[0]!;
    const r = context.frame.responses.find(
      ({ combination: { id, purpose } }) =>
        purpose === 'strength' && id.includes('wind-') && !id.includes('wind-along'),
    )!;
    return { context, chain, r, push: acrossPushAtFoot(context, chain) };
  };

  // the end of a simple beam under w over its length L pushes with w L / 2; its middle bends with w L2 / 8
  it('[pier.sideways] of wind on a post that a building holds above goes half to its foot, square to the push along', () => {
    const { context, chain, r, push } = windy(plainShed());
    const L = chain.post.seatZIn - chain.post.footZIn;
    const middle = acrossMoment(context, chain)(r, chain.post.footZIn - chain.post.woodFromZIn + L / 2);
    const half = (middle * 8) / L ** 2 / 2;
    expect(push!(r)).toEqual({ pushLb: expect.closeTo(half * L, 9), momentLbIn: 0 });
    expect(half * L).toBeGreaterThan(1);
    const along = r.values[footIndex(context.frame.layout, chain)]!;
    const slides = verdict(siteOf(pierSites(context), 'pier.sliding', ID), r);
    expect(slides.demand!.value).toBeCloseTo(Math.hypot(along, half * L), 6);
  });

  it('[pier.sideways] is not counted while nobody knows what reaches the foot', () => {
    const shed = plainShed();
    for (const across of [
      [],
      [{ by: null }],
      [{ by: 'kneeBraces' }],
      [{ by: 'building', ratedLb: 1 }, { by: 'none' }],
    ] as const)
      expect(windy({ ...shed, lateral: { ...shed.lateral, across } }).push).toBeNull();
  });
});

describe('a foot that is not free to turn', () => {
  // proof [post.footTurning]: no-equation - a moment that no rating in pounds answers for is shown and not given
  it('[post.footTurning] shows its moment and reads not given; a pinned foot asks nothing', () => {
    const { context } = lineBench(plainShed({ fixity: { lbInPerRad: 2e6 } }));
    const foot = footIndex(context.frame.layout, context.frame.mesh.posts[0]!);
    const v = verdict(siteOf(pierSites(context), 'post.footTurning', ID), handResponse(context, [[foot + 2, -7000]]));
    expect([v.status, v.demand]).toEqual(['notGiven', { value: 7000, unit: 'lb·in' }]);
    expect(pierSites(lineBench(plainShed()).context).some(({ ruleId }) => ruleId === 'post.footTurning')).toBe(false);
  });

  it('[pier.sideways] counts that moment beside the push', () => {
    const { context } = lineBench(plainShed({ fixity: { lbInPerRad: 2e6 } }));
    const foot = footIndex(context.frame.layout, context.frame.mesh.posts[0]!);
    const d = verdict(
      siteOf(pierSites(context), 'pier.sideways', ID),
      handResponse(context, [
        [foot, 300],
        [foot + 2, 6000],
      ]),
    ).demand!.value;
    const A = (2.34 * 300) / (((150 * d) / 3) * 1.5);
    const h = 7 / 12 + 6000 / 12 / 300;
    expect((A / 2) * (1 + Math.sqrt(1 + (4.36 * h) / A))).toBeCloseTo(d, 6);
  });
});

describe('what no load decides of a pier', () => {
  const rowOf = (project: Project, ruleId: string): CheckRow | undefined =>
    footRows(
      project,
      placed(project).posts.filter(({ id }) => id === ID),
    ).find((row) => row.ruleId === ruleId);
  const withFrost = (frostIn: number | null, measures: Partial<Measures> = {}): Project => {
    const shed = plainShed(measures);
    return { ...shed, site: { ...shed.site, frostDepthIn: given(frostIn) } };
  };

  it('[pier.pad] may reach as far as it is thick; farther is outside without steel', () => {
    // the square with the area of an 18 in. circle is 15.952; a pad of 36 reaches 10.024 beyond
    const reach = (36 - 18 * Math.sqrt(Math.PI / 4)) / 2;
    const pass = rowOf(plainShed({ pad: { acrossIn: 36, thickIn: 12, tied: true } }), 'pier.pad')!;
    expect(pass.status).toBe('pass');
    expect(pass.ratio!).toBeCloseTo(reach / 12, 9);
    const far = rowOf(plainShed({ pad: { acrossIn: 36, thickIn: 10, tied: true } }), 'pier.pad')!;
    expect([far.status, far.reason?.code]).toEqual(['outside', 'padTooWide']);
    expect(rowOf(plainShed(), 'pier.pad')).toBeUndefined();
  });

  // proof [pier.frost]: no-equation - depth in the ground against the depth of frost that the department gives
  it('[pier.frost] stands as deep as the frost, the pad counted; without a given depth nobody knows', () => {
    expect(rowOf(withFrost(42), 'pier.frost')!).toMatchObject({ status: 'pass', ratio: 1 });
    expect(rowOf(withFrost(43), 'pier.frost')!.status).toBe('fail');
    expect(rowOf(withFrost(50, { pad: { acrossIn: 30, thickIn: 10, tied: true } }), 'pier.frost')!.status).toBe('pass');
    expect(rowOf(withFrost(null), 'pier.frost')!.status).toBe('notGiven');
  });

  // IBC 1809.4 (from memory): at least 12 in. below undisturbed ground. Pier tops 6 in. above it.
  it('[pier.frost] stands at least 12 in. deep where the department names less frost or none', () => {
    const row = (frostIn: number, pierTopIn: number) =>
      rowOf(withFrost(frostIn, { pierTopsIn: [pierTopIn, pierTopIn], bracesAt: [] }), 'pier.frost')!;
    expect(row(0, 6)).toMatchObject({ status: 'pass', demand: { value: 12 }, capacity: { value: 42 } });
    expect(row(0, 36)).toMatchObject({ status: 'pass', ratio: 1 });
    expect(row(0, 38)).toMatchObject({ status: 'fail', demand: { value: 12 }, capacity: { value: 10 } });
    expect(row(20, 6).demand!.value).toBe(20);
  });

  // proof [pier.top]: no-equation - a level that nobody has measured is said to be not given
  it('[pier.top] that nobody has measured is not given', () => {
    const shed = plainShed();
    const members = shed.members.map((m) => (m.role === 'post' ? { ...m, pierTopZIn: null } : m));
    expect(rowOf({ ...shed, members }, 'pier.top')!.status).toBe('notGiven');
    expect(rowOf(shed, 'pier.top')).toBeUndefined();
  });

  it('[pier.frost] a shaft that does not reach the ground fails', () => {
    const shed = withFrost(24, { pierTopsIn: [60, 60], bracesAt: [] });
    expect(rowOf(shed, 'pier.frost')!).toMatchObject({ status: 'fail', reason: { code: 'pierNotInGround' } });
  });

  // proof [pier.width]: no-equation - width of the base against the least of IBC 1809.4
  it('[pier.width] is at least 12 in, of the pad where there is one', () => {
    expect(rowOf(plainShed(), 'pier.width')!).toMatchObject({ status: 'pass', ratio: 12 / 18 });
    expect(rowOf(plainShed({ pad: { acrossIn: 30, thickIn: 10, tied: true } }), 'pier.width')!.ratio).toBe(0.4);
    const thin = plainShed();
    const groups = thin.groups.map((g) =>
      g.role === 'post' && g.foot.kind === 'pier'
        ? { ...g, foot: { ...g.foot, shaft: { ...g.foot.shaft, acrossIn: 10 } } }
        : g,
    );
    expect(rowOf({ ...thin, groups }, 'pier.width')!.status).toBe('fail');
  });
});
