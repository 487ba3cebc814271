import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RuleId } from '../../../../src/data/rules.ts';
import { effectiveLength } from '../../../../src/engine/checks/post/effective-length.ts';
import { postSites } from '../../../../src/engine/checks/post/post-checks.ts';
import type { LineCheckContext } from '../../../../src/engine/checks/line-context.ts';
import { footIndex, sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import type { Lateral, Project } from '../../../../src/engine/project/model.ts';
import { plainShed, WOOD, type Measures } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse, rowOver, siteOf, thicker, verdict } from '../sites.ts';

const ID = 'post-0-0';
/** Even posts of 8 in.; a building holds the top both ways, so that Ke is 1. */
const held = (measures: Partial<Measures> = {}, by: Lateral['by'] = 'building'): Project => ({
  ...plainShed({ postDiametersIn: [8, 8], ...measures }),
  lateral: { along: [{ by }], across: [{ by }] },
});

const contextOf = (project: Project): LineCheckContext => lineBench(project).context;
/** Sections of the first post at a height above its foot, both faces. */
function at(context: LineCheckContext, heightIn: number) {
  const found = sectionsOf(context.frame.mesh.posts[0]!, context.frame.layout).filter(
    (s) => Math.abs(s.atIn - heightIn) < 1e-6,
  );
  if (found.length === 0) throw new Error(`no station at ${heightIn}`);
  return found;
}
const lengthOf = (context: LineCheckContext): number => context.frame.mesh.posts[0]!.post.lengthIn;
const braceAt = (context: LineCheckContext): number => {
  const { brace } = context.frame.mesh.braces[0]!;
  return brace.postPoint.zIn - context.frame.mesh.posts[0]!.post.woodFromZIn;
};

const area = (d: number): number => (Math.PI * d * d) / 4;
const side = (d: number): number => (d * Math.sqrt(Math.PI)) / 2;
/** NDS 3.7.1 as printed: Euler stress and stability factor of a square of equal area. */
const euler = (le: number, d: number): number => (0.822 * WOOD.Emin) / (le / side(d)) ** 2;
const stability = (FcE: number, star: number, c: number): number => {
  const half = (1 + FcE / star) / (2 * c);
  return half - Math.sqrt(half * half - FcE / star / c);
};

