import { describe, expect, it } from 'vitest';
import { firstOrderOf } from '../../../src/engine/frame/line-frame.ts';
import { footIndex, pushIndex, sectionsOf } from '../../../src/engine/frame/read-response.ts';
import { pushesAcross } from '../../../src/engine/transverse/push-across.ts';
import { pushOnRow, sharesOfLines } from '../../../src/engine/transverse/row-loads.ts';
import { bracedShed } from '../../support/braced-shed.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { COVERING, WEIGHT } from '../../support/plain-shed.ts';
import { acrossBench, framesOf, pushedRow } from './row-bench.ts';

/** A straight pole on 4 in 12, its seat cut 1 in.: the axis lies so far over the level of its seat. */
const POLE = 8;
const COS = 12 / Math.hypot(12, 4);
const evenPoles = { rafterDiametersIn: [POLE, POLE] } as const;

/**
 * A row of two posts on pins, of unlike height, a rafter on pins over both, one brace from the high post to the rafter. It is
 * statically determinate. Moments about the pin of the rafter on the far post, then on the near one:
 *   foot of the far post   uB = HB (hB / tB - 1)
 *   foot of the near post  uA = - (HA + HB hB / tB)
 *   brace, level part      f d = |uA| tA + HA (hA - tA)
 * h up to where the push acts, t to the axis of the rafter, each from the post's own foot, d from that axis down to the brace.
 */
describe('a row whose brace runs to the rafter, by statics', () => {
  const pushes = [-700, -400] as const;
  const below = 12;
  const { members, frame, response } = pushedRow(bracedShed({ ...evenPoles, bracesAt: ['high'] }), pushes, true, below);
  const [near, far] = [members.posts[0]!, members.posts[1]!];
  const brace = members.braces[0]!;
  const [HA, HB] = [-pushes[0], -pushes[1]];
  const [tA, tB] = [near.axisZIn - near.footZIn, far.axisZIn - far.footZIn];
  const [hA, hB] = [tA - below, tB - below];
  const uB = HB * (hB / tB - 1);
  const uA = HA + (HB * hB) / tB;
  const level = (uA * tA + HA * (hA - tA)) / 36;
  const foot = (i: number, part = 0): number => response.values[footIndex(frame.layout, frame.mesh.posts[i]!) + part]!;

  it('lays the axis of the rafter half its depth over its underside, on its slope', () => {
    // bearing of line A at 126 in., cut 1 in. plumb, half the depth over the cosine
    expect(near.axisZIn).toBeCloseTo(126 - 1 + POLE / 2 / COS, 9);
    expect(near.axisZIn - far.axisZIn).toBeCloseTo((120 * 4) / 12, 9);
    const [from, to] = [members.beams[0]!.stations[0]!, members.beams[0]!.stations.at(-1)!];
    expect([from.xIn, to.xIn]).toEqual([-18, 144]);
    expect(from.axisZIn - to.axisZIn).toBeCloseTo((162 * 4) / 12, 9);
  });

  it('takes the pushes at the feet as the levers say', () => {
    expect(foot(1)).toBeCloseTo(-uB, 6);
    expect(foot(0)).toBeCloseTo(uA, 6);
  });

  it('presses its brace by push times height over the arm', () => {
    // from a point 36 in. under the axis over the post to one 30 in. on and 10 in. lower on the axis
    const length = Math.hypot(30, 36 - 10);
    expect(brace.lengthIn).toBeCloseTo(length, 9);
    expect(response.values[pushIndex(frame.layout, 0)]!).toBeCloseTo((level * length) / 30, 4);
  });

  it('stands on a couple of all pushes times their heights over the distance between the posts', () => {
    const turning =
      HA * (near.axisZIn - below) + HB * (far.axisZIn - below) - foot(0) * near.footZIn - foot(1) * far.footZIn;
    expect(foot(0, 1)).toBeCloseTo(turning / 120, 5);
    expect(foot(1, 1)).toBeCloseTo(-turning / 120, 5);
  });

  it('bends the rafter at its brace as the far pin draws on it', () => {
    // the far post hands on what its foot does not take, toward the near one, and bears its foot
    const [drawn, plumb] = [HB + uB, foot(1, 1)];
    const M = plumb * 90 - drawn * 90 * (4 / 12);
    const rafter = frame.mesh.beams[0]!;
    const there = sectionsOf(rafter, frame.layout).find((s) => Math.abs(s.atIn - (30 + 18)) < 1e-6)!;
    expect(Math.abs(response.values[there.moment]!)).toBeCloseTo(Math.abs(M), 3);
  });

  it('bends the far post by its push on the way to its pin', () => {
    const moments = sectionsOf(frame.mesh.posts[1]!, frame.layout).map((s) => Math.abs(response.values[s.moment]!));
    expect(Math.max(...moments)).toBeCloseTo(Math.abs(uB) * hB, 3);
  });
});

