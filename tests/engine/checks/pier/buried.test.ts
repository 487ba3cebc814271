import { describe, expect, it } from 'vitest';
import { footRows, pierSites } from '../../../../src/engine/checks/pier/pier-checks.ts';
import type { CheckRow } from '../../../../src/engine/evaluation.ts';
import { footIndex } from '../../../../src/engine/frame/read-response.ts';
import type { EmbeddedFoot, Project, Stock } from '../../../../src/engine/project/model.ts';
import { plainShed, WOOD } from '../../../support/plain-shed.ts';
import { lineBench, placed } from '../../frame/line-bench.ts';
import { evaluated, off } from '../../whole/whole.ts';
import { handResponse, siteOf, verdict } from '../sites.ts';

const ID = 'post-0-0';
const DEPTH_IN = 48;
/** Butt of 9 in, a sixteenth of an inch less every 10 in. */
const diameterAt = (fromButtIn: number): number => 9 - fromButtIn / 160;
const BUTT_FT2 = (Math.PI * 0.75 ** 2) / 4;
/** Lateral bearing of the plain shed's soil [psf/ft]. */
const SOIL = 150;

/** The plain shed, its posts 4 ft in the ground, held against turning a foot and a half below it. */
function inGround(foot: Partial<EmbeddedFoot> = {}, stock?: Stock): Project {
  const shed = plainShed({ bracesAt: [], bearing: { line: 0, of: 'bearing', zIn: 100 } });
  const buried: EmbeddedFoot = {
    kind: 'embedded',
    depthIn: DEPTH_IN,
    holeIn: 24,
    backfill: 'gravel',
    treatment: 'copper',
    useCategory: 'UC4B',
    fixedBelowGradeIn: 18,
    fixity: { along: 'fixed', across: 'pinned' },
    ...foot,
  };
  return {
    ...shed,
    groups: shed.groups.map((g) => (g.role === 'post' ? { ...g, foot: buried, ...(stock ? { stock } : {}) } : g)),
    lateral: { ...shed.lateral, along: [{ by: 'embeddedPosts' }] },
  };
}

/** The first post pressed down, its section at the point of fixity pushed and bent. */
function under(project: Project, downLb: number, pushLb = 0, bentLbIn = 0) {
  const { context } = lineBench(project);
  const chain = context.frame.mesh.posts[0]!;
  const foot = footIndex(context.frame.layout, chain);
  const start = chain.firstElement * 6;
  const r = handResponse(context, [
    [foot, pushLb],
    [foot + 1, downLb],
    [foot + 2, bentLbIn],
    [start + 1, -pushLb],
    [start + 2, bentLbIn],
  ]);
  const sites = pierSites(context);
  return { of: (ruleId: string) => verdict(siteOf(sites, ruleId, ID), r), sites };
}
const rowOf = (project: Project, ruleId: string): CheckRow | undefined =>
  footRows(project, placed(project).posts).find((row) => row.ruleId === ruleId && row.memberId === ID);

/** IBC equation 18-1 by plain repetition: force P, moment M about the ground, lateral bearing s per foot, width b [lb, ft]. */
function depthFt(P: number, M: number, s: number, b: number): number {
  let d = 4;
  for (let i = 0; i < 400; i++) {
    const A = (2.34 * P) / (((s * Math.min(d, 12)) / 3) * b);
    d = (d + 0.5 * A * (1 + Math.sqrt(1 + (4.36 * (M / P)) / A))) / 2;
  }
  return d;
}

