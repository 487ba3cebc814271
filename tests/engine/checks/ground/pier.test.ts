import { describe, expect, it } from 'vitest';
import {
  baseOfPier,
  padProjection,
  pierWeight,
  soilAbovePad,
  soilReplaced,
  upliftResistance,
  type Pier,
} from '../../../../src/engine/checks/ground/pier.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

const post: Pier = { shaft: { shape: 'round', acrossIn: 12, lengthIn: 48 }, pad: null, concretePcf: 150 };
const padded: Pier = {
  shaft: { shape: 'square', acrossIn: 12, lengthIn: 36 },
  pad: { acrossIn: 30, thickIn: 12, tied: true },
  concretePcf: 145,
};
const loose: Pier = { ...padded, pad: { acrossIn: 30, thickIn: 12, tied: false } };

describe('a pier', () => {
  it('[pier.uplift] weighs its volume times its unit weight', () => {
    expect(pierWeight(post, 'any')).toBeCloseTo((Math.PI / 4) * 4 * 150, 9);
    expect(pierWeight(padded, 'any')).toBeCloseTo((3 + 6.25) * 145, 9);
  });

  // proof [pier.uplift]: closed-form - volumes by hand, 0.6 of the weight by ASCE 7-16 2.4.1 combination 7
  it('[pier.uplift] a pad that is not tied stays in the ground, with the soil above it', () => {
    expect(pierWeight(loose, 'tied')).toBeCloseTo(3 * 145, 9);
    expect(pierWeight(padded, 'tied')).toBeCloseTo(9.25 * 145, 9);
    expect(soilAbovePad(loose, 30, 100)).toBe(0);
    expect(soilAbovePad(padded, 30, 100)).toBeCloseTo((6.25 - 1) * 2.5 * 100, 9);
    expect(soilAbovePad(post, 30, 100)).toBe(0);
    expect(upliftResistance(435, 0)).toBeCloseTo(261, 9);
    expect(upliftResistance(1000, 500)).toBeCloseTo(900, 9);
  });

  // An engineers' practice note: 3 ft of embedment, 1 ft not counted, 110 lb/ft3: 220 psf more.
  it('[pier.bearing] soil replaced over 2 ft at 110 lb/ft3 is the 220 psf of the practice note', () => {
    const footing: Pier = { shaft: { shape: 'square', acrossIn: 12, lengthIn: 36 }, pad: null, concretePcf: 150 };
    expect(soilReplaced(footing, 24, 110)).toBeCloseTo(220, 9);
  });

  it('[pier.bearing] only what is below the ground replaces soil, and never more than the pier itself', () => {
    expect(soilReplaced(padded, 0, 110)).toBeCloseTo(6.25 * 110, 9);
    expect(soilReplaced(padded, 500, 110)).toBeCloseTo(9.25 * 110, 9);
  });

  it('[pier.bearing] the pad bears where there is one, else the shaft', () => {
    expect(baseOfPier(padded)).toEqual({ shape: 'square', acrossIn: 30 });
    expect(baseOfPier(post)).toMatchObject({ shape: 'round', acrossIn: 12 });
  });

  // proof [pier.pad]: closed-form - plan geometry of pad and shaft, a round one as the square of equal area
  it('[pier.pad] reaches beyond its shaft by half the difference, a round one by a little more', () => {
    expect(padProjection(padded)).toBe(9);
    const onRound: Pier = { ...padded, shaft: { shape: 'round', acrossIn: 12, lengthIn: 36 } };
    expect(padProjection(onRound)).toBeCloseTo((30 - 6 * Math.sqrt(Math.PI)) / 2, 9);
    expect(padProjection(post)).toBe(0);
    expect(padProjection({ ...padded, shaft: { shape: 'square', acrossIn: 40, lengthIn: 36 } })).toBe(0);
  });

  it('refuses sizes and weights that are none', () => {
    expect(() => pierWeight({ ...post, concretePcf: 0 }, 'any')).toThrow(MisuseError);
    expect(() => pierWeight({ ...post, shaft: { shape: 'round', acrossIn: -1, lengthIn: 9 } }, 'any')).toThrow(
      MisuseError,
    );
    expect(() => soilReplaced(post, -1, 110)).toThrow(MisuseError);
    expect(() => soilAbovePad(padded, 30, Number.NaN)).toThrow(MisuseError);
    expect(() => upliftResistance(-1, 0)).toThrow(MisuseError);
    expect(() => padProjection({ ...padded, shaft: { shape: 'round', acrossIn: 0, lengthIn: 9 } })).toThrow(
      MisuseError,
    );
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => pierWeight(padded, 'any', note))).toEqual([]);
    expect(redoFaults((note) => pierWeight(padded, 'tied', note))).toEqual([]);
    expect(redoFaults((note) => soilReplaced(padded, 30, 100, note))).toEqual([]);
    expect(redoFaults((note) => soilAbovePad(padded, 30, 100, note))).toEqual([]);
    expect(redoFaults((note) => upliftResistance(435, 120, note))).toEqual([]);
    expect(redoFaults((note) => padProjection(padded, note))).toEqual([]);
  });
});
