import { describe, expect, it } from 'vitest';
import type { Project } from '../../../src/engine/project/model.ts';
import { everythingGivenText, exampleText, soundProject } from '../../support/files.ts';
import { evaluated, off } from './whole.ts';

/**
 * What the ground holds up against what lies on the roof, each put together in its own way: areas times pressures here,
 * reactions of all posts there. Combinations with all dead load heavy; the uplift rule takes every value its own way.
 */
const framed = soundProject(exampleText('firewood-shed'));
const ties = new Set(framed.members.flatMap((m) => (m.role === 'tie' ? [m.id] : [])));
/** Without its frames across, which press one foot of a row down and lift the other by as much. */
const demo: Project = {
  ...framed,
  members: framed.members.filter((m) => m.role !== 'tie' && !(m.role === 'brace' && ties.has(m.to))),
  lateral: { ...framed.lateral, across: [{ by: null }] },
};
/** The level part of the wind is held by both lines alike, so that what they carry adds up. */
const squarely: Project = {
  ...demo,
  roofPlanes: demo.roofPlanes.map((plane) => ({ ...plane, horizontalHeldBy: 'each-square' })),
};
const evaluation = evaluated(squarely);
const PLAN_FT2 = (216 * 144) / 144;

type Post = (typeof evaluation.lines)[number]['posts'][number];
/** Sums over all posts do not depend on the brace model: the first one that was run. */
function reaction(post: Post, combination: string, what: 'verticalLb' | 'alongLb'): number {
  const label = Object.keys(post.byCombination).find((k) => k.startsWith(`${combination}|`));
  if (label === undefined) throw new Error(`no ${combination} at ${post.postId}`);
  return post.byCombination[label]![what];
}

const sumOf = (combination: string, what: 'verticalLb' | 'alongLb'): number =>
  evaluation.lines
    .flatMap((line) => line.posts.map((post) => reaction(post, combination, what)))
    .reduce((sum, v) => sum + v, 0);

const dead = sumOf('1', 'verticalLb');
const added = (combination: string): number => sumOf(combination, 'verticalLb') - dead;

describe('[frame.balance] reactions of all posts of the demo', () => {
  it('hold the balanced snow on its level area', () => {
    expect(off(added('3-snow+snow'), 0.7 * 1.2 * 0.8 * 55 * PLAN_FT2)).toBeLessThan(1e-9);
  });

  it('hold the roof live load, not reduced: 108 square feet to a span and 3 in 12 (ASCE 7-16 4.8.2)', () => {
    expect(off(added('3-roofLive+roof-live'), 20 * PLAN_FT2)).toBeLessThan(1e-9);
  });

  // figure 27.3-4 of ASCE 7-16, one slope, clear flow, 7.5 and 15 degrees
  it.each([
    ['wind-0-A-clear', [-0.6, -1.0], [-0.9, -1.3]],
    ['wind-0-B-clear', [-1.4, 0], [-1.9, 0]],
    ['wind-180-A-clear', [0.9, 1.5], [1.3, 1.6]],
    ['wind-180-B-clear', [1.6, 0.3], [1.8, 0.6]],
  ] as const)('hold %s: six tenths of q G CN, each half of the roof its own', (windCase, at7, at15) => {
    const q = 0.00256 * 2.01 * (15 / 1200) ** (2 / 7) * 0.85 * 100 ** 2;
    const share = ((Math.atan(3 / 12) * 180) / Math.PI - 7.5) / 7.5;
    const coefficients = at7.map((cn, i) => cn + share * (at15[i]! - cn));
    const even = coefficients.reduce((sum, cn) => sum + cn, 0) / 2;
    expect(off(added(`5+${windCase}`), 0.6 * q * 0.85 * even * PLAN_FT2)).toBeLessThan(1e-9);
  });

  it('hold one per cent of the dead load sideways, times its factor', () => {
    const pushing = (caseId: string) =>
      evaluation.loads.combinations.find(
        (c) => c.factors[caseId] !== undefined && c.factors['dead'] === 1 && Object.keys(c.factors).length === 2,
      )!;
    const [plus, minus] = [pushing('notional-plus'), pushing('notional-minus')];
    // feet of a line that sways push h + B (-H - h): h as the line stands held, -H as it stands free, B = 1 / (1 - 1 / lambda)
    // with the lambda of its buckling row. The push to either side gives both h and H.
    const pushed = evaluation.lines.map(({ lineId, posts }) => {
      const { labels, values } = evaluation.checks.find((c) => c.key === `frame.buckling/${lineId}/whole`)!.ratios;
      const [one, two] = [plus, minus].map(({ id }) => ({
        B: 1 / (1 - values[labels.indexOf(`${id}|braces push and pull`)]!),
        feet: posts.reduce((sum, post) => sum + reaction(post, id, 'alongLb'), 0),
      }));
      expect(one!.B).toBeGreaterThan(1);
      // one: h (1 - B) - B H; two: h (1 - B') + B' H
      const [a, b] = [1 - one!.B, 1 - two!.B];
      return (one!.feet * b - two!.feet * a) / (-one!.B * b - two!.B * a);
    });
    // the share of a taper between two stations is a straight line on one side and a curve on the other
    expect(off(pushed[0]! + pushed[1]!, plus.factors['notional-plus']! * 0.01 * dead)).toBeLessThan(1e-4);
  });
});