describe('a post that is pushed', () => {
  it('[post.push] even, pinned at both ends: P / A against Fc* CP of its own length', () => {
    const context = contextOf(held());
    const r = handResponse(context, [[at(context, 0)[0]!.axial, -12_000]]);
    const v = verdict(siteOf(postSites(context), 'post.push', ID), r);
    expect(v.demand!.value).toBeCloseTo(12_000 / area(8), 6);
    const FcE = euler(lengthOf(context), 8);
    expect(v.capacity!.value).toBeCloseTo(920 * stability(FcE, 920, 0.8), 6);
  });

  // NDS 3.7.2, one taper, pinned: d = dmin + (dmax - dmin)(0.5 - 0.15 (1 - dmin / dmax)).
  it('[post.push] tapering stands for a cylinder by the printed rule', () => {
    const context = contextOf(held({ postDiametersIn: [10, 7] }));
    const small = 10 - (3 * lengthOf(context)) / 160;
    const d = small + (10 - small) * (0.5 - 0.15 * (1 - small / 10));
    const r = handResponse(context, [[at(context, 0)[0]!.axial, -12_000]]);
    const v = verdict(siteOf(postSites(context), 'post.push', ID), r);
    expect(v.demand!.value).toBeCloseTo(12_000 / area(d), 6);
    expect(v.capacity!.value).toBeCloseTo(920 * stability(euler(lengthOf(context), d), 920, 0.8), 6);
  });

  it('[post.slender] is the same in both directions where the same holds both', () => {
    const context = contextOf(held());
    for (const direction of ['along', 'across']) {
      const v = verdict(siteOf(postSites(context), 'post.slender', ID, direction), handResponse(context, []));
      expect(v.demand!.value).toBeCloseTo(lengthOf(context) / side(8), 9);
    }
  });

  // NDS 3.7.2: P / A at the small end against Fc* without stability.
  it('[post.crushing] asks the thinnest place, and the housing of a brace where that leaves less', () => {
    const context = contextOf(held({ postDiametersIn: [10, 7], braceEnd: { kind: 'coped', depthIn: 0 } }));
    const L = lengthOf(context);
    const top = at(context, L)[0]!;
    const v = verdict(siteOf(postSites(context), 'post.crushing', ID), handResponse(context, [[top.axial, -12_000]]));
    expect(v.demand!.value).toBeCloseTo(12_000 / area(10 - (3 * L) / 160), 4);
    expect(v.capacity!.value).toBeCloseTo(920, 9);
  });

  it('[post.push] its length for buckling follows what the person says holds it', () => {
    const { shelter } = lineBench(plainShed());
    const post = shelter.posts[0]!;
    const clear = post.seatZIn - post.footZIn;
    // NDS Appendix G (from memory): 2.4 pinned foot and guided top, 2.1 fixed foot and free top, 1.0 pinned both ends
    const Ke = {
      kneeBraces: 2.4,
      transverseFrame: 2.4,
      embeddedPosts: 2.1,
      building: 1,
      ratedWalls: 1,
      none: 2.4,
    } as const;
    for (const [by, factor] of Object.entries(Ke)) {
      const project = held({}, by as keyof typeof Ke);
      expect(effectiveLength(project, post, 'along').lengthIn).toBeCloseTo(factor * clear, 9);
    }
    const undecided: Project = { ...plainShed(), lateral: { along: [{ by: null }], across: [] } };
    expect(effectiveLength(undecided, post, 'across').Ke).toBe(2.4);
    const typed: Project = {
      ...plainShed(),
      instead: [{ what: 'effectiveLengthAcrossIn', of: ID, value: 77, why: 'letter' }],
    };
    expect(effectiveLength(typed, post, 'across').lengthIn).toBe(77);
    expect(effectiveLength(typed, post, 'along').lengthIn).toBeCloseTo(2.4 * clear, 9);
  });
});

describe('inches to spare of a column', () => {
  /** P / A over Fc* CP of an even pinned post of diameter d, worked out here. */
  const ratioOf = (P: number, le: number, d: number): number => P / area(d) / (920 * stability(euler(le, d), 920, 0.8));

  it('[post.push] never promise more than there is, nor ask for less than is missing', () => {
    const context = contextOf(held());
    const site = siteOf(postSites(context), 'post.push', ID);
    for (const P of [4000, 12_000, 20_000, 60_000, 150_000]) {
      const row = rowOver(site, [handResponse(context, [[at(context, 0)[0]!.axial, -P]])])!;
      expect(row.ratio!).toBeCloseTo(ratioOf(P, lengthOf(context), 8), 9);
      expect(ratioOf(P, lengthOf(context), 8 - row.spareIn!)).toBeLessThanOrEqual(1 + 1e-9);
    }
  });
});

