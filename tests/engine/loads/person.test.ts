import { describe, expect, it } from 'vitest';
import { personAsEvenLoad, personPlaces, personPressure } from '../../../src/engine/loads/person.ts';

/** ASCE 7-16 Table 4.3-1 and 4.4, from memory: 300 lb on a square of 2.5 ft, or the uniform load, whichever is more. */
const P = 300;

describe('a person at work on a roof', () => {
  // Statics: a load P over a length a in the middle of a span L gives P (L / 4 - a / 8); at the end of a cantilever c, P (c - a / 2).
  it('[ASCE 7-16 4.4] bends a span as 300 lb over 30 in. of its middle do', () => {
    const w = personAsEvenLoad('span', 48, 72);
    expect((w * 72 * 72) / 8).toBeCloseTo(P * (72 / 4 - 30 / 8), 9);
  });

  it('[ASCE 7-16 4.4] bends an overhang as 300 lb over its last 30 in. do, or over all of a shorter one', () => {
    expect((personAsEvenLoad('overhang', 48, 40) * 40 * 40) / 2).toBeCloseTo(P * (40 - 15), 9);
    expect((personAsEvenLoad('overhang', 48, 12) * 12 * 12) / 2).toBeCloseTo(P * 6, 9);
  });

  it('stands on a strip narrower than 30 in. in part only', () => {
    expect(personAsEvenLoad('span', 24, 36)).toBeCloseTo(0.8 * personAsEvenLoad('span', 30, 36), 12);
    expect(personAsEvenLoad('span', 90, 36)).toBe(personAsEvenLoad('span', 30, 36));
  });

  it('stands in the middle of each span and at the end of each overhang', () => {
    const segments = [
      { kind: 'overhang', name: 'eave', fromIn: 0, toIn: 20 },
      { kind: 'span', name: 'span', fromIn: 20, toIn: 140 },
      { kind: 'overhang', name: 'top', fromIn: 140, toIn: 190 },
    ] as const;
    const places = personPlaces({ segments, cos: 1 });
    expect(places.map((p) => [p.fromIn, p.toIn])).toEqual([
      [0, 20],
      [65, 95],
      [160, 190],
    ]);
    // the whole weight, on any width
    for (const p of places) expect((personPressure(36, p.levelIn) * 36 * p.levelIn) / 144).toBeCloseTo(P, 9);
  });

  it('is refused on no width or no length', () => {
    expect(() => personAsEvenLoad('span', 0, 36)).toThrow(/widthIn/);
    expect(() => personAsEvenLoad('span', 24, 0)).toThrow(/lengthIn/);
  });
});