describe('weights', () => {
  it('of the shelter with everything given rest on its posts: areas, volumes and densities', () => {
    const project = soundProject(everythingGivenText());
    const whole = evaluated(project);
    // western larch: G 0.48; whole tree 60.25 % green; the posts are thin logs and sawn sticks come from such, sapwood 119 %
    const perCubicInch = (moisture: number) => (62.4 * 0.48 * (1 + moisture)) / 1728;
    const [thick, thin] = [perCubicInch(0.6025), perCubicInch(1.19)];
    const plane = whole.shelter.planes[0]!;
    const slope = Math.hypot(1, plane.risePer12 / 12);
    const length = plane.toXIn - plane.fromXIn;
    const layers = project.roofPlanes[0]!.dead;
    const coveringPsf = layers.by === 'parts' ? layers.layers.reduce((sum, l) => sum + l.heavyPsf, 0) : NaN;
    const covering = (coveringPsf * plane.runIn * slope * length) / 144;
    const purlins = whole.shelter.purlins.length * 3.5 * 1.5 * length * thin;
    const rafters = whole.shelter.rafters.length * 2 * 8 * plane.runIn * slope * thin;
    const strips = whole.shelter.lines.reduce((sum, l) => sum + 3.5 * 1.5 * (l.toXIn - l.fromXIn), 0) * thin;
    const cone = (a: number, b: number, L: number) => ((Math.PI * (a * a + a * b + b * b)) / 12) * L;
    const beams = whole.shelter.beams.reduce((sum, b) => {
      const pieces = b.stations.slice(1).map((s, i) => {
        const before = b.stations[i]!;
        return cone(before.diameterIn, s.diameterIn, s.xIn - before.xIn);
      });
      return sum + pieces.reduce((a, v) => a + v, 0);
    }, 0);
    // logs of 10 in. at the butt and 9-1/4 at ten feet, counted up to the beam axis
    const posts = whole.shelter.posts.reduce(
      (sum, p) => sum + cone(10, 10 - (0.75 * p.lengthIn) / 120, p.axisZIn - p.footZIn),
      0,
    );
    const expected = covering + purlins + rafters + strips + beams * thick + posts * thin;
    const resting = whole.lines.flatMap((l) => l.posts.map((p) => reaction(p, '1', 'verticalLb')));
    expect(
      off(
        resting.reduce((a, b) => a + b, 0),
        expected,
      ),
    ).toBeLessThan(1e-3);
  });
});

describe('more snow', () => {
  const worst = (snowPsf: number, ruleId: string): number => {
    const { site } = demo;
    const snowier = { ...demo, site: { ...site, groundSnowPsf: { ...site.groundSnowPsf, value: snowPsf } } };
    const rows = evaluated(snowier).checks.filter((c) => c.ruleId === ruleId);
    return Math.max(...rows.map((c) => c.ratio ?? NaN));
  };

  // from above 20 psf, where rain on snow ends (ASCE 7-16 7.10), no threshold lies between
  it.each(['beam.bending', 'beam.shear', 'beam.seat', 'rafter.bending', 'pier.bearing', 'beam.sag'])(
    '[%s] never lowers the worst ratio',
    (ruleId) => {
      const ratios = [25, 40, 55, 80, 120].map((psf) => worst(psf, ruleId));
      expect(ratios).toEqual([...ratios].sort((a, b) => a - b));
      expect(ratios.at(-1)!).toBeGreaterThan(ratios[0]!);
    },
  );
});