describe('a post in the ground', () => {
  it('[pier.bearing] presses with its butt; with a pad under it, the pad less the soil it took the place of', () => {
    expect(under(inGround(), 400).of('pier.bearing').demand!.value).toBeCloseTo(400 / BUTT_FT2, 6);
    const pad = { acrossIn: 24, thickIn: 8 };
    const wide = under(inGround({ pad }), 3000).of('pier.bearing');
    const padFt3 = (Math.PI * 8) / 12;
    expect(wide.demand!.value).toBeCloseTo((3000 + padFt3 * (145 - 100)) / Math.PI, 6);
    expect(wide.capacity!.value).toBe(1500);
  });

  it('[pier.uplift] is held by nothing but concrete that it is keyed into', () => {
    for (const foot of [{}, { backfill: 'concrete' }, { backfill: 'gravel', keyed: true }] as const) {
      const lifted = under(inGround(foot), -200).of('pier.uplift');
      expect([lifted.status, lifted.reason?.code]).toEqual(['fail', 'nothingHoldsDown']);
      expect(under(inGround(foot), 200).of('pier.uplift')).toMatchObject({ status: 'pass', ratio: 0 });
    }
    const keyed = under(inGround({ backfill: 'concrete', keyed: true }), -200).of('pier.uplift');
    expect(keyed.capacity!.value).toBeCloseTo(0.6 * 145 * (Math.PI - BUTT_FT2) * (DEPTH_IN / 12), 6);
    expect(keyed.ratio!).toBeCloseTo(200 / keyed.capacity!.value, 9);
  });

  // A cantilever: bent with V (L) at its point of fixity 18 in down, with V (L - 18 in) at the ground.
  it('[pier.embedded] reads push and moment about the ground off the post, the moment at its fixity where that is more', () => {
    const [V, L] = [300, 90];
    const v = under(inGround(), 2000, V, V * L).of('pier.embedded');
    const b = Math.min(diameterAt(0), diameterAt(DEPTH_IN)) / 12;
    expect(off(v.demand!.value, depthFt(V, (V * L) / 12, SOIL, b))).toBeLessThan(1e-6);
    expect(v.capacity!.value).toBe(DEPTH_IN / 12);
    // free to turn where it is held: the ground gets the push 18 in above that place
    const free = { along: 'pinned', across: 'pinned' } as const;
    const pinned = under(inGround({ fixity: free }), 2000, V).of('pier.embedded');
    expect(off(pinned.demand!.value, depthFt(V, (V * 18) / 12, SOIL, b))).toBeLessThan(1e-6);
  });

  it('[pier.embedded] in concrete presses on the soil with all of its hole; a sawn post with its diagonal', () => {
    const concrete = under(inGround({ backfill: 'concrete' }), 2000, 300, 20_000).of('pier.embedded');
    expect(off(concrete.demand!.value, depthFt(300, 20_000 / 12, SOIL, 2))).toBeLessThan(1e-6);
    const sawn = under(inGround({}, SAWN), 2000, 300, 20_000).of('pier.embedded');
    expect(off(sawn.demand!.value, depthFt(300, 20_000 / 12, SOIL, Math.hypot(8, 6) / 12))).toBeLessThan(1e-6);
  });

  // IBC 1806.3.4, from memory: twice the value where half an inch of movement does no harm, for short loads.
  it('[pier.embedded] presses on the soil with twice its value where that is chosen, wind or an earthquake pushes and no brace does', () => {
    const b = Math.min(diameterAt(0), diameterAt(DEPTH_IN)) / 12;
    const depthIn = (project: Project, caseId: string, lateral: number) => {
      const { context } = lineBench(project);
      const chain = context.frame.mesh.posts[0]!;
      const push = [
        [footIndex(context.frame.layout, chain), 300],
        [chain.firstElement * 6 + 1, -300],
      ] as const;
      const r = handResponse(context, push, { factors: [{ caseId, factor: 0.6 }] });
      const v = verdict(siteOf(pierSites(context), 'pier.embedded', ID), r);
      expect(off(v.demand!.value, depthFt(300, (300 * 18) / 12, lateral, b))).toBeLessThan(1e-6);
      return v.reason?.code;
    };
    const pinned = inGround({ fixity: { along: 'pinned', across: 'pinned' } });
    // nobody says what holds it across, so that nothing reaches the foot that way
    const free: Project = { ...pinned, lateral: { ...pinned.lateral, across: [{ by: null }] } };
    const chosen = (project: Project): Project => ({
      ...project,
      calculation: { ...project.calculation, doubledLateralSoil: true },
    });
    for (const short of ['wind-plus', 'own-wind-up', 'seismic-plus']) {
      expect(depthIn(chosen(free), short, 2 * SOIL)).toBe('doubledSoil');
      expect(depthIn(free, short, SOIL)).toBeUndefined();
    }
    for (const lasting of ['snow', 'roof-live', 'notional-plus', 'own-live-xPlus'])
      expect(depthIn(chosen(free), lasting, SOIL)).toBeUndefined();
    const braced = plainShed().members.filter(({ role }) => role === 'brace');
    expect(braced.length).toBeGreaterThan(0);
    const leaning = { ...free, members: [...free.members, ...braced], groups: groupsWith(free, plainShed()) };
    expect(depthIn(chosen(leaning), 'wind-plus', SOIL)).toBeUndefined();
  });

  /** Groups of one project, and those of another that it has none like. */
  const groupsWith = (one: Project, other: Project): Project['groups'] => [
    ...one.groups,
    ...other.groups.filter((g) => one.groups.every(({ id }) => id !== g.id)),
  ];

  const SAWN: Stock = {
    kind: 'sawn',
    breadthIn: 6,
    depthIn: 8,
    lay: 'edge',
    plies: 1,
    species: 'Western larch',
    grade: 'No. 1',
    use: 'wet',
  };

  // NDS 3.9.2 without buckling, four fifths of the strength left by treatment (NDS 4.3.8, 6.3.5 from memory); snow, CD 1.15
  it('[post.belowGround] adds push and bending at the peak below the ground, with four fifths of the strength', () => {
    const [V, M, N] = [300, 27_000, 4000];
    const v = under(inGround(), N, V, M).of('post.belowGround');
    const c = (DEPTH_IN ** 2 * V) / (4 * (2 * DEPTH_IN * V + 3 * M));
    const z = (c + Math.sqrt(c * c + 4 * DEPTH_IN * c)) / 2;
    const k = (12 * (2 * DEPTH_IN * V + 3 * M)) / DEPTH_IN ** 4;
    const peak = M + V * z - k * (((2 / 3) * (DEPTH_IN + c) * z ** 3) / 6 - z ** 4 / 12);
    const d = diameterAt(DEPTH_IN - z);
    const fc = N / ((Math.PI * d * d) / 4);
    const fb = peak / ((Math.PI * d ** 3) / 32);
    const CD = 1.15;
    expect(v.demand!.value).toBeCloseTo((fc / (0.8 * WOOD.Fc * CD)) ** 2 + fb / (0.8 * WOOD.Fb * CD), 9);
    expect(v.capacity!.value).toBe(1);
  });

  // NDS 3.9.1: ft / Ft' + fb / Fb*
  it('[post.belowGround] adds pull and bending where the wind lifts', () => {
    const v = under(inGround(), -1500, 0, 10_000).of('post.belowGround');
    const d = diameterAt(DEPTH_IN);
    const ft = 1500 / ((Math.PI * d * d) / 4);
    const fb = 10_000 / ((Math.PI * d ** 3) / 32);
    expect(v.demand!.value).toBeCloseTo(ft / (0.8 * WOOD.Ft * 1.15) + fb / (0.8 * WOOD.Fb * 1.15), 9);
  });

  it('[post.belowGround] is outside where a sawn post is said to be used dry', () => {
    const dry = under(inGround({}, { ...SAWN, use: 'dry' }), 2000, 100).of('post.belowGround');
    expect([dry.status, dry.reason?.code]).toEqual(['outside', 'dryInGround']);
    expect(under(inGround({}, SAWN), 2000, 100).of('post.belowGround').ratio).toBeGreaterThan(0);
  });

  it('a typed section in the ground is asked nothing here: its own row says that it is outside', () => {
    const typed: Stock = {
      kind: 'typed',
      name: 'steel',
      FbSIn3Psi: 1e6,
      VallowLb: 9000,
      EIPsiIn4: 1e9,
      heavyPlf: 20,
      lightPlf: 20,
    };
    expect(under(inGround({}, typed), 1000).sites.filter(({ memberId }) => memberId === ID)).toEqual([]);
    const rows = evaluated(inGround({}, typed)).checks.filter(({ memberId }) => memberId === ID);
    expect(rows.find(({ ruleId }) => ruleId === 'post.push')?.status).toBe('outside');
  });
});