describe('a post that is pushed and bent', () => {
  const coped = held({ braceEnd: { kind: 'coped', depthIn: 0 } });

  // NDS 3.9.2, equation 3.9-3 with one moment: (fc / Fc')2 + fb / (Fb' (1 - fc / FcE)).
  it('[post.bending] follows the printed sum at the brace foot', () => {
    const context = contextOf(coped);
    const s = at(context, braceAt(context));
    const r = handResponse(context, [
      ...s.map((x) => [x.axial, -8000] as const),
      ...s.map((x) => [x.moment, 25_000] as const),
    ]);
    const v = verdict(siteOf(postSites(context), 'post.bending', ID), r);
    const FcE = euler(lengthOf(context), 8);
    const stress = 8000 / area(8);
    const fb = 25_000 / ((Math.PI * 512) / 32);
    const byHand = (stress / (920 * stability(FcE, 920, 0.8))) ** 2 + fb / (1150 * (1 - stress / FcE));
    expect(v.demand!.value).toBeCloseTo(byHand, 9);
    expect(v.capacity!.value).toBe(1);
  });

  it('[post.bending] a push that alone reaches the Euler stress cannot pass', () => {
    const context = contextOf({
      ...coped,
      instead: [{ what: 'effectiveLengthAlongIn', of: null, value: 340, why: 'test' }],
    });
    const foot = at(context, 0)[0]!;
    const P = euler(340, 8) * area(8) * 1.01;
    const v = verdict(siteOf(postSites(context), 'post.bending', ID), handResponse(context, [[foot.axial, -P]]));
    expect([v.status, v.reason?.code]).toEqual(['outside', 'pushPastEuler']);
  });

  it('[post.bending] wind across adds w z (L - z) / 2 as a vector, and only wind across does', () => {
    const context = contextOf(coped);
    const s = at(context, braceAt(context));
    const moments = s.map((x) => [x.moment, 25_000] as const);
    const sum = (caseId: string): number => {
      const more = { factors: [{ caseId, factor: 0.6 }], durationFactor: 1.6, duration: 'tenMinutes' } as const;
      return verdict(siteOf(postSites(context), 'post.bending', ID), handResponse(context, moments, more)).demand!
        .value;
    };
    const S = (Math.PI * 512) / 32;
    expect(sum('wind-along-plus-A-clear')).toBeCloseTo(25_000 / S / 1600, 9);
    const q = context.site.figures.velocityPressure.value!;
    // ASCE 7-16 Table 29.4-2, frame solid to between 0.1 and 0.3 of its side
    const Cf = (8 / 12) * Math.sqrt(q) <= 2.5 ? 1.3 : 0.9;
    const w = (Math.max(q * 0.85 * Cf, 16) * 8) / 144;
    const { seatZIn, footZIn } = context.frame.mesh.posts[0]!.post;
    const [z, L] = [braceAt(context), seatZIn - footZIn];
    const across = (0.6 * w * z * (L - z)) / 2;
    expect(sum('wind-0-A-clear')).toBeCloseTo(Math.hypot(25_000, across) / S / 1600, 9);
  });

  // NDS 3.9.1: ft / Ft' + fb / Fb*, and (fb - ft) / Fb**.
  it('[post.tension] follows both printed sums under a pull', () => {
    const context = contextOf(coped);
    const s = at(context, braceAt(context));
    const run = (pull: number, moment: number): number => {
      const r = handResponse(context, [
        ...s.map((x) => [x.axial, pull] as const),
        ...s.map((x) => [x.moment, moment] as const),
      ]);
      return verdict(siteOf(postSites(context), 'post.tension', ID), r).demand!.value;
    };
    const S = (Math.PI * 512) / 32;
    expect(run(6000, 10_000)).toBeCloseTo(6000 / area(8) / 632.5 + 10_000 / S / 1150, 9);
  });

  it('[post.tension] wind across adds its moment as a vector while the post is pulled', () => {
    const context = contextOf(coped);
    const s = at(context, braceAt(context));
    const forces = [...s.map((x) => [x.axial, 6000] as const), ...s.map((x) => [x.moment, -25_000] as const)];
    const wind = {
      factors: [{ caseId: 'wind-0-A-clear', factor: 0.6 }],
      durationFactor: 1.6,
      duration: 'tenMinutes',
    } as const;
    const v = verdict(siteOf(postSites(context), 'post.tension', ID), handResponse(context, forces, wind));
    const q = context.site.figures.velocityPressure.value!;
    // ASCE 7-16 Table 29.4-2, frame solid to between 0.1 and 0.3 of its side
    const Cf = (8 / 12) * Math.sqrt(q) <= 2.5 ? 1.3 : 0.9;
    const w = (Math.max(q * 0.85 * Cf, 16) * 8) / 144;
    const { seatZIn, footZIn } = context.frame.mesh.posts[0]!.post;
    const [z, L] = [braceAt(context), seatZIn - footZIn];
    const fb = Math.hypot(25_000, (0.6 * w * z * (L - z)) / 2) / ((Math.PI * 512) / 32);
    expect(v.demand!.value).toBeCloseTo(6000 / area(8) / (550 * 1.6) + fb / (1000 * 1.6), 9);
  });
});

