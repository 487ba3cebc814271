import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  angleToGrainDeg,
  edgeBeside,
  stretchIn,
  type ShankLine,
  type StickShape,
} from '../../../../src/engine/checks/fasteners/round-geometry.ts';
import { cross, dot, lengthOf, plus, unit, type Vector } from '../../../../src/engine/checks/fasteners/space.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const vector = fc
  .tuple(number(-1, 1), number(-1, 1), number(-1, 1))
  .filter((v) => Math.hypot(...v) > 0.2)
  .map(unit);

const log = (diameterIn: number, flatIn = 0): StickShape => ({
  axisAt: [0, 0, 0],
  axis: [1, 0, 0],
  diameterIn,
  faces: flatIn > 0 ? [{ at: [0, 0, diameterIn / 2 - flatIn], outward: [0, 0, 1] }] : [],
});
const down = (acrossIn: number): ShankLine => ({ at: [0, acrossIn, 0], into: [0, 0, -1] });

describe('a line through a stick', () => {
  // a chord at a distance e from the middle of a circle is 2 sqrt(r^2 - e^2) long
  it('square to a log it is a chord of the circle', () => {
    fc.assert(
      fc.property(number(3, 16), number(-0.99, 0.99), (d, share) => {
        const e = (share * d) / 2;
        const stretch = stretchIn(log(d), down(e))!;
        expect(stretch.toIn - stretch.fromIn).toBeCloseTo(2 * Math.sqrt((d / 2) ** 2 - e * e), 8);
        expect(stretch.fromIn).toBeCloseTo(-stretch.toIn, 8);
      }),
      { seed: 61 },
    );
  });

  // the section of a cylinder along a slanted line is an ellipse: the diameter over the sine of the slant
  it('slanted in the plane of the axis it is the diameter over the sine of the slant', () => {
    fc.assert(
      fc.property(number(3, 16), number(10, 90), (d, deg) => {
        const slant = (deg * Math.PI) / 180;
        const line: ShankLine = { at: [0, 0, 0], into: [Math.cos(slant), 0, -Math.sin(slant)] };
        const stretch = stretchIn(log(d), line)!;
        expect(stretch.toIn - stretch.fromIn).toBeCloseTo(d / Math.sin(slant), 8);
        expect(angleToGrainDeg(log(d), line)).toBeCloseTo(deg, 8);
      }),
      { seed: 62 },
    );
  });

  it('a flat takes its depth off, and a line beside the log finds nothing', () => {
    expect(stretchIn(log(8, 1), down(0))).toEqual({ fromIn: -3, toIn: 4 });
    expect(stretchIn(log(8), down(4.01))).toBeNull();
    expect(stretchIn(log(8), down(4))).toBeNull();
  });

  it('a line along the axis has no end of its own; a cut end gives it one', () => {
    const along: ShankLine = { at: [0, 0, 0], into: [1, 0, 0] };
    expect(stretchIn(log(8), along)).toEqual({ fromIn: -Infinity, toIn: Infinity });
    const sawnOff: StickShape = { ...log(8), faces: [{ at: [5, 0, 0], outward: [1, 0, 0] }] };
    expect(stretchIn(sawnOff, along)).toEqual({ fromIn: -Infinity, toIn: 5 });
    expect(angleToGrainDeg(log(8), along)).toBe(0);
  });

  // every point between is nearer to the axis than the radius, and both ends are on the surface
  it('however it lies, both ends are on the bark line and what is between is wood', () => {
    fc.assert(
      fc.property(vector, vector, vector, number(3, 16), number(-0.9, 0.9), (axis, into, aside, d, share) => {
        fc.pre(lengthOf(cross(axis, into)) > 0.05);
        const at: Vector = plus([1, 2, 3], aside, (share * d) / 2);
        const stick: StickShape = { axisAt: [1, 2, 3], axis, diameterIn: d, faces: [] };
        const stretch = stretchIn(stick, { at, into })!;
        const fromAxis = (t: number) => lengthOf(cross(axis, plus(plus(at, into, t), [1, 2, 3], -1)));
        expect(fromAxis(stretch.fromIn)).toBeCloseTo(d / 2, 6);
        expect(fromAxis(stretch.toIn)).toBeCloseTo(d / 2, 6);
        expect(fromAxis((stretch.fromIn + stretch.toIn) / 2)).toBeLessThan(d / 2);
      }),
      { seed: 63 },
    );
  });

  it('moved and turned with its stick it finds the same', () => {
    fc.assert(
      fc.property(vector, vector, number(3, 12), number(0.1, 1), number(-1, 1), (u, v, d, flat, acrossIn) => {
        fc.pre(lengthOf(cross(u, v)) > 0.2);
        // a right-handed set of directions: x along u, z out of the plane of u and v
        const z = unit(cross(u, v));
        const y = cross(z, u);
        const turn = (p: Vector): Vector => plus(plus(plus([0, 0, 0], u, p[0]), y, p[1]), z, p[2]);
        const moved = (p: Vector): Vector => plus(turn(p), [7, -3, 11]);
        const plain = log(d, flat);
        const placed: StickShape = {
          ...plain,
          axisAt: moved(plain.axisAt),
          axis: turn(plain.axis),
          faces: plain.faces.map(({ at, outward }) => ({ at: moved(at), outward: turn(outward) })),
        };
        const line: ShankLine = { at: [0.3, acrossIn, 0], into: unit([0.2, 0.3, -1]) };
        const before = stretchIn(plain, line)!;
        const after = stretchIn(placed, { at: moved(line.at), into: turn(line.into) })!;
        expect(after.fromIn).toBeCloseTo(before.fromIn, 8);
        expect(after.toIn).toBeCloseTo(before.toIn, 8);
        expect(dot(turn([1, 0, 0]), turn([0, 1, 0]))).toBeCloseTo(0, 12);
      }),
      { seed: 64 },
    );
  });

  /*
   * The cope of a brace: its generator at the angle t round it meets the log at
   * Z = (sqrt(R^2 - (r sin t)^2) - r cos t cos phi) / sin phi from the crossing of the axes, the curve of pipe templates
   * (common practice of pipe fitters and log builders), derived from the two cylinders.
   */
  it('a generator of a brace meets the log where the template of the cope says', () => {
    const [r, R] = [3, 4.5];
    for (const phiDeg of [30, 45, 60, 90]) {
      const phi = (phiDeg * Math.PI) / 180;
      const axis: Vector = [Math.cos(phi), 0, Math.sin(phi)];
      const outward: Vector = [-Math.sin(phi), 0, Math.cos(phi)];
      for (let station = 0; station < 16; station += 1) {
        const t = (station * Math.PI) / 8;
        const at = plus(plus([0, 0, 0], outward, r * Math.cos(t)), [0, 1, 0], r * Math.sin(t));
        const Z = (Math.sqrt(R * R - (r * Math.sin(t)) ** 2) - r * Math.cos(t) * Math.cos(phi)) / Math.sin(phi);
        expect(stretchIn(log(2 * R), { at, into: axis })!.toIn).toBeCloseTo(Z, 9);
      }
    }
  });
});

describe('wood beside a fastener', () => {
  // half the width of a flat cut h deep into a circle: sqrt(2 r h - h^2); 8 in. and 1 in. give 5.29 in. across
  it('on a flat is half the width of the flat, and less off its middle', () => {
    expect(2 * edgeBeside(log(8, 1), down(0), -3)!).toBeCloseTo(5.29, 2);
    expect(edgeBeside(log(8, 1), down(1), -3)).toBeCloseTo(Math.sqrt(7) - 1, 9);
  });

  it('is the chord at that depth, widest half way through and nothing where a round surface is entered', () => {
    expect(edgeBeside(log(8), down(0), 0)).toBeCloseTo(4, 9);
    expect(edgeBeside(log(8), down(0), 2)).toBeCloseTo(Math.sqrt(12), 9);
    expect(edgeBeside(log(8), down(0), 4)).toBe(0);
  });

  it('a fastener along the grain has no such side', () => {
    expect(edgeBeside(log(8), { at: [0, 0, 0], into: [1, 0, 0] }, 1)).toBeNull();
  });

  it('a log without a diameter is refused by a throw', () => {
    expect(() => stretchIn(log(0), down(0))).toThrow(MisuseError);
  });
});