describe('what no load decides of a post in the ground', () => {
  const says = (project: Project, ruleId: string) => {
    const row = rowOf(project, ruleId);
    return row && [row.status, row.reason?.code];
  };

  // proof [pier.treatment]: no-equation - posts in the ground are treated for use category 4B (IBC 1807.3.1)
  it('[pier.treatment] is outside without any, not given without its category, and fails below UC4B', () => {
    expect(says(inGround({ treatment: null }), 'pier.treatment')).toEqual(['outside', 'untreatedInSoil']);
    expect(says(inGround({ treatment: ' ' }), 'pier.treatment')).toEqual(['outside', 'untreatedInSoil']);
    expect(says(inGround({ useCategory: 'UC4A' }), 'pier.treatment')).toEqual(['fail', 'treatedTooWeakly']);
    expect(says(inGround(), 'pier.treatment')).toBeUndefined();
    expect(says(inGround({ useCategory: 'UC4C' }), 'pier.treatment')).toBeUndefined();
    const { groups } = inGround();
    const silent = groups.map((g) => {
      if (g.role !== 'post' || g.foot.kind !== 'embedded') return g;
      const { useCategory: _, ...foot } = g.foot;
      return { ...g, foot };
    });
    expect(says({ ...inGround(), groups: silent }, 'pier.treatment')).toEqual(['notGiven', 'useCategoryNotSaid']);
  });

  // proof [pier.backfill]: no-equation - concrete reaches 4 in beyond the post (IBC 1807.3.3, from memory)
  it('[pier.backfill] asks 4 in more than the post of a hole filled with concrete, and room for the pad', () => {
    expect(says(inGround({ holeIn: 13, backfill: 'concrete' }), 'pier.backfill')).toBeUndefined();
    expect(says(inGround({ holeIn: 12.9, backfill: 'concrete' }), 'pier.backfill')).toEqual(['fail', 'holeTooNarrow']);
    expect(says(inGround({ holeIn: 9 }), 'pier.backfill')).toBeUndefined();
    expect(says(inGround({ holeIn: 20, pad: { acrossIn: 24, thickIn: 8 } }), 'pier.backfill')).toEqual([
      'fail',
      'holeTooNarrow',
    ]);
  });

  it('[pier.pad] under a butt reaches no farther than it is thick', () => {
    expect(rowOf(inGround({ pad: { acrossIn: 24, thickIn: 8 } }), 'pier.pad')).toMatchObject({
      status: 'pass',
      ratio: 7.5 / 8,
    });
    expect(says(inGround({ pad: { acrossIn: 24, thickIn: 7 } }), 'pier.pad')).toEqual(['outside', 'padTooWide']);
  });

  it('[pier.frost] counts down to the butt, and to the bottom of its pad', () => {
    const depthOf = (foot: Partial<EmbeddedFoot>) => rowOf(inGround(foot), 'pier.frost')?.capacity?.value;
    expect(depthOf({})).toBe(DEPTH_IN);
    expect(depthOf({ pad: { acrossIn: 24, thickIn: 8 } })).toBe(DEPTH_IN + 8);
  });

  it('no row asks for hardware under a post that stands in the ground', () => {
    const rules = evaluated(inGround())
      .checks.filter(({ memberId }) => memberId === ID)
      .map(({ ruleId }) => ruleId);
    expect(
      rules.filter((rule) => rule.startsWith('post.foot') || rule === 'post.standOff' || rule === 'post.clearance'),
    ).toEqual([]);
    expect(rules).toEqual(expect.arrayContaining(['pier.bearing', 'pier.uplift', 'pier.embedded', 'post.belowGround']));
  });
});
