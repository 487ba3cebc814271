import { describe, expect, it } from 'vitest';
import { LAG_SCREWS } from '../../../../src/data/fasteners/lag-screws.ts';
import { STEELS } from '../../../../src/data/fasteners/steel.ts';
import { WOOD_SCREWS } from '../../../../src/data/fasteners/wood-screws.ts';
import { say } from '../../../../src/data/words/say.ts';
import { tensionOfSteel } from '../../../../src/engine/checks/fasteners/fastener-tension.ts';
import { fastenerGravity } from '../../../../src/engine/checks/fasteners/specific-gravity.ts';
import { washerArea, washerBearing } from '../../../../src/engine/checks/fasteners/washer-bearing.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

const washer = Object.freeze({
  outsideIn: 2,
  holeIn: 0.8125,
  flatIn: 2.5,
  toEndIn: 6,
  angleDeg: 90,
  FcPerpPsi: 400,
  FcStarPsi: 1200,
});
const pounds = (answer: ReturnType<typeof washerBearing>): number => (answer.ok ? answer.pounds : NaN);

describe('a washer on wood', () => {
  // pi x (4 - 0.66016) / 4 = 2.6231 in2; Cb = 2.375 / 2 = 1.1875; 400 x 1.1875 x 2.6231 = 1246.0 lb
  it('NDS 3.10.4: across the grain the length of a round washer is its diameter', () => {
    expect(washerArea(2, 0.8125)).toBeCloseTo(2.6231, 4);
    expect(pounds(washerBearing(washer))).toBeCloseTo(1246, 0);
    expect(pounds(washerBearing({ ...washer, toEndIn: 2 }))).toBeCloseTo(400 * washerArea(2, 0.8125), 9);
  });

  // along the grain Hankinson's line ends at Fc*
  it('NDS 3.10.3: at an angle the wood takes between its value across and along the grain', () => {
    const A = washerArea(2, 0.8125);
    expect(pounds(washerBearing({ ...washer, angleDeg: 0 }))).toBeCloseTo(1200 * A, 6);
    const slanted = pounds(washerBearing({ ...washer, angleDeg: 45 }));
    expect(slanted / A).toBeCloseTo((2 * 1200 * 475) / (1200 + 475), 6);
  });

  it('a round log wants a flat as wide as the washer; a sawn face has one', () => {
    const narrow = washerBearing({ ...washer, flatIn: 1.9 });
    expect(narrow.ok ? '' : say(narrow.reason)).toContain('2 in across, the flat under it 1.9 in wide');
    expect(washerBearing({ ...washer, flatIn: null })).toEqual(washerBearing(washer));
  });

  it('every step can be redone on another calculator, square and slanted', () => {
    expect(redoFaults((note) => washerBearing(washer, note))).toEqual([]);
    expect(redoFaults((note) => washerBearing({ ...washer, angleDeg: 30 }, note))).toEqual([]);
  });

  it('a hole as wide as the washer is refused by a throw', () => {
    expect(() => washerArea(1, 1)).toThrow(MisuseError);
  });
});

describe('the steel of a threaded fastener', () => {
  // 1/2 in. lag screw: 60,000 x pi x 0.371^2 / 4 / 2 = 3243.1 lb at the root; 36,000 x pi x 0.25 / 4 / 1.67 = 4232.7 lb
  it('NDS 12.2.1.3: the root of a lag screw breaks before its shank yields', () => {
    expect(tensionOfSteel({ shankIn: 0.5, rootIn: 0.371, steel: STEELS.rod })).toBeCloseTo(3243.1, 1);
  });

  it('a root as thick as the shank lets the shank yield first', () => {
    expect(tensionOfSteel({ shankIn: 0.5, rootIn: 0.5, steel: STEELS.rod })).toBeCloseTo(4232.7, 1);
  });

  it('every step can be redone on another calculator', () => {
    expect(redoFaults((note) => tensionOfSteel({ shankIn: 0.5, rootIn: 0.371, steel: STEELS.rod }, note))).toEqual([]);
    expect(redoFaults((note) => tensionOfSteel({ shankIn: 0.5, rootIn: 0.5, steel: STEELS.rod }, note))).toEqual([]);
  });

  it('roots are thinner than shanks in every table, and a thicker root is refused by a throw', () => {
    for (const { nominalIn, rootIn } of [...LAG_SCREWS.rows, ...WOOD_SCREWS.rows]) {
      expect(rootIn).toBeGreaterThan(0.65 * nominalIn);
      expect(rootIn).toBeLessThan(0.85 * nominalIn);
    }
    expect(() => tensionOfSteel({ shankIn: 0.5, rootIn: 0.6, steel: STEELS.rod })).toThrow(MisuseError);
  });
});

describe('specific gravity for fasteners', () => {
  it('a species without a group keeps what its design values carry', () => {
    expect(fastenerGravity('Ponderosa pine', 0.38)).toBe(0.38);
    expect(fastenerGravity('Some wood of nowhere', 0.29)).toBe(0.29);
  });

  it('names are read whatever their order and hyphens', () => {
    expect(fastenerGravity('northern white cedar', 0.29)).toBe(0.31);
    expect(fastenerGravity('coast Douglas fir', 0.45)).toBe(0.5);
  });

  it('the step says which one it is', () => {
    const words = ['Northern white-cedar', 'Western larch', 'Ponderosa pine'].map((species) => {
      const told: string[] = [];
      fastenerGravity(species, 0.38, (step) => told.push(`${step.words}; ${step.clause.clause}`));
      return told.join();
    });
    expect(words).toEqual([
      'specific gravity for fasteners, Northern white-cedar; Table 12.3.3A',
      'specific gravity for fasteners, Western larch as Douglas Fir-Larch; Table 12.3.3A',
      'specific gravity for fasteners, Ponderosa pine on green volume; Table 5-3b',
    ]);
  });
});
