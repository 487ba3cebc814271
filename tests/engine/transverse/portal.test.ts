import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { footIndex, pushIndex, sectionsOf } from '../../../src/engine/frame/read-response.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { pushedRow } from './row-bench.ts';

/**
 * A row of two posts on pins, of unlike height, a tie log on pins between them, one brace from the near post to the tie. It is
 * statically determinate. Moments about the pin of the tie on the far post, then on the near one:
 *   foot of the far post   uB = HB (hB / tB - 1)
 *   foot of the near post  uA = - (HA + HB hB / tB)
 *   brace, level part      f d = |uA| tA + HA (hA - tA)
 * h to the top, t to the tie, each from the post's own foot, d from the tie down to the brace.
 */
const oneBrace = (): Project => tiedShed({ bracesAt: ['near'], runIn: 24, dropIn: 30 });

describe('a row across with one brace, by statics', () => {
  const pushes = [-700, -400] as const;
  const { members, frame, response } = pushedRow(oneBrace(), pushes);
  const [near, far] = [members.posts[0]!, members.posts[1]!];
  const tieZ = members.beams[0]!.stations[0]!.axisZIn;
  const [HA, HB] = [-pushes[0], -pushes[1]];
  const [hA, hB] = [near.axisZIn - near.footZIn, far.axisZIn - far.footZIn];
  const [tA, tB] = [tieZ - near.footZIn, tieZ - far.footZIn];
  const foot = (i: number, part = 0): number => response.values[footIndex(frame.layout, frame.mesh.posts[i]!) + part]!;

  it('takes the pushes at the feet as the levers of the tie say', () => {
    expect(hA).toBeGreaterThan(hB + 20);
    expect(foot(1)).toBeCloseTo(-HB * (hB / tB - 1), 6);
    expect(foot(0)).toBeCloseTo(HA + (HB * hB) / tB, 6);
  });

  it('presses its brace by push times height over the arm', () => {
    const U = HA + (HB * hB) / tB;
    const level = (U * tA + HA * (hA - tA)) / 30;
    const F = (level * Math.hypot(24, 30)) / 24;
    expect(response.values[pushIndex(frame.layout, 0)]!).toBeCloseTo(F, 5);
  });

  it('stands on a couple of all pushes times their heights over the distance between the posts', () => {
    const turning = HA * near.axisZIn + HB * far.axisZIn - foot(0) * near.footZIn - foot(1) * far.footZIn;
    expect(foot(0, 1)).toBeCloseTo(turning / (far.xIn - near.xIn), 5);
    expect(foot(1, 1)).toBeCloseTo(-turning / (far.xIn - near.xIn), 5);
  });

  it('bends the near post at its brace by the foot push times the height up to there', () => {
    const chain = frame.mesh.posts[0]!;
    const brace = members.braces[0]!;
    const at = sectionsOf(chain, frame.layout).find(
      (s) => Math.abs(s.atIn - (brace.postPoint.zIn - near.woodFromZIn)) < 1e-6,
    )!;
    expect(Math.abs(response.values[at.moment]!)).toBeCloseTo(Math.abs(foot(0)) * (tA - 30), 4);
  });

  it('leaves the far post straight but for its push above the tie: HB times what stands above', () => {
    const chain = frame.mesh.posts[1]!;
    const moments = sectionsOf(chain, frame.layout).map((s) => Math.abs(response.values[s.moment]!));
    expect(Math.max(...moments)).toBeCloseTo(HB * (hB - tB), 4);
  });
});

describe('a row across with a brace at each end', () => {
  // the same figures as a bent along a line: only the pushed brace works
  it('lets go of the pulled brace where no pull is given, and mirrors with the push', () => {
    const right = pushedRow(tiedShed(), [500, 500], false);
    const left = pushedRow(tiedShed(), [-500, -500], false);
    expect(right.response.working).toEqual([false, true]);
    expect(left.response.working).toEqual([true, false]);
    const push = ({ response, frame }: typeof right, j: number): number => response.values[pushIndex(frame.layout, j)]!;
    expect(push(right, 1)).toBeGreaterThan(0);
    expect(push(right, 0)).toBe(0);
  });

  it('balances every push: level, plumb and turning, on random rows in both working sets', () => {
    const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          shed: fc.record({ downIn: real(16, 26), runIn: real(14, 40), dropIn: real(14, 34) }),
          pushes: fc.tuple(real(-2000, 2000), real(-2000, 2000)),
          piers: fc.tuple(real(0, 14), real(0, 14)),
          posts: fc.tuple(real(8, 12), real(6, 8)),
          awayIn: real(96, 150),
          pullGiven: fc.boolean(),
        }),
        ({ shed, pushes, piers, posts, awayIn, pullGiven }) => {
          const project = tiedShed(shed, {
            pierTopsIn: piers,
            postDiametersIn: posts,
            lineYsIn: [0, awayIn],
            bearing: { line: 0, of: 'bearing', zIn: 140 },
          });
          const { members, frame, response } = pushedRow(project, pushes, pullGiven);
          const sums = frame.mesh.posts.reduce(
            (sum, chain, i) => {
              const foot = footIndex(frame.layout, chain);
              const [u, w] = [response.values[foot]!, response.values[foot + 1]!];
              const { xIn, footZIn, axisZIn } = chain.post;
              return {
                level: sum.level + u + pushes[i]!,
                plumb: sum.plumb + w,
                turning: sum.turning + w * xIn - u * footZIn - pushes[i]! * axisZIn,
              };
            },
            { level: 0, plumb: 0, turning: 0 },
          );
          expect(members.posts).toHaveLength(2);
          expect(sums.level).toBeCloseTo(0, 5);
          expect(sums.plumb).toBeCloseTo(0, 5);
          expect(sums.turning).toBeCloseTo(0, 3);
        },
      ),
      { seed: 5, numRuns: 60 },
    );
  });
});

describe('fixed feet across without ties', () => {
  const fixed = (): Project => {
    const plain = tiedShed({ at: [] }, { postDiametersIn: [8, 8] });
    return {
      ...plain,
      groups: plain.groups.map((g) =>
        g.role === 'post' ? { ...g, foot: { ...g.foot, fixity: { along: 'pinned', across: 'fixed' } } } : g,
      ),
      lateral: { ...plain.lateral, across: [{ by: 'embeddedPosts' }] },
    };
  };

  // closed form: cantilevers joined at their tops move alike, so each takes k / sum k of the push, k = 3 E I / h3, and its foot
  // the moment of what it takes
  it('share the push of their row by the stiffness of each as a cantilever', () => {
    const { members, frame, response } = pushedRow(fixed(), [-1000, 0]);
    const h = members.posts.map((p) => p.axisZIn - p.footZIn);
    const k = h.map((height) => 1 / height ** 3);
    frame.mesh.posts.forEach((chain, i) => {
      const foot = footIndex(frame.layout, chain);
      const share = (1000 * k[i]!) / (k[0]! + k[1]!);
      // the rafters between the tops give a little too
      expect(response.values[foot]! / share).toBeCloseTo(1, 2);
      expect(Math.abs(response.values[foot + 2]!)).toBeCloseTo(response.values[foot]! * h[i]!, 2);
    });
  });
});
