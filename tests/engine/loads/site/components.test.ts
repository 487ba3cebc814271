import { describe, expect, it } from 'vitest';
import {
  areaClass,
  componentCoefficients,
  componentPressure,
  edgeWidth,
} from '../../../../src/engine/loads/site/components.ts';

describe('edge width and area class', () => {
  // BNBC Fig. 6.2.19 notes: a = the lesser of 0.1 B and 0.4 h, at least 0.04 B and 3 ft; each branch by hand.
  it.each([
    { leastWidthFt: 12, meanHeightFt: 10, a: 3, branch: '3 ft' },
    { leastWidthFt: 40, meanHeightFt: 12, a: 4, branch: 'a tenth of the width' },
    { leastWidthFt: 60, meanHeightFt: 10, a: 4, branch: '0.4 of the height' },
    { leastWidthFt: 120, meanHeightFt: 8, a: 4.8, branch: '0.04 of the width' },
  ])('[BNBC Fig. 6.2.19 notes] $branch governs', ({ leastWidthFt, meanHeightFt, a }) => {
    expect(edgeWidth({ leastWidthFt, meanHeightFt })).toBeCloseTo(a, 12);
  });

  it('[BNBC Fig. 6.2.19] an area at a limit belongs to the smaller class', () => {
    expect(areaClass(9, 3)).toBe('upToA2');
    expect(areaClass(9.01, 3)).toBe('upTo4A2');
    expect(areaClass(36, 3)).toBe('upTo4A2');
    expect(areaClass(36.01, 3)).toBe('over4A2');
    expect(() => areaClass(0, 3)).toThrow(/effectiveAreaFt2/);
  });
});

describe('component coefficients', () => {
  // BNBC Fig. 6.2.19a, up to a2, zone 3, clear: +3.6, -3.8 at 15 deg; +5.2, -5.0 at 30 deg; a third of the way.
  it('[BNBC Fig. 6.2.19a] goes straight from row to row', () => {
    const answer = componentCoefficients('monoslope', 20, 'upToA2', 3, 'clear');
    expect(answer.ok).toBe(true);
    if (!answer.ok) return;
    expect(answer.positive).toBeCloseTo(3.6 + 1.6 / 3, 12);
    expect(answer.negative).toBeCloseTo(-3.8 - 1.2 / 3, 12);
  });

  it('zone 3 is never milder than zone 2, nor zone 2 than zone 1, nor a small area than a large one', () => {
    const zones = [3, 2, 1] as const;
    const areas = ['upToA2', 'upTo4A2', 'over4A2'] as const;
    for (const form of ['monoslope', 'pitched'] as const) {
      for (const flow of ['clear', 'obstructed'] as const) {
        for (let slopeDeg = 0; slopeDeg <= 45; slopeDeg += 2.5) {
          const span = (area: (typeof areas)[number], zone: (typeof zones)[number]) => {
            const answer = componentCoefficients(form, slopeDeg, area, zone, flow);
            if (!answer.ok) throw new Error('within the figure');
            return answer;
          };
          for (let i = 1; i < 3; i++) {
            for (let j = 0; j < 3; j++) {
              expect(span(areas[j]!, zones[i - 1]!).positive).toBeGreaterThanOrEqual(
                span(areas[j]!, zones[i]!).positive,
              );
              expect(span(areas[j]!, zones[i - 1]!).negative).toBeLessThanOrEqual(span(areas[j]!, zones[i]!).negative);
              expect(span(areas[i - 1]!, zones[j]!).positive).toBeGreaterThanOrEqual(
                span(areas[i]!, zones[j]!).positive,
              );
              expect(span(areas[i - 1]!, zones[j]!).negative).toBeLessThanOrEqual(span(areas[i]!, zones[j]!).negative);
            }
          }
        }
      }
    }
  });

  it('[BNBC Fig. 6.2.19a] ends at 45 degrees with a reason', () => {
    expect(componentCoefficients('monoslope', 46, 'upToA2', 3, 'clear')).toMatchObject({
      ok: false,
      reason: { code: 'slopeOverFigure' },
    });
  });
});

describe('component pressure', () => {
  it('[ASCE 7-16 30.2.2] is never under 16 psf either way', () => {
    const mild = { positive: 0.5, negative: -1.2 };
    expect(componentPressure({ velocityPressurePsf: 12, gustFactor: 0.85 }, mild)).toEqual({ downPsf: 16, upPsf: -16 });
  });

  it('[ASCE 7-16 Eq. 30.7-1] is the product above that', () => {
    const strong = componentPressure({ velocityPressurePsf: 20, gustFactor: 0.85 }, { positive: 3.2, negative: -4.2 });
    expect(strong.downPsf).toBeCloseTo(54.4, 12);
    expect(strong.upPsf).toBeCloseTo(-71.4, 12);
  });
});
