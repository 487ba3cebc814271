import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatWidth, seatArea } from '../../../src/engine/geometry/seats.ts';
import { BEAM_LOG_IN, plainShed, postId } from '../../support/plain-shed.ts';
import { placed } from '../frame/line-bench.ts';

/** Contact counted by thin strips across the log, clipped to the post's circle. */
function byStrips(widthIn: number, beforeIn: number, beyondIn: number, diameterIn: number): number {
  const R = diameterIn / 2;
  const n = 20_000;
  const step = (beforeIn + beyondIn) / n;
  let area = 0;
  for (let i = 0; i < n; i++) {
    const x = -beforeIn + (i + 0.5) * step;
    if (Math.abs(x) < R) area += Math.min(widthIn, 2 * Math.sqrt(R * R - x * x)) * step;
  }
  return area;
}

describe('the seat of a beam on its post', () => {
  it('a flat is as wide as the chord that it cuts', () => {
    // a chord of a circle of 13: half chord 6, 2.5 from the centre, cut 6.5 - 2.5 = 4 deep (5-12-13 triangle)
    expect(flatWidth(13, 4)).toBeCloseTo(12, 12);
    expect(flatWidth(10, 5)).toBeCloseTo(10, 12);
    expect(flatWidth(10, 0)).toBe(0);
  });

  it('contact is the overlap of the flat with the round post top, as counted by thin strips', () => {
    const size = fc.double({ min: 0.2, max: 14, noNaN: true });
    fc.assert(
      fc.property(size, size, size, fc.double({ min: 5, max: 14, noNaN: true }), (width, before, beyond, post) => {
        const strips = byStrips(width, before, beyond, post);
        expect(Math.abs(seatArea(width, before, beyond, post) / strips - 1)).toBeLessThan(1e-4);
      }),
      { seed: 82, numRuns: 60 },
    );
  });

  it('never passes the end grain of the post nor the flat itself', () => {
    expect(seatArea(30, 30, 30, 8)).toBeCloseTo(Math.PI * 16, 9);
    expect(seatArea(2, 1, 1, 12)).toBeCloseTo(4, 12);
  });

  it('is placed with the diameters of beam and post where they meet', () => {
    const post = placed(plainShed()).posts.find(({ id }) => id === postId(0, 1))!;
    const seat = post.seats[0]!;
    const beamDiameter = 12 - (2 * (144 + 24)) / BEAM_LOG_IN;
    expect(seat.beamDiameterIn).toBeCloseTo(beamDiameter, 9);
    expect(seat.widthIn).toBeCloseTo(2 * Math.sqrt((beamDiameter / 2) ** 2 - (beamDiameter / 2 - 1) ** 2), 9);
    expect(seat.postDiameterIn).toBeCloseTo(9 - post.lengthIn / 160, 9);
    expect(
      seat.areaIn2 / byStrips(seat.widthIn, seat.lengthIn / 2, seat.lengthIn / 2, seat.postDiameterIn),
    ).toBeCloseTo(1, 4);
  });

  it('near the end of the beam ends where the wood ends', () => {
    const seat = placed(plainShed({ beamEndsIn: [-24, 146], seatLengthIn: 8 })).posts[1]!.seats[0]!;
    expect(seat.lengthIn).toBeCloseTo(4 + 2, 12);
    expect(seat.toBeamEndIn).toBe(0);
    expect(seat.areaIn2).toBeLessThan(byStrips(seat.widthIn, 4, 4, seat.postDiameterIn));
  });

  it('takes a contact typed for its beam as typed', () => {
    const shed = plainShed();
    const typed = {
      ...shed,
      instead: [{ what: 'seatAreaIn2', of: 'beam-0-0', value: 21.5, why: 'measured' }],
    } as const;
    const { posts } = placed(typed);
    expect(posts[0]!.seats[0]!.areaIn2).toBe(21.5);
    expect(posts.find(({ line }) => line === 'line-1')!.seats[0]!.areaIn2).not.toBe(21.5);
  });
});
