import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../../src/engine/geometry/beam-shape.ts';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { traitsOf } from '../../../src/engine/project/traits.ts';
import { randomProject } from '../../support/random-project.ts';
import { BEAM_LOG_IN, lineId, PLAIN, plainShed, postId, type Measures } from '../../support/plain-shed.ts';
import { placed } from '../frame/line-bench.ts';

/**
 * Trim height of a post from the bearing down, plane geometry derived here: take off strip, shim, what is left of the
 * beam, cap, pier, stand-off and allowance. The shim is what the beam's top lacks to its highest place.
 */
function trimByHand(m: Measures, xIn: number): number {
  const [from, to] = [m.beamEndsIn[0]!, m.beamEndsIn[1]!];
  const L = to - from;
  const diameter = (x: number): number => {
    const fromButt = m.beamButtAt === 'start' ? x - from : to - x;
    return m.beamDiametersIn[0] - ((m.beamDiametersIn[0] - m.beamDiametersIn[1]) * fromButt) / BEAM_LOG_IN;
  };
  // a parabola through the whole log keeps the square of the share over a part of it
  const crown = (m.crownTo === 'up' ? 1 : m.crownTo === 'down' ? -1 : 0) * m.crownIn * (L / BEAM_LOG_IN) ** 2;
  const bow = (x: number): number => (4 * crown * (x - from) * (to - x)) / L ** 2;
  const top = (x: number): number =>
    bow(x) + (m.set === 'top' ? 0 : m.set === 'axis' ? diameter(x) / 2 - m.topFlatIn : diameter(x) - m.topFlatIn);
  const many = Array.from({ length: 4001 }, (_, i) => top(from + (L * i) / 4000));
  const shim = Math.max(...many) - top(xIn);
  const beam = diameter(xIn) - m.topFlatIn - m.seatIn;
  const below = m.capIn + m.pierTopsIn[m.postXsIn.indexOf(xIn)]! + m.standOffIn + m.allowanceIn;
  return m.bearing.zIn - m.stripIn - shim - beam - below;
}

const measured: Measures = {
  ...PLAIN,
  beamDiametersIn: [13.25, 10.5],
  beamEndsIn: [-30, 186],
  postXsIn: [0, 78, 156],
  pierTopsIn: [7.25, 4.5, 9],
  topFlatIn: 0.375,
  seatIn: 0.875,
  capIn: 0.25,
  allowanceIn: 0.5,
  standOffIn: 1.5,
  bracesAt: [],
};