describe('a level rafter with a brace at each end', () => {
  // what is alike on both sides stands alike: each foot takes half of the push, each brace its share by the lever t / d
  it('shares the push evenly', () => {
    const level = bracedShed(evenPoles, { risePer12: 0, postDiametersIn: [8, 8], beamDiametersIn: [10, 10] });
    const { members, frame, response } = pushedRow(level, [-500, -500]);
    const [near] = members.posts;
    const t = near!.axisZIn - near!.footZIn;
    for (const chain of frame.mesh.posts) expect(response.values[footIndex(frame.layout, chain)]!).toBeCloseTo(500, 3);
    const F = ((500 * t) / 36) * (Math.hypot(30, 36) / 30);
    expect(Math.abs(response.values[pushIndex(frame.layout, 0)]!)).toBeCloseTo(F, 2);
    expect(response.values[pushIndex(frame.layout, 1)]!).toBeCloseTo(-response.values[pushIndex(frame.layout, 0)]!, 2);
  });

  it('works as a tie log at the level of its axis does, pushed there', () => {
    const measures = { risePer12: 0, beamDiametersIn: [10, 10] } as const;
    const rafter = pushedRow(bracedShed(evenPoles, measures), [-900, -100]);
    const axisZIn = rafter.members.posts[0]!.axisZIn;
    const tiedAt = (zIn: number) =>
      pushedRow(
        tiedShed(
          { downIn: 20, runIn: 30, dropIn: 36, tieDiametersIn: [POLE, POLE] },
          { ...measures, bearing: { line: 0, of: 'beamAxis', zIn } },
        ),
        [-900, -100],
        true,
        20,
      );
    const tie = tiedAt(axisZIn + 20);
    expect(tie.members.beams[0]!.stations[0]!.axisZIn).toBeCloseTo(axisZIn, 9);
    for (const j of [0, 1]) {
      const [ofRafter, ofTie] = [rafter, tie].map(
        ({ response, frame }) => response.values[pushIndex(frame.layout, j)]!,
      );
      expect(ofRafter! / ofTie!).toBeCloseTo(1, 7);
    }
    for (const i of [0, 1]) {
      const [ofRafter, ofTie] = [rafter, tie].map(
        ({ response, frame }) => response.values[footIndex(frame.layout, frame.mesh.posts[i]!)]!,
      );
      expect(ofRafter! / ofTie!).toBeCloseTo(1, 7);
    }
  });
});

describe('a row whose braces run to the rafter, as it stands in its shelter', () => {
  const across = acrossBench(bracedShed());
  const { givens, lines, frames } = across;
  const { context, pushOf } = framesOf(across)[0]!;
  const { layout, mesh, responses } = context.frame;
  const atFeet = (valueAt: (index: number) => number, part: 0 | 1): number =>
    mesh.posts.reduce((sum, post) => sum + valueAt(footIndex(layout, post) + part), 0);

  it('bears the covering over its width, and the braces, whichever work', () => {
    const rafter = givens.shelter.rafters.find((r) => r.id === 'rafter-over-0')!;
    const slopeFt = 162 / COS / 12;
    const braceLb = mesh.braces.reduce(
      (sum, { brace }) => sum + (WEIGHT.heavy * Math.PI * 2.5 ** 2 * brace.lengthIn) / 1728,
      0,
    );
    const deadLb = (COVERING.heavy * rafter.tributaryWidthIn * slopeFt) / 12 + braceLb;
    const alone = responses.filter((r) => r.combination.id === '1');
    expect(alone.length).toBeGreaterThan(1);
    for (const r of alone) {
      // the lines press on the tops besides
      const pressed = atFeet(layout.partOf(r, 'pressed 1'), 1);
      expect(atFeet((i) => firstOrderOf(r).values[i]!, 1) - pressed).toBeCloseTo(deadLb, 4);
    }
  });

  it('hands every push across to the ground, what the wind does on its own rafter in its place', () => {
    const shareOf = sharesOfLines(
      givens.shelter,
      frames.rows.map(({ row }) => row),
    );
    const byLine = new Map(lines.map((l) => [l.members.line.id, l.inertiaLb]));
    const pushes = pushesAcross(givens, [...byLine.keys()], { kind: 'notional', byLine });
    const { row } = frames.rows[0]!;
    // where dead load is made adverse value by value, the feet need not belong to one instant
    const free = responses.filter((r) => !r.held && pushOf(r) && r.combination.dead.weight === 'heavy');
    expect(free.length).toBeGreaterThan(10);
    for (const r of free) {
      const push = pushOf(r)!;
      const { factor } = r.combination.factors.find((f) => f.caseId === push.id)!;
      // as if all of it came to the posts
      const posts = mesh.posts.map((chain) => chain.post);
      const onPosts = pushOnRow(row, pushes, push, shareOf, posts);
      const heightOf = (id: string, toZIn = Infinity): number => {
        const post = posts.find((one) => one.id === id)!;
        return Math.min(toZIn, post.axisZIn) - post.footZIn;
      };
      const [levelLb, turningLbIn] = [
        ...onPosts.atPosts.map((at) => [at.alongLb, heightOf(at.postId, at.zIn)] as const),
        ...onPosts.onPosts.map((on) => [on.alongLbPerIn * heightOf(on.postId), heightOf(on.postId) / 2] as const),
      ].reduce(([sum, turning], [lb, armIn]) => [sum + lb, turning + lb * armIn], [0, 0] as [number, number]);
      expect(atFeet((i) => firstOrderOf(r).values[i]!, 0)).toBeCloseTo(-factor * levelLb, 5);
      // the feet stand level, 120 in. apart: the push alone turns the row about them
      const added = layout.partOf(firstOrderOf(r), push.id);
      expect(added(footIndex(layout, mesh.posts[1]!) + 1)).toBeCloseTo((factor * turningLbIn) / 120, 4);
    }
  });
});