const TWO_AT_ONE_HEIGHT: Partial<Measures> = {
  postXsIn: [0, 72, 144],
  pierTopsIn: [6, 6, 6],
  postDiametersIn: [10, 10],
  set: 'axis',
  bracesAt: [
    [1, 'plus'],
    [1, 'minus'],
  ],
};

describe('a housing for a brace', () => {
  it('[post.bending] counts twice while its own face is stretched, on the net section', () => {
    const run = (moment: number, depthIn: number): number => {
      const context = contextOf(held({ braceEnd: { kind: 'housed', depthIn } }));
      const s = at(context, braceAt(context));
      const r = handResponse(
        context,
        s.map((x) => [x.moment, moment] as const),
      );
      return verdict(siteOf(postSites(context), 'post.bending', ID), r).demand!.value;
    };
    // the first post carries its brace on the +x face, which a moment above zero stretches
    expect(run(20_000, 1) / run(-20_000, 1)).toBeCloseTo(2, 9);
    expect(run(-20_000, 1)).toBeGreaterThan(run(-20_000, 0.5));
  });

  it('[post.bending] two at one height are stretched on one face or the other, whichever way it bends', () => {
    const context = contextOf(held(TWO_AT_ONE_HEIGHT));
    const chain = context.frame.mesh.posts[1]!;
    const z = context.frame.mesh.braces[0]!.brace.postPoint.zIn - chain.post.woodFromZIn;
    const s = sectionsOf(chain, context.frame.layout).filter((x) => Math.abs(x.atIn - z) < 1e-6);
    const run = (moment: number): number =>
      verdict(
        siteOf(postSites(context), 'post.bending', 'post-0-1'),
        handResponse(
          context,
          s.map((x) => [x.moment, moment] as const),
        ),
      ).demand!.value;
    expect(run(20_000)).toBeCloseTo(run(-20_000), 9);
    expect(run(20_000)).toBeGreaterThan((2 * 20_000) / ((Math.PI * 1000) / 32) / 1150);
  });

  // proof [post.housing]: closed-form - the stated limit itself, a sixth of the diameter there
  it('[post.housing] may be a sixth of the post deep; deeper fails before any number', () => {
    const run = (depthIn: number) => {
      const context = contextOf(held({ postDiametersIn: [9, 9], braceEnd: { kind: 'housed', depthIn } }));
      return verdict(siteOf(postSites(context), 'post.housing', ID), handResponse(context, []));
    };
    expect([run(1.5).status, run(1.5).ratio]).toEqual(['pass', 1]);
    expect([run(1.6).status, run(1.6).ratio, run(1.6).reason?.code]).toEqual(['fail', null, 'housingTooDeep']);
  });

  it('[post.housing] two that meet in the middle of the post fail by name, whatever they are asked', () => {
    const context = contextOf(held({ ...TWO_AT_ONE_HEIGHT, braceEnd: { kind: 'housed', depthIn: 4.999 } }));
    const chain = context.frame.mesh.posts[1]!;
    const s = sectionsOf(chain, context.frame.layout)[0]!;
    const reasonIn = (rule: RuleId, axial: number): string | undefined =>
      verdict(siteOf(postSites(context), rule, 'post-0-1'), handResponse(context, [[s.axial, axial]])).reason?.code;
    expect(reasonIn('post.crushing', -100)).toBe('housingThroughPost');
    expect(reasonIn('post.bending', -100)).toBe('housingThroughPost');
    expect(reasonIn('post.tension', 100)).toBe('housingThroughPost');
  });
});

