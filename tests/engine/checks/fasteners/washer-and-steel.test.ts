import { describe, expect, it } from 'vitest';
import { LAG_SCREWS } from '../../../../src/data/fasteners/lag-screws.ts';
import { STEELS } from '../../../../src/data/fasteners/steel.ts';
import { WOOD_SCREWS } from '../../../../src/data/fasteners/wood-screws.ts';
import { say } from '../../../../src/data/words/say.ts';
import { tensionOfSteel } from '../../../../src/engine/checks/fasteners/fastener-tension.ts';
import { fastenerGravity } from '../../../../src/engine/checks/fasteners/specific-gravity.ts';
import { leastFlat, washerArea, washerBearing } from '../../../../src/engine/checks/fasteners/washer-bearing.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

const washer = Object.freeze({
  outsideIn: 2,
  holeIn: 0.8125,
  diameterIn: null,
  flatIn: 1,
  edgeIn: 3,
  offIn: 0,
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

  // a chord as wide as the washer: 4 - sqrt(16 - 1) = 0.12702 in. deep
  it('a round log wants a flat as wide as the washer; a sawn face has one', () => {
    expect(leastFlat(2, 8, 90)).toBeCloseTo(4 - Math.sqrt(15), 12);
    expect(washerBearing({ ...washer, diameterIn: 8, flatIn: 0.127 }).ok).toBe(false);
    expect(washerBearing({ ...washer, diameterIn: 8, flatIn: 0.1271 })).toEqual(washerBearing(washer));
    expect(washerBearing({ ...washer, flatIn: 0 })).toEqual(washerBearing(washer));
    const narrow = washerBearing({ ...washer, diameterIn: 8, flatIn: 0.0625 });
    expect(narrow.ok ? '' : say(narrow.reason)).toContain('2 in across');
  });

  // on a sawn face the flat begins where it comes out of the wood: half of the washer over the tangent of the angle
  it('aslant it wants a flat deep enough to hold all of it; on a log its whole rim lies in the wood', () => {
    expect(leastFlat(2, null, 45)).toBeCloseTo(1, 12);
    expect(leastFlat(2, null, 60)).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(leastFlat(2, null, 0)).toBe(0);
    for (const [outsideIn, diameterIn, angleDeg] of [
      [2, 8, 45],
      [2, 5, 60],
      [1.375, 4.5, 80],
    ] as const) {
      const depthIn = leastFlat(outsideIn, diameterIn, angleDeg);
      // every point of the rim against the cylinder: the log's axis along x, the shank down toward +x at the angle
      const [sin, cos] = [Math.sin((angleDeg * Math.PI) / 180), Math.cos((angleDeg * Math.PI) / 180)];
      const outermost = (deep: number): number =>
        Math.max(
          ...Array.from({ length: 3601 }, (_, i) => {
            const t = (i * Math.PI) / 1800;
            const [along, aside] = [(outsideIn / 2) * Math.cos(t), (outsideIn / 2) * Math.sin(t)];
            const up = diameterIn / 2 - deep * sin + along * cos;
            return Math.hypot(up, aside);
          }),
        );
      expect(outermost(depthIn)).toBeLessThan(diameterIn / 2 + 1e-6);
      expect(outermost(depthIn)).toBeGreaterThan(diameterIn / 2 - 1e-5);
    }
  });

  it('no washer reaches over the edge of its stick', () => {
    expect(leastFlat(5, 5, 90)).toBe(Infinity);
    for (const over of [{ diameterIn: 2, flatIn: 1 }, { edgeIn: 0.9 }]) {
      const refusal = washerBearing({ ...washer, ...over });
      expect(refusal.ok ? '' : refusal.reason.code).toBe('washerOverEdge');
    }
    // beside the middle of a log the flat must be as much wider
    expect(leastFlat(2, 8, 90, 1)).toBeCloseTo(4 - Math.sqrt(12), 12);
  });

  it('every step can be redone on another calculator, square and slanted', () => {
    expect(redoFaults((note) => washerBearing(washer, note))).toEqual([]);
    expect(redoFaults((note) => washerBearing({ ...washer, angleDeg: 30, flatIn: 2 }, note))).toEqual([]);
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
