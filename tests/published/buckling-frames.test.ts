import { describe, expect, it } from 'vitest';
import { FINE, rootBetween, SHIPPED, Sketch } from '../engine/solver/buckling-frames.ts';

/**
 * Closed forms of frames that sway, derived from the column's own equation with k = sqrt(P / EI). Sticks shorten and
 * stretch so little that it does not count, as the closed forms have it.
 */
const H = 100;
const SPAN = 150;
const EI = 2e8;
const RIGID = 1e4 * EI;
const meshes = [
  { pieces: SHIPPED, within: 0.005 },
  { pieces: FINE, within: 0.001 },
];
const off = (value: number, expected: number): number => Math.abs(value / expected - 1);
const pushOf = (kH: number): number => EI * (kH / H) ** 2;

/** Two posts under one pound each, and a beam that both hold fast. */
const portal = (pieces: number, beam: number, footFixed: boolean): Sketch =>
  new Sketch(pieces)
    .joint('a', { u: 0, w: 0 })
    .joint('A', { u: 0, w: H })
    .joint('b', { u: SPAN, w: 0 })
    .joint('B', { u: SPAN, w: H })
    .stick('a', 'A', EI, 1)
    .stick('b', 'B', EI, 1)
    .stick('A', 'B', beam)
    .hold('a', true, true, footFixed)
    .hold('b', true, true, footFixed);

/** Two posts on pins, hinged under the beam, with a brace to each from `upper` below the top. */
function braced(pieces: number, upper: number, beam: number, EA: number): Sketch {
  const sketch = new Sketch(pieces);
  for (const [name, u, inward] of [
    ['a', 0, 1],
    ['b', SPAN, -1],
  ] as const) {
    sketch
      .joint(`${name}.foot`, { u, w: 0 })
      .joint(`${name}.knee`, { u, w: H - upper })
      .joint(`${name}.beam`, { u, w: H })
      .joint(`${name}.top`, { u, w: H }, `${name}.beam`)
      .joint(`${name}.brace`, { u: u + inward * upper, w: H })
      .stick(`${name}.foot`, `${name}.knee`, EI, 1)
      .stick(`${name}.knee`, `${name}.top`, EI, 1)
      .stick(`${name}.beam`, `${name}.brace`, beam)
      .bar(`${name}.knee`, `${name}.brace`, EA)
      .hold(`${name}.foot`, true, true);
  }
  return sketch.stick('a.brace', 'b.brace', beam);
}

describe('buckling of frames that sway', () => {
  // pinned feet, beam bent in an S: it holds each post's top with 6 EIb / L. The post is a sine from its foot, so its top
  // turns by theta = A k cos kH while P A sin kH = 6 EIb / L * theta: kH tan kH = 6 (EIb / L) / (EI / H)
  // proof [frame.buckling]: closed-form - portals and braced posts on pins and fixed feet, within 0.5 % at the shipped mesh
  it.each([0.2, 1, 5])('[frame.buckling] matches the portal on pins, beam over post stiffness %s', (g) => {
    const kH = rootBetween(1e-6, Math.PI / 2 - 1e-9, (x) => x * Math.tan(x) - (6 * g * H) / SPAN);
    for (const { pieces, within } of meshes)
      expect(off(portal(pieces, g * EI, false).factor(), pushOf(kH))).toBeLessThan(within);
  });

  // fixed feet: of slope and moment at the top, with the foot clamped and no shear, kH / tan kH = -6 (EIb / L) / (EI / H)
  it.each([0.2, 1, 5])('[frame.buckling] matches the portal on clamped feet, beam over post stiffness %s', (g) => {
    const kH = rootBetween(Math.PI / 2 + 1e-9, Math.PI - 1e-9, (x) => x / Math.tan(x) + (6 * g * H) / SPAN);
    for (const { pieces, within } of meshes)
      expect(off(portal(pieces, g * EI, true).factor(), pushOf(kH))).toBeLessThan(within);
  });

  // Beam and braces do not give, so the stretch b above the knee only turns with it: its end moment is
  // EI/b x (kb)^2 / (1 - kb cot kb) times the turn. Below, over a, the sway takes P times the shift as moment at the knee
  // and the knee turns by ka cot ka of the chord: cot ka + cot kb = 1 / kb.
  it.each([10, 30, 50, 70])('[frame.buckling] matches the knee-braced bent on pins, brace %s in down the post', (b) => {
    const a = H - b;
    const k = rootBetween(
      1e-6,
      Math.PI / Math.max(a, b) - 1e-9,
      (x) => 1 / Math.tan(x * a) + 1 / Math.tan(x * b) - 1 / (x * b),
    );
    for (const { pieces, within } of meshes)
      expect(off(braced(pieces, b, RIGID, 1e12).factor(), pushOf(k * H))).toBeLessThan(within);
  });

  // a post that leans on another one: the clamped one takes its push times the shift over the height as a level load, and
  // moves by (tan kL - kL) / (k P) per pound of it: kL = r (tan kL - kL) with r, leaning push over own push
  it.each([0.5, 1, 3])('[frame.buckling] matches the post that leans on a clamped one, push %s to 1', (r) => {
    const kL = rootBetween(1e-3, Math.PI / 2 - 1e-9, (x) => r * (Math.tan(x) - x) - x);
    for (const { pieces, within } of meshes) {
      const sketch = new Sketch(pieces)
        .joint('a', { u: 0, w: 0 })
        .joint('A', { u: 0, w: H })
        .joint('b', { u: SPAN, w: 0 })
        .joint('B', { u: SPAN, w: H })
        .stick('a', 'A', EI, 1)
        .stick('b', 'B', RIGID, r)
        .bar('A', 'B', 1e12)
        .hold('a', true, true, true)
        .hold('b', true, true);
      expect(off(sketch.factor(), pushOf(kL))).toBeLessThan(within);
    }
  });

  it('[frame.buckling] a foot that gives lies between pin and clamp and matches kL tan kL = c L / EI', () => {
    const c = 2e6;
    const kL = rootBetween(1e-6, Math.PI / 2 - 1e-9, (x) => x * Math.tan(x) - (c * H) / EI);
    for (const { pieces, within } of meshes) {
      const sketch = new Sketch(pieces).joint('a', { u: 0, w: 0 }).joint('A', { u: 0, w: H });
      sketch.stick('a', 'A', EI, 1).hold('a', true, true, { lbInPerRad: c });
      expect(off(sketch.factor(), pushOf(kL))).toBeLessThan(within);
    }
  });

  it('posts on pins that nothing holds buckle under no load at all', () => {
    const modes = new Sketch(SHIPPED)
      .joint('a', { u: 0, w: 0 })
      .joint('A', { u: 0, w: H })
      .stick('a', 'A', EI, 1)
      .hold('a', true, true)
      .modes(3);
    expect(modes.map(({ factor }) => factor)).toEqual([0]);
  });
});
