import { describe, expect, it } from 'vitest';
import { sectionAt } from '../../../../src/engine/checks/section.ts';
import {
  holeAcrossPlane,
  holeInPlane,
  netSection,
  type Bored,
  type Unbored,
} from '../../../../src/engine/checks/wood/bored-section.ts';
import { segmentOf } from '../../../../src/engine/checks/wood/flat-section.ts';
import type { RoundStick, SawnStick } from '../../../../src/engine/geometry/shelter.ts';
import { redoFaults } from '../redo-step.ts';

const off = (got: number | undefined, exact: number): number => Math.abs((got ?? NaN) / exact - 1);
const log: RoundStick = { kind: 'round', logId: 'l', woodId: 'w', profile: [], buttAt: 'start', flatIn: 0 };
const SAWN: SawnStick = {
  kind: 'sawn',
  breadthIn: 4,
  depthIn: 10,
  lay: 'edge',
  plies: 1,
  species: 'Western larch',
  grade: null,
  use: 'wet',
};
const rectangle: Unbored = {
  areaIn2: 40,
  inertiaIn4: (4 * 10 ** 3) / 12,
  centroidIn: 0,
  topIn: 5,
  bottomIn: -5,
};

/** Strips of a section summed: width at each height, upward. */
function summed(radius: number, width: (z: number) => number): { areaIn2: number; modulusIn3: number } {
  const strips = 40_000;
  const dz = (2 * radius) / strips;
  let [A, Q, I, top, bottom] = [0, 0, 0, -Infinity, Infinity];
  for (let i = 0; i < strips; i++) {
    const z = -radius + (i + 0.5) * dz;
    const b = width(z);
    if (b <= 0) continue;
    A += b * dz;
    Q += b * z * dz;
    I += b * z * z * dz;
    top = Math.max(top, z + dz / 2);
    bottom = Math.min(bottom, z - dz / 2);
  }
  const e = Q / A;
  return { areaIn2: A, modulusIn3: (I - A * e * e) / Math.max(top - e, e - bottom) };
}

// NDS 3.1.2 (from memory): what is bored out is projected on the section and taken off it
describe('what holes leave of a section', () => {
  // proof [beam.bending]: closed form - a rectangle with a plumb hole through it is a narrower rectangle
  it('[beam.bending] of a rectangle with a plumb hole through it is that of a rectangle narrower by the hole', () => {
    const net = netSection(rectangle, [holeInPlane(0.5625, 5, -5)]);
    expect(off(net?.areaIn2, 3.4375 * 10)).toBeLessThan(1e-12);
    expect(off(net?.modulusIn3, (3.4375 * 100) / 6)).toBeLessThan(1e-12);
    expect(redoFaults((note) => netSection(rectangle, [holeInPlane(0.5625, 5, -1)], note))).toEqual([]);
  });

  it('[beam.bending] of a rectangle with a level hole in its middle loses b h3 / 12 of its inertia', () => {
    const net = netSection(rectangle, [holeAcrossPlane(1, 4, 0)]);
    expect(off(net?.modulusIn3, (4 * (10 ** 3 - 1)) / 12 / 5)).toBeLessThan(1e-12);
    // beside the middle it takes more
    expect(netSection(rectangle, [holeAcrossPlane(1, 4, 3)])!.modulusIn3).toBeLessThan(net!.modulusIn3);
  });

  it('of a log with holes and flats is never more than its strips summed, and at most 3 % less', () => {
    const R = 4;
    const chord = (z: number): number => 2 * Math.sqrt(Math.max(0, R * R - z * z));
    const segment = segmentOf(2 * R, 0.5);
    const cases: readonly [bored: readonly Bored[], width: (z: number) => number][] = [
      // a lag screw 4 in. deep from below
      [[holeInPlane(0.75, -4, 0)], (z) => chord(z) - (z < 0 ? Math.min(0.75, chord(z)) : 0)],
      // a bolt straight down through it
      [[holeInPlane(0.6875, -4, 4)], (z) => Math.max(0, chord(z) - 0.6875)],
      // a level bolt 1 in. above its middle
      [[holeAcrossPlane(0.6875, chord(1), 1)], (z) => (Math.abs(z - 1) < 0.34375 ? 0 : chord(z))],
      // level flats for plates on both sides
      [
        [1, 2].map(() => ({ areaIn2: segment.areaIn2, offIn: 0, inertiaIn4: segment.alongIn4, widthIn: 0.5 })),
        (z) => Math.min(chord(z), 7),
      ],
    ];
    for (const [bored, width] of cases) {
      const net = sectionAt(log, 2 * R, 0, bored);
      const exact = summed(R, width);
      expect(net.areaIn2).toBeLessThan(exact.areaIn2 * 1.01);
      expect(net.modulusIn3).toBeLessThan(exact.modulusIn3 * 1.001);
      expect(net.modulusIn3).toBeGreaterThan(exact.modulusIn3 * 0.97);
    }
  });

  it('counts the harsher side of a stick that is cut and bored', () => {
    const below = sectionAt(SAWN, 10, 1, [holeInPlane(1, -5, -2)]);
    const above = sectionAt(SAWN, 10, 1, [holeInPlane(1, 5, 2)]);
    expect(off(below.modulusIn3, above.modulusIn3)).toBeLessThan(1e-12);
    expect(below.modulusIn3).toBeLessThan(sectionAt(SAWN, 10, 1).modulusIn3);
  });

  it('[beam.shear] is asked of the width that plumb holes leave', () => {
    const net = sectionAt(SAWN, 10, 0, [holeInPlane(1, 5, -5)]);
    expect(off(net.shearAreaIn2, (2 / 3) * 3 * 10)).toBeLessThan(1e-12);
  });

  it('leaves nothing where holes take all, so that no stress on it is finite', () => {
    expect(sectionAt(SAWN, 10, 0, [holeInPlane(4.5, 5, -5)]).areaIn2).toBe(0);
  });

  it('leaves a section without holes as it is', () => {
    expect(sectionAt(log, 8, 1, []).modulusIn3).toBe(sectionAt(log, 8, 1).modulusIn3);
  });
});