describe('the foot of a post', () => {
  const rated: Project = {
    ...held(),
    joints: {
      defaults: [],
      own: [
        {
          key: `postFoot/${ID}`,
          capacity: {
            kind: 'rated',
            label: 'base, invented',
            parts: { pushLb: null, pullLb: 2000, alongLb: 900, acrossLb: null },
            durationIncluded: 1,
          },
        },
      ],
    },
  };

  // proof [post.foot]: closed-form - lift of the foot against the typed pull
  // proof [post.footAlong]: closed-form - push of the foot along the line against the typed value
  it('[post.foot] [post.footAlong] ask its hardware for the lift and the push along the line', () => {
    const context = contextOf(rated);
    const foot = footIndex(context.frame.layout, context.frame.mesh.posts[0]!);
    const r = handResponse(context, [
      [foot, -450],
      [foot + 1, -1200],
    ]);
    const sites = postSites(context);
    expect(verdict(siteOf(sites, 'post.foot', ID), r)).toMatchObject({ status: 'pass', ratio: 0.6 });
    expect(verdict(siteOf(sites, 'post.footAlong', ID), r)).toMatchObject({ status: 'pass', ratio: 0.5 });
    const pressedDown = handResponse(context, [[foot + 1, 5000]]);
    expect(verdict(siteOf(sites, 'post.foot', ID), pressedDown).demand!.value).toBe(0);
    expect(verdict(siteOf(sites, 'post.foot', 'post-0-1'), r).status).toBe('notGiven');
  });

  // proof [post.footPush]: closed-form - push of the foot against the typed value
  it('[post.footPush] asks the seat under a post that stands off its pier for all that presses it down', () => {
    const seated = (pushLb: number | null, standOffIn: number): Project => ({
      ...rated,
      groups: rated.groups.map((g) =>
        g.role === 'post' && g.foot.kind === 'pier' ? { ...g, foot: { ...g.foot, standOffIn } } : g,
      ),
      joints: {
        defaults: [],
        own: rated.joints.own.map((own) =>
          own.capacity?.kind === 'rated'
            ? { ...own, capacity: { ...own.capacity, parts: { ...own.capacity.parts, pushLb } } }
            : own,
        ),
      },
    });
    const pressed = (project: Project) => {
      const context = contextOf(project);
      const foot = footIndex(context.frame.layout, context.frame.mesh.posts[0]!);
      const sites = postSites(context).filter((site) => site.ruleId === 'post.footPush' && site.memberId === ID);
      return sites.map((site) => verdict(site, handResponse(context, [[foot + 1, 5000]])));
    };
    expect(pressed(seated(10_000, 1))).toMatchObject([{ status: 'pass', ratio: 0.5 }]);
    expect(pressed(seated(4000, 1))).toMatchObject([{ status: 'fail', ratio: 1.25 }]);
    expect(pressed(seated(null, 1))).toMatchObject([{ status: 'notGiven', demand: { value: 5000 } }]);
    expect(pressed(seated(null, 0))).toEqual([]);
  });
});

describe('a thicker post under the very same forces', () => {
  it('[post.push] [post.crushing] [post.bending] [post.tension] [post.endGrain] never has a larger ratio', () => {
    const bench = lineBench(held({ postDiametersIn: [9, 7] }));
    const rules = ['post.push', 'post.crushing', 'post.bending', 'post.tension', 'post.slender'];
    const asked = bench.frame.responses.filter((r) => r.combination.purpose === 'strength');
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1.5, noNaN: true }), fc.nat({ max: asked.length - 1 }), (by, i) => {
        // wind on the post itself grows with it: held here at what it was
        const still = {
          ...bench.context,
          site: {
            ...bench.context.site,
            figures: { ...bench.context.site.figures, velocityPressure: { value: null, unit: 'psf', steps: () => [] } },
          },
        } as const;
        const [thin, thick] = [still, thicker(still, by)].map((c) =>
          postSites(c).filter(({ ruleId }) => rules.includes(ruleId)),
        );
        thin!.forEach((site, k) => {
          expect(verdict(thick![k]!, asked[i]!).ratio!).toBeLessThanOrEqual(verdict(site, asked[i]!).ratio! + 1e-12);
        });
      }),
      { seed: 151, numRuns: 60 },
    );
  });
});
