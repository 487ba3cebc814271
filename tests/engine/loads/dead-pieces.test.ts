import { describe, expect, it } from 'vitest';
import type { LineCase } from '../../../src/engine/loads/cases.ts';
import {
  BEAM_LOG_IN,
  COVERING,
  lineId,
  plainShed,
  POST_LOG_IN,
  WEIGHT,
  type Measures,
} from '../../support/plain-shed.ts';
import { loadBench, type LoadBench } from '../frame/line-bench.ts';

/** Volume of a frustum between two diameters [in3]. */
const frustum = (a: number, b: number, length: number): number => (Math.PI * length * (a * a + a * b + b * b)) / 12;

/** Sum of what a case brings down, with trapezoids over the beam and the posts. */
function downOf(bench: LoadBench, c: LineCase): number {
  const beam = c.onBeam.slice(1).reduce((sum, p, i) => {
    const before = c.onBeam[i]!;
    return sum + ((p.downLbPerIn + before.downLbPerIn) / 2) * (p.xIn - before.xIn);
  }, 0);
  const posts = c.onPosts.reduce((sum, p) => {
    const post = bench.shelter.posts.find(({ id }) => id === p.postId)!;
    return sum + ((p.footDownLbPerIn + p.topDownLbPerIn) / 2) * (post.axisZIn - post.footZIn);
  }, 0);
  const points = c.points.reduce((sum, p) => sum + p.downLb, 0);
  return beam + posts + points + c.onBraces.reduce((sum, b) => sum + b.downLb, 0);
}

const total = (bench: LoadBench, weight: 'heavy' | 'light'): number =>
  bench.loading.loads.dead.reduce((sum, piece) => sum + downOf(bench, piece[weight]), 0);

/**
 * Weight of line A of the plain shed by volume and density: beam, two posts, two braces of 42.4 in. between working
 * points, and its share of the covering by moments about line B.
 */
function byVolume(bench: LoadBench, weight: 'heavy' | 'light', m: Pick<Measures, 'beamDiametersIn'>): number {
  const density = WEIGHT[weight] / 1728;
  const [butt, tip] = m.beamDiametersIn;
  const beamTip = butt - ((butt - tip) * 192) / BEAM_LOG_IN;
  const posts = bench.shelter.posts
    .filter(({ line }) => line === lineId(0))
    .map((p) => {
      // heavy counts the wood up to the axis, as the frame is drawn; light ends at the seat
      const length = (weight === 'heavy' ? p.axisZIn : p.seatZIn) - p.footZIn;
      return frustum(9, 9 - length / POST_LOG_IN, length);
    });
  const braces = bench.shelter.braces
    .filter(({ id }) => id.startsWith('brace-0'))
    .map((b) => frustum(5, 5, b.lengthIn));
  const wood = frustum(butt, beamTip, 192) + [...posts, ...braces].reduce((a, b) => a + b, 0);
  const slope = Math.hypot(1, 4 / 12);
  const covering = (COVERING[weight] * 204 * 162 * slope) / 144;
  // middle of the covering is 81 from the eave, line B 24, line A 144
  return wood * density + (covering * (81 - 24)) / 120;
}

describe('dead load in pieces', () => {
  // Weights run straight between points a foot apart, the area of a cone does not: a fifth of a per cent at most here.
  it.each(['heavy', 'light'] as const)('adds up to volume times density, %s', (weight) => {
    const bench = loadBench(plainShed());
    const hand = byVolume(bench, weight, { beamDiametersIn: [12, 10] });
    expect(Math.abs(total(bench, weight) / hand - 1)).toBeLessThan(0.002);
  });

  it('of a strongly tapered beam too', () => {
    const beamDiametersIn = [16, 9] as const;
    const bench = loadBench(plainShed({ beamDiametersIn }));
    expect(Math.abs(total(bench, 'heavy') / byVolume(bench, 'heavy', { beamDiametersIn }) - 1)).toBeLessThan(0.002);
  });

  it('has one piece for each stretch of beam and one for posts and braces', () => {
    const { loading } = loadBench(plainShed());
    expect(loading.loads.dead.map(({ piece }) => piece)).toEqual([
      'minus~post-0-0',
      'post-0-0~post-0-1',
      'post-0-1~plus',
      'posts',
    ]);
    expect(loading.loads.deadLb).toBeCloseTo(total(loadBench(plainShed()), 'heavy'), 6);
  });

  it('a beam that begins at a splice weighs by its own diameter from its first inch', () => {
    const shed = plainShed({ postXsIn: [0, 72, 144], pierTopsIn: [6, 6, 6], beamEndsIn: [-24, 72, 168], bracesAt: [] });
    const thin = { kind: 'log', logId: 'post-log', fromButtIn: 0, buttAt: 'start' } as const;
    const members = shed.members.map((m) =>
      m.id === 'beam-0-1' && m.role === 'beam' ? { ...m, own: { stock: thin } } : m,
    );
    const { loading } = loadBench({ ...shed, members });
    const second = loading.loads.dead.find(({ piece }) => piece === 'post-0-1~post-0-2')!.heavy.onBeam;
    const perInch = (d: number): number => ((Math.PI / 4) * d * d * WEIGHT.heavy) / 1728;
    expect(second[0]!.downLbPerIn).toBeCloseTo(perInch(9), 9);
    expect(second[second.length - 1]!.downLbPerIn).toBeCloseTo(perInch(9 - 72 / POST_LOG_IN), 9);
  });

  it('a strip typed by the foot lies on the beam from end to end', () => {
    const instead = [
      { what: 'stripHeavyPlf', of: lineId(0), value: 6, why: 'weighed' },
      { what: 'stripLightPlf', of: lineId(0), value: 3, why: 'weighed' },
    ] as const;
    const [plain, strip] = [loadBench(plainShed()), loadBench({ ...plainShed(), instead })];
    expect(total(strip, 'heavy') - total(plain, 'heavy')).toBeCloseTo((6 * 192) / 12, 6);
    expect(total(strip, 'light') - total(plain, 'light')).toBeCloseTo((3 * 192) / 12, 6);
  });

  it('braces may be weighed by the foot instead', () => {
    const instead = [{ what: 'braceWeightPlf', of: null, value: 12, why: 'weighed' }] as const;
    const bench = loadBench({ ...plainShed(), instead });
    const { onBraces } = bench.loading.loads.dead.find(({ piece }) => piece === 'posts')!.light;
    onBraces.forEach(({ braceId, downLb }) => {
      expect(downLb).toBeCloseTo(bench.shelter.braces.find(({ id }) => id === braceId)!.lengthIn, 9);
    });
  });
});
