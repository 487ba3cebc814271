import { describe, expect, it } from 'vitest';
import { rowSites } from '../../../../src/engine/checks/transverse/row-sites.ts';
import { sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import { meanDiameter } from '../../../../src/engine/geometry/sticks.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { WEIGHT, WOOD } from '../../../support/plain-shed.ts';
import { tiedShed } from '../../../support/tied-shed.ts';
import { acrossBench, framesOf } from '../../transverse/row-bench.ts';
import { evaluated } from '../../whole/whole.ts';
import { redoFaults } from '../redo-step.ts';
import { handResponse, siteOf, verdict } from '../sites.ts';

/** An even tie log 8 in. thick between posts 120 in. apart. */
const [D, L] = [8, 120];
const AREA = (Math.PI * D * D) / 4;
const MODULUS = (Math.PI * D ** 3) / 32;
const SPAN = 'post-0-0~post-1-0';
const BLOWN = { factors: [{ caseId: 'wind-along-plus-A-clear', factor: 0.6 }], durationFactor: 1.6 };

/** So little wind that the least pressure of 16 psf counts (ASCE 7-16 27.1.5, from memory). */
function stillRow(project: Project) {
  const site = { ...project.site, windMph: { ...project.site.windMph, value: 40 } };
  const { context } = framesOf(acrossBench({ ...project, site }))[0]!;
  const tie = context.frame.mesh.beams[0]!;
  const faces = sectionsOf(tie, context.frame.layout);
  const near = (atIn: number) => faces.reduce((a, b) => (Math.abs(b.atIn - atIn) < Math.abs(a.atIn - atIn) ? b : a));
  const asked = (ruleId: string, place: string, forces: Parameters<typeof handResponse>[1] = [], more = BLOWN) => {
    const site0 = siteOf(rowSites(context, new Set(['tie-0'])), ruleId, 'tie-0', place);
    const r = handResponse(context, forces, more);
    return { site: site0, r, verdict: verdict(site0, r) };
  };
  // wind on the tie's own side, and of every brace under it on as much of the tie as holds half of its wind twice
  const braces = context.frame.members.braces.reduce(
    (sum, { stick, lengthIn }) => sum + (stick?.kind === 'round' ? meanDiameter(stick) * lengthIn : NaN),
    0,
  );
  return { context, near, asked, w: (0.6 * 16 * (D + braces / L)) / 144 };
}

describe('a tie log while the shelter is pushed along its lines', () => {
  const row = stillRow(tiedShed());
  const middle = row.near(L / 2);

  // proof [tie.sideways]: closed-form - w L2 / 8 to the side and M down as a vector on a round section, N as pull at Fb / Ft
  it('[tie.sideways] is bent down by what weighs on it and to the side by the wind, as a vector', () => {
    const {
      verdict: v,
      site,
      r,
    } = row.asked('tie.sideways', SPAN, [
      [middle.moment, 3000],
      [middle.axial, 500],
    ]);
    const side = (row.w * middle.atIn * (L - middle.atIn)) / 2;
    const expected = Math.hypot(3000, side) / MODULUS + ((WOOD.Fb / WOOD.Ft) * 500) / AREA;
    expect(v.demand!.value).toBeCloseTo(expected, 6);
    expect(v.capacity!.value).toBeCloseTo(WOOD.Fb * 1.6, 9);
    expect(redoFaults((note) => site.demand(r, note))).toEqual([]);
  });

  // proof [tie.sidewaysShear]: closed-form - V and w L / 2 as a vector, 4 / 3 of it on a round section
  it('[tie.sidewaysShear] adds both shears as a vector', () => {
    const start = row.near(0);
    const { verdict: v, site, r } = row.asked('tie.sidewaysShear', SPAN, [[start.shear, 300]]);
    expect(v.demand!.value).toBeCloseTo((4 * Math.hypot(300, (row.w * L) / 2)) / (3 * AREA), 6);
    expect(redoFaults((note) => site.demand(r, note))).toEqual([]);
  });

  // proof [tie.along]: closed-form - half of an even load on a simple beam
  it('[tie.along] takes half of the wind on the side of the log and its braces at each post', () => {
    for (const post of ['post-0-0', 'post-1-0']) {
      const { verdict: v, site, r } = row.asked('tie.along', post);
      expect(v.demand!.value).toBeCloseTo((row.w * L) / 2, 6);
      expect(v.capacity!.value).toBe(20_000);
      expect(redoFaults((note) => site.demand(r, note))).toEqual([]);
    }
  });

  it('[tie.along] is not given where the joint is rated for no force along', () => {
    const tied = tiedShed();
    const parts = { pushLb: 9000, pullLb: 9000, alongLb: null, acrossLb: 9000 };
    const capacity = { kind: 'rated', label: 'bracket, invented', parts, durationIncluded: 1 } as const;
    const others = tied.joints.defaults.filter(({ kind }) => kind !== 'tiePost');
    const { verdict: v } = stillRow({
      ...tied,
      joints: { defaults: [...others, { kind: 'tiePost', capacity }], own: [] },
    }).asked('tie.along', 'post-0-0');
    expect([v.status, v.reason?.code]).toEqual(['notGiven', 'partNotGiven']);
    expect(v.demand!.value).toBeGreaterThan(0);
  });

  // proof [brace.tieAcross]: closed-form - half of an even load on a simple beam
  it('[brace.tieAcross] takes half the wind on a brace across that lies on flats, where it blows along the lines', () => {
    const tied = tiedShed();
    const flat = { kind: 'flat', depthIn: 0.5 } as const;
    const groups = tied.groups.map((g) => (g.role === 'brace' ? { ...g, ends: { post: flat, top: flat } } : g));
    const { context } = stillRow({ ...tied, groups });
    const { id, lengthIn, stick } = context.frame.members.braces[0]!;
    const half = (0.6 * 16 * lengthIn * (stick?.kind === 'round' ? meanDiameter(stick) : NaN)) / 144 / 2;
    const site = siteOf(rowSites(context, new Set()), 'brace.tieAcross', id, 'top');
    expect(verdict(site, handResponse(context, [], BLOWN)).demand!.value).toBeCloseTo(half, 6);
    const across = { factors: [{ caseId: 'wind-0-A-clear@0+', factor: 0.6 }], durationFactor: 1.6 };
    expect(verdict(site, handResponse(context, [], across)).demand!.value).toBe(0);
  });

  it('asks nothing where nothing pushes along the lines', () => {
    const gravity = { factors: [{ caseId: 'snow', factor: 1 }], durationFactor: 1.15 };
    const { site, r } = row.asked('tie.sideways', SPAN, [], gravity);
    expect(site.applies!(r)).toBe(false);
    expect(row.asked('tie.along', 'post-0-0', [], gravity).verdict.demand!.value).toBe(0);
  });

  it('one per cent of its weight pushes it where nothing else does', () => {
    const notional = { factors: [{ caseId: 'notional-plus', factor: 1 }], durationFactor: 1.6 };
    const found = row.asked('tie.along', 'post-0-0', [], notional).verdict.demand!.value;
    const weightLb = ((AREA * L) / 1728) * WEIGHT.heavy;
    expect(found / ((0.01 * weightLb) / 2)).toBeCloseTo(1, 6);
  });

  it('[tie.sideways] every wind along the lines asks it of a whole shelter, and no wind across does', () => {
    const { checks } = evaluated(tiedShed());
    const labels = checks
      .filter((c) => c.ruleId === 'tie.sideways')
      .map(({ ratios }) => ratios.labels.filter((_, i) => !Number.isNaN(ratios.values[i]!)));
    expect(labels).toHaveLength(2);
    for (const asked of labels) {
      expect(asked.some((label) => label.includes('wind-along-plus'))).toBe(true);
      expect(asked.some((label) => label.includes('notional-minus'))).toBe(true);
      expect(asked.filter((label) => !/wind-along|notional-(plus|minus)/.test(label))).toEqual([]);
    }
  });
});

describe('a tie log that bows', () => {
  const c = 1;
  const bowed = stillRow(tiedShed({ bowIn: c, tieDiametersIn: [D, D] }));
  const calm = { factors: [], durationFactor: 1.15 };
  /** The same moment all along the log: what turns it is M times its curvature, half of it at each end. */
  const M = 6000;
  const even = sectionsOf(bowed.context.frame.mesh.beams[0]!, bowed.context.frame.layout).map(
    ({ moment }) => [moment, M] as const,
  );
  // the log is 200 in. long; what it strays counts in full on the part that is used (own rule)
  const T = (4 * M * c) / L;

  // proof [tie.twist]: closed-form - 16 T / (pi d3) of what the bow turns it, one and a half times
  it('[tie.twist] is sheared by what its bow turns it', () => {
    const { verdict: v } = bowed.asked('tie.twist', SPAN, even, calm);
    expect(v.demand!.value).toBeCloseTo((1.5 * 16 * T) / (Math.PI * D ** 3), 6);
  });

  it('[tie.hung] is held by each of its joints, at half its thickness', () => {
    const { verdict: v } = bowed.asked('tie.hung', 'post-0-0', even, calm);
    expect(v.demand!.value).toBeCloseTo(T / (D / 2), 6);
  });

  // proof [tie.crook]: closed-form - its stray against the limit of piles (D25, from memory)
  it('[tie.crook] is asked how far it strays, and is not given while nobody has looked', () => {
    const { verdict: v } = bowed.asked('tie.crook', '', [], calm);
    expect(v.demand!.value).toBe(c);
    const unseen = tiedShed();
    const logs = unseen.logs.map((log) => (log.id === 'tie-log' ? { ...log, seen: null } : log));
    expect(stillRow({ ...unseen, logs }).asked('tie.crook', '', [], calm).verdict.status).toBe('notGiven');
  });
});
