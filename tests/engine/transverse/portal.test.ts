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

  it('balances every push in both working sets: level, plumb and turning', () => {
    for (const pullGiven of [true, false]) {
      const { members, frame, response } = pushedRow(tiedShed(), [300, -900], pullGiven);
      const sums = frame.mesh.posts.reduce(
        (sum, chain) => {
          const foot = footIndex(frame.layout, chain);
          const [u, w] = [response.values[foot]!, response.values[foot + 1]!];
          const { xIn, footZIn } = chain.post;
          return { u: sum.u + u, w: sum.w + w, turn: sum.turn + w * xIn - u * footZIn };
        },
        { u: 0, w: 0, turn: 0 },
      );
      const turn = members.posts.reduce((sum, p, i) => sum - [300, -900][i]! * p.axisZIn, 0);
      expect(sums.u).toBeCloseTo(600, 6);
      expect(sums.w).toBeCloseTo(0, 6);
      expect(sums.turn).toBeCloseTo(-turn, 4);
    }
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
