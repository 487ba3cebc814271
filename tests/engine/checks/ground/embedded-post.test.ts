import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  lateralBearingAtThird,
  lateralTerm,
  requiredEmbedment,
  type EmbeddedPost,
} from '../../../../src/engine/checks/ground/embedded-post.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import { redoFaults } from '../redo-step.ts';

const post: EmbeddedPost = { forceLb: 400, momentLbIn: 400 * 96, lateralPsfPerFt: 150, widthIn: 18, doubled: false };

describe('an embedded post', () => {
  // An engineers' worked thread on the code's equation: P 3000 lb, 150 psf/ft at 6 ft / 3, with the third more that older
  // codes allowed (arithmetic only), b 1 ft: A = 17.6 ft.
  // proof [pier.embedded]: printed - worked term A = 17.6 ft of an engineers' exchange on IBC 1805.7 (now 1807.3)
  it('[pier.embedded] the term A of the equation is 17.6 ft as worked', () => {
    const S1 = lateralBearingAtThird(150, 6, false) * 1.33;
    expect(lateralTerm(3000, S1, 1)).toBeCloseTo(17.6, 1);
  });

  it('[pier.embedded] the depth found satisfies the printed equation with its own soil pressure', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 4000, noNaN: true }),
        fc.double({ min: 6, max: 150, noNaN: true }),
        fc.constantFrom(100, 150, 200, 400),
        fc.double({ min: 8, max: 36, noNaN: true }),
        (forceLb, armIn, lateralPsfPerFt, widthIn) => {
          const d = requiredEmbedment({
            forceLb,
            momentLbIn: forceLb * armIn,
            lateralPsfPerFt,
            widthIn,
            doubled: false,
          });
          const A = (2.34 * forceLb) / (((lateralPsfPerFt * Math.min(d, 12)) / 3) * (widthIn / 12));
          expect(0.5 * A * (1 + Math.sqrt(1 + (4.36 * (armIn / 12)) / A))).toBeCloseTo(d, 8);
        },
      ),
      { seed: 91 },
    );
  });

  it('[pier.embedded] a moment alone is the limit of a small force on a long arm', () => {
    const alone = requiredEmbedment({ ...post, forceLb: 0 });
    expect(requiredEmbedment({ ...post, forceLb: 1e-6 })).toBeCloseTo(alone, 5);
    // d2 = 4.36 x 2.34 M / (4 S1 b) with S1 = 150 d/3 and b 1.5 ft: d3 = 2.5506 M / 75
    const M = (400 * 96) / 12;
    expect(alone).toBeCloseTo(Math.cbrt((2.5506 * M) / 75), 6);
  });

  it('[pier.embedded] lateral bearing grows to 12 ft and no deeper', () => {
    expect(lateralBearingAtThird(150, 12, false)).toBeCloseTo(600, 12);
    expect(lateralBearingAtThird(150, 30, false)).toBeCloseTo(600, 12);
    expect(lateralBearingAtThird(150, 6, true)).toBeCloseTo(600, 12);
  });

  it('[pier.embedded] more force, moment or a thinner post never need less depth; doubled soil never more', () => {
    const d = requiredEmbedment(post);
    expect(requiredEmbedment({ ...post, forceLb: 500 })).toBeGreaterThan(d);
    expect(requiredEmbedment({ ...post, momentLbIn: post.momentLbIn * 1.1 })).toBeGreaterThan(d);
    expect(requiredEmbedment({ ...post, widthIn: 12 })).toBeGreaterThan(d);
    expect(requiredEmbedment({ ...post, doubled: true })).toBeLessThan(d);
    expect(requiredEmbedment({ ...post, forceLb: 0, momentLbIn: 0 })).toBe(0);
  });

  it('refuses what is no post in no ground', () => {
    expect(() => requiredEmbedment({ ...post, forceLb: -1 })).toThrow(MisuseError);
    expect(() => requiredEmbedment({ ...post, momentLbIn: Number.NaN })).toThrow(MisuseError);
    expect(() => requiredEmbedment({ ...post, widthIn: 0 })).toThrow(MisuseError);
    expect(() => requiredEmbedment({ ...post, lateralPsfPerFt: 0 })).toThrow(MisuseError);
    expect(() => lateralBearingAtThird(100, 0, false)).toThrow(MisuseError);
  });

  it('does not change its givens, and each step can be redone by hand', () => {
    const frozen = Object.freeze({ ...post });
    expect(redoFaults((note) => requiredEmbedment(frozen, note))).toEqual([]);
    expect(stepsOf((note) => requiredEmbedment(frozen, note)).steps.map((step) => step.symbol)).toEqual([
      'S1',
      'A',
      'd',
    ]);
    expect(redoFaults((note) => requiredEmbedment({ ...post, doubled: true }, note))).toEqual([]);
  });
});
