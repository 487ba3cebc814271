import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PulledKind } from '../../../../src/data/fasteners/kind.ts';
import { combinedResistance, shareOfCombined } from '../../../../src/engine/checks/fasteners/combined.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

const carries = { pullLb: 900, pushLb: 300 } as const;
const force = fc.double({ min: 1, max: 5000, noNaN: true });

describe('pulled and pushed sideways at once', () => {
  it.each<PulledKind>(['lag', 'screw', 'nail', 'spike'])(
    'NDS 12.4 (from memory): %s: at 0 and 90 degrees each capacity stands alone',
    (kind) => {
      expect(combinedResistance(kind, carries, 0)).toBeCloseTo(300, 9);
      expect(combinedResistance(kind, carries, 90)).toBeCloseTo(900, 9);
    },
  );

  // at 45 degrees sine and cosine are equal: 2 W Z / (W + Z) = 450 lb with squares, sqrt(2) W Z / (W + Z) = 318.2 lb without
  it('NDS 12.4-1, 12.4-2 (from memory): at 45 degrees threads meet the harmonic mean, plain shanks less', () => {
    expect(combinedResistance('lag', carries, 45)).toBeCloseTo(450, 9);
    expect(combinedResistance('nail', carries, 45)).toBeCloseTo((Math.SQRT2 * 270000) / 1200, 9);
  });

  // the nail line written as shares: N / W + V / Z, since R sin is N and R cos is V
  it('of a nail the share is the straight sum of both shares', () => {
    fc.assert(
      fc.property(force, force, force, force, (N, V, W, Z) => {
        const share = shareOfCombined('nail', { pullLb: N, pushLb: V }, { pullLb: W, pushLb: Z });
        expect(share / (N / W + V / Z)).toBeCloseTo(1, 9);
      }),
      { seed: 53 },
    );
  });

  it('of a lag screw the share lies between the harder part alone and the straight sum', () => {
    fc.assert(
      fc.property(force, force, force, force, (N, V, W, Z) => {
        const share = shareOfCombined('lag', { pullLb: N, pushLb: V }, { pullLb: W, pushLb: Z });
        expect(share).toBeLessThanOrEqual((N / W + V / Z) * (1 + 1e-9));
        expect(share).toBeGreaterThanOrEqual(Math.hypot(N, V) / Math.max(W, Z) / (1 + 1e-9));
        const twice = shareOfCombined('lag', { pullLb: 2 * N, pushLb: 2 * V }, { pullLb: W, pushLb: Z });
        expect(twice / share).toBeCloseTo(2, 9);
      }),
      { seed: 54 },
    );
  });

  it('nothing asked takes nothing', () => {
    expect(shareOfCombined('lag', { pullLb: 0, pushLb: 0 }, carries)).toBe(0);
  });

  it.each<PulledKind>(['lag', 'nail'])('every step can be redone on another calculator: %s', (kind) => {
    expect(redoFaults((note) => shareOfCombined(kind, { pullLb: 250, pushLb: 120 }, carries, note))).toEqual([]);
  });

  it('a capacity of nothing and an angle past square are refused by a throw', () => {
    expect(() => combinedResistance('lag', { pullLb: 0, pushLb: 300 }, 10)).toThrow(MisuseError);
    expect(() => combinedResistance('lag', carries, 91)).toThrow(MisuseError);
    expect(() => shareOfCombined('lag', { pullLb: -1, pushLb: 0 }, carries)).toThrow(MisuseError);
  });
});
