import { describe, expect, it } from 'vitest';
import { rowSites } from '../../../../src/engine/checks/transverse/row-sites.ts';
import type { LineCheckContext } from '../../../../src/engine/checks/line-context.ts';
import { sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { WEIGHT, WOOD } from '../../../support/plain-shed.ts';
import { tiedShed, type Tied } from '../../../support/tied-shed.ts';
import { acrossBench, framesOf, pushedRow } from '../../transverse/row-bench.ts';
import { handResponse, siteOf, verdict, type Site } from '../sites.ts';

/** An even tie log 8 in. thick over 120 in., no cuts. */
const D = 8;
const AREA = (Math.PI * D * D) / 4;
const MODULUS = (Math.PI * D ** 3) / 32;
const SPAN = 'post-0-0~post-1-0';

function rowOf(project: Project): { readonly context: LineCheckContext; readonly sites: readonly Site[] } {
  const { context } = framesOf(acrossBench(project))[0]!;
  return { context, sites: rowSites(context, new Set(['tie-0'])) };
}
/** Where N, V and M of the tie stand near its middle. */
function middleOf({ frame }: LineCheckContext) {
  const tie = frame.mesh.beams[0]!;
  return sectionsOf(tie, frame.layout).find((s) => s.atIn > 55 && s.atIn < 65)!;
}
const withCut = (change: Partial<Tied>, cut: Partial<Project['cuts'][number]>): Project => ({
  ...tiedShed(change),
  cuts: [
    { id: 'cut', member: 'tie-0', kind: 'dap', centreIn: 20, lengthIn: 4, depthIn: 1, angleDeg: 0, by: 'hand', ...cut },
  ],
});

describe('a tie log between two posts', () => {
  const { context, sites } = rowOf(tiedShed());
  const at = middleOf(context);

  // proof [tie.bending]: closed-form - M / S and the force along it as pull, (Fb / Ft) N / A, as for beams
  it('[tie.bending] adds what bends it and what draws or presses it', () => {
    const site = siteOf(sites, 'tie.bending', 'tie-0', SPAN);
    const v = verdict(
      site,
      handResponse(context, [
        [at.moment, 20_000],
        [at.axial, -3000],
      ]),
    );
    expect(v.demand!.value).toBeCloseTo(20_000 / MODULUS + ((WOOD.Fb / WOOD.Ft) * 3000) / AREA, 6);
    expect(v.capacity!.value).toBeCloseTo(WOOD.Fb * 1.15, 9);
  });

  // proof [tie.shear]: closed-form - 4 V / 3 A of a whole round
  it('[tie.shear] is 4 V / 3 A against Fv CD', () => {
    const v = verdict(siteOf(sites, 'tie.shear', 'tie-0', SPAN), handResponse(context, [[at.shear, 2500]]));
    expect(v.demand!.value).toBeCloseTo((4 * 2500) / (3 * AREA), 9);
    expect(v.capacity!.value).toBeCloseTo(WOOD.Fv * 1.15, 9);
  });

  // proof [tie.push]: closed-form - NDS 3.9-3 with one moment, column of 120 in. on pins, equal-area square, c 0.8
  it('[tie.push] is push with buckling over the whole length and bending together', () => {
    const site = siteOf(sites, 'tie.push', 'tie-0', SPAN);
    const [P, M] = [6000, 15_000];
    const v = verdict(
      site,
      handResponse(context, [
        [at.axial, -P],
        [at.moment, M],
      ]),
    );
    const side = (Math.sqrt(Math.PI) / 2) * D;
    const FcE = (0.822 * WOOD.Emin) / (120 / side) ** 2;
    const star = WOOD.Fc * 1.15;
    const half = (1 + FcE / star) / 1.6;
    const Fc = star * (half - Math.sqrt(half * half - FcE / star / 0.8));
    const fc = P / AREA;
    expect(v.demand!.value).toBeCloseTo((fc / Fc) ** 2 + M / MODULUS / (WOOD.Fb * 1.15 * (1 - fc / FcE)), 9);
    expect(site.applies!(handResponse(context, [[at.axial, 500]]))).toBe(false);
  });

  // proof [tie.slender]: closed-form - 120 in. over 0.886 d
  it('[tie.slender] is its length between posts over the side of the square of equal area', () => {
    const v = verdict(siteOf(sites, 'tie.slender', 'tie-0', SPAN), handResponse(context, []));
    expect(v.demand!.value).toBeCloseTo(120 / ((Math.sqrt(Math.PI) / 2) * D), 9);
    expect(v.capacity!.value).toBe(50);
  });

  // proof [tie.sagLongTerm]: closed-form - 5 w l4 / 384 E I of an even log on two posts, Kcr times, against l / 120
  it('[tie.sagLongTerm] sags under its own weight alone, with creep', () => {
    const project = tiedShed({ bracesAt: [] });
    const { context: bare, sites: asked } = rowOf(project);
    const years = bare.frame.responses.find((r) => r.combination.purpose === 'sagLongTerm')!;
    const v = verdict(siteOf(asked, 'tie.sagLongTerm', 'tie-0', SPAN), years);
    const w = (WEIGHT.heavy / 1728) * AREA;
    const I = (Math.PI * D ** 4) / 64;
    expect(v.demand!.value / ((project.calculation.kcr * 5 * w * 120 ** 4) / (384 * WOOD.E * I))).toBeCloseTo(1, 6);
    expect(v.capacity!.value).toBeCloseTo(1, 9);
  });

  // proof [tie.cuts]: closed-form - d / 6 in the outer thirds on the pressed side, none in the middle third
  it('[tie.cuts] are limited as those of a beam', () => {
    const outer = rowOf(withCut({}, {}));
    const place = middleOf(outer.context);
    const near = sectionsOf(outer.context.frame.mesh.beams[0]!, outer.context.frame.layout).find((s) => s.atIn === 20)!;
    const site = siteOf(outer.sites, 'tie.cuts', 'tie-0', 'cut');
    const v = verdict(site, handResponse(outer.context, [[near.moment, 900]]));
    expect([v.demand!.value, v.capacity!.value]).toEqual([1, D / 6]);
    // what the moment stretches is past the method
    expect(verdict(site, handResponse(outer.context, [[near.moment, -900]])).status).toBe('outside');
    const inner = rowOf(withCut({}, { centreIn: 60 }));
    expect(
      verdict(siteOf(inner.sites, 'tie.cuts', 'tie-0', 'cut'), handResponse(inner.context, [[place.moment, 900]])),
    ).toMatchObject({ status: 'fail', reason: { code: 'cutInMiddleThird' } });
  });

  // proof [tie.endNotch]: closed-form - a cut deeper than a quarter of the log fails (NDS 3.2.3, 4.4.3 from memory)
  it('[tie.endNotch] a cut at its end may be a quarter deep', () => {
    const cut = (depthIn: number) => {
      const { context: end, sites: asked } = rowOf(withCut({}, { centreIn: 3, lengthIn: 4, depthIn }));
      return verdict(
        asked.find((s) => s.ruleId === 'tie.endNotch')!,
        handResponse(end, []),
      );
    };
    expect(cut(2.01)).toMatchObject({ status: 'fail', reason: { code: 'cutTooDeep' } });
    expect(cut(1.9).status).toBe('pass');
  });
});

describe('joints of a tie log', () => {
  const H = 1000;
  const { members, frame, response } = pushedRow(tiedShed({ bracesAt: ['near'] }), [0, -H]);
  const { context } = framesOf(acrossBench(tiedShed({ bracesAt: ['near'] })))[0]!;
  const sites = rowSites({ ...context, frame }, new Set(['tie-0']));
  const [near, far] = [members.posts[0]!, members.posts[1]!];
  const tieZ = members.beams[0]!.stations[0]!.axisZIn;
  const asked = (ruleId: string, postId: string): number =>
    verdict(siteOf(sites, ruleId, 'tie-0', postId), response).demand!.value;
  // pushed toward the near post, the far one turns about its foot and leans on the tie with H h / t
  const thrust = (H * (far.axisZIn - far.footZIn)) / (tieZ - far.footZIn);

  // proof [tie.pressed]: closed-form - the far post on its foot: what presses the tie is its push by the lever H h / t
  it('[tie.pressed] the post that is pushed toward the tie presses it by the lever of its foot', () => {
    expect(asked('tie.pressed', far.id)).toBeCloseTo(thrust, 5);
    expect(asked('tie.pulled', far.id)).toBe(0);
  });

  // proof [tie.pulled]: closed-form - level balance of the tie: push of the far post less the level part of the brace
  it('[tie.pulled] the near end takes what the brace leaves of it', () => {
    const U = thrust;
    const level = (U * (tieZ - near.footZIn)) / 30;
    expect(asked('tie.pulled', near.id)).toBeCloseTo(level - thrust, 4);
    expect(asked('tie.pressed', near.id)).toBe(0);
  });

  // proof [tie.hung]: closed-form - the tie as a beam on two pins under the plumb part of the brace at its run
  it('[tie.hung] both ends hold down what the brace lifts, by the lever rule', () => {
    const level = (thrust * (tieZ - near.footZIn)) / 30;
    const plumb = (level * 30) / 24;
    expect(asked('tie.hung', near.id)).toBeCloseTo((plumb * (120 - 24)) / 120, 4);
    expect(asked('tie.hung', far.id)).toBeCloseTo((plumb * 24) / 120, 4);
  });

  // proof [tie.together]: closed-form - shares of pull or push and of up or down, of 20,000 lb each way, added up
  it('[tie.together] adds what both directions take of the joint at the same time', () => {
    const level = (thrust * (tieZ - near.footZIn)) / 30;
    const plumb = (level * 30) / 24;
    expect(asked('tie.together', near.id)).toBeCloseTo((level - thrust + (plumb * 96) / 120) / 20_000, 8);
    expect(asked('tie.together', far.id)).toBeCloseTo((thrust + (plumb * 24) / 120) / 20_000, 8);
  });

  it('[tie.together] counts the force along a log that runs past its posts once, where it is held less', () => {
    const tied = tiedShed({ bracesAt: ['near'], ends: 'beside' });
    const parts = { pushLb: 20_000, pullLb: 5000, alongLb: 20_000, acrossLb: 20_000 };
    const past: Project = {
      ...tied,
      members: tied.members.map((m) => (m.role === 'tie' ? { ...m, pastFromIn: 12, pastToIn: 12 } : m)),
      joints: {
        ...tied.joints,
        own: tied.members
          .filter((m) => m.role === 'tie')
          .flatMap((m) => [m.fromPost, m.toPost].map((post) => `tiePost/${m.id}/${post}`))
          .map((key) => ({ key, capacity: { kind: 'rated', label: 'bracket, invented', parts, durationIncluded: 1 } })),
      },
    };
    const pushed = pushedRow(past, [0, -H]);
    const through = rowSites({ ...framesOf(acrossBench(past))[0]!.context, frame: pushed.frame }, new Set(['tie-0']));
    const of = (ruleId: string): number =>
      verdict(siteOf(through, ruleId, 'tie-0', pushed.members.posts[1]!.id), pushed.response).demand!.value;
    expect(of('tie.pulled')).toBeGreaterThan(1);
    expect(of('tie.together')).toBeCloseTo(of('tie.pulled') / 5000 + of('tie.hung') / 20_000, 9);
  });
});

describe('a post alone in its row, fixed in the ground across', () => {
  const alone = (): Project => {
    const plain = tiedShed({ at: [] }, { postDiametersIn: [8, 8], bracesAt: [] });
    const apart = plain.members.map((m) => (m.role === 'post' && m.line === 'line-1' ? { ...m, xIn: m.xIn + 9 } : m));
    return {
      ...plain,
      members: apart,
      groups: plain.groups.map((g) =>
        g.role === 'post' ? { ...g, foot: { ...g.foot, fixity: { along: 'pinned', across: 'fixed' } } } : g,
      ),
      lateral: { along: [{ by: 'building', ratedLb: 1e5 }], across: [{ by: 'embeddedPosts' }] },
    };
  };

  // proof [sway.acrossBuckling]: closed-form - pi2 E I / (4 h2) of a cantilever over what presses on it, true section, Emin
  it('[sway.acrossBuckling] sways over at the Euler load of a cantilever', () => {
    const frames = framesOf(acrossBench(alone()));
    expect(frames).toHaveLength(4);
    for (const { context } of frames) {
      const { mesh, responses } = context.frame;
      const chain = mesh.posts[0]!;
      const h = chain.post.axisZIn - chain.post.footZIn;
      const I = (Math.PI * 8 ** 4) / 64;
      const site = siteOf(rowSites(context, new Set()), 'sway.acrossBuckling', context.line.id);
      const pressed = responses.filter((r) => r.combination.swaysAlong && r.combination.id.startsWith('N2'));
      expect(pressed.length).toBeGreaterThan(0);
      for (const r of pressed) {
        const P = -r.values[chain.firstElement * 6]!;
        const euler = (Math.PI ** 2 * WOOD.Emin * I) / (4 * h * h);
        expect(site.capacity(r) / (euler / P)).toBeCloseTo(1, 2);
      }
    }
  });
});

describe('two posts fixed in the ground across, joined by their rafters', () => {
  const fixed = (): Project => {
    const plain = tiedShed({ at: [] }, { postDiametersIn: [8, 8], bracesAt: [] });
    return {
      ...plain,
      groups: plain.groups.map((g) =>
        g.role === 'post' ? { ...g, foot: { ...g.foot, fixity: { along: 'pinned', across: 'fixed' } } } : g,
      ),
      lateral: { along: [{ by: 'building', ratedLb: 1e5 }], across: [{ by: 'embeddedPosts' }] },
    };
  };

  // joined cantilevers sway together: no sooner than the weaker would alone, no later than the stiffer; nothing else buckles
  it('[sway.acrossBuckling] sway between the Euler loads of each as a cantilever, and buckle no sooner', () => {
    const { context } = framesOf(acrossBench(fixed()))[0]!;
    const { mesh, responses } = context.frame;
    const I = (Math.PI * 8 ** 4) / 64;
    const pressed = responses.filter((r) => r.combination.id.startsWith('N2') && r.combination.swaysAlong);
    expect(pressed.length).toBeGreaterThan(0);
    for (const r of pressed) {
      const alone = mesh.posts.map((chain) => {
        const h = chain.post.axisZIn - chain.post.footZIn;
        return (Math.PI ** 2 * WOOD.Emin * I) / (4 * h * h) / -r.values[chain.firstElement * 6]!;
      });
      expect(r.buckling!.factor).toBeGreaterThan(Math.min(...alone) * 0.99);
      expect(r.buckling!.factor).toBeLessThan(Math.max(...alone));
      expect(r.buckling!.swayFactor).toBe(r.buckling!.factor);
    }
  });
});
