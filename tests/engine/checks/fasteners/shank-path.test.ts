import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { say } from '../../../../src/data/words/say.ts';
import { lyingAcross, throughBrace, type JointShape } from '../../../../src/engine/checks/fasteners/joint-shapes.ts';
import { drivenInto, shankPath, type ShankPath } from '../../../../src/engine/checks/fasteners/shank-path.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
type Found = Extract<ShankPath, { ok: true }>;

function found({ side, main, line }: JointShape): Found {
  const path = shankPath(side, main, line);
  if (!path.ok) throw new Error(say(path.reason));
  return path;
}
const wordsOf = ({ side, main, line }: JointShape): string => {
  const path = shankPath(side, main, line);
  return path.ok ? 'found' : say(path.reason);
};

const MIDDLE = { alongIn: 0, acrossIn: 0 };
const round = (diameterIn: number, seatIn = 0, topIn = 0) => ({ kind: 'round', diameterIn, seatIn, topIn }) as const;
const log = (diameterIn: number, flatIn = 0) => ({ diameterIn, flatIn });
const deg = (angle: number): number => (angle * Math.PI) / 180;

describe('a fastener through a stick that lies on a log', () => {
  // what is left of each diameter when its flats are off
  it('through the crossing of the axes it finds what the flats leave', () => {
    fc.assert(
      fc.property(number(2, 8), number(4, 14), number(10, 90), number(0, 0.4), (ds, dm, angle, share) => {
        const [seat, top, flat] = [(share * ds) / 2, (share * ds) / 4, (share * dm) / 2];
        const path = found(lyingAcross(round(ds, seat, top), log(dm, flat), angle, MIDDLE));
        expect(path.side.thicknessIn).toBeCloseTo(ds - seat - top, 8);
        expect(path.main.thicknessIn).toBeCloseTo(dm - flat, 8);
        expect(path.gapIn).toBeCloseTo(0, 8);
        expect(path.side.angleToGrainDeg).toBeCloseTo(90, 8);
        expect(path.main.angleToGrainDeg).toBeCloseTo(90, 8);
        // on its own flat: half its width
        expect(path.main.edgeAtFaceIn).toBeCloseTo(Math.sqrt(dm * flat - flat * flat), 6);
        expect(path.side.edgeAtFaceIn).toBeCloseTo(Math.sqrt(ds * seat - seat * seat), 6);
      }),
      { seed: 71 },
    );
  });

  /*
   * Off the crossing by u along the log and v across it: v from the log's axis, |u sin - v cos| from the other one's.
   * Each chord is 2 sqrt(r^2 - e^2); round surfaces leave between them what both have fallen away from their crowns.
   */
  it('off the crossing it finds two shorter chords and the air between', () => {
    fc.assert(
      fc.property(
        number(4, 10),
        number(6, 14),
        number(15, 90),
        number(-0.9, 0.9),
        number(-0.9, 0.9),
        (ds, dm, g, a, b) => {
          const [rs, rm] = [ds / 2, dm / 2];
          const v = a * Math.min(rs, rm);
          const u = (b * rs + v * Math.cos(deg(g))) / Math.sin(deg(g));
          const path = found(lyingAcross(round(ds), log(dm), g, { alongIn: u, acrossIn: v }));
          const [hs, hm] = [Math.sqrt(rs * rs - (b * rs) ** 2), Math.sqrt(rm * rm - v * v)];
          expect(path.side.thicknessIn).toBeCloseTo(2 * hs, 6);
          expect(path.main.thicknessIn).toBeCloseTo(2 * hm, 6);
          expect(path.gapIn).toBeCloseTo(rs - hs + rm - hm, 6);
          expect(path.main.edgeHalfWayIn).toBeCloseTo(rm - Math.abs(v), 6);
          expect(path.side.edgeHalfWayIn).toBeCloseTo(rs - Math.abs(b * rs), 6);
        },
      ),
      { seed: 72 },
    );
  });

  it('through a sawn strip it finds the depth of the strip and the distance to its nearer edge', () => {
    const strip = { kind: 'sawn', widthIn: 3.5, depthIn: 1.5 } as const;
    const path = found(lyingAcross(strip, log(10, 0.5), 90, { alongIn: 0.5, acrossIn: 0 }));
    expect(path.side.thicknessIn).toBeCloseTo(1.5, 9);
    expect(path.side.edgeAtFaceIn).toBeCloseTo(1.25, 9);
    expect(path.main.thicknessIn).toBeCloseTo(9.5, 9);
    expect(path.gapIn).toBeCloseTo(0, 9);
    expect(wordsOf(lyingAcross(strip, log(10, 0.5), 90, { alongIn: 1.8, acrossIn: 0 }))).toContain(
      'stick under its head',
    );
  });

  it('deeper flats never leave more wood, and the edge on the flat never shrinks', () => {
    fc.assert(
      fc.property(number(6, 14), number(0, 2), number(0, 0.9), (dm, flat, more) => {
        const shallow = found(lyingAcross(round(5), log(dm, flat), 90, MIDDLE)).main;
        const deep = found(lyingAcross(round(5), log(dm, flat + more), 90, MIDDLE)).main;
        expect(deep.thicknessIn).toBeLessThanOrEqual(shallow.thicknessIn);
        expect(deep.edgeAtFaceIn!).toBeGreaterThanOrEqual(shallow.edgeAtFaceIn!);
      }),
      { seed: 73 },
    );
  });

  it('beside one of the sticks it is refused, and says which', () => {
    expect(wordsOf(lyingAcross(round(4), log(10), 90, { alongIn: 2.1, acrossIn: 0 }))).toContain(
      'stick under its head',
    );
    expect(wordsOf(lyingAcross(round(12), log(6), 90, { alongIn: 0, acrossIn: 3.1 }))).toContain(
      'stick that is to hold',
    );
  });

  it('flats of half a log and angles of nothing are refused by a throw', () => {
    expect(() => lyingAcross(round(4, 2), log(10), 90, MIDDLE)).toThrow(MisuseError);
    expect(() => lyingAcross(round(4), log(10, 5), 90, MIDDLE)).toThrow(MisuseError);
    expect(() => lyingAcross(round(4), log(10), 0, MIDDLE)).toThrow(MisuseError);
    expect(() => throughBrace({ diameterIn: 5, angleDeg: 0 }, log(9), 10, 90)).toThrow(MisuseError);
    expect(() => throughBrace({ diameterIn: 5, angleDeg: 45 }, log(9), 10, 180)).toThrow(MisuseError);
  });
});