describe('heights of posts and beams', () => {
  it.each([
    ['top', 'start'],
    ['axis', 'start'],
    ['underside', 'start'],
    ['top', 'end'],
    ['axis', 'end'],
    ['underside', 'end'],
  ] as const)('a post is as long as the stack leaves it: %s level, butt at the %s', (set, beamButtAt) => {
    const m = { ...measured, set, beamButtAt };
    const { posts } = placed(plainShed(m));
    m.postXsIn.forEach((x, k) => {
      expect(posts.find(({ id }) => id === postId(0, k))?.lengthIn).toBeCloseTo(trimByHand(m, x), 9);
    });
  });

  // Crown is shimmed on points a foot apart: between two of them the true top is at most 4 c (6 / L)2 higher.
  it.each(['up', 'down', 'side'] as const)('a natural crown to the %s is taken up by shims', (crownTo) => {
    for (const set of ['top', 'axis', 'underside'] as const) {
      const m = { ...measured, set, crownTo, crownIn: 1.25 };
      const { posts } = placed(plainShed(m));
      m.postXsIn.forEach((x, k) => {
        const error = posts.find(({ id }) => id === postId(0, k))!.lengthIn - trimByHand(m, x);
        expect(Math.abs(error)).toBeLessThan(4 * 1.25 * (6 / 216) ** 2);
      });
    }
  });

  it('a top-level beam needs longer posts under its tip, an underside-level one the same everywhere', () => {
    const even = { ...measured, pierTopsIn: [6, 6, 6] };
    const lengths = (set: Measures['set']): number[] =>
      placed(plainShed({ ...even, set }))
        .posts.filter(({ line }) => line === lineId(0))
        .map(({ lengthIn }) => lengthIn);
    const taperBetweenPosts = ((13.25 - 10.5) * 156) / BEAM_LOG_IN;
    const [top, axis, underside] = [lengths('top'), lengths('axis'), lengths('underside')];
    expect(top[2]! - top[0]!).toBeCloseTo(taperBetweenPosts, 9);
    expect(axis[2]! - axis[0]!).toBeCloseTo(taperBetweenPosts / 2, 9);
    expect(underside[2]! - underside[0]!).toBeCloseTo(0, 9);
  });

  it('a top-level beam without crown needs no shims; an axis-level one half its taper, an underside-level one all of it', () => {
    const greatest = (set: Measures['set']): number =>
      Math.max(...placed(plainShed({ ...measured, set })).beams[0]!.stations.map(({ shimIn }) => shimIn));
    const taper = ((13.25 - 10.5) * 216) / BEAM_LOG_IN;
    expect(greatest('top')).toBeCloseTo(0, 9);
    expect(greatest('axis')).toBeCloseTo(taper / 2, 9);
    expect(greatest('underside')).toBeCloseTo(taper, 9);
  });

  it('the stack of foot, post, seat, beam, shim and strip closes on the bearing in random shelters', () => {
    fc.assert(
      fc.property(randomProject(), (project) => {
        for (const [bearing, stack] of stacksOf(project)) expect(Math.abs(stack - bearing)).toBeLessThan(1e-6);
      }),
      { seed: 81, numRuns: 60 },
    );
  });

  it('lines under one slope stand apart by its rise, whichever of them carries the height', () => {
    const three = { lineYsIn: [0, 96, 168], risePer12: 5 };
    const levels = (line: number, zIn: number): number[] =>
      placed(plainShed({ ...three, bearing: { line, of: 'bearing', zIn } })).lines.map((l) => l.bearingZIn);
    expect(levels(0, 150)).toEqual([150, 110, 80]);
    expect(levels(1, 110)).toEqual([150, 110, 80]);
    expect(levels(2, 80)).toEqual([150, 110, 80]);
  });

  it('on a gable both slopes fall from where they meet over the ridge line', () => {
    const project = gable();
    expect(placed(project).lines.map(({ id, bearingZIn }) => [id, bearingZIn])).toEqual([
      [lineId(0), 118],
      [lineId(1), 150],
      [lineId(2), 126],
    ]);
  });

  it.each(['beamAxis', 'underside'] as const)('a height of the %s is met at the first post', (of) => {
    for (const set of ['top', 'axis', 'underside'] as const) {
      const m: Measures = { ...measured, set, bearing: { line: 0, of, zIn: 119 } };
      const beam = placed(plainShed(m)).beams.find(({ line }) => line === lineId(0))!;
      const z = between(beam.stations, 0, (s) => (of === 'beamAxis' ? s.axisZIn : s.undersideZIn));
      expect(z).toBeCloseTo(119, 9);
    }
  });

  it('a height of the beam axis moves the bearing up by half the beam and the strip on a level-top line', () => {
    const m: Measures = { ...measured, bearing: { line: 0, of: 'beamAxis', zIn: 119 } };
    const diameterAtFirstPost = 13.25 - ((13.25 - 10.5) * 30) / BEAM_LOG_IN;
    const { lines } = placed(plainShed(m));
    expect(lines[0]!.bearingZIn).toBeCloseTo(119 + diameterAtFirstPost / 2 - 0.375 + 1.5, 9);
  });
});

/** Bearing of every post's line, and the sum of everything from the ground of the post's wood up to it. */
function stacksOf(project: Project): [bearing: number, stack: number][] {
  const { shelter } = placeShelter(project);
  return shelter.posts.map((post) => {
    const line = shelter.lines.find(({ id }) => id === post.line)!;
    // at a splice of unequal logs the lower one rests; the other is packed up
    const over = post.seats
      .map((seat) => shelter.beams.find(({ id }) => id === seat.beamId)!)
      .map(({ stations }) => ({
        top: between(stations, post.xIn, (s) => s.topZIn),
        under: between(stations, post.xIn, (s) => s.undersideZIn),
        shim: between(stations, post.xIn, (s) => s.shimIn),
      }))
      .reduce((a, b) => (b.under < a.under ? b : a));
    const member = project.members.find(({ id }) => id === post.id);
    if (member?.role !== 'post') throw new Error(`${post.id} is no post`);
    const { capIn, allowanceIn } = traitsOf(project, member);
    const foot = post.woodFromZIn + post.lengthIn + allowanceIn + capIn;
    return [
      line.bearingZIn,
      foot - post.seats[0]!.depthIn + (over.top - over.under) + over.shim + line.stripThicknessIn,
    ];
  });
}

/** Two slopes of 4 and 3 in 12 that fall from the line in the middle. */
function gable(): Project {
  const shed = plainShed({ lineYsIn: [0, 96, 192], bearing: { line: 1, of: 'bearing', zIn: 150 } });
  const plane = { ...shed.roofPlanes[0]!, highOverhangIn: 0 };
  return {
    ...shed,
    roofPlanes: [
      { ...plane, id: 'back', onLines: [lineId(1), lineId(0)], risePer12: 4 },
      { ...plane, id: 'plane', onLines: [lineId(1), lineId(2)], risePer12: 3 },
    ],
  };
}
