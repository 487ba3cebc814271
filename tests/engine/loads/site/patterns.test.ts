import { describe, expect, it } from 'vitest';
import { alternatePatterns, partialPatterns } from '../../../../src/engine/loads/site/patterns.ts';

const h = 0.5;
const factors = (patterns: readonly { readonly factors: readonly number[] }[]) => patterns.map((one) => one.factors);

describe('partial snow, enumerated by hand', () => {
  it('[ASCE 7 7.5] a single span has none', () => {
    expect(partialPatterns(1)).toEqual([]);
  });

  it('[ASCE 7 7.5] two segments: either one full, the other half; both full is the balanced load', () => {
    expect(factors(partialPatterns(2))).toEqual([
      [1, h],
      [h, 1],
    ]);
  });

  it('[ASCE 7 7.5] three segments: case 3 repeats case 2 and falls out', () => {
    expect(factors(partialPatterns(3))).toEqual([
      [1, h, h],
      [h, h, 1],
      [h, 1, 1],
      [1, 1, h],
    ]);
  });

  it('[ASCE 7 7.5] four segments', () => {
    expect(factors(partialPatterns(4))).toEqual([
      [1, h, h, h],
      [h, h, h, 1],
      [h, 1, 1, 1],
      [1, 1, 1, h],
      [1, 1, h, h],
      [h, 1, 1, h],
      [h, h, 1, 1],
    ]);
  });

  it('from four segments on there are two of case 1, two of case 2 and one per pair, all different', () => {
    for (let n = 4; n <= 12; n++) {
      const patterns = partialPatterns(n);
      expect(patterns).toHaveLength(4 + n - 1);
      expect(new Set(patterns.map((one) => one.id)).size).toBe(patterns.length);
      expect(new Set(patterns.map((one) => one.factors.join())).size).toBe(patterns.length);
    }
  });

  it('mirrored, the set is the same set', () => {
    for (let n = 2; n <= 9; n++) {
      const forwards = factors(partialPatterns(n)).map((one) => one.join());
      const backwards = factors(partialPatterns(n)).map((one) => one.toReversed().join());
      expect(backwards.toSorted()).toEqual(forwards.toSorted());
    }
  });
});

describe('reduced roof live on continuous members, enumerated by hand', () => {
  it('[ASCE 7-16 4.8.1] two and three segments', () => {
    expect(alternatePatterns(1)).toEqual([]);
    expect(factors(alternatePatterns(2))).toEqual([
      [1, 0],
      [0, 1],
    ]);
    expect(factors(alternatePatterns(3))).toEqual([
      [1, 0, 1],
      [0, 1, 0],
      [1, 1, 0],
      [0, 1, 1],
    ]);
  });

  it('[ASCE 7-16 4.8.1] five segments', () => {
    expect(factors(alternatePatterns(5))).toEqual([
      [1, 0, 1, 0, 1],
      [0, 1, 0, 1, 0],
      [1, 1, 0, 0, 0],
      [0, 1, 1, 0, 0],
      [0, 0, 1, 1, 0],
      [0, 0, 0, 1, 1],
    ]);
  });
});

it('refuses half a segment and none', () => {
  for (const segments of [0, -1, 2.5, Number.NaN]) {
    expect(() => partialPatterns(segments)).toThrow(/segments/);
    expect(() => alternatePatterns(segments)).toThrow(/segments/);
  }
});