describe('a fastener through the end of a brace', () => {
  /*
   * Square to the log at s along the brace: the brace stands s sin(phi) over the axis and is rb / cos(phi) thick above
   * and below its own axis; the log, or the floor of its housing, ends what would be deeper.
   */
  it('square to the log it finds the slanted thickness of the brace down to the log or its housing', () => {
    fc.assert(
      fc.property(
        number(4, 6),
        number(8, 12),
        number(25, 65),
        number(0, 1.5),
        number(0.3, 1.2),
        (db, dm, phi, h, more) => {
          const face = dm / 2 - h;
          const [sin, cos] = [Math.sin(deg(phi)), Math.cos(deg(phi))];
          const s = (face + more - db / 2 / cos) / sin + db / sin / cos / 2;
          const path = found(throughBrace({ diameterIn: db, angleDeg: phi }, log(dm, h), s, 90));
          const [top, under] = [s * sin + db / 2 / cos, s * sin - db / 2 / cos];
          expect(path.side.thicknessIn).toBeCloseTo(top - Math.max(under, face), 6);
          expect(path.gapIn).toBeCloseTo(Math.max(0, under - face), 6);
          expect(path.main.thicknessIn).toBeCloseTo(dm - h, 6);
          expect(path.side.angleToGrainDeg).toBeCloseTo(90 - phi, 6);
          expect(path.main.angleToGrainDeg).toBeCloseTo(90, 6);
        },
      ),
      { seed: 74 },
    );
  });

  // at 45 degrees, square to the brace: to the log's crown (8 sin 45 - 4.5) / sin 45, half a brace above its axis
  it('square to the brace it meets the grain of the log at the slant that is left', () => {
    const path = found(throughBrace({ diameterIn: 5, angleDeg: 45 }, log(9), 8, 135));
    expect(path.side.angleToGrainDeg).toBeCloseTo(90, 9);
    expect(path.main.angleToGrainDeg).toBeCloseTo(45, 9);
    expect(path.side.thicknessIn).toBeCloseTo(2.5 + 8 - 4.5 * Math.SQRT2, 9);
    expect(path.main.thicknessIn).toBeCloseTo(9 * Math.SQRT2, 9);
    expect(path.gapIn).toBe(0);
  });

  it('set so near the crossing that it finds no brace over the log it is refused', () => {
    expect(wordsOf(throughBrace({ diameterIn: 5, angleDeg: 45 }, log(9), 1, 90))).toContain('stick under its head');
  });
});

describe('how far a fastener goes in', () => {
  const path = found(lyingAcross(round(4, 0.5), log(9, 0.5), 90, MIDDLE));

  // 3.5 in. of the stick under the head, 8.5 in. of the other
  it('is the length less what it passes, washer and gap too', () => {
    expect(drivenInto(path, 8)).toEqual({ ok: true, penetrationIn: 4.5 });
    expect(drivenInto(path, 8, 0.25)).toEqual({ ok: true, penetrationIn: 4.25 });
    const apart = { ...path, gapIn: 0.5 };
    expect(drivenInto(apart, 8)).toEqual({ ok: true, penetrationIn: 4 });
  });

  it('a fastener longer than both sticks is refused with the room there is, one that fits to the surface is not', () => {
    expect(drivenInto(path, 12).ok).toBe(true);
    const long = drivenInto(path, 12.25);
    expect(long.ok ? '' : say(long.reason)).toContain('12 1/4 in long');
    expect(long.ok ? '' : say(long.reason)).toContain('there are 12 in');
  });

  it('a fastener that ends before the second stick is refused with where that begins', () => {
    const short = drivenInto(path, 3.5);
    expect(short.ok ? '' : say(short.reason)).toContain('begins 3 1/2 in from its head');
    expect(() => drivenInto(path, 0)).toThrow(MisuseError);
  });
});
